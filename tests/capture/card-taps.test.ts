import { describe, expect, test } from 'vitest'
import {
  A4,
  BLACK_SQUARE,
  ID1,
  rectangle,
  refineTaps,
  type CardOutcome,
} from '../../src/capture/card.ts'
import type { Corners } from '../../src/capture/card-marker.ts'
import { faultSaid } from '../../src/capture/fault.ts'
import { distance } from '../../src/geometry/point.ts'
import { cardPaint, cloth, MARKER_7, sheetPaint, shoot, type Shooting } from './card-render.ts'

/** ISO/IEC 7810:2019, ID-1. */
const [WIDE, HIGH] = [85.6, 53.98]

function cornersOf({ pixelOf }: Shooting, width: number, height: number): Corners {
  const [a, b] = [width / 2, height / 2]
  return [pixelOf(-a, -b), pixelOf(a, -b), pixelOf(a, b), pixelOf(-a, b)]
}
/** Each tap off by so many pixels, in another direction at each corner. */
const off = (corners: Corners, px: number, first = 0.7): Corners => {
  const [a, b, c, d] = corners.map((p, i) => ({
    x: p.x + px * Math.cos(first + i * 2.1),
    y: p.y + px * Math.sin(first + i * 2.1),
  }))
  if (!a || !b || !c || !d) throw new Error('four corners')
  return [a, b, c, d]
}
const reasonOf = (outcome: CardOutcome): string =>
  outcome.ok ? 'found' : faultSaid(outcome.reason)
function worst(outcome: CardOutcome, exact: Corners): number {
  if (!outcome.ok) throw new Error(outcome.reason)
  return Math.max(...outcome.card.corners.map((p, i) => distance(p, exact[i] ?? p)))
}

const across = shoot(cardPaint(WIDE, HIGH, 0.75), cloth(0.2), { tilt: 8, yaw: -10, noise: 2 })
const exact = cornersOf(across, WIDE, HIGH)

describe('four taps on a bank-size card', () => {
  // The virtual corner of the rounded card is where its edges would meet: exact in the projection.
  test.each([0, 2, 5])('taps %d px off come to the same corners', (px) => {
    const outcome = refineTaps(across.picture, off(exact, px), ID1)
    expect(worst(outcome, exact)).toBeLessThan(0.3)
    expect(outcome).toMatchObject({ card: { kind: 'id1', widthMm: WIDE, heightMm: HIGH } })
  })
  test.each([0, 1.5, 3, 4.5])('wherever the taps lie round the corners (%d rad)', (first) => {
    expect(worst(refineTaps(across.picture, off(exact, 4.5, first), ID1), exact)).toBeLessThan(0.3)
  })
  test('a dark card on light cloth', () => {
    const shot = shoot(cardPaint(WIDE, HIGH, 0.04), cloth(0.6), { roll: 12, blurPx: 0.8, noise: 3 })
    const corners = cornersOf(shot, WIDE, HIGH)
    expect(worst(refineTaps(shot.picture, off(corners, 4), ID1), corners)).toBeLessThan(0.4)
  })
  test('a card held upright has its short side on top', () => {
    const shot = shoot(cardPaint(HIGH, WIDE, 0.75), cloth(0.2), { yaw: 12 })
    const corners = cornersOf(shot, HIGH, WIDE)
    const outcome = refineTaps(shot.picture, off(corners, 3), ID1)
    expect(worst(outcome, corners)).toBeLessThan(0.3)
    expect(outcome).toMatchObject({ card: { widthMm: HIGH, heightMm: WIDE } })
  })
  test('the black square of a sheet can be tapped too', () => {
    const shot = shoot(sheetPaint(MARKER_7), cloth(0.25), { tilt: 10 })
    const corners = cornersOf(shot, 100, 100)
    const outcome = refineTaps(shot.picture, off(corners, 3), BLACK_SQUARE)
    expect(worst(outcome, corners)).toBeLessThan(0.3)
    expect(outcome).toMatchObject({ card: { kind: 'sheet' } })
  })
})

describe('other sheets and rectangles', () => {
  test('A4 by its corners: ISO 216, 210 x 297 mm', () => {
    const shot = shoot(cardPaint(210, 297, 0.8), cloth(0.2), {
      ...{ width: 620, height: 760, middle: [0, 0, 2400], f: 1900, tilt: 4, yaw: 6, noise: 2 },
    })
    const corners = cornersOf(shot, 210, 297)
    const outcome = refineTaps({ ...shot.picture, focalPx: 1900 }, off(corners, 4), A4)
    expect(worst(outcome, corners)).toBeLessThan(0.3)
    // Z / f at its middle (Hartley, Zisserman, equation 6.1).
    expect(outcome.ok && Math.abs(outcome.card.mmPerPx / (2400 / 1900) - 1)).toBeLessThan(0.002)
  })
  test('a rectangle she measured herself', () => {
    const size = rectangle(130, 90)
    if (!size.ok) throw new Error(size.reason)
    const shot = shoot(cardPaint(130, 90, 0.7), cloth(0.2), { yaw: 9 })
    const corners = cornersOf(shot, 130, 90)
    const outcome = refineTaps(shot.picture, off(corners, 3), size.size)
    expect(worst(outcome, corners)).toBeLessThan(0.3)
  })
  test.each([
    [20, 30],
    [300, 60],
    [500, 400],
    [NaN, 100],
  ])('%d by %d mm is refused with what to take instead', (width, height) => {
    const made = rectangle(width, height)
    expect(made.ok ? '' : faultSaid(made.reason)).toContain('sides of 5 to 40 cm (2 to 16 in)')
  })
  test('of two lines beside one edge the one that makes a flat card is taken', () => {
    // A stripe of the cloth runs 5 px outside the card's right edge, as strong as the edge itself.
    const card = cardPaint(WIDE, HIGH, 0.75)
    const striped = (u: number, v: number): number | null =>
      card(u, v) ?? (u > WIDE / 2 + 6 && u < WIDE / 2 + 30 ? 0.75 : null)
    const shot = shoot(striped, cloth(0.2), { noise: 2 })
    const corners = cornersOf(shot, WIDE, HIGH)
    const outcome = refineTaps(shot.picture, off(corners, 2.5), ID1)
    const wrong = outcome.ok && worst(outcome, corners) > 0.4
    // Right, or it says how unsure it is.
    expect(!wrong || (outcome.ok && (outcome.card.doubt ?? 0) > 0.01)).toBe(true)
  })
})

describe('taps that give no scale are refused', () => {
  test('40 px off', () => {
    expect(reasonOf(refineTaps(across.picture, off(exact, 40), ID1))).not.toBe('found')
    const shifted = exact.map((p) => ({ x: p.x + 40, y: p.y })) as unknown as Corners
    expect(reasonOf(refineTaps(across.picture, shifted, ID1))).not.toBe('found')
  })
  test('crossed or against the clock', () => {
    const [a, b, c, d] = exact
    expect(reasonOf(refineTaps(across.picture, [a, c, b, d], ID1))).toContain('in turn')
    expect(reasonOf(refineTaps(across.picture, [a, d, c, b], ID1))).toContain('clockwise')
  })
  test('on bare cloth', () => {
    const { picture } = shoot(() => null, cloth(0.25), { noise: 3 })
    expect(reasonOf(refineTaps(picture, exact, ID1))).toMatch(/stand out|corner near|shape/)
  })
  test('on something of another shape', () => {
    const shot = shoot(cardPaint(60, 60, 0.75), cloth(0.2))
    const outcome = refineTaps(shot.picture, cornersOf(shot, 60, 60), ID1)
    expect(reasonOf(outcome)).toContain('do not have the shape')
  })
  test('on a card a few pixels large', () => {
    const shot = shoot(cardPaint(WIDE, HIGH, 0.75), cloth(0.2), { middle: [0, 0, 9000] })
    const outcome = refineTaps(shot.picture, cornersOf(shot, WIDE, HIGH), ID1)
    expect(reasonOf(outcome)).toContain('too small')
  })
})

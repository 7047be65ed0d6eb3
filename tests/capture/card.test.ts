import { describe, expect, test } from 'vitest'
import { findSheet, type Card, type CardOutcome } from '../../src/capture/card.ts'
import { markerCells } from '../../src/capture/card-marker.ts'
import { project } from '../../src/capture/card-plane.ts'
import { faultSaid } from '../../src/capture/fault.ts'
import { linearGrey, mirrored, shrink } from '../../src/capture/picture.ts'
import { distance } from '../../src/geometry/point.ts'
import { cloth, MARKER_0, MARKER_7, sheetPaint, shoot, type Shot } from './card-render.ts'

const SQUARE = [
  [-50, -50],
  [50, -50],
  [50, 50],
  [-50, 50],
] as const

function found(outcome: CardOutcome): Card {
  if (!outcome.ok) throw new Error(outcome.reason)
  return outcome.card
}
const reasonOf = (outcome: CardOutcome): string =>
  outcome.ok ? 'found' : faultSaid(outcome.reason)

/**
 * A plane square to the camera's axis at depth Z shows Z / f millimetres a pixel (Hartley, Zisserman,
 * 2nd ed., equation 6.1); however the sheet is turned, that of its middle is what counts.
 */
const exactScale = ({ middle = [0, 0, 1200], f = 1000 }: Shot): number => middle[2] / f

describe('the printed sheet', () => {
  // The truth is the projection in card-render.ts; bounds hold with a margin of a third or more.
  // Edges along the pixel grid without any blur, as no lens makes them, are the hardest.
  const shots: readonly (readonly [string, Shot, number, number])[] = [
    ['face on', {}, 0.2, 0.2],
    ['far, 42 px square', { middle: [60, -40, 2400] }, 0.25, 0.4],
    ['near, 180 px square', { middle: [10, 10, 560] }, 0.2, 0.1],
    ['tilted 20 and turned 15 degrees', { tilt: 20, yaw: 15, roll: 8 }, 0.12, 0.15],
    ['blurred, noisy', { tilt: -10, yaw: 12, roll: -4, blurPx: 1.2, noise: 5 }, 0.25, 0.3],
    ['hung upside down', { roll: 180, yaw: 5 }, 0.25, 0.2],
    ['hung on its side', { roll: 90, tilt: 10 }, 0.12, 0.15],
    ['landscape picture', { width: 640, height: 300, middle: [-150, 20, 1300] }, 0.12, 0.15],
  ]
  test.each(shots)('%s: corners and scale', (_, shot, cornerPx, scalePercent) => {
    const { picture, pixelOf } = shoot(sheetPaint(MARKER_7), cloth(0.25), shot)
    const card = found(findSheet({ ...picture, focalPx: 1000 }))
    const exact = SQUARE.map(([u, v]) => pixelOf(u, v))
    // The first corner is the sheet's own top left, however it hangs.
    card.corners.forEach((corner, i) => {
      expect(distance(corner, exact[i] ?? { x: NaN, y: NaN })).toBeLessThan(cornerPx)
    })
    expect(Math.abs(card.mmPerPx / exactScale(shot) - 1) * 100).toBeLessThan(scalePercent)
    expect(card).toMatchObject({ kind: 'sheet', widthMm: 100, heightMm: 100 })
    expect(card.residualPx).toBeLessThan(0.3)
  })

  test('its homography gives millimetres anywhere on the paper', () => {
    const { picture, pixelOf } = shoot(sheetPaint(MARKER_7), cloth(0.25), { tilt: 15, yaw: -18 })
    const { homography } = found(findSheet(picture))
    // The paper is 210 x 148.5 mm (A4 folded, ISO 216); the square's own corner is at (50, 50).
    const low = project(homography, pixelOf(105, 74.25))
    expect(low.x).toBeCloseTo(155, 0)
    expect(low.y).toBeCloseTo(124.25, 0)
  })

  test('another marker of the same dictionary is no sheet', () => {
    const { picture } = shoot(sheetPaint(MARKER_0), cloth(0.25))
    expect(reasonOf(findSheet(picture))).toContain('No card in this photo')
  })

  test('a photo without a sheet says what to do', () => {
    const { picture } = shoot(() => null, cloth(0.25), { noise: 4 })
    expect(reasonOf(findSheet(picture))).toMatch(/No card in this photo.*Hang the printed sheet/)
  })

  test('a blank picture is refused', () => {
    const data = new Uint8ClampedArray(300 * 300 * 4).fill(255)
    expect(findSheet({ width: 300, height: 300, data }).ok).toBe(false)
  })

  test('a picture of a few pixels is refused', () => {
    const data = new Uint8ClampedArray(4)
    expect(reasonOf(findSheet({ width: 1, height: 1, data }))).toContain('too few pixels')
  })

  test('two sheets are refused: nobody can say which one hangs on her', () => {
    const one = sheetPaint(MARKER_7)
    const two = shoot((u, v) => one(u + 115, v) ?? one(u - 115, v), cloth(0.25), {})
    expect(reasonOf(findSheet(two.picture))).toContain('More than one printed sheet')
  })

  test('a mirrored photo is named, because left and right would be exchanged', () => {
    const { picture } = shoot(sheetPaint(MARKER_7), cloth(0.25))
    expect(reasonOf(findSheet(mirrored(picture)))).toContain('mirrored')
  })

  test('a thumb over an edge does not move it', () => {
    const paper = sheetPaint(MARKER_7)
    const thumb = (u: number, v: number): number | null =>
      Math.hypot(u - 8, v - 62) < 17 ? 0.35 : paper(u, v)
    const { picture, pixelOf } = shoot(thumb, cloth(0.25), { yaw: 8 })
    const { corners } = found(findSheet(picture))
    corners.forEach((corner, i) => {
      const [u, v] = SQUARE[i] ?? [NaN, NaN]
      expect(distance(corner, pixelOf(u, v))).toBeLessThan(0.3)
    })
  })

  test('tilted far away from the camera it is refused or right, never wrong', () => {
    const { picture, pixelOf } = shoot(sheetPaint(MARKER_7), cloth(0.25), { tilt: 55 })
    const outcome = findSheet(picture)
    if (outcome.ok)
      outcome.card.corners.forEach((corner, i) => {
        const [u, v] = SQUARE[i] ?? [NaN, NaN]
        expect(distance(corner, pixelOf(u, v))).toBeLessThan(0.3)
      })
    else expect(faultSaid(outcome.reason)).toMatch(/flat to the camera|No card/)
  })
})

test('the cells of our marker are those published with the dictionary', () => {
  // ARUCO_MIP_36h12, entry 7: 0x5248c541f, 36 bits, first bit top left.
  const bits = markerCells().flatMap((row) => row.map((white) => (white ? '1' : '0')))
  expect(BigInt(`0b${bits.join('')}`)).toBe(MARKER_7)
})

describe('pictures', () => {
  const picture = {
    width: 2,
    height: 2,
    data: Uint8ClampedArray.from([
      ...[255, 255, 255, 255],
      ...[188, 188, 188, 255],
      ...[0, 0, 0, 255],
      ...[255, 0, 0, 255],
    ]),
  }
  test('light is linear: encoded 188 is half of the light, red weighs 0.2126', () => {
    // IEC 61966-2-1: 188 decodes to 0.5029. ITU-R BT.709-6: weight of red 0.2126.
    const [white, half, black, red] = linearGrey(picture).data
    expect(white).toBeCloseTo(1, 5)
    expect(half).toBeCloseTo(0.5029, 3)
    expect(black).toBe(0)
    expect(red).toBeCloseTo(0.2126, 4)
  })
  test('shrinking takes the plain mean of each block', () => {
    // (255 + 188 + 0 + 255) / 4 = 174.5; (255 + 188 + 0 + 0) / 4 = 110.75
    const small = shrink(picture, 2)
    expect([small.width, small.height]).toEqual([1, 1])
    expect(Math.abs((small.data[0] ?? 0) - 174.5)).toBeLessThanOrEqual(0.5)
    expect(small.data[1]).toBe(111)
  })
  test('mirroring twice is the picture itself', () => {
    expect(mirrored(mirrored(picture)).data).toEqual(picture.data)
    expect(mirrored(picture).data.slice(0, 4)).toEqual(picture.data.slice(4, 8))
  })
})

import aruco from 'js-aruco2'
import { describe, expect, test } from 'vitest'
import { findSheet } from '../../src/capture/card.ts'
import { project } from '../../src/capture/card-plane.ts'
import { markerSheet, type MarkerSheet } from '../../src/capture/marker-sheet.ts'
import type { Picture } from '../../src/capture/picture.ts'
import { cloth, shoot, type Paint } from './card-render.ts'

/** The upper half of the page as paint, its middle at (0, 0). */
function upperHalf(sheet: MarkerSheet): Paint {
  return (u, v) => {
    const [x, y] = [u + sheet.widthMm / 2, v + sheet.heightMm / 4]
    if (x < 0 || x > sheet.widthMm || y < 0 || y > sheet.heightMm / 2) return null
    const top = sheet.rects.findLast(
      (r) => x >= r.x && x < r.x + r.width && y >= r.y && y < r.y + r.height,
    )
    return top?.fill === 'black' ? 0.03 : 0.8
  }
}

/** The upper half straight on, without a lens. */
function drawn(sheet: MarkerSheet, perMm: number): Picture {
  const [width, height] = [sheet.widthMm, sheet.heightMm / 2].map((mm) => Math.round(mm * perMm))
  if (!width || !height) throw new Error('an empty sheet')
  const data = new Uint8ClampedArray(width * height * 4).fill(255)
  for (const r of sheet.rects) {
    const [x0, x1] = [r.x, r.x + r.width].map((mm) => Math.round(mm * perMm))
    const [y0, y1] = [r.y, r.y + r.height].map((mm) => Math.round(mm * perMm))
    for (let y = y0 ?? 0; y < Math.min(height, y1 ?? 0); y++)
      for (let x = x0 ?? 0; x < (x1 ?? 0); x++)
        data.fill(r.fill === 'black' ? 20 : 255, (y * width + x) * 4, (y * width + x) * 4 + 3)
  }
  return { width, height, data }
}

describe.each([
  // ISO 216 and ANSI/ASME Y14.1 (8.5 x 11 in of 25.4 mm).
  ['a4', 210, 297],
  ['letter', 215.9, 279.4],
] as const)('the sheet on %s', (paper, width, height) => {
  const sheet = markerSheet(paper)

  test('has the size of the paper, and nothing lies off it', () => {
    expect(sheet.widthMm).toBeCloseTo(width, 6)
    expect(sheet.heightMm).toBeCloseTo(height, 6)
    const xs = [
      ...sheet.rects.flatMap((r) => [r.x, r.x + r.width]),
      ...sheet.lines.flatMap((l) => [l.x1, l.x2]),
      // DejaVu Sans is at most 0.65 of its size wide on average (from its own metrics, from memory).
      ...sheet.texts.flatMap((t) => [t.x, t.x + t.text.length * t.size * 0.62]),
    ]
    const ys = [
      ...sheet.rects.flatMap((r) => [r.y, r.y + r.height]),
      ...sheet.lines.flatMap((l) => [l.y1, l.y2]),
      ...sheet.texts.flatMap((t) => [t.y - t.size, t.y]),
    ]
    expect(Math.min(...xs, ...ys)).toBeGreaterThanOrEqual(5)
    expect(Math.max(...xs)).toBeLessThanOrEqual(width - 5)
    expect(Math.max(...ys)).toBeLessThanOrEqual(height - 10)
  })

  test('the square found in a picture of it is 100 mm of the true page', () => {
    const { picture, pixelOf } = shoot(upperHalf(sheet), cloth(0.3), { tilt: 6, yaw: 10 })
    const outcome = findSheet(picture)
    if (!outcome.ok) throw new Error(outcome.reason)
    // Two places on the paper a true 90 mm apart, by the sheet's own scale.
    const [p, q] = [pixelOf(-45, 20), pixelOf(45, 20)].map((at) =>
      project(outcome.card.homography, at),
    )
    if (!p || !q) throw new Error('two places')
    expect(Math.hypot(q.x - p.x, q.y - p.y)).toBeGreaterThan(89.8)
    expect(Math.hypot(q.x - p.x, q.y - p.y)).toBeLessThan(90.2)
  })

  test('a white border of at least one cell (12.5 mm) lies round the square', () => {
    const [square] = sheet.rects
    if (!square) throw new Error('no square')
    const clear = {
      left: square.x - 12.5,
      right: square.x + 112.5,
      top: square.y - 12.5,
      low: square.y + 112.5,
    }
    expect([square.width, square.height, square.fill]).toEqual([100, 100, 'black'])
    expect(clear.top).toBeGreaterThan(0)
    expect(clear.low).toBeLessThan(height / 2)
    for (const t of sheet.texts)
      expect(
        t.y < clear.top ||
          t.y - t.size > clear.low ||
          t.x + t.text.length * t.size * 0.62 < clear.left,
      ).toBe(true)
    for (const l of sheet.lines) expect(Math.min(l.y1, l.y2)).toBeGreaterThan(clear.low)
  })

  test('four small markers, each read by the reference detector where it was printed', () => {
    const perMm = 4
    const picture = drawn(sheet, perMm)
    const config = { dictionaryName: 'ARUCO_MIP_36h12', maxHammingDistance: 1 }
    const found = new aruco.AR.Detector(config).detect(picture)
    expect(found.map(({ id }) => id).sort()).toEqual([1, 2, 3, 4, 7])
    // 12 mm from the sides, level with top and foot of the square in the middle of the half.
    const [left, right, top] = [12, width - 12 - 24, height / 4 - 50]
    const places = { 1: [left, top], 2: [right, top], 3: [right, top + 76], 4: [left, top + 76] }
    for (const [id, [x = 0, y = 0]] of Object.entries(places)) {
      const corner = found.find((marker) => `${marker.id}` === id)?.corners[0]
      // The detector names whole pixels and strays by up to two.
      const off = Math.hypot((corner?.x ?? 0) - x * perMm, (corner?.y ?? 0) - y * perMm)
      expect(off).toBeLessThan(4)
    }
  })

  test('the bars she lays a tape to have the length their words say', () => {
    const level = sheet.lines.filter((l) => l.y1 === l.y2).map((l) => l.x2 - l.x1)
    const said = sheet.texts.map((t) => t.text).join(' ')
    // 4 in = 4 x 25.4 mm exactly.
    for (const [words, length] of [
      ['150 mm', 150],
      ['10 cm', 100],
      ['4 in', 101.6],
    ] as const) {
      expect(said).toContain(words)
      expect(level.filter((l) => Math.abs(l - length) < 1e-9).length).toBeGreaterThan(0)
    }
  })
})

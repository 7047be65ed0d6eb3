/** The page of dots and pocket card, measured as it would be printed: by its own millimetres. */
import { describe, expect, test } from 'vitest'
import { photoPack } from '../../src/output/photo-pack.ts'

describe.each([
  // ISO 216 and ANSI/ASME Y14.1 (8.5 x 11 in of 25.4 mm).
  ['a4', 210, 297],
  ['letter', 215.9, 279.4],
] as const)('%s', (paper, width, height) => {
  const { rects, lines, texts } = photoPack(paper)

  test('keeps 10 mm from every edge of the paper', () => {
    // DejaVu Sans is at most 0.62 of its size wide on average (from its own metrics, from memory).
    const xs = [
      ...rects.flatMap((r) => [r.x, r.x + r.width]),
      ...lines.flatMap((l) => [l.x1, l.x2]),
      ...texts.flatMap((t) => [t.x, t.x + t.text.length * t.size * 0.62]),
    ]
    const ys = [
      ...rects.flatMap((r) => [r.y, r.y + r.height]),
      ...lines.flatMap((l) => [l.y1, l.y2]),
      ...texts.flatMap((t) => [t.y - t.size, t.y]),
    ]
    expect(Math.min(...xs)).toBeGreaterThanOrEqual(10)
    expect(Math.max(...xs)).toBeLessThanOrEqual(width - 10)
    expect(Math.min(...ys)).toBeGreaterThanOrEqual(10)
    expect(Math.max(...ys)).toBeLessThanOrEqual(height - 10)
  })

  test('the pocket card is ID-1 (ISO/IEC 7810:2019: 85.60 x 53.98 mm), white within a black band', () => {
    const [band, white] = rects
    if (!band || !white) throw new Error('two rectangles')
    expect([band.width, band.height, band.fill]).toEqual([85.6, 53.98, 'black'])
    expect(white.fill).toBe('white')
    expect(white.x - band.x).toBeCloseTo(6, 9)
    expect(band.x + band.width - white.x - white.width).toBeCloseTo(6, 9)
  })

  test('sixteen dots of 19 mm, none touching another', () => {
    // The chords of a dot follow one another; 72 of them close on the first.
    const short = lines.filter((l) => Math.hypot(l.x2 - l.x1, l.y2 - l.y1) < 1)
    expect(short.length).toBe(16 * 72)
    const dots = Array.from({ length: 16 }, (_, i) => short.slice(i * 72, (i + 1) * 72))
    const middles = dots.map((chords) => {
      const [xs, ys] = [chords.map((l) => l.x1), chords.map((l) => l.y1)]
      expect(Math.max(...xs) - Math.min(...xs)).toBeCloseTo(19, 6)
      expect(Math.max(...ys) - Math.min(...ys)).toBeCloseTo(19, 6)
      return {
        x: (Math.max(...xs) + Math.min(...xs)) / 2,
        y: (Math.max(...ys) + Math.min(...ys)) / 2,
      }
    })
    for (const [i, a] of middles.entries())
      for (const b of middles.slice(i + 1))
        expect(Math.hypot(a.x - b.x, a.y - b.y)).toBeGreaterThan(20)
  })

  test('the bars that check the print are 10 cm and 4 in (4 x 25.4 mm)', () => {
    const level = lines.filter((l) => l.y1 === l.y2).map((l) => l.x2 - l.x1)
    for (const long of [100, 101.6])
      expect(level.filter((l) => Math.abs(l - long) < 1e-9)).toHaveLength(1)
  })
})

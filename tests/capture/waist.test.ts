import { describe, expect, it, test } from 'vitest'
import { faultSaid } from '../../src/capture/fault.ts'
import type { Picture } from '../../src/capture/picture.ts'
import type { OutlineRow } from '../../src/capture/reading.ts'
import { findBand } from '../../src/capture/waist-band.ts'
import { narrowestLevel } from '../../src/capture/waist-level.ts'

/** An outline 140 px wide that is `dent` mm narrower at row 100, as a parabola over 100 px; 2 mm a px. */
const dented = (dent: number): OutlineRow[] =>
  Array.from({ length: 200 }, (_, y) => {
    const t = Math.min(1, Math.abs(y - 100) / 50)
    const half = 70 - ((dent / 2) * (1 - t * t)) / 2
    return { y, left: 200 - half, right: 200 + half }
  })

describe('the narrowest level of the outline', () => {
  // Source of the limit: in the Korean survey women without a visible indentation differ by less
  // than 5 mm between waist and navel breadth.
  it('refuses an outline that is less than 5 mm narrower, with what to do next', () => {
    const level = narrowestLevel(dented(4), 40, 160, 2)
    expect(level.ok).toBe(false)
    if (!level.ok) expect(faultSaid(level.reason)).toMatch(/elastic/)
  })

  it('takes one that is clearly narrower, 8 mm below the narrowest row as measured on our bodies', () => {
    const level = narrowestLevel(dented(30), 40, 160, 2)
    // Row 100's middle is at 100.5; 8 mm at 2 mm a pixel are 4 px (waist-level.ts, bench).
    expect(level.ok && level.y).toBeCloseTo(104.5, 1)
  })

  it('refuses a slope: its narrowest row is only the end of the zone', () => {
    const slope = Array.from({ length: 200 }, (_, y) => ({
      y,
      left: 150 - y / 4,
      right: 250 + y / 4,
    }))
    expect(narrowestLevel(slope, 40, 160, 2).ok).toBe(false)
  })
})

/** Cloth of one grey with rows painted over it. */
function cloth(paint: (x: number, y: number) => number | undefined): Picture {
  const [width, height] = [240, 200]
  const data = new Uint8ClampedArray(width * height * 4)
  for (let k = 0; k < width * height; k++) {
    const grey = paint(k % width, Math.floor(k / width)) ?? 110
    data.set([grey, grey, grey, 255], k * 4)
  }
  return { width, height, data }
}
const trunk = Array.from({ length: 200 }, (_, y) => ({ y, left: 50, right: 190 }))
const search = { from: 40, to: 160, seen: 'across' } as const

describe('the elastic at the waist', () => {
  it('finds a light line, bowed and askew, to half a pixel', () => {
    // 5 px high about y = 100.5 in the middle, 8 px lower at both ends, right end 4 px lower than left.
    const line = (x: number): number => {
      const u = (x + 0.5 - 120) / 140
      return 100.5 + 4 * 8 * u * u + 4 * u
    }
    const band = findBand(
      cloth((x, y) => (Math.abs(y + 0.5 - line(x)) < 2.5 ? 230 : undefined)),
      trunk,
      search,
    )
    expect(band?.middle).toBeGreaterThan(99.9)
    expect(band?.middle).toBeLessThan(101.1)
    expect(band?.left).toBeGreaterThan(105)
    expect(band?.left).toBeLessThan(108)
    expect(band?.right).toBeGreaterThan(109)
    expect(band?.right).toBeLessThan(112)
  })

  it('follows a ring seen from above to where it turns out of sight', () => {
    // The near half of a ring, 8 px higher at the ends. 1.5 px before them it is 6.3 px higher, by hand.
    const ring = (x: number): number => {
      const u = (x + 0.5 - 120) / 140
      return 100.5 - 8 * (1 - Math.sqrt(Math.max(0, 1 - 4 * u * u)))
    }
    const band = findBand(
      cloth((x, y) => (Math.abs(y + 0.5 - ring(x)) < 2.5 ? 230 : undefined)),
      trunk,
      search,
    )
    expect(Math.abs((band?.left ?? 0) - 94.2)).toBeLessThan(1)
    expect(Math.abs((band?.right ?? 0) - 94.2)).toBeLessThan(1)
  })

  it('finds a dark line as well', () => {
    const band = findBand(
      cloth((_, y) => (y >= 88 && y < 93 ? 30 : undefined)),
      trunk,
      search,
    )
    expect(Math.abs((band?.middle ?? 0) - 90.5)).toBeLessThan(0.6)
  })

  it('passes over the step from blouse to skirt, which is no line', () => {
    expect(
      findBand(
        cloth((_, y) => (y >= 90 ? 40 : undefined)),
        trunk,
        search,
      ),
    ).toBeUndefined()
  })

  it('finds nothing on plain cloth', () => {
    expect(
      findBand(
        cloth(() => undefined),
        trunk,
        search,
      ),
    ).toBeUndefined()
  })

  it('takes neither of two lines as strong as each other', () => {
    const two = cloth((_, y) => ((y >= 70 && y < 75) || (y >= 120 && y < 125) ? 230 : undefined))
    expect(findBand(two, trunk, search)).toBeUndefined()
  })

  it('reads the line beside a card that hides the middle', () => {
    const hidden = { left: 90, right: 150, top: 80, bottom: 199 }
    const card = cloth((x, y) =>
      x >= 90 && x < 150 && y >= 80 ? 250 : y >= 98 && y < 103 ? 230 : undefined,
    )
    const band = findBand(card, trunk, { ...search, hidden })
    expect(Math.abs((band?.middle ?? 0) - 100.5)).toBeLessThan(1)
  })

  // White paper 100 px wide of a trunk of 140, its rim so many px below a white cord of 5 px.
  test.each([2, 3, 5, 9])('finds a cord %d px above the rim of a sheet', (slit) => {
    const rim = 103 + slit
    const picture = cloth((x, y) =>
      x >= 70 && x < 170 && y >= rim ? 235 : y >= 98 && y < 103 ? 230 : undefined,
    )
    const hidden = { left: 70, right: 170, top: rim, bottom: 190 }
    for (const seen of ['across', 'besideArm'] as const) {
      const band = findBand(picture, trunk, { ...search, seen, hidden })
      expect(Math.abs((band?.left ?? 0) - 100.5)).toBeLessThan(1)
      expect(Math.abs((band?.middle ?? 0) - 100.5)).toBeLessThan(1)
      expect(Math.abs((band?.right ?? 0) - 100.5)).toBeLessThan(1)
    }
  })

  it('does not take a line beside the sheet for the cord that runs above it', () => {
    const picture = cloth((x, y) => {
      if (x >= 70 && x < 170 && y >= 106) return 235
      if (y >= 98 && y < 103) return 180
      return y >= 130 && y < 135 ? 240 : undefined
    })
    const hidden = { left: 70, right: 170, top: 106, bottom: 190 }
    const band = findBand(picture, trunk, { ...search, seen: 'besideArm', hidden })
    expect(Math.abs((band?.middle ?? 0) - 100.5)).toBeLessThan(1)
  })
})

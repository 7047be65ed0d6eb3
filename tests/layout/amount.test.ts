import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import type { GarmentId } from '../../src/draft/draft.ts'
import { standardFor } from '../../src/draft/garments.ts'
import { draft } from '../../src/draft/make.ts'
import {
  aboutOnWidth,
  amountToBuy,
  amountWords,
  lengthLeft,
  shrinkage,
  STEP,
  wholeRepeats,
} from '../../src/layout/amount.ts'
import { plainCloth, usableWidth, type Cloth } from '../../src/layout/cloth.ts'
import { cutParts, type CutPart } from '../../src/layout/cut-part.ts'
import { extentOf, outlineArea } from '../../src/layout/outline.ts'
import { searchWidth } from '../../src/layout/search-widths.ts'
import { cuttingOf, USUAL_CUT } from '../../src/output/cutting.ts'
import { inches, mm, type Mm } from '../../src/units/length.ts'
import { body, MIDDLE } from '../bodies.ts'

function partsOf(garment: GarmentId): readonly CutPart[] {
  const d = draft(garment, body({}, MIDDLE), standardFor(garment))
  const { allowances, hemDepth } = cuttingOf(d, { ...USUAL_CUT, stuff: 'cloth' })
  const cut = cutParts(d.pieces, allowances, hemDepth)
  if (!cut.ok) throw new Error(cut.reason)
  return cut.parts
}
/** Only one half beside the other's fold: back and front lie one above the other. */
const NARROW = plainCloth(mm(700))
function foundOn(cloth: Cloth): Mm {
  const halves = partsOf('sleeveless').filter((p) => p.id === 'back' || p.id === 'front')
  const { best } = searchWidth(halves, cloth, 'lengthwise', { seed: 1, tries: 20_000 })
  if (!best) throw new Error('nothing was laid out')
  return mm(best.length)
}

const yards = (count: number) => mm(inches(36) * count)

describe('amount to buy', () => {
  test('worked: 1,500 mm of layout, 4 % shrinkage, a repeat of 60 mm, by the metre', () => {
    // By hand: 1500 / 0.96 = 1562.5; + 60 + 50 + 100 (5 % is 78, 100 is more) = 1772.5 → 1.8 m.
    const cloth: Cloth = { ...plainCloth(mm(1150)), shrinkAlong: 0.04, repeat: { along: mm(60) } }
    const { buy, items } = amountToBuy(mm(1500), cloth, 'metre')
    expect(buy).toBeCloseTo(1800, 6)
    expect(items.map((i) => Math.round(i.adds * 10) / 10)).toEqual([1500, 62.5, 60, 50, 100, 27.5])
    expect(amountWords(buy, 'metre')).toBe('1.8 m')
  })

  test('worked: 3,000 mm plain, by the yard', () => {
    // By hand: 3000 + 50 + 150 (5 %) = 3200 mm = 3.4996 yd → 3½ yd.
    const { buy } = amountToBuy(mm(3000), plainCloth(mm(1150)), 'yard')
    expect(buy).toBeCloseTo(yards(3.5), 6)
    expect(amountWords(buy, 'yard')).toBe('3½ yd')
  })

  test('never short, never more than its items say, a whole number of steps (property)', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 100, max: 8000, noNaN: true }),
        fc.double({ min: 0, max: 0.12, noNaN: true }),
        fc.integer({ min: 0, max: 640 }),
        fc.constantFrom('metre' as const, 'yard' as const),
        (length, shrink, repeat, soldBy) => {
          const cloth: Cloth = {
            ...plainCloth(mm(1400)),
            shrinkAlong: shrink,
            ...(repeat > 0 ? { repeat: { along: mm(repeat) } } : {}),
          }
          const { buy, items } = amountToBuy(mm(length), cloth, soldBy)
          const before = length / (1 - shrink)
          expect((buy - repeat) * (1 - shrink)).toBeGreaterThanOrEqual(length)
          // Spare, straightening, and less than one step of the shop.
          const most = before + repeat + 50 + Math.max(100, before * 0.05) + STEP[soldBy]
          expect(buy).toBeLessThan(most + 1e-6)
          expect(items.reduce((s, i) => s + i.adds, 0)).toBeCloseTo(buy, 6)
          expect(buy / STEP[soldBy] - Math.round(buy / STEP[soldBy])).toBeCloseTo(0, 6)
        },
      ),
    )
  })

  test('shrinkage is divided by, not added: 3 yd at 5 %, 4 yd at 10 %', () => {
    // A public page on washing cloth first: 3 / 0.95 = 3.16 yd and 4 / 0.90 = 4.44 yd.
    for (const [length, share, washed] of [
      [3, 0.05, 3.16],
      [4, 0.1, 4.44],
    ] as const) {
      const cloth = { ...plainCloth(mm(1150)), shrinkAlong: share }
      const { items } = amountToBuy(yards(length), cloth, 'yard')
      const before = items.filter((i) => /layout|shrinkage/.test(i.words))
      expect(before.reduce((sum, i) => sum + i.adds, 0) / yards(1)).toBeCloseTo(washed, 2)
    }
  })

  test('checks: a bodice of two pieces one above the other takes two repeats more at most', () => {
    // A cloth shop's page of 2010 on checks: repeat × pieces stacked; of 4¼ in with two pieces 8½ in.
    const repeat = inches(4.25)
    const checked: Cloth = { ...NARROW, repeat: { along: repeat } }
    const plain = foundOn(NARROW)
    const matched = foundOn(checked)
    expect(matched).toBeGreaterThanOrEqual(plain)
    const more = amountToBuy(matched, checked, 'yard').items.find((i) => /repeat/.test(i.words))
    expect(matched - plain + (more?.adds ?? NaN)).toBeLessThanOrEqual(2 * repeat + 1e-6)
  })

  test('on cloth of 36 in: no more than twice the length and one length of sleeve', () => {
    // "Twice the length, plus the sleeves", both sleeves from one length: a school book on making a
    // dress, cotton of 36 in. Lengths are those of the cut pieces, hems and allowances in them.
    const parts = partsOf('sleeve')
    const long = (id: string): number => {
      const { left, right } = extentOf(parts.find((p) => p.id === id)!.outline)
      return right - left
    }
    const rule = 2 * Math.max(long('back'), long('front')) + long('sleeve')
    const cloth = plainCloth(inches(36))
    const found = searchWidth(parts, cloth, 'shortest', { seed: 1, tries: 20_000 }).best
    expect(found?.length).toBeLessThanOrEqual(rule)
    // And never less than the cloth that the pieces cover.
    const covered = parts.reduce(
      (sum, p) => sum + p.count * (p.kind === 'onFold' ? 2 : 1) * outlineArea(p.outline),
      0,
    )
    expect(found?.length).toBeGreaterThan(covered / usableWidth(cloth))
  })

  test('whole repeats: 96 in at a repeat of 27 in take 4, 108 in', () => {
    // Public how-to on buying cloth with a repeat: 96 / 27 = 3.6 → 4 × 27 = 108.
    expect(wholeRepeats(inches(96), inches(27))).toBeCloseTo(inches(108), 9)
    expect(wholeRepeats(inches(108), inches(27))).toBeCloseTo(inches(108), 9)
  })

  test('shrinkage of a washed square', () => {
    // Extension advice: % = (before − after) / before; a 500 mm square that comes out 480 lost 4 %.
    expect(shrinkage(mm(500), mm(480))).toBeCloseTo(0.04, 12)
  })

  test('what is left of 2.30 m: straightened and washed', () => {
    // By hand: (2300 − 50) × 0.97 = 2182.5.
    expect(lengthLeft(mm(2300), { ...plainCloth(mm(1150)), shrinkAlong: 0.03 })).toBeCloseTo(
      2182.5,
      9,
    )
  })

  test('usable width: 115 cm washed by 2 % between selvedges of 12 mm', () => {
    // By hand: 1150 × 0.98 − 24 = 1103.
    expect(usableWidth({ ...plainCloth(mm(1150)), shrinkAcross: 0.02 })).toBeCloseTo(1103, 9)
  })
})

describe('another width, roughly', () => {
  /**
   * Fabric conversion chart of the US Extension services as printed on cards of sewing shops, yd:
   * columns 35–36, 39, 41, 44–45, 50, 52–54, 58–60, 66 in.
   */
  const CHART = [
    [1.75, 1.5, 1.5, 1.375, 1.25, 1.125, 1, 0.875],
    [2, 1.75, 1.75, 1.625, 1.5, 1.375, 1.25, 1.125],
    [2.25, 2, 2, 1.75, 1.625, 1.5, 1.375, 1.25],
    [2.5, 2.25, 2.25, 2.125, 1.75, 1.75, 1.625, 1.5],
    [2.875, 2.5, 2.5, 2.25, 2, 1.875, 1.75, 1.625],
    [3.125, 2.75, 2.75, 2.5, 2.25, 2, 1.875, 1.75],
    [3.375, 3, 2.875, 2.75, 2.375, 2.25, 2, 1.875],
    [3.75, 3.25, 3.125, 2.875, 2.625, 2.375, 2.25, 2.125],
    [4.25, 3.5, 3.375, 3.125, 2.75, 2.625, 2.375, 2.25],
    [4.5, 3.75, 3.625, 3.375, 3, 2.75, 2.625, 2.5],
    [4.75, 4, 3.875, 3.625, 3.25, 2.875, 2.75, 2.625],
    [5, 4.25, 4.125, 3.875, 3.375, 3.125, 2.875, 2.75],
  ]
  const WIDTHS = [35.5, 39, 41, 44.5, 50, 53, 59, 66]

  const off = CHART.flatMap((row) =>
    row.slice(1).map((yd, k) => {
      const about = aboutOnWidth(yards(row[0]!), inches(35.5), inches(WIDTHS[k + 1]!), 'yard')
      return about / yards(1) - yd
    }),
  )

  test('never more than an eighth short of the chart, three eighths over it at most', () => {
    // The chart itself goes under the same area where a wider cloth holds two pieces abreast.
    expect(Math.min(...off)).toBeGreaterThanOrEqual(-0.125 - 1e-9)
    expect(Math.max(...off)).toBeLessThanOrEqual(0.375 + 1e-9)
  })

  test('within an eighth of it for two in three', () => {
    const near = off.filter((d) => Math.abs(d) <= 0.125 + 1e-9)
    expect(near.length / off.length).toBeGreaterThan(2 / 3)
  })
})

test('amounts in words', () => {
  expect(amountWords(yards(0.625), 'yard')).toBe('⅝ yd')
  expect(amountWords(yards(2), 'yard')).toBe('2 yd')
  expect(amountWords(mm(2300), 'metre')).toBe('2.3 m')
})

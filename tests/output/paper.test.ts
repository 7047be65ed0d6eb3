import { describe, expect, test } from 'vitest'
import { mm } from '../../src/units/length.ts'
import { standardChoices } from '../../src/draft/choices.ts'
import { draft } from '../../src/draft/make.ts'
import {
  LONGEST_PAGE,
  PAPERS,
  paperOf,
  readRoll,
  type PaperChoice,
} from '../../src/output/paper.ts'
import { draftPdf } from '../../src/output/pdf.ts'
import { sheetPlan } from '../../src/output/sheet-plan.ts'
import { planTiles, sheetOf } from '../../src/output/tiles.ts'
import type { TileInput } from '../../src/output/tile-raster.ts'
import { body, INVENTED_BODIES } from '../bodies.ts'
import { FONT } from './font.ts'
import { readPdf, type ReadPage } from './read-pdf.ts'
import { compared, onBoard, outlines } from './reassemble.ts'

const CM = { unit: 'cm', inchStep: 8 } as const
const MM = 25.4 / 72
const square = (name: string, width: number, height: number): TileInput => ({
  name,
  ring: [
    { x: 0, y: 0 },
    { x: width, y: 0 },
    { x: width, y: height },
    { x: 0, y: height },
  ],
})
const DRAFT = draft('blouse', body(), standardChoices())
const made = async (paper: PaperChoice) => {
  const result = await draftPdf(DRAFT, { paper, units: CM, font: FONT })
  if (!result.ok) throw new Error(result.reason)
  return { ...result, pages: readPdf(result.bytes).pages }
}
const sides = (page: ReadPage | undefined): number[] =>
  (page?.mediaBox ?? [])
    .slice(2)
    .map((side) => Math.round(side * MM * 100) / 100)
    .sort((a, b) => a - b)
const squares = (page: ReadPage | undefined): number[] =>
  (page?.drawn ?? []).flatMap(({ rectangle, stroked }) =>
    rectangle && stroked && Math.abs(rectangle[2] - rectangle[3]) < 1e-3
      ? [Math.round(rectangle[2] * MM * 1000) / 1000]
      : [],
  )

describe('large sheets', () => {
  // ISO 216: A3 is 297 × 420. ANSI/ASME Y14.1: size B is 11 × 17 in, 279.4 × 431.8 mm.
  test.each([
    ['a3', [297, 420]],
    ['tabloid', [279.4, 431.8]],
  ] as const)('%s: every page is one such sheet', async (paper, wanted) => {
    const { pages } = await made(paper)
    for (const page of pages) expect(sides(page)).toEqual(wanted)
  })
  // ISO 216: A0 is 841 × 1189.
  test.each([['a0' as const], [{ roll: mm(914) }]])(
    '%j: page one stands on the first sheet, which holds both squares',
    async (paper) => {
      const { pages, plan, tiled } = await made(paper)
      expect(tiled).toBe(plan.tiles.length)
      expect(squares(pages[0])).toEqual(expect.arrayContaining([100, 101.6]))
      const [short, long] = sides(pages[0])
      if (paper === 'a0') expect([short, long]).toEqual([841, 1189])
      else expect([short, long]).toContain(914)
      // The steps come on sheets for home.
      for (const page of pages.slice(tiled)) expect(sides(page)).toEqual([210, 297])
      const { missing, added, longer } = compared(
        pages.slice(0, tiled).flatMap((page) => onBoard(page)),
        outlines(DRAFT, plan),
      )
      expect(missing).toBeLessThan(0.02)
      expect(added).toBeLessThan(0.02)
      expect(longer).toBeLessThan(0.1)
    },
  )
})

describe('a roll', () => {
  const roll = (width: number) => paperOf({ roll: mm(width) })
  // By hand: 914 − 2 × 10 leave 894; two of 440 lie side by side in 600 mm and a little.
  test('is as long as it must be and no longer', () => {
    const plan = planTiles([square('a', 440, 600), square('b', 440, 600)], roll(914))
    const [tile] = plan.tiles
    if (!tile || plan.tiles.length !== 1) throw new Error(`${plan.tiles.length} pages`)
    const { paper } = sheetOf(plan, tile)
    expect(paper.width).toBe(914)
    // Margins 2 × 10, strip 12, and a square of up to 10 mm for the laying out.
    expect(paper.height).toBeGreaterThan(632)
    expect(paper.height).toBeLessThan(660)
  })
  // ISO 32000-1, annex C.2: 14,400 units of 1/72 in are 200 in, 5,080 mm.
  test('is parted where a page cannot be longer', () => {
    expect(LONGEST_PAGE).toBeCloseTo(5080, 9)
    const twelve = Array.from({ length: 12 }, (_, i) => square(`p${i}`, 560, 640))
    const plan = planTiles(twelve, roll(600))
    expect(plan.tiles.length).toBeGreaterThan(1)
    for (const tile of plan.tiles)
      expect(sheetOf(plan, tile).paper.height).toBeLessThanOrEqual(LONGEST_PAGE + 1e-9)
    const long = plan.tiles.reduce((sum, t) => sum + t.box.bottom - t.box.top, 0)
    expect(long).toBeGreaterThan(12 * 560)
    expect(long).toBeLessThan(12 * 700)
  })
  test('that no shop has is refused with the widths there are', () => {
    for (const width of [200, 2000, NaN]) {
      const read = readRoll(width, CM)
      expect(read.ok).toBe(false)
      if (!read.ok) expect(read.reason).toContain('29.7 cm to 162.6 cm')
    }
    expect(readRoll(914, CM)).toEqual({ ok: true, paper: { roll: 914 } })
  })
})

describe('fewest sheets', () => {
  // By hand: inside the trim lines A4 is 190 × 265 upright, 277 × 178 lying across.
  test('the paper lies across where that takes fewer', () => {
    const across = planTiles([square('a', 272, 170)], PAPERS.a4)
    expect([across.paper.width, across.paper.height, across.tiles.length]).toEqual([297, 210, 1])
    const upright = planTiles([square('a', 180, 260)], PAPERS.a4)
    expect([upright.paper.width, upright.paper.height, upright.tiles.length]).toEqual([210, 297, 1])
  })
  // An L and a square that fits its hollow: side by side they would take two sheets of A4.
  test('a piece goes into the hollow of another', () => {
    const hollow: TileInput = {
      name: 'hollow',
      ring: [
        { x: 0, y: 0 },
        { x: 180, y: 0 },
        { x: 180, y: 60 },
        { x: 60, y: 60 },
        { x: 60, y: 255 },
        { x: 0, y: 255 },
      ],
    }
    const plan = planTiles([hollow, square('a', 100, 170)], PAPERS.a4)
    expect(plan.tiles).toHaveLength(1)
  })
  // By hand: a frame of 900 × 900 touches 5 × 4 sheets upright, of which 3 × 2 lie inside it.
  test('a sheet on which nothing is drawn is left out, though cloth lies there', () => {
    const frame = square('frame', 900, 900)
    const drawn = { ...frame, ink: [[...frame.ring, ...frame.ring.slice(0, 1)]] }
    expect(planTiles([drawn], PAPERS.a4).tiles.length).toBeLessThanOrEqual(14)
    expect(planTiles([frame], PAPERS.a4).tiles).toHaveLength(20)
  })
  // Held by hand-written geometry of the test: gaps between outlines, corner to chord, 4 mm asked.
  test.each(INVENTED_BODIES)('%s: pieces lie apart, none on another', (_, numbers) => {
    const laid = sheetPlan(draft('blouse', body({}, numbers), standardChoices()), { paper: 'a4' })
    if (!laid.ok) throw new Error(laid.reason)
    const rings = laid.plan.placed.map((p) => p.ring)
    for (const [i, a] of rings.entries())
      for (const b of rings.slice(i + 1)) {
        expect(gapBetween(a, b)).toBeGreaterThan(3.9)
        expect(winds(a, b[0]) || winds(b, a[0])).toBe(false)
      }
  })
  type Spot = { readonly x: number; readonly y: number }
  const gapBetween = (a: readonly Spot[], b: readonly Spot[]): number =>
    Math.min(...a.map((p) => toRing(p, b)), ...b.map((p) => toRing(p, a)))
  const toRing = (p: Spot, ring: readonly Spot[]): number =>
    ring.reduce((least, a, i) => {
      const b = ring[(i + 1) % ring.length] ?? a
      const [dx, dy] = [b.x - a.x, b.y - a.y]
      const t = ((p.x - a.x) * dx + (p.y - a.y) * dy) / (dx * dx + dy * dy || 1)
      const at = Math.min(1, Math.max(0, t))
      return Math.min(least, Math.hypot(a.x + dx * at - p.x, a.y + dy * at - p.y))
    }, Infinity)
  /** Angles summed round the ring: a full turn inside, none outside. */
  function winds(ring: readonly Spot[], p: Spot | undefined): boolean {
    if (!p) return false
    const turn = ring.reduce((sum, a, i) => {
      const b = ring[(i + 1) % ring.length] ?? a
      const step = Math.atan2(b.y - p.y, b.x - p.x) - Math.atan2(a.y - p.y, a.x - p.x)
      return sum + Math.atan2(Math.sin(step), Math.cos(step))
    }, 0)
    return Math.abs(turn) > Math.PI
  }
  test('the same pieces lie the same way', () => {
    const lay = () => planTiles([square('a', 300, 500), square('b', 210, 340)], PAPERS.letter)
    expect(lay()).toEqual(lay())
  })
})

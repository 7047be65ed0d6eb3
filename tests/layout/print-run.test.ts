import { describe, expect, test } from 'vitest'
import type { GarmentId } from '../../src/draft/draft.ts'
import { standardFor } from '../../src/draft/garments.ts'
import { draft } from '../../src/draft/make.ts'
import { clothFigure } from '../../src/layout/cloth-figure.ts'
import { clothOf, USUAL_CLOTH, type ClothWishes } from '../../src/layout/cloth-wishes.ts'
import { cutParts } from '../../src/layout/cut-part.ts'
import type { Manner } from '../../src/layout/lay.ts'
import { lying } from '../../src/layout/lying.ts'
import { printRun, type RunOrder } from '../../src/layout/print-run.ts'
import { searchWidth } from '../../src/layout/search-widths.ts'
import { cuttingOf, USUAL_CUT } from '../../src/output/cutting.ts'
import { reach } from '../../src/output/mark.ts'
import type { Page } from '../../src/output/page.ts'
import { mm } from '../../src/units/length.ts'
import { body, MIDDLE } from '../bodies.ts'

/** Letters half as wide as they are high. */
const FACE = { width: (text: string, size: number): number => [...text].length * size * 0.5 }
const CM = { unit: 'cm', inchStep: 8 } as const

function made(garment: GarmentId, manner: Manner, more: Partial<ClothWishes> = {}) {
  const d = draft(garment, body({}, MIDDLE), standardFor(garment))
  const cutting = cuttingOf(d, { ...USUAL_CUT, stuff: 'cloth' })
  const cut = cutParts(d.pieces, cutting.allowances, cutting.hemDepth)
  if (!cut.ok) throw new Error(cut.reason)
  const cloth: ClothWishes = { ...USUAL_CLOTH, ...more, manner }
  const { best } = searchWidth(cut.parts, clothOf(cloth), manner, { seed: 1, tries: 20_000 })
  if (!best) throw new Error('no layout')
  const words = { paper: 'a4', ...cutting, units: CM, round: 2, garmentName: 'Invented' } as const
  const run = (what: RunOrder['what']) => {
    const others = [{ width: mm(1150), length: mm(1500) }]
    const order = { what, cutting, cloth, by: 'metre', layout: best, others } as const
    const made = printRun(d, words, order, FACE)
    if (!made.ok) throw new Error(made.reason)
    return made
  }
  return { parts: cut.parts, cloth, best, run }
}
const wordsOf = (page: Page | undefined): string =>
  (page?.layers ?? [])
    .flatMap((l) => l.marks.flatMap((m) => (m.kind === 'text' ? [m.text] : [])))
    .join(' ')

describe('a print run', () => {
  test('the first page lists the parts, and each begins on the page it says', () => {
    const { run } = made('blouse', 'lengthwise')
    const { pages, parts } = run('whole')
    expect(parts.map((p) => p.words.split(/[:,]/)[0])).toEqual([
      'This list',
      'Pieces at true scale',
      'Steps of the draft',
      'Cutting plan',
      'Sewing plan',
    ])
    // Every page belongs to one part, none is left out.
    expect(parts[0]?.from).toBe(1)
    for (const [i, p] of parts.entries()) expect(p.from).toBe((parts[i - 1]?.to ?? 0) + 1)
    expect(parts.at(-1)?.to).toBe(pages.length)
    const list = wordsOf(pages[0])
    for (const p of parts)
      expect(list).toContain(p.from === p.to ? `Page ${p.from}:` : `Pages ${p.from} to ${p.to}:`)
    expect(wordsOf(pages[parts[1]!.from - 1])).toContain('100 mm, every side')
    expect(wordsOf(pages[parts[3]!.from - 1])).toContain('Cutting plan')
    expect(wordsOf(pages[parts[4]!.from - 1])).toContain('Sewing plan')
  })

  test('the cutting plan names every piece, the amount and what else is bought', () => {
    const { run, parts } = made('sleeve', 'single', { shrinkAlong: 0.04 })
    const text = run('cuttingPlan').pages.map(wordsOf).join(' ')
    for (const p of parts) expect(text).toContain(p.words)
    expect(text).toMatch(/To buy: \d\.\d m/)
    expect(text).toContain('shrinkage')
    expect(text).toContain('Sewing thread')
    // By hand: 1500 / 0.96 + 50 + 100 = 1712.5 mm; an eighth of a yard is 114.3 mm, 15 of them 1714.5.
    expect(text).toContain('On other widths: 115.0 cm: 1.8 m or 1⅞ yd')
  })

  test('the sewing plan needs no layout and ends with the last press', () => {
    const { run } = made('blouse', 'lengthwise')
    const text = run('sewingPlan').pages.map(wordsOf).join(' ')
    expect(text).toMatch(/☐ 1\. Make the/)
    expect(text).toMatch(/Last press/)
    expect(text).toContain('keep it from flame')
  })

  test.each(['lengthwise', 'single', 'partly'] as const)(
    'the drawing of the cloth %s keeps within its room',
    (manner) => {
      const { parts, cloth, best } = made('sleeve', manner)
      const room = { width: 178, height: 200 }
      for (const s of lying(parts, clothOf(cloth), best)) {
        const figure = clothFigure(s, room, CM)
        expect(figure.width).toBeLessThanOrEqual(room.width + 1e-6)
        expect(figure.height).toBeLessThanOrEqual(room.height + 1e-6)
        const paths = figure.marks.filter((m) => m.kind === 'path').flatMap(reach)
        expect(Math.min(...paths.map((p) => p.x))).toBeGreaterThanOrEqual(-1e-6)
        expect(Math.max(...paths.map((p) => p.x))).toBeLessThanOrEqual(room.width + 1e-6)
        expect(Math.max(...paths.map((p) => p.y))).toBeLessThanOrEqual(room.height + 1e-6)
      }
    },
  )

  test('a drawing of the cloth is to scale: 1,400 wide drawn on 170 mm, 8.2 to one', () => {
    // By hand: 140 cm with both selvedges over 178 − 8 mm of paper.
    const { parts, cloth, best } = made('blouse', 'single', { width: mm(1400) })
    const [s] = lying(parts, clothOf(cloth), best)
    const figure = clothFigure(s!, { width: 178, height: 10_000 }, CM)
    expect(figure.width).toBeCloseTo(178, 6)
    expect(figure.height - 8).toBeCloseTo((best.length * 170) / 1400, 6)
  })
})

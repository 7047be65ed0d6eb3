import { beforeAll, describe, expect, test } from 'vitest'
import { standardChoices } from '../../src/draft/choices.ts'
import { draft } from '../../src/draft/make.ts'
import { pathLength } from '../../src/geometry/length.ts'
import { SAMPLE } from '../../src/output/line-key.ts'
import { draftPdf, type PdfWords } from '../../src/output/pdf.ts'
import { body } from '../bodies.ts'
import { FONT } from './font.ts'
import { readPdf, type Drawn, type ReadPage } from './read-pdf.ts'
import { onBoard } from './reassemble.ts'

const MM = 25.4 / 72
const KEY = ['seam line', 'cutting line', 'fold of the cloth', 'straight grain', 'dart, sewn']
const DRAFT = draft('blouse', body(), standardChoices())
const [BACK] = DRAFT.pieces
if (!BACK) throw new Error('no piece')
const WORDS: PdfWords = { paper: 'a4', units: { unit: 'cm', inchStep: 8 }, font: FONT }

async function made(words: Partial<PdfWords>) {
  const result = await draftPdf(DRAFT, { ...WORDS, ...words })
  if (!result.ok) throw new Error(result.reason)
  return { ...result, pages: readPdf(result.bytes).pages }
}
const longOf = (runs: Drawn['runs']): number =>
  runs.reduce(
    (sum, run) =>
      sum +
      run.slice(1).reduce((s, b, i) => {
        const a = run[i] ?? b
        return s + Math.hypot(a.x - b.x, a.y - b.y) * MM
      }, 0),
    0,
  )
const seamsOf = (page: ReadPage | undefined): number =>
  (page?.drawn ?? [])
    .filter((d) => !d.clip && Math.abs(d.lineWidth * MM - 0.6) < 1e-3)
    .reduce((sum, d) => sum + longOf(d.runs), 0)
/** Every sewn edge of a piece, by the draft's own lengths. */
const sewn = (piece: (typeof DRAFT.pieces)[number]): number =>
  piece.edges.filter((e) => e.role !== 'fold').reduce((sum, e) => sum + pathLength(e.path), 0)

describe('beside the steps', () => {
  let pages: readonly ReadPage[]
  beforeAll(async () => {
    pages = (await made({ drawings: ['quarter'] })).pages
  })
  const pageOf = (words: string): ReadPage | undefined =>
    pages.find((p) => p.texts.some((t) => t.text.startsWith(words)))

  test('a piece is drawn at a quarter, says so, and bears its letters', () => {
    const page = pageOf(`${BACK.words}. `)
    const said = page?.texts.map((t) => t.text) ?? []
    expect(said).toContain('Drawn at a quarter of full size. A square is 5 cm of the piece.')
    for (const letter of Object.keys(BACK.points)) expect(said).toContain(letter)
    // A curve read as chords is short by less than a thousandth of it; the key shows one piece more.
    expect((seamsOf(page) - SAMPLE) * 4).toBeCloseTo(sewn(BACK), 0)
  })
  test('it lies on squares of 5 cm, or 2 in, at that scale', async () => {
    const steps = (page: ReadPage | undefined): Set<number> => {
      const lines = (page?.drawn ?? []).filter((d) => Math.abs(d.lineWidth * MM - 0.2) < 1e-3)
      const xs = lines.flatMap((d) =>
        d.runs.flatMap(([a, b]) => (a && b && a.x === b.x ? [a.x * MM] : [])),
      )
      const sorted = [...xs].sort((a, b) => a - b)
      return new Set(sorted.slice(1).map((x, i) => Math.round((x - (sorted[i] ?? x)) * 1e3) / 1e3))
    }
    expect(steps(pageOf(`${BACK.words}. `))).toEqual(new Set([12.5]))
    const inch = await made({ drawings: ['quarter'], units: { unit: 'inch', inchStep: 8 } })
    const page = inch.pages.find((p) => p.texts.some((t) => t.text.startsWith(`${BACK.words}. `)))
    // 2 in at a quarter are 12.7 mm.
    expect(steps(page)).toEqual(new Set([12.7]))
  })
  test('its key tells the lines that occur on it, and no others', () => {
    const told = (piece: string): string[] =>
      (pageOf(`${piece}. `)?.texts ?? []).map((t) => t.text).filter((text) => KEY.includes(text))
    expect(told(BACK.words)).toEqual(
      expect.arrayContaining(['seam line', 'fold of the cloth', 'straight grain', 'dart, sewn']),
    )
    expect(told(BACK.words)).not.toContain('cutting line')
  })
  test('every piece has one, on paper', () => {
    const drawn = pages.flatMap((p) => p.texts.filter((t) => t.text.startsWith('Drawn at ')))
    expect(drawn).toHaveLength(DRAFT.pieces.length)
    for (const page of pages) {
      const [, , width = 0, height = 0] = page.mediaBox
      for (const { x, y } of page.drawn.flatMap((d) => d.runs.flat()))
        expect(x >= 0 && y >= 0 && x <= width && y <= height).toBe(true)
    }
  })
})

describe('pieces at a half', () => {
  test('lie on sheets of their own, half as long, and say so on each', async () => {
    const { pages, tiled } = await made({ drawings: ['half'] })
    const sheets = pages.slice(0, tiled)
    expect(tiled).toBeGreaterThan(1)
    for (const page of sheets)
      expect(page.texts.map((t) => t.text).join(' ')).toContain('half size')
    const chords = sheets.flatMap((page) => onBoard(page))
    const long = chords.reduce(
      (sum, [a, b]) => sum + (a && b ? Math.hypot(a.x - b.x, a.y - b.y) : 0),
      0,
    )
    const wanted = DRAFT.pieces.reduce((sum, piece) => sum + sewn(piece), 0)
    expect(long * 2).toBeCloseTo(wanted, 0)
  })
  test('have their key beside the steps, the cutting line in it', async () => {
    const { pages, tiled } = await made({ drawings: ['half'] })
    const said = pages.slice(tiled).flatMap((p) => p.texts.map((t) => t.text))
    expect(said).toContain('The lines of the half-size sheets:')
    expect(said).toEqual(expect.arrayContaining(['seam line', 'cutting line', 'straight grain']))
  })
  test('come after the full ones, which do not change', async () => {
    const [both, plain] = [await made({ drawings: ['full', 'half', 'quarter'] }), await made({})]
    expect(both.tiled).toBeGreaterThan(plain.tiled)
    const full = plain.pages.slice(0, plain.tiled)
    expect(both.pages.slice(0, plain.tiled)).toEqual(full)
  })
})

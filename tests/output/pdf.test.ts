import { beforeAll, describe, expect, test } from 'vitest'
import { parseConfirmed, preview } from '../../src/measurements/confirmed.ts'
import { standardChoices } from '../../src/draft/choices.ts'
import type { Draft } from '../../src/draft/draft.ts'
import { draft } from '../../src/draft/make.ts'
import { point } from '../../src/geometry/point.ts'
import { line } from '../../src/geometry/segment.ts'
import { edge, withEdge } from '../../src/draft/piece.ts'
import { withPiece } from '../../src/draft/draft.ts'
import { proved } from '../../src/draft/make.ts'
import { cuttingOf, USUAL_CUT } from '../../src/output/cutting.ts'
import { draftPdf, plainSheetsPdf, type PdfMade, type PdfWords } from '../../src/output/pdf.ts'
import { body, bookOf, MIDDLE, TALL } from '../bodies.ts'
import { FONT } from './font.ts'
import { readPdf, type ReadPage, type ReadPdf, type Spot } from './read-pdf.ts'
import { compared, onBoard, outlines } from './reassemble.ts'

/** A point is 1/72 in (ISO 32000-1, 8.3.2.3) and an inch 25.4 mm (ISO 80000-3). */
const MM = 25.4 / 72
const WORDS: PdfWords = {
  paper: 'a4',
  units: { unit: 'cm', inchStep: 8 },
  round: 2,
  font: FONT,
  date: '25 November 2026',
}
const CONFIRMED = draft('blouse', body(), standardChoices())
const GUESSED = draft('blouse', preview(bookOf(MIDDLE)), standardChoices())

type Made = Extract<PdfMade, { ok: true }>
async function made(d: Draft, words: Partial<PdfWords> = {}): Promise<Made> {
  const result = await draftPdf(d, { ...WORDS, ...words })
  if (!result.ok) throw new Error(result.reason)
  return result
}

let a4: Made
let read: ReadPdf
beforeAll(async () => {
  a4 = await made(CONFIRMED)
  read = readPdf(a4.bytes)
})

const said = (page: ReadPage | undefined): string[] => page?.texts.map((t) => t.text) ?? []
const tilePages = (pdf: ReadPdf, count: number): readonly ReadPage[] =>
  pdf.pages.slice(1, 1 + count)

describe('true scale', () => {
  test('page one holds a square of 100 mm and one of 4 in', () => {
    const squares = (read.pages[0]?.drawn ?? []).flatMap(({ rectangle, stroked }) =>
      rectangle && stroked && Math.abs(rectangle[2] - rectangle[3]) < 1e-3
        ? [rectangle[2] * MM]
        : [],
    )
    // Asked for within 0.1 mm; held to 0.001.
    expect(squares.some((side) => Math.abs(side - 100) < 0.001)).toBe(true)
    expect(squares.some((side) => Math.abs(side - 4 * 25.4) < 0.001)).toBe(true)
    expect(said(read.pages[0]).join(' ')).toContain('measure both before you cut')
  })
  // ISO 216: A4 is 210 × 297 mm. ANSI/ASME Y14.1: Letter is 8.5 × 11 in, 612 × 792 points.
  test('every page is exactly the paper, upright or across', async () => {
    const sides = (page: ReadPage): number[] => page.mediaBox.slice(2, 4).sort((a, b) => a - b)
    for (const page of read.pages) {
      expect((sides(page)[0] ?? 0) * MM).toBeCloseTo(210, 9)
      expect((sides(page)[1] ?? 0) * MM).toBeCloseTo(297, 9)
    }
    const letter = readPdf((await made(CONFIRMED, { paper: 'letter' })).bytes)
    for (const page of letter.pages) {
      expect(sides(page)[0]).toBeCloseTo(612, 9)
      expect(sides(page)[1]).toBeCloseTo(792, 9)
    }
  })
  test('every tile carries bars of 100 mm and 4 in and says so', () => {
    for (const page of tilePages(read, a4.plan.tiles.length)) {
      // An inch is 25.4 mm (ISO 80000-3).
      for (const [long, words] of [
        [100, '100 mm'],
        [4 * 25.4, '4 in'],
      ] as const) {
        const bars = page.drawn.filter(
          (d) =>
            !d.clip &&
            d.runs.some(
              ([a, b]) => a && b && a.y === b.y && Math.abs((b.x - a.x) * MM - long) < 0.001,
            ),
        )
        expect(bars).toHaveLength(1)
        expect(said(page)).toContain(words)
      }
    }
  })
  // ISO 32000-1, table 150.
  test('a reader is asked not to scale', () => {
    expect(read.catalog).toMatch(/\/PrintScaling \/None/)
  })
})

describe('sheets glued together', () => {
  test.each([
    ['a4', MIDDLE],
    ['letter', TALL],
  ] as const)('on %s they give back the outline of every piece', async (paper, numbers) => {
    const d = draft('blouse', body({}, numbers), standardChoices())
    const pdf = await made(d, { paper })
    const chords = tilePages(readPdf(pdf.bytes), pdf.plan.tiles.length).flatMap((page) =>
      onBoard(page),
    )
    const { missing, added, longer } = compared(chords, outlines(d, pdf.plan))
    // Asked for within 0.1 mm.
    expect(missing).toBeLessThan(0.02)
    expect(added).toBeLessThan(0.02)
    expect(longer).toBeLessThan(0.1)
  })

  test('both sheets of a joint carry its number', () => {
    const pages = new Map(
      tilePages(read, a4.plan.tiles.length).map((page, i) => [a4.plan.tiles[i]?.name, said(page)]),
    )
    expect(a4.plan.joints.length).toBeGreaterThan(10)
    for (const { number, first, second } of a4.plan.joints)
      for (const name of [first, second]) expect(pages.get(name)).toContain(`${number}`)
  })
})

describe('what the sheets say', () => {
  test('every tile names itself, the garment and the round', () => {
    tilePages(read, a4.plan.tiles.length).forEach((page, i) => {
      const text = said(page).join(' ')
      expect(text).toContain(`${a4.plan.tiles[i]?.name} · Draped-sleeve blouse · round 2`)
      expect(text).toMatch(/(Back|Front), half: grain (up|across) the sheet/)
    })
  })
  test('page one names the round and the standing, and lists all sheets and cautions', () => {
    const text = said(read.pages[0]).join(' ')
    for (const words of ['Round 2', 'confirmed by tape', 'children’s nightwear', 'local rules'])
      expect(text).toContain(words)
    for (const tile of a4.plan.tiles) expect(said(read.pages[0])).toContain(tile.name)
  })
  // A muslin may be cut from taped numbers whatever the proof says of cloth, so page one must not
  // say of the same sheets that they are confirmed and not for cutting.
  test('page one says in one sentence what may be cut, and never forbids what it is for', async () => {
    // Without an opening the invented waist does not pass over the shoulders: a stop for cloth.
    const stopped = draft('blouse', body(), { ...standardChoices(), opening: 'none' })
    const free = { ...CONFIRMED, findings: [] }
    const head = async (d: Draft, more: Partial<PdfWords>): Promise<string> =>
      said(readPdf((await made(d, more)).bytes).pages[0]).join(' ')
    const waits = 'confirmed by tape, for a muslin and not yet for cloth: see “Before you cut”'
    for (const [d, more, words] of [
      [stopped, {}, waits],
      [stopped, { stuff: 'muslin' }, waits],
      [free, {}, 'confirmed by tape'],
      [free, { stuff: 'muslin' }, 'confirmed by tape, for the muslin'],
      [free, { stuff: 'cloth' }, 'confirmed by tape, for the cloth'],
    ] as const) {
      const text = await head(d, more)
      expect(text).toContain(words)
      expect(text.toLowerCase()).not.toContain('not for cutting')
    }
    expect(await head(stopped, {})).toContain('Not for cloth yet. ')
    const cloth = await draftPdf(stopped, { ...WORDS, stuff: 'cloth' })
    expect(cloth.ok).toBe(false)
    if (!cloth.ok) expect(cloth.reason).toMatch(/^For a muslin, not yet for cloth\. .*101\.0 cm/)
  })
  test('finishes are named on page one, and told with the pencil work after the steps', async () => {
    const wishes = { ...USUAL_CUT, stuff: 'cloth' } as const
    const free = { ...CONFIRMED, findings: [] }
    const changes = [{ head: 'Gaping: a wedge.', lines: ['Front. Fold it out and tape.'] }]
    const pdf = readPdf((await made(free, { ...cuttingOf(free, wishes), changes })).bytes)
    const one = said(pdf.pages[0]).join(' ')
    expect(one).toContain('overarm seam: French seam, 1.6 cm')
    expect(one).toContain('hem: double-fold hem, 7.6 cm, turned twice 3.8 cm deep')
    const text = pdf.pages.slice(1).flatMap(said).join(' ')
    for (const words of [
      'Gaping: a wedge. Front. Fold it out and tape.',
      'Hem: mark 7.6 cm outside it',
      'Fold the paper up as the hem is turned, twice, and cut the side through all layers',
      'Overarm seam, French seam. Wrong sides together, sew 1.0 cm from the edge.',
    ])
      expect(text).toContain(words)
    // The paper says what it is for, so that it is not laid on the other.
    expect(pdf.pages.flatMap(said)).toContain('Round 2, cloth')
  })
  test('the steps follow the tiles, whole', () => {
    const text = read.pages
      .slice(1 + a4.plan.tiles.length)
      .flatMap(said)
      .join(' ')
    expect(text).toContain('Compass in K')
    expect(text).toContain('nape to waist, 40.0 cm')
    expect(read.pages).toHaveLength(a4.sheets)
  })
  test('words with accents come back as they were written', async () => {
    const pdf = readPdf((await made(CONFIRMED, { garmentName: 'Žlutá halenka č. ½' })).bytes)
    expect(said(pdf.pages[0])).toContain('Žlutá halenka č. ½')
  })
  test('no text begins off the paper, nothing unclipped is drawn off it', () => {
    for (const page of read.pages) {
      const [, , width = 0, height = 0] = page.mediaBox
      const on = ({ x, y }: Spot): boolean => x >= 0 && y >= 0 && x <= width && y <= height
      for (const d of page.drawn) if (!d.clip) expect(d.runs.flat().every(on)).toBe(true)
    }
  })
})

describe('numbers that no tape confirmed', () => {
  test('make no sheets for cutting', async () => {
    const result = await draftPdf(GUESSED, { ...WORDS, kind: 'cutting' })
    expect(result.ok).toBe(false)
    if (!result.ok) expect(result.reason).toContain('not confirmed by tape')
  })
  test('make sheets that say so across every page', async () => {
    const pdf = readPdf((await made(GUESSED)).bytes)
    for (const page of pdf.pages)
      expect(said(page)).toContain('not confirmed by tape, not for cutting')
    expect(said(read.pages[1]).join(' ')).not.toContain('not for cutting')
  })
})

test('pieces that cannot be sewn together make no sheets for cutting', async () => {
  const [front] = CONFIRMED.pieces.filter((p) => p.id === 'front')
  if (!front) throw new Error('no front')
  const [start] = edge(front, 'overarm').path
  if (start?.kind !== 'line') throw new Error('the overarm is no line')
  const longer = [line(start.from, point(start.to.x + 10, start.to.y))]
  const broken = proved(withPiece(CONFIRMED, withEdge(front, 'overarm', longer)))
  const result = await draftPdf(broken, WORDS)
  expect(result.ok).toBe(false)
  if (!result.ok) expect(result.reason).toContain('Overarm seams of back and front differ')
})

describe('the bytes', () => {
  test('are the same for the same draft', async () => {
    expect(Buffer.from((await made(CONFIRMED)).bytes).equals(Buffer.from(a4.bytes))).toBe(true)
  })
  test('are the same after the body has been through a backup', async () => {
    const stored = parseConfirmed(JSON.parse(JSON.stringify(CONFIRMED.body)))
    if (!stored.ok) throw new Error(stored.reason)
    const again = draft('blouse', stored.body, standardChoices())
    expect(Buffer.from((await made(again)).bytes).equals(Buffer.from(a4.bytes))).toBe(true)
  })
  test('change when a number changes', async () => {
    const other = draft('blouse', body({ napeToWaist: 401 }), standardChoices())
    expect(Buffer.from((await made(other)).bytes).equals(Buffer.from(a4.bytes))).toBe(false)
  })
})

describe('a sheet of plain marks', () => {
  const sheet = {
    rects: [
      { x: 55, y: 24.25, width: 100, height: 100 },
      { x: 65, y: 34.25, width: 10, height: 10, fill: 'white' as const },
    ],
    lines: [{ x1: 10, y1: 148.5, x2: 200, y2: 148.5 }],
    texts: [{ x: 20, y: 20, text: 'measure 100 mm', size: 4 }],
  }
  test('is drawn at true size and place', async () => {
    const page = readPdf(await plainSheetsPdf([sheet], 'a4', FONT, 'Sheet of marks')).pages[0]
    const [square] = page?.drawn ?? []
    const [x = 0, y = 0, width = 0, height = 0] = square?.rectangle?.map((v) => v * MM) ?? []
    expect([x, 297 - y - height, width, height].map((v) => Math.round(v * 1e3) / 1e3)).toEqual([
      55, 24.25, 100, 100,
    ])
    expect(square?.stroked).toBe(false)
    expect(said(page)).toEqual(['measure 100 mm'])
  })
  test('that runs off the paper is our own mistake', async () => {
    const off = { ...sheet, rects: [{ x: 150, y: 10, width: 100, height: 100 }] }
    await expect(plainSheetsPdf([off], 'a4', FONT, 'Sheet of marks')).rejects.toThrow('150')
  })
})

/** The printed record, read back with a reader of our own that shares nothing with the writer (ISO 32000-1). */
import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { close } from '../../src/rounds/redraft.ts'
import {
  branchFrom,
  firstRound,
  nextRound,
  withCorrection,
  withSeen,
  withWorn,
} from '../../src/rounds/round.ts'
import { fitSheetPages, fitSheetPdf, type FitSheetOrder } from '../../src/ui/rounds/fit-sheet.ts'
import { roundLines } from '../../src/ui/rounds/fit-sheet-lines.ts'
import { mm } from '../../src/units/length.ts'
import { body } from '../bodies.ts'
import { FONT } from '../output/font.ts'
import { readPdf } from '../output/read-pdf.ts'

const ON = '2026-11-25'
const pinned = { how: 'wholeFold', read: mm(12), share: 1 } as const
const because = { complaint: 'B8', cause: 'bust shaping', pinned, watch: mm(0), round: 1 } as const
const first = withWorn(
  withSeen(close(firstRound({ id: 'r1', garmentId: 'g' }, 'blouse', body(), ON), ON), {
    complaint: 'B8',
    answer: 'bust shaping',
    pinned,
    on: ON,
  }),
  'cloths',
  { text: 'calico, invented', on: ON },
)
const second = withCorrection(nextRound(first, 'r2', ON), {
  v: 1,
  id: 'c1',
  kind: 'close-wedge',
  piece: 'front',
  edge: 'sleeveEdge',
  along: 0.5,
  width: mm(12),
  because,
})
const order: FitSheetOrder = {
  garmentName: 'Invented blouse',
  rounds: [first, second],
  all: [first, second],
  history: true,
  paper: 'a4',
  units: { unit: 'cm', inchStep: 8 },
  photos: new Map(),
  font: FONT,
}
const said = async (of: FitSheetOrder): Promise<string> =>
  readPdf(await fitSheetPdf(of))
    .pages.flatMap(({ texts }) => texts.map(({ text }) => text))
    .join(' ')

test('the history says each round, what was seen, what was decided, and the course before them', async () => {
  const words = await said(order)
  for (const part of [
    'Round 1: nothing corrected; Gaping armhole open.',
    'Round 2: bust −1.2 cm; no complaint open.',
    'Sewn of calico, invented.',
    'Gaping armhole, 1.2 cm; bust fuller than the darts hold.',
    'Invented blouse · round 2 · 1 of',
  ])
    expect(words).toContain(part)
})

test('a round that was set aside is not said to come on paper yet, alone or in the history', async () => {
  const branch = branchFrom(first, 3, 'r3', ON)
  const all = [first, second, branch]
  expect(await said({ ...order, rounds: all, all })).toMatch(
    /Round 2 Begun 25 November 2026, set aside, never on paper.*Round 3 Begun 25 November 2026, not on paper yet/,
  )
  expect(await said({ ...order, rounds: [second], all, history: false })).toContain(
    'set aside, never on paper',
  )
  expect(await said(order)).not.toContain('set aside')
})

test('one round alone has no course; photos go in only when they are given', async () => {
  const one = { ...order, rounds: [first], history: false }
  expect(await said(one)).not.toContain('The course')
  const bare = Buffer.from(await fitSheetPdf(one)).toString('latin1')
  expect(bare).not.toContain('DCTDecode')
  const jpeg = readFileSync(new URL('../photos/figure-front.jpg', import.meta.url))
  const photo = { jpeg, width: 1080, height: 1440, words: 'Round 1, front' }
  const full = Buffer.from(await fitSheetPdf({ ...one, photos: new Map([['r1', [photo]]]) }))
  // A baseline JPEG is carried as it is (ISO 32000-1, 7.4.8).
  expect(full.toString('latin1')).toContain('DCTDecode')
  expect(full.includes(jpeg.subarray(1000, 3000))).toBe(true)
})

test('back and front are drawn small under their names', () => {
  const lines = roundLines(first, order.all, order.units)
  expect(lines.flatMap((l) => l.figure ?? [])).toEqual(['back', 'front'])
  const width = (text: string, size: number) => text.length * size * 0.5
  const pages = fitSheetPages({ ...order, rounds: [first], history: false }, { width })
  const drawn = pages.map((p) => p.layers.flatMap((l) => l.marks).filter((m) => m.kind === 'path'))
  // Two outlines of four edges and more; without them the sheet is words alone.
  expect(drawn.flat().length).toBeGreaterThan(8)
})

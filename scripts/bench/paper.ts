/**
 * Paper: how long a file of 60 pages of A4 takes beside the same pages written by the PDF library alone, how
 * large the file is, how true the squares and lines of 500 mm come out of another reader
 * (poppler, 600 dpi), whether the sheets laid together give the outline back, how far the DXF and
 * the allowances stray, and how many sheets the invented bodies take. The last line is RESULT and one JSON object.
 */
import { readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { pdfOperators, sixtyPages } from './paper/sixty-pages.ts'
import { draftPdf, type PdfWords } from '../../src/output/pdf.ts'
import { pieceDrawing } from '../../src/output/piece-drawing.ts'
import { sheetPlan } from '../../src/output/sheet-plan.ts'
import { readPdf } from '../../tests/output/read-pdf.ts'
import { compared, onBoard, outlines } from '../../tests/output/reassemble.ts'
import { bare } from './paper/bare.ts'
import { dxfFigures } from './paper/read-dxf.ts'
import { longLines, LONG, squaresOf } from './paper/measured.ts'
import { popplerVersion } from './paper/raster.ts'
import { sheetCounts } from './paper/sheet-counts.ts'

const WARM = 3
const ROUNDS = 11
const FONT = new Uint8Array(
  readFileSync(createRequire(import.meta.url).resolve('dejavu-fonts-ttf/ttf/DejaVuSans.ttf')),
)
const WORDS: PdfWords = {
  paper: 'a4',
  units: { unit: 'cm', inchStep: 8 },
  round: 1,
  font: FONT,
  date: '25 November 2026',
}

const middle = (times: readonly number[]): number =>
  [...times].sort((a, b) => a - b)[Math.floor(times.length / 2)] ?? NaN
const rounded = (value: number, digits: number): number => Number(value.toFixed(digits))
async function timed(of: () => Promise<unknown>): Promise<number> {
  const began = performance.now()
  await of()
  return performance.now() - began
}

const draft = await sixtyPages(WORDS)
const made = await draftPdf(draft, WORDS)
if (!made.ok) throw new Error(made.reason)
const plain = await pdfOperators(draft, WORDS)
// The sheets are laid out for the map on the screen before she saves; the file takes that plan.
const plan = sheetPlan(draft, WORDS)
const [ours, alone, layings]: [number[], number[], number[]] = [[], [], []]
for (let i = 0; i < WARM + ROUNDS; i++)
  layings.push(await timed(() => Promise.resolve(sheetPlan(draft, WORDS))))
for (let i = 0; i < WARM + ROUNDS; i++) {
  ours.push(await timed(() => draftPdf(draft, WORDS, plan)))
  alone.push(await timed(() => bare(plain.pages, plain.contents, FONT)))
}
// The first rounds are slow on either side, while the program is still being compiled.
for (const times of [layings, ours, alone]) times.splice(0, WARM)
const bareBytes = (await bare(plain.pages, plain.contents, FONT)).length
const [ms, bareMs] = [rounded(middle(ours), 0), rounded(middle(alone), 0)]
const planMs = rounded(middle(layings), 0)
const kB = (bytes: number): number => rounded(bytes / 1024, 0)
console.log(
  `${made.sheets} pages of A4: ${ms} ms, ${kB(made.bytes.length)} kB; the library alone ${bareMs} ms, ${kB(bareBytes)} kB: ${rounded(ms / bareMs, 2)} times. Laying the pieces out took ${planMs} ms before.`,
)

const tiles = readPdf(made.bytes).pages.slice(1, 1 + made.plan.tiles.length)
const outline = compared(
  tiles.flatMap((page) => onBoard(page)),
  outlines(draft, made.plan),
)
console.log(
  `sheets laid together: the outline lacks ${outline.missing.toFixed(4)} mm and has ${outline.added.toFixed(4)} mm too much at most`,
)

const poppler = popplerVersion()
const [piece] = draft.pieces
if (!piece) throw new Error('bench: no piece')
const printed = poppler
  ? {
      poppler,
      squares: squaresOf(made.bytes),
      line500: await longLines(pieceDrawing(piece, {}), FONT),
    }
  : undefined
const worst = printed && {
  squares: Math.max(
    ...[printed.squares.mm100.across, printed.squares.mm100.down].map((s) => Math.abs(s - 100)),
    ...[printed.squares.inch4.across, printed.squares.inch4.down].map((s) =>
      Math.abs(s - 4 * 25.4),
    ),
  ),
  line500: Math.max(
    ...[printed.line500.across, printed.line500.down].map((long) => Math.abs(long - LONG)),
  ),
}
console.log(
  worst
    ? `by poppler ${poppler ?? ''}: squares within ${worst.squares.toFixed(3)} mm, lines of 500 mm over sheets within ${worst.line500.toFixed(3)} mm`
    : 'poppler is not installed, so squares and lines are not measured here.',
)

const sheets = sheetCounts()
for (const { body, paper, together, apart } of sheets)
  console.log(`${body} on ${paper}: ${together} sheets, each piece by itself ${apart}`)

const { dxf, allowance } = dxfFigures()
console.log(
  `DXF of ${dxf.pieces} pieces read back by dxf-parser: points within ${dxf.worstPointMm.toFixed(5)} mm of their curves, curves within ${dxf.worstCurveMm.toFixed(5)} mm of the chords`,
)
console.log(
  `allowance on ${allowance.edges} edges beside an offset of its own: ${allowance.middleMm.toFixed(5)} mm off mid-edge, ${allowance.shortMm.toFixed(5)} mm too near anywhere`,
)

console.log(
  `RESULT ${JSON.stringify({
    pages: made.sheets,
    tiles: made.plan.tiles.length,
    ms,
    bareMs,
    times: rounded(ms / bareMs, 2),
    planMs,
    timesWithPlan: rounded((ms + planMs) / bareMs, 2),
    bytes: made.bytes.length,
    bareBytes,
    outlineMm: { missing: rounded(outline.missing, 5), added: rounded(outline.added, 5) },
    poppler: poppler ?? null,
    printed: printed ? { squares: printed.squares, line500: printed.line500 } : null,
    worstMm: worst ?? null,
    dxf: {
      ...dxf,
      worstPointMm: rounded(dxf.worstPointMm, 5),
      worstCurveMm: rounded(dxf.worstCurveMm, 5),
    },
    allowance: {
      ...allowance,
      middleMm: rounded(allowance.middleMm, 5),
      shortMm: rounded(allowance.shortMm, 5),
    },
    sheets,
  })}`,
)

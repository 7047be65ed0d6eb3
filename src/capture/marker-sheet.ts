/**
 * The sheet she prints for the photos: pure geometry, millimetres from the page's top left corner,
 * y down, for any writer that draws rectangles, lines and words. The page is folded back across
 * its middle; the upper half carries the black square and hangs in the photo, the lower half lies
 * behind it and carries the bars that check the print.
 * Sources: the square is marker 7 of ARUCO_MIP_36h12 (card-marker.ts). A4: ISO 216, 210 x 297 mm.
 * Letter: ANSI/ASME Y14.1, 8.5 x 11 in.
 */
import { inches, mm } from '../units/length.ts'
import { BLACK_SQUARE } from './card.ts'
import { markerCells, MARKER_CELLS } from './card-marker.ts'
import { MARKER_SHEET_WORDS } from './marker-sheet.words.ts'
import { cellsOf, SMALL_SQUARE, smallMarkers } from './marker-small.ts'

export interface SheetRect {
  readonly x: number
  readonly y: number
  readonly width: number
  readonly height: number
  /** White lies over the black drawn before it, so that no hairline shows between cells. */
  readonly fill: 'black' | 'white'
}
export interface SheetLine {
  readonly x1: number
  readonly y1: number
  readonly x2: number
  readonly y2: number
}
export interface SheetText {
  readonly x: number
  /** The line the letters stand on. */
  readonly y: number
  readonly text: string
  /** Height of the type, mm. */
  readonly size: number
}
export interface MarkerSheet {
  readonly widthMm: number
  readonly heightMm: number
  /** In the order they are drawn. */
  readonly rects: readonly SheetRect[]
  readonly lines: readonly SheetLine[]
  readonly texts: readonly SheetText[]
}
export type SheetPaper = 'a4' | 'letter'

const PAPER = {
  a4: { width: mm(210), height: mm(297) },
  letter: { width: inches(8.5), height: inches(11) },
} as const

/** Left edge of bars and words; home printers leave up to 10 mm white (common practice, no source). */
const LEFT = 15
/** Lengths she can lay a tape to, as in tape-measure numbers. */
const BAR_MM = 150
const CHECK_MM = 100
const CHECK_INCHES = 4
const [WORDS, SMALL] = [4.2, 3.4]

/** The whole page, ready to draw. */
export function markerSheet(paper: SheetPaper): MarkerSheet {
  const { width, height } = PAPER[paper]
  const fold = height / 2
  const bar = barWithTicks(LEFT, fold + 34)
  const side = BLACK_SQUARE.widthMm
  const top = (fold - side) / 2
  const [centimetres, inch] = [fold + 62, fold + 80]
  return {
    widthMm: width,
    heightMm: height,
    rects: [
      ...square((width - side) / 2, top, side, markerCells()),
      ...smallMarkers(width, top, side).flatMap(({ id, x, y }) =>
        square(x, y, SMALL_SQUARE, cellsOf(id)),
      ),
      ...bar.rects,
    ],
    lines: [
      ...dashes(fold, width),
      ...bar.lines,
      ...between(LEFT, centimetres, CHECK_MM),
      ...between(LEFT, inch, inches(CHECK_INCHES)),
    ],
    texts: [
      { x: 6, y: fold / 2, text: MARKER_SHEET_WORDS.thisHalf[0], size: SMALL },
      { x: 6, y: fold / 2 + 5, text: MARKER_SHEET_WORDS.thisHalf[1], size: SMALL },
      { x: LEFT, y: fold + 10, text: MARKER_SHEET_WORDS.fold, size: SMALL },
      { x: LEFT, y: fold + 22, text: MARKER_SHEET_WORDS.print, size: WORDS },
      {
        x: LEFT,
        y: fold + 29,
        text: MARKER_SHEET_WORDS.check(BAR_MM),
        size: WORDS,
      },
      ...bar.texts,
      { x: LEFT, y: centimetres - 4, text: `${CHECK_MM / 10} cm`, size: WORDS },
      { x: LEFT, y: inch - 4, text: `${CHECK_INCHES} in`, size: WORDS },
      ...MARKER_SHEET_WORDS.advice.map((text, i) => ({
        x: LEFT,
        y: fold + 96 + i * 6.5,
        text,
        size: WORDS,
      })),
    ],
  }
}

/** A black square with the white cells of its code. */
function square(
  x: number,
  y: number,
  side: number,
  cells: readonly (readonly boolean[])[],
): SheetRect[] {
  const cell = side / MARKER_CELLS
  const white = cells.flatMap((row, r) =>
    row.flatMap((isWhite, c): SheetRect[] => {
      const [left, top] = [x + (c + 1) * cell, y + (r + 1) * cell]
      return isWhite ? [{ x: left, y: top, width: cell, height: cell, fill: 'white' }] : []
    }),
  )
  return [{ x, y, width: side, height: side, fill: 'black' }, ...white]
}

/** A bar of centimetres, black and white in turn, with its ticks and numbers below. */
function barWithTicks(
  x: number,
  y: number,
): { rects: SheetRect[]; lines: SheetLine[]; texts: SheetText[] } {
  const [high, long, short] = [4, 4, 2]
  const steps = Array.from({ length: BAR_MM / 10 }, (_, i) => x + i * 10)
  const ticks = Array.from({ length: BAR_MM / 5 + 1 }, (_, i) => i * 5)
  return {
    rects: steps.flatMap((at, i): SheetRect[] =>
      i % 2 === 0 ? [{ x: at, y, width: 10, height: high, fill: 'black' }] : [],
    ),
    lines: [
      { x1: x, y1: y, x2: x + BAR_MM, y2: y },
      { x1: x, y1: y + high, x2: x + BAR_MM, y2: y + high },
      ...ticks.map((t) => ({
        x1: x + t,
        y1: y,
        x2: x + t,
        y2: y + high + (t % 10 === 0 ? long : short),
      })),
    ],
    texts: [0, 50, 100, 150].map((t) => ({
      x: x + t - (t === 0 ? 1 : 2.5),
      y: y + high + long + 4,
      text: `${t / 10}`,
      size: SMALL,
    })),
  }
}

/** A line of known length with a stop at each end. */
function between(x: number, y: number, length: number): SheetLine[] {
  const stop = 3
  return [
    { x1: x, y1: y, x2: x + length, y2: y },
    { x1: x, y1: y - stop, x2: x, y2: y + stop },
    { x1: x + length, y1: y - stop, x2: x + length, y2: y + stop },
  ]
}

/** The fold, across the page. */
function dashes(y: number, width: number): SheetLine[] {
  const [dash, step] = [4, 7]
  return Array.from({ length: Math.floor((width - 20) / step) }, (_, i) => ({
    x1: 10 + i * step,
    y1: y,
    x2: 10 + i * step + dash,
    y2: y,
  }))
}

/** What stands on the sheets: page one, the sheets themselves, the pieces, the pages of steps. */
import type { EdgeName, Side } from '../draft/piece.ts'
import { EDGE_WORDS } from '../draft/piece.words.ts'
import { NOT_CONFIRMED } from './standing.words.ts'

export const COVER_WORDS = {
  round: (round: number) => `Round ${round}`,
  twoSquares: 'Two squares: measure both before you cut.',
  side100: '100 mm, every side',
  side4: '4 in, every side',
  how: [
    'Print at 100 %, never fitted to the page.',
    'Each sheet: cut along its left and its upper thin line, lay it on the lines of the sheets before, match the crosses and the numbers, glue.',
    'Then cut the pieces out on the long-dashed line. Unbroken lines are sewn.',
    'A side that is off by a pencil line or more: these sheets are not true. From both lengths a file can be made that comes true from this printer.',
  ],
  file: 'This file',
  pieces: 'Pieces',
  allowances: 'Allowances beyond the seam line',
  before: 'Before you cut',
  care: 'Take care',
  rest: 'The rest stands with the steps.',
  piece: (name: string, cutting: string) => `${name}. ${cutting}.`,
  map: (sheets: number, paper: string) =>
    `${sheets} ${sheets === 1 ? 'sheet' : 'sheets'} of ${paper}, as they lie together`,
}

export const PAPER_WORDS = {
  roll: (width: string) => `a roll of ${width}`,
  across: (paper: string) => `${paper} lying across`,
  noNumber: 'no number',
  noRoll: (said: string, least: string, most: string) =>
    `The roll would be ${said} wide; rolls go from ${least} to ${most}. Ask the shop and type the width again.`,
}

/** In the strip under a sheet. */
export const TILE_WORDS = {
  round: (round: number) => `round ${round}`,
  place: (row: string, column: number, columns: number) =>
    `row ${row}, column ${column} of ${columns}`,
  half: 'half size, not for the garment',
  lies: (piece: string, { grainUp, fold }: { readonly grainUp: boolean; readonly fold: boolean }) =>
    `${piece}: ${grainUp ? 'grain up the sheet' : 'grain across the sheet'}${fold ? ', on the fold' : ''}`,
}

/** On a piece itself. */
export const MARK_WORDS = {
  grain: 'grain',
  onFold: 'on the fold',
  plumb: 'plumb line',
  /** A lettered point stays a letter. */
  point: (name: string) => name,
  edge: (edge: EdgeName, side: Side | undefined, cutHere: boolean) =>
    `${EDGE_WORDS[edge]}${side ? `, ${side}` : ''}${cutHere ? ', cut on this line' : ''}`,
  round: (round: number, stuff: 'muslin' | 'cloth' | undefined) =>
    stuff === undefined ? `Round ${round}` : `Round ${round}, ${stuff}`,
  svgTitle: (piece: string, round: number | undefined, preview: boolean) =>
    [
      piece,
      ...(round === undefined ? [] : [`round ${round}`]),
      ...(preview ? [NOT_CONFIRMED] : []),
    ].join(', '),
  dxfTitle: (garment: string | undefined, round: number | undefined) =>
    [
      ...(garment ? [garment] : []),
      ...(round === undefined ? [] : [`round ${round}`]),
      'units mm',
    ].join(', '),
}

export const STEPS_WORDS = {
  page: (foot: string, page: number, pages: number) => `${foot} · ${page} of ${pages}`,
  round: (round: number) => `Round ${round}.`,
  invented: 'Invented numbers: nobody was measured.',
  preview: `These numbers are ${NOT_CONFIRMED}. Do not cut from them.`,
  unit: { cm: 'All lengths in centimetres.', inch: 'All lengths in inches.' },
  numbers: 'Numbers',
  choices: 'Choices',
  beyond: 'Beyond the seam line',
  finished: 'How the edges are finished',
  fromCamera: (measured: string) => `${measured}, from the camera, tape it`,
  severity: {
    stop: 'Not for cloth yet',
    muslin: 'A muslin first',
    note: 'Good to know',
  },
  found: 'What the proof found',
}

/** Under a small drawing. */
export const SMALL_DRAWING = {
  scale: (small: number, square: string) =>
    `Drawn at ${PARTS[small] ?? `1 to ${small}`} of full size. A square is ${square} of the piece.`,
}
const PARTS: Readonly<Record<number, string>> = {
  4: 'a quarter',
  5: 'a fifth',
  8: 'an eighth',
  10: 'a tenth',
  16: 'a sixteenth',
}

/** Squares, crosses and brackets explain themselves or bear words of their own. */
export const LINE_WORDS = {
  seam: 'seam line',
  cutting: 'cutting line',
  fold: 'fold of the cloth',
  grain: 'straight grain',
  dart: 'dart, sewn',
  dartMiddle: 'middle of a dart',
  inner: 'marked inside',
  level: 'level of the body',
  plumb: 'plumb line',
  notch: 'notch, end of a mark',
  clip: 'snip',
  stayStitch: 'stay stitches',
}
export const HALF_SIZE_LINES: string = 'The lines of the half-size sheets:'

export const FILE_WORDS = {
  language: 'en',
  layers: {
    cutting: 'Cutting lines',
    seam: 'Seam lines',
    inner: 'Darts and levels',
    words: 'Words and grain',
    furniture: 'Sheet names, trim lines and bars',
  },
}

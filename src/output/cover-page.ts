/**
 * Page one: what this is, which sheets there are and how they lie, a 100 mm and a 4 in square to
 * measure before anything is cut, and the cautions. The squares stand one under the other; the
 * inside of them is used, their lines are kept free. On a sheet from a wide printer the same
 * marks stand as a block on the first sheet itself.
 */
import type { UnitChoice } from '../units/format.ts'
import { boxWidth, type Box } from '../geometry/box.ts'
import { point } from '../geometry/point.ts'
import { CAUTIONS } from './cautions.words.ts'
import { mapMarks } from './cover-map.ts'
import { textMark, type Mark } from './mark.ts'
import type { Page } from './page.ts'
import { PRINT_MARGIN, type PaperSize } from './paper.ts'
import { COVER_WORDS } from './sheet.words.ts'
import { SQUARE_INCH, SQUARE_MM } from './squares.ts'
import type { TilePlan } from './tiles.ts'
import { fitted, wrapped, type Face } from './wrap.ts'

export interface CoverWords {
  readonly garmentName: string
  readonly round?: number
  readonly standing: string
  readonly date?: string
  readonly units: UnitChoice
  readonly pieces: readonly string[]
  /** Allowances in words, one line an edge. */
  readonly allowances: readonly string[]
  /** Findings she must know before cutting. */
  readonly findings: readonly string[]
  /** Of a file corrected for one printer: by how much. */
  readonly corrected?: string
}

const TYPE = { title: 8, head: 4.4, check: 4, text: 3.4 } as const
const LEAD = 1.45
const GAP = 8
/** From the top of page one to the first square. */
const HEAD = 24
/** The block on a sheet from a wide printer; the column beside the squares may end early there. */
export const COVER_BLOCK = {
  width: SQUARE_INCH + GAP + 80,
  height: HEAD + SQUARE_MM + GAP + SQUARE_INCH + 4,
} as const

/** A sheet of its own, upright. */
export function coverPage(
  plan: TilePlan,
  words: CoverWords,
  face: Face,
  paper: PaperSize,
  margin: number = PRINT_MARGIN,
): Page {
  const { width, height } = paper
  const area = { left: margin, top: margin, right: width - margin, bottom: height - margin }
  return { width, height, layers: [{ marks: coverMarks(plan, words, area, face) }] }
}

export function coverMarks(plan: TilePlan, words: CoverWords, area: Box, face: Face): Mark[] {
  const { left, bottom } = area
  const top = area.top + HEAD
  const inch = top + SQUARE_MM + GAP
  const column = { left: left + SQUARE_INCH + GAP, right: area.right }
  return [
    ...headMarks(words, area, face),
    square(left, top, SQUARE_MM, 'square100mm'),
    ...checkMarks(left, top, face),
    square(left, inch, SQUARE_INCH, 'square4in'),
    textMark(COVER_WORDS.side4, point(left + 4, inch + 7), TYPE.text),
    ...mapMarks(
      plan,
      {
        left: left + 5,
        top: inch + 18,
        right: left + SQUARE_INCH - 5,
        bottom: inch + SQUARE_INCH - 5,
      },
      words.units,
    ),
    ...columnMarks(words, column, { top, bottom }, face),
  ]
}

function headMarks(words: CoverWords, area: Box, face: Face): Mark[] {
  const [x, y, width] = [area.left, area.top, boxWidth(area)]
  const standing = [
    ...(words.round === undefined ? [] : [COVER_WORDS.round(words.round)]),
    words.standing,
    ...(words.date === undefined ? [] : [words.date]),
  ].join(' · ')
  return [
    textMark(
      fitted(words.garmentName, TYPE.title, width, face),
      point(x, y + TYPE.title),
      TYPE.title,
    ),
    ...wrapped(standing, TYPE.head, width, face)
      .slice(0, 2)
      .map((text, i) => textMark(text, point(x, y + TYPE.title + 8 + i * 6), TYPE.head)),
  ]
}

const square = (x: number, y: number, side: number, id: string): Mark => ({
  kind: 'rect',
  id,
  box: { left: x, top: y, right: x + side, bottom: y + side },
  line: 'square',
})

function checkMarks(x: number, y: number, face: Face): Mark[] {
  const inner = SQUARE_MM - 8
  const paragraphs = COVER_WORDS.how.map((text) => wrapped(text, TYPE.text, inner, face))
  let at = y + 26
  const marks = paragraphs.flatMap((lines) => {
    const placed = lines.map((text, i) =>
      textMark(text, point(x + 4, at + i * TYPE.text * LEAD), TYPE.text),
    )
    at += lines.length * TYPE.text * LEAD + 2
    return placed
  })
  return [
    textMark(COVER_WORDS.side100, point(x + 4, y + 7), TYPE.text),
    textMark(COVER_WORDS.twoSquares, point(x + 4, y + 17), TYPE.check),
    ...marks,
  ]
}

function columnMarks(
  words: CoverWords,
  { left, right }: { left: number; right: number },
  { top, bottom }: { top: number; bottom: number },
  face: Face,
): Mark[] {
  const parts: readonly (readonly [head: string, lines: readonly string[]])[] = [
    [COVER_WORDS.file, words.corrected === undefined ? [] : [words.corrected]],
    [COVER_WORDS.pieces, words.pieces],
    [COVER_WORDS.allowances, words.allowances],
    [COVER_WORDS.before, words.findings],
    [COVER_WORDS.care, CAUTIONS],
  ]
  const marks: Mark[] = []
  let y = top + TYPE.head
  for (const [head, lines] of parts) {
    if (lines.length === 0) continue
    marks.push(textMark(head, point(left, y), TYPE.head))
    y += TYPE.head * LEAD
    for (const text of lines) {
      const rows = wrapped(text, TYPE.text, right - left, face)
      if (y + rows.length * TYPE.text * LEAD > bottom) {
        marks.push(textMark(COVER_WORDS.rest, point(left, y), TYPE.text))
        return marks
      }
      rows.forEach((row, i) =>
        marks.push(textMark(row, point(left, y + i * TYPE.text * LEAD), TYPE.text)),
      )
      y += rows.length * TYPE.text * LEAD + 1
    }
    y += 4
  }
  return marks
}

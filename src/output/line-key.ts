/** What the lines of a drawing mean: a short piece of each that occurs, its word beside it. */
import type { Path } from '../geometry/path.ts'
import { add, point, type Point } from '../geometry/point.ts'
import { line } from '../geometry/segment.ts'
import type { LineName } from './line-style.ts'
import { pathMark, placedMark, textMark, type PathMark, type TextMark } from './mark.ts'
import { HALF_SIZE_LINES, LINE_WORDS } from './sheet.words.ts'

/** Long enough that every stitch shows its gap, mm. */
export const SAMPLE = 24
/** These are drawn as short strokes across another line. */
const ACROSS: readonly LineName[] = ['notch', 'clip']
const STROKE = 3.6
const ARROW = 2
const COLUMN = { width: 59, gap: 3 } as const
const ROW = { height: 5, type: 2.8 } as const

export interface LineKey {
  readonly width: number
  readonly height: number
  /** From its own top-left corner. */
  readonly marks: readonly (PathMark | TextMark)[]
}

/** The key by itself, with a sentence over it. */
export function keyFigure(drawn: readonly (PathMark | TextMark)[], room: number): LineKey {
  const key = lineKey(drawn, room)
  const marks = key.marks.map((m) => placedMark(m, { turn: 0, by: point(0, ROW.height) }))
  const words = textMark(HALF_SIZE_LINES, point(0, ROW.type), ROW.type)
  return { ...key, height: key.height + 2 * ROW.height, marks: [words, ...marks] }
}

/** In as many columns as `room` holds, mm; the lines in the order of the house's list. */
export function lineKey(drawn: readonly (PathMark | TextMark)[], room: number): LineKey {
  const used = new Set(drawn.flatMap((mark) => (mark.kind === 'path' ? [mark.line] : [])))
  const told = Object.entries(LINE_WORDS).filter(([name]) => used.has(name as LineName))
  const columns = Math.max(1, Math.min(told.length, Math.floor(room / COLUMN.width)))
  const marks = told.flatMap(([name, words], i) => {
    const x = (i % columns) * COLUMN.width
    const y = (Math.floor(i / columns) + 0.5) * ROW.height
    return [
      pathMark(name as LineName, sample(name as LineName, point(x, y))),
      textMark(words, point(x + SAMPLE + COLUMN.gap, y + ROW.type / 3), ROW.type),
    ]
  })
  const rows = Math.ceil(told.length / columns)
  return { width: columns * COLUMN.width, height: rows * ROW.height, marks }
}

/** As it is met on the drawing: the grain with its points, a notch as a stroke. */
function sample(name: LineName, at: Point): Path {
  const end = add(at, point(SAMPLE, 0))
  if (ACROSS.includes(name)) {
    const middle = add(at, point(SAMPLE / 2, 0))
    return [line(add(middle, point(0, -STROKE / 2)), add(middle, point(0, STROKE / 2)))]
  }
  const heads = (tip: Point, back: number): Path =>
    [-1, 1].map((side) => line(add(tip, point(back, (side * ARROW) / 2)), tip))
  const arrows = name === 'grain' ? [...heads(at, ARROW), ...heads(end, -ARROW)] : []
  return [line(at, end), ...arrows]
}

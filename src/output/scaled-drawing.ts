/**
 * A piece drawn small: the same lines at a half or a quarter, letters and crosses kept large
 * enough to read. She reads lengths off the steps and places off the squares; a line width says
 * nothing, so lines keep theirs.
 */
import { boxOfPoints, boxHeight, boxWidth, type Box } from '../geometry/box.ts'
import { flatten, type Path } from '../geometry/path.ts'
import { add, between, point, scale, type Point } from '../geometry/point.ts'
import { line, type Segment } from '../geometry/segment.ts'
import type { Piece } from '../draft/piece.ts'
import type { UnitChoice } from '../units/format.ts'
import { cm, inches, type Mm } from '../units/length.ts'
import { lineKey } from './line-key.ts'
import { pathMark, placedMark, reach, textMark, type PathMark, type TextMark } from './mark.ts'
import type { PieceDrawing, PieceMark } from './piece-drawing.ts'
import { SMALL_DRAWING } from './sheet.words.ts'

/** Drawn over true: 'full' is what the sheets carry. */
export const DRAWING_SCALES = { full: 1, half: 2, quarter: 4 } as const
export type DrawingScale = keyof typeof DRAWING_SCALES

/** Nothing under this is read on paper at arm's length, mm of type height. House choice. */
const LEAST_TYPE = 2.3
const LETTER = 3
const NAME = 4.2
/** Half the arm of a point's crossing. */
const CROSS = 1.2

export const scaledPath = (path: Path, by: number): Path => path.map((s) => scaledSegment(s, by))

function scaledSegment(s: Segment, by: number): Segment {
  const at = (p: Point): Point => scale(p, by)
  switch (s.kind) {
    case 'line':
      return { ...s, from: at(s.from), to: at(s.to) }
    case 'cubic':
      return { ...s, from: at(s.from), c1: at(s.c1), c2: at(s.c2), to: at(s.to) }
    case 'arc':
      return { ...s, centre: at(s.centre), radius: s.radius * by }
  }
}

/** The drawing at 1 to `small`; a `small` of 1 is the drawing itself. */
export function scaledDrawing(drawing: PieceDrawing, small: number): PieceDrawing {
  if (small === 1) return drawing
  const { piece } = drawing
  const marks = drawing.marks.flatMap((mark): PieceMark[] => {
    if (mark.kind === 'path') return [scaledLine(mark, 1 / small)]
    const kept = scaledWords(mark, 1 / small, piece.points)
    return kept ? [kept] : []
  })
  return { ...drawing, marks, cut: scaledPath(drawing.cut, 1 / small) }
}

function scaledLine(mark: PathMark, by: number): PathMark {
  if (mark.line !== 'point') return { ...mark, path: scaledPath(mark.path, by) }
  const box = boxOfPoints(mark.path.flatMap((s) => flatten([s])))
  const middle = between(point(box.left, box.top), point(box.right, box.bottom), 0.5)
  const at = scale(middle, by)
  const arm = (x: number, y: number): Segment => line(add(at, point(-x, -y)), add(at, point(x, y)))
  return { ...mark, path: [arm(CROSS, 0), arm(0, CROSS)] }
}

/**
 * Letters, levels, grain and fold, and the name of the piece. Names of edges would lie on their
 * lines, and what is cut how stands with the steps.
 */
function scaledWords(mark: TextMark, by: number, points: Piece['points']): TextMark | undefined {
  const at = scale(mark.at, by)
  const lettered = mark.of && 'point' in mark.of ? points[mark.of.point] : undefined
  if (lettered)
    return { ...mark, at: add(scale(lettered, by), point(CROSS * 0.8, -CROSS * 0.8)), size: LETTER }
  if (mark.id?.endsWith('.name')) return { ...mark, at, size: NAME }
  if (mark.of && 'edge' in mark.of) return undefined
  const said = mark.tone === 'soft' || mark.angle !== 0
  return said ? { ...mark, at, size: Math.max(LEAST_TYPE, mark.size * by) } : undefined
}

export interface Figure {
  readonly width: number
  readonly height: number
  /** From the figure's own top-left corner. */
  readonly marks: readonly PieceMark[]
}

/** Scales tried for a small drawing, largest first: quarters, then what a long piece needs. */
const SMALL: readonly number[] = [4, 5, 8, 10, 16]
/** Squares of the paper under a small drawing, in true size of the piece. */
const gridStep = (units: UnitChoice): Mm => (units.unit === 'inch' ? inches(2) : cm(5))

/**
 * The largest small drawing that lies inside `room`, on squares counted from the centre line and
 * the nape level, with one sentence and the key of its lines under it. Throws for a piece no sheet could hold.
 */
export function smallFigure(
  drawing: PieceDrawing,
  room: { readonly width: number; readonly height: number },
  units: UnitChoice,
): Figure {
  for (const small of SMALL) {
    const drawn = scaledDrawing(drawing, small)
    const step = gridStep(units) / small
    const box = onSquares(boxOfPoints(drawn.marks.flatMap(reach)), step)
    const key = lineKey(drawn.marks, room.width)
    const height = boxHeight(box) + FOOT + key.height
    if (boxWidth(box) > room.width || height > room.height) continue
    const by = point(-box.left, -box.top)
    const words = textMark(smallWords(small, units), point(box.left, box.bottom + 4.5), 3)
    const under = point(0, boxHeight(box) + FOOT - 2)
    const marks = [
      ...[...squares(box, step), ...drawn.marks, words].map((m) => movedMark(m, by)),
      ...key.marks.map((m) => movedMark(m, under)),
    ]
    return { width: Math.max(boxWidth(box), key.width), height, marks }
  }
  throw new Error(`small drawing: ${drawing.piece.id} does not fit ${room.width} × ${room.height}`)
}
const FOOT = 8

const smallWords = (small: number, { unit }: UnitChoice): string =>
  SMALL_DRAWING.scale(small, unit === 'inch' ? '2 in' : '5 cm')

/** The box carried on to whole squares. */
const onSquares = (box: Box, step: number): Box => ({
  left: Math.floor(box.left / step) * step,
  top: Math.floor(box.top / step) * step,
  right: Math.ceil(box.right / step) * step,
  bottom: Math.ceil(box.bottom / step) * step,
})

/** Squares run from the centre line and the nape level, where the piece has its nought. */
function squares(box: Box, step: number): PathMark[] {
  const from = (low: number, high: number): number[] =>
    Array.from({ length: Math.round((high - low) / step) + 1 }, (_, i) => low + i * step)
  const down = from(box.left, box.right).map((x) => line(point(x, box.top), point(x, box.bottom)))
  const across = from(box.top, box.bottom).map((y) => line(point(box.left, y), point(box.right, y)))
  return [pathMark('trim', [...down, ...across])]
}

const movedMark = (mark: PieceMark, by: Point): PieceMark => placedMark(mark, { turn: 0, by })

/** How a piece is laid on the cloth: the bracket of the fold and the grain line. */
import { pathLength } from '../geometry/length.ts'
import { pointAtLength, type Path } from '../geometry/path.ts'
import {
  add,
  between,
  point,
  quarterTurn,
  scale,
  subtract,
  unit,
  type Point,
} from '../geometry/point.ts'
import { line } from '../geometry/segment.ts'
import type { Piece } from '../draft/piece.ts'
import { BRACKET, nameOf, SIZE } from './level-marks.ts'
import { pathMark, textMark, type PathMark, type TextMark } from './mark.ts'
import { MARK_WORDS } from './sheet.words.ts'

const ARROW = { long: 5, wide: 1.6 } as const

/** A bracket whose two arrows end on the fold: lay this line on the fold of the cloth. */
export function foldMarks(piece: Piece): (PathMark | TextMark)[] {
  return piece.edges
    .filter((e) => e.role === 'fold')
    .flatMap((e) => {
      const length = pathLength(e.path)
      const [a, b] = [pointAtLength(e.path, length * 0.08), pointAtLength(e.path, length * 0.92)]
      const inward = point(BRACKET, 0)
      const [ia, ib] = [add(a, inward), add(b, inward)]
      const arms = [line(a, ia), line(ia, ib), line(ib, b)]
      const words = between(ia, ib, 0.5)
      return [
        pathMark(
          'bracket',
          [...arms, ...arrow(ia, a), ...arrow(ib, b)],
          nameOf(piece, 'foldBracket'),
        ),
        textMark(MARK_WORDS.onFold, add(words, point(-2, 0)), SIZE.words, {
          angle: -Math.PI / 2,
          anchor: 'middle',
        }),
      ]
    })
}

export function grainMarks(piece: Piece): (PathMark | TextMark)[] {
  const { from, to } = piece.grain
  const up = unit(subtract(from, to))
  const words = add(between(from, to, 0.5), scale(quarterTurn(up), -2))
  return [
    pathMark(
      'grain',
      [line(from, to), ...arrow(from, to), ...arrow(to, from)],
      nameOf(piece, 'grain'),
    ),
    textMark(MARK_WORDS.grain, words, SIZE.words, {
      angle: Math.atan2(up.y, up.x),
      anchor: 'middle',
    }),
  ]
}

/** An open arrow head at `tip`, pointing away from `from`. */
function arrow(from: Point, tip: Point): Path {
  const way = unit(subtract(tip, from))
  const foot = add(tip, scale(way, -ARROW.long))
  const aside = scale(quarterTurn(way), ARROW.wide)
  return [line(add(foot, aside), tip), line(tip, subtract(foot, aside))]
}

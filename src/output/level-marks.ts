/** Level lines and the plumb line of a piece: what hangs true on the body, drawn to the cut edge. */
import { boxOf } from '../geometry/box.ts'
import { crossings } from '../geometry/intersect.ts'
import type { Path } from '../geometry/path.ts'
import { point, type Point } from '../geometry/point.ts'
import { line } from '../geometry/segment.ts'
import { outline, type Piece } from '../draft/piece.ts'
import { LEVEL_WORDS } from '../draft/piece.words.ts'
import type { CuttingLine } from './allowance.ts'
import { pathMark, textMark, type PathMark, type TextMark } from './mark.ts'
import { MARK_WORDS } from './sheet.words.ts'

/** Type sizes on paper, mm: read at arm's length while cutting. House choice. */
export const SIZE = { name: 8, words: 4.5, letter: 5, small: 3.5 } as const
/** How far the fold bracket stands from the fold. */
export const BRACKET = 12
/** White between a line and its words. */
export const EDGE_GAP = 3

export const nameOf = (piece: Piece, part: string): string => `${piece.id}.${part}`

type Cut = Extract<CuttingLine, { ok: true }> | undefined

/** A level ends where the cloth ends: past it a dotted line would only cost paper. */
export function levelMarks(piece: Piece, cut: Cut): (PathMark | TextMark)[] {
  return piece.levels.flatMap(({ name, from: { y } }) => {
    const seam = across(outline(piece), y)
    const [left, right] = [Math.min(...seam), Math.max(...seam)]
    if (!(right > left)) return []
    const beyond = cut ? across(cut.path, y) : []
    const from = Math.max(...beyond.filter((x) => x < left + SAME))
    const to = Math.min(...beyond.filter((x) => x > right - SAME))
    return [
      pathMark(
        'level',
        [line(point(finite(from, left), y), point(finite(to, right), y))],
        nameOf(piece, name),
      ),
      textMark(LEVEL_WORDS[name], point(Math.max(left, 0) + BRACKET + 4, y - 1.5), SIZE.small, {
        tone: 'soft',
      }),
    ]
  })
}
const SAME = 1e-6
const finite = (x: number, otherwise: number): number => (Number.isFinite(x) ? x : otherwise)

const across = (path: Path, y: number): number[] => {
  const { left, right } = boxOf([path])
  return crossings(path, line(point(left - 1, y), point(right + 1, y))).map((c) => c.at.x)
}

/**
 * A vertical to hang by: through the middle of the dart next to the fold, which stands on it too,
 * or, without a dart, half way from the fold to the underarm. Only pieces of the body have one.
 */
export function plumbMarks(piece: Piece, cut: Cut): (PathMark | TextMark)[] {
  const underarm = piece.points['U']
  if (!underarm) return []
  const dart = piece.darts[0]
  const x = dart ? dart.upperTip.x : underarm.x / 2
  const path = cut?.path ?? outline(piece)
  const { top, bottom } = boxOf([path])
  const met = crossings(path, line(point(x, top - 1), point(x, bottom + 1))).map((c) => c.at.y)
  const [from, to] = [Math.min(...met), Math.max(...met)]
  if (!(to > from)) return []
  const run = (a: number, b: number): Path => (b > a ? [line(point(x, a), point(x, b))] : [])
  const plumb = dart ? [...run(from, dart.upperTip.y), ...run(dart.lowerTip.y, to)] : run(from, to)
  const words: Point = point(x - 1.5, from + (underarm.y - from) * WORDS_AT)
  return [
    pathMark('plumb', plumb, nameOf(piece, 'plumbLine')),
    textMark(MARK_WORDS.plumb, words, SIZE.small, {
      angle: -Math.PI / 2,
      anchor: 'middle',
      tone: 'soft',
    }),
  ]
}
/** Where the words stand between the overarm and the level of the underarm. */
const WORDS_AT = 0.6

/** Where the name of a half stands in its open cloth: clear of its lines where there is room. */
import { outline, type Piece } from '../../../draft/piece.ts'
import { contains } from '../../../geometry/contains.ts'
import { flatten } from '../../../geometry/path.ts'
import { distance, point, type Point } from '../../../geometry/point.ts'
import { openPlace } from '../../../output/piece-drawing.ts'
import { drawnLines, sampled } from './drawn-lines.ts'

/** Rows tried above and below where it stands on paper, in heights of the name. House drawing. */
const ROWS = [0, 0.6, -0.6, 1.2, -1.2, 1.8, -1.8, 2.6, -2.6, 3.4, 4.2, 5]
/** A hair of cloth between a name and a line, in heights of the name. House drawing. */
const HAIR = 0.25

/**
 * Middle of the name, `wide` by `high` mm of the drawing: the row nearest to its place on paper
 * where it lies inside the piece and over no line; undefined where there is none.
 */
export function namePlace(piece: Piece, wide: number, high: number): Point | undefined {
  const wished = openPlace(piece)
  const dots = drawnLines(piece).flatMap((path) => sampled(path, high / 3))
  const cloth = flatten(outline(piece), 0.5)
  const free = ROWS.flatMap((row) =>
    openAt(wished.y + row * high, dots, wide, high, wished.x),
  ).filter((at) => contains(cloth, at))
  return free.toSorted((a, b) => distance(a, wished) - distance(b, wished))[0]
}

/** In each stretch of the row without a line, the place nearest to `x`. */
function openAt(
  y: number,
  dots: readonly Point[],
  wide: number,
  high: number,
  x: number,
): readonly Point[] {
  const stops = dots
    .filter((p) => Math.abs(p.y - y) < high * (0.5 + HAIR))
    .map((p) => p.x)
    .sort((a, b) => a - b)
  const reach = wide / 2 + high * HAIR
  return stops.flatMap((left, i) => {
    const right = stops[i + 1]
    if (right === undefined || right - left < 2 * reach) return []
    return [point(Math.min(Math.max(x, left + reach), right - reach), y)]
  })
}

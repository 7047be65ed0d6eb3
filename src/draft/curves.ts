/** The two freehand curves of the bodice, made so that they meet their neighbours truly. */
import type { Path } from '../geometry/path.ts'
import { add, point, quarterTurn, scale, subtract, unit, type Point } from '../geometry/point.ts'
import { at, cubic, part } from '../geometry/segment.ts'

/**
 * How far the neck curve runs along its two end directions, as a share of its width and height.
 * 0.5523 would be a quarter ellipse (the usual cubic for a quarter circle); a neck is drawn a
 * little fuller at the fold. Common practice, no source.
 */
const NECK_AT_FOLD = 0.6
const NECK_AT_SHOULDER = 0.5

/**
 * Neck edge from the fold to the side-neck point: leaves the fold square and meets the overarm
 * seam square, so that front and back laid together at the seam run on in one line (90° + 90°).
 */
export function neckCurve(fold: Point, sideNeck: Point, overarmEnd: Point): Path {
  const overarm = unit(subtract(overarmEnd, sideNeck))
  const width = sideNeck.x - fold.x
  const height = Math.abs(sideNeck.y - fold.y)
  const square = quarterTurn(overarm)
  return [
    cubic(
      fold,
      point(fold.x + NECK_AT_FOLD * width, fold.y),
      add(sideNeck, scale(square, NECK_AT_SHOULDER * height)),
      sideNeck,
    ),
  ]
}

/**
 * Side seam through points given from the top down: one cubic a span, smooth at every join,
 * never wider or narrower than the points it passes (Fritsch & Carlson, "Monotone piecewise
 * cubic interpolation", SIAM J. Numer. Anal. 17 (1980) 238–246, with x as a function of y).
 * The last span ends plumb.
 */
export function sideCurve(through: readonly Point[]): Path {
  const slopes = monotoneSlopes(through)
  return through.slice(1).map((to, i) => {
    const from = through[i]!
    const third = (to.y - from.y) / 3
    return cubic(
      from,
      point(from.x + slopes[i]! * third, from.y + third),
      point(to.x - slopes[i + 1]! * third, to.y - third),
      to,
    )
  })
}

function monotoneSlopes(p: readonly Point[]): number[] {
  const span = (i: number): number => (p[i + 1]!.x - p[i]!.x) / (p[i + 1]!.y - p[i]!.y)
  const last = p.length - 1
  return p.map((_, i) => {
    if (i === last) return 0
    if (i === 0) return span(0)
    const [before, after] = [span(i - 1), span(i)]
    if (before * after <= 0) return 0
    const [h0, h1] = [p[i]!.y - p[i - 1]!.y, p[i + 1]!.y - p[i]!.y]
    const [w0, w1] = [2 * h1 + h0, h1 + 2 * h0]
    return (w0 + w1) / (w0 / before + w1 / after)
  })
}

/** The side seam cut off at the level y. */
export function cutAtLevel(side: Path, y: number): Path {
  return side.flatMap((s) => {
    if (s.kind !== 'cubic') throw new Error(`cutAtLevel: the side seam has a ${s.kind}`)
    if (s.to.y <= y) return [s]
    if (s.from.y >= y) return []
    // y grows evenly with t, because both handles stand at the thirds.
    return [part(s, 0, (y - s.from.y) / (s.to.y - s.from.y))]
  })
}

/** Points of a path at even t, for guide points. */
export const guidesOn = (path: Path, ts: readonly number[]): Point[] =>
  path.flatMap((s) => ts.map((t) => at(s, t)))

/** The two freehand curves of the bodice, made so that they meet their neighbours truly. */
import type { Path } from '../geometry/path.ts'
import {
  add,
  cross,
  dot,
  point,
  rotate,
  scale,
  subtract,
  unit,
  type Point,
} from '../geometry/point.ts'
import { at, cubic, part } from '../geometry/segment.ts'

/**
 * How far a neck curve runs along its two end directions, as a share of its width and height.
 * 0.5523 twice would be a quarter ellipse (the usual cubic for a quarter circle); a round neck is
 * drawn a little fuller at the fold, a boat lies flat, a scoop is full at both. Common practice.
 */
const FULLNESS = {
  round: { fold: 0.6, shoulder: 0.5 },
  boat: { fold: 0.85, shoulder: 0.25 },
  scoop: { fold: 0.75, shoulder: 0.7 },
} as const

/**
 * Neck edge from the fold to the side-neck point. It leaves the fold square; at the side neck it
 * stands `angle` off the overarm seam, so that front and back, laid together there, run on in one
 * line when their angles add to 180°.
 */
export function neckCurve(
  fold: Point,
  sideNeck: Point,
  overarmEnd: Point,
  shape: keyof typeof FULLNESS,
  angle = Math.PI / 2,
): Path {
  const overarm = unit(subtract(overarmEnd, sideNeck))
  const [width, height] = [sideNeck.x - fold.x, Math.abs(sideNeck.y - fold.y)]
  const inwards = rotate(overarm, point(0, 0), angle)
  const full = FULLNESS[shape]
  const rising = fold.y - sideNeck.y > 0
  const atShoulder = Math.max(full.shoulder * height, rising && height > LOW ? 0 : LEAST_HANDLE)
  // The radius at the end of a cubic is 1.5·handle² over what the first handle lacks of the width.
  const lacking = Math.min((1 - full.fold) * width, (1.5 * atShoulder ** 2) / LEAST_RADIUS)
  // Past the place where both end directions meet a handle would bend the curve back on itself.
  const toMeet =
    inwards.y * (fold.y - sideNeck.y) > 0 ? (fold.y - sideNeck.y) / inwards.y : Infinity
  const meet = sideNeck.x + inwards.x * toMeet
  const atFold = Math.min(width - lacking, toMeet < Infinity ? meet - fold.x : Infinity)
  return [
    cubic(
      fold,
      point(fold.x + Math.max(atFold, LEAST_SHARE * width), fold.y),
      add(sideNeck, scale(inwards, Math.min(atShoulder, toMeet))),
      sideNeck,
    ),
  ]
}
/** The handle at the fold never runs less than this share of the width, so that it stays square there. */
const LEAST_SHARE = 0.2
/** A neck is nowhere bent tighter than this where it meets the shoulder, mm: a strip turns it. */
const LEAST_RADIUS = 15
/** A back neck lower than this keeps a handle long enough for it, mm. */
const LOW = 24
const LEAST_HANDLE = 12

/** The angle a straight line from `sideNeck` towards `to` makes with the overarm seam. */
export function angleToOverarm(sideNeck: Point, overarmEnd: Point, to: Point): number {
  const [a, b] = [unit(subtract(overarmEnd, sideNeck)), unit(subtract(to, sideNeck))]
  return Math.abs(Math.atan2(cross(a, b), dot(a, b)))
}

/**
 * Side seam through points given from the top down: one cubic a span, smooth at every join,
 * never wider or narrower than the points it passes (Fritsch & Carlson, "Monotone piecewise
 * cubic interpolation", SIAM J. Numer. Anal. 17 (1980) 238–246, with x as a function of y).
 * Both ends are plumb, but for the foot when it is told how far out it runs for each mm down.
 */
export function sideCurve(through: readonly Point[], foot = 0): Path {
  const slopes = monotoneSlopes(through, foot)
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

function monotoneSlopes(p: readonly Point[], foot: number): number[] {
  const span = (i: number): number => (p[i + 1]!.x - p[i]!.x) / (p[i + 1]!.y - p[i]!.y)
  const last = p.length - 1
  return p.map((_, i) => {
    if (i === 0) return 0
    // Three times the span's own slope is the most that stays monotone.
    if (i === last)
      return Math.sign(span(i - 1)) === Math.sign(foot) ? Math.min(foot, 3 * span(i - 1)) : 0
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

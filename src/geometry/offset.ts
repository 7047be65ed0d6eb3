/**
 * A path moved sideways by `by` mm: to its left as seen in the direction of travel when `by` is
 * positive, which is outward for an outline that runs clockwise on the page. Lines and arcs are
 * exact; a cubic is cut until its moved handles are within OFFSET_ERROR of the true offset.
 */
import { add, cross, distance, dot, norm, point, scale, type Point } from './point.ts'
import {
  arc,
  at,
  cubic,
  derivative,
  line,
  part,
  tangent,
  type Cubic,
  type Segment,
} from './segment.ts'
import type { Path } from './path.ts'

export const OFFSET_ERROR = 0.004
const DEEPEST = 12

/** `by` to the left of travel, on a page whose y points down. */
function aside(s: Segment, t: number, by: number): Point {
  const [p, way] = [at(s, t), tangent(s, t)]
  return point(p.x + by * way.y, p.y - by * way.x)
}

export const offsetPath = (path: Path, by: number): Path => path.flatMap((s) => offset(s, by))

export function offset(s: Segment, by: number): Path {
  switch (s.kind) {
    case 'line':
      return [line(aside(s, 0, by), aside(s, 1, by))]
    case 'arc': {
      // Travelling clockwise on the page (sweep > 0) the centre lies to the right.
      const radius = s.radius + Math.sign(s.sweep) * by
      if (radius <= 0)
        throw new Error(`offset: ${by} mm is more than the arc's radius ${s.radius} mm`)
      return [arc(s.centre, radius, s.start, s.sweep)]
    }
    case 'cubic':
      return offsetCubic(s, by, 0)
  }
}

function offsetCubic(s: Cubic, by: number, depth: number): Path {
  const shifted = oneCubic(s, by)
  if (depth >= DEEPEST || PROBED.every((t) => passes(shifted, aside(s, t, by), t))) return [shifted]
  return [0, 0.5].flatMap((t) => offsetCubic(part(s, t, t + 0.5) as Cubic, by, depth + 1))
}

/** A curve that is off is most often so in its middle. */
const PROBED = [0.5, 0.25, 0.75]

/** Handles keep their direction and are scaled as the ends' curvature asks (speed × (1 + κ·by)). */
function oneCubic(s: Cubic, by: number): Cubic {
  const [a, b] = [aside(s, 0, by), aside(s, 1, by)]
  return cubic(
    a,
    add(a, scale(tangent(s, 0), handle(s, 0, by))),
    add(b, scale(tangent(s, 1), -handle(s, 1, by))),
    b,
  )
}

function handle(s: Cubic, t: number, by: number): number {
  const [t0, t1] = [Math.max(0, t - STEP), Math.min(1, t + STEP)]
  const [d0, d1] = [tangent(s, t0), tangent(s, t1)]
  const turn = Math.atan2(cross(d0, d1), dot(d0, d1))
  // d(aside)/dt = (speed + by · turning rate) along the tangent, for a left offset on a y-down page.
  return (norm(derivative(s, t)) + (by * turn) / (t1 - t0)) / 3
}
/** Step in t for the turning rate. */
const STEP = 1e-4

/** Does the curve come within OFFSET_ERROR of a point, at one of the places near t? */
function passes(s: Cubic, p: Point, t: number): boolean {
  for (let i = 0; i <= AROUND; i++)
    if (
      distance(at(s, t + i * APART), p) < OFFSET_ERROR ||
      (i > 0 && distance(at(s, t - i * APART), p) < OFFSET_ERROR)
    )
      return true
  return false
}
/** So many places on either side of t, so far apart. */
const AROUND = 10
const APART = 0.004

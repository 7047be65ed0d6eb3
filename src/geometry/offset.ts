/**
 * A path moved sideways by `by` mm: to its left as seen in the direction of travel when `by` is
 * positive, which is outward for an outline that runs clockwise on the page. Lines and arcs are
 * exact; a cubic is cut until its moved handles are within OFFSET_ERROR of the true offset.
 */
import { add, distance, quarterTurn, scale, type Point } from './point.ts'
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

/** Left of travel, on a page whose y points down. */
const left = (direction: Point): Point => scale(quarterTurn(direction), -1)
const aside = (s: Segment, t: number, by: number): Point =>
  add(at(s, t), scale(left(tangent(s, t)), by))

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
  const off = [0.25, 0.5, 0.75].map((t) => {
    const want = aside(s, t, by)
    return nearestOn(shifted, want, t)
  })
  if (Math.max(...off) < OFFSET_ERROR || depth >= DEEPEST) return [shifted]
  return [0, 0.5].flatMap((t) => offsetCubic(part(s, t, t + 0.5) as Cubic, by, depth + 1))
}

/** Handles keep their direction and are scaled as the ends' curvature asks (speed × (1 + κ·by)). */
function oneCubic(s: Cubic, by: number): Cubic {
  const [a, b] = [aside(s, 0, by), aside(s, 1, by)]
  const reach = (t: number): number => {
    const h = 1e-4
    const [d0, d1] = [tangent(s, Math.max(0, t - h)), tangent(s, Math.min(1, t + h))]
    const turn = Math.atan2(d0.x * d1.y - d0.y * d1.x, d0.x * d1.x + d0.y * d1.y)
    const span = Math.min(1, t + h) - Math.max(0, t - h)
    const d = derivative(s, t)
    // d(aside)/dt = (speed + by · turning rate) along the tangent, for a left offset on a y-down page.
    return (Math.hypot(d.x, d.y) + (by * turn) / span) / 3
  }
  return cubic(
    a,
    add(a, scale(tangent(s, 0), reach(0))),
    add(b, scale(tangent(s, 1), -reach(1))),
    b,
  )
}

function nearestOn(s: Cubic, p: Point, near: number): number {
  let best = Infinity
  for (let i = -10; i <= 10; i++)
    best = Math.min(best, distance(at(s, Math.min(1, Math.max(0, near + i * 0.004))), p))
  return best
}

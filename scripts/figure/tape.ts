/**
 * Tapes laid on the figure: level rings, a taut line over a profile, the ridge of the shoulder.
 * Everything is read off the same distance field that is drawn, to about 0.01 mm.
 */
import { length, reachOut, type Field, type Vec } from './field.ts'

export type Flat = readonly [number, number]

export interface Ring {
  /** Length of a taut tape round the body: it bridges hollows. */
  readonly girth: number
  readonly breadth: number
  readonly depth: number
  /** Outermost points to her left, right, front and back. */
  readonly left: Vec
  readonly right: Vec
  readonly front: Vec
  readonly back: Vec
}

const RING_POINTS = 720
const FURTHEST = 420

/** The level ring at height y; the body is looked at from a point inside it. */
export function ringAt(body: Field, y: number): Ring {
  const points = Array.from({ length: RING_POINTS }, (_, i): Vec => {
    const a = (i / RING_POINTS) * 2 * Math.PI
    const ray: Vec = [Math.sin(a), 0, Math.cos(a)]
    const out = reachOut(body, [0, y, 0], ray, FURTHEST)
    return [ray[0] * out, y, ray[2] * out]
  })
  const furthest = (far: (p: Vec) => number): Vec =>
    points.reduce((best, p) => (far(p) > far(best) ? p : best))
  const [left, right] = [furthest((p) => p[0]), furthest((p) => -p[0])]
  const [front, back] = [furthest((p) => p[2]), furthest((p) => -p[2])]
  const hull = hullOf(points.map(([x, , z]): Flat => [x, z]))
  return {
    girth: pathLength([...hull, hull[0] ?? [0, 0]]),
    breadth: left[0] - right[0],
    depth: front[2] - back[2],
    left,
    right,
    front,
    back,
  }
}

/** Convex hull, counter-clockwise: Andrew's monotone chain (Inf. Proc. Letters 9, 1979). */
function hullOf(points: readonly Flat[]): Flat[] {
  const sorted = [...points].sort((p, q) => p[0] - q[0] || p[1] - q[1])
  const half = (from: readonly Flat[]): Flat[] => {
    const chain = tautOver(from, 1)
    return chain.slice(0, -1)
  }
  return [...half(sorted), ...half(sorted.reverse())]
}

/**
 * A taut line along a path from its first point to its last: hollows are bridged.
 * @param side 1 when the body lies to the left of travel, -1 when to the right
 */
export function tautOver(path: readonly Flat[], side: 1 | -1): Flat[] {
  const kept: Flat[] = []
  for (const p of path) {
    for (;;) {
      const [a, b] = [kept.at(-2), kept.at(-1)]
      if (!a || !b) break
      const turn = (b[0] - a[0]) * (p[1] - b[1]) - (b[1] - a[1]) * (p[0] - b[0])
      if (turn * side > 0) break
      kept.pop()
    }
    kept.push(p)
  }
  return kept
}

export const pathLength = (path: readonly Flat[]): number =>
  path.reduce((sum, p, i) => {
    const before = path[i - 1] ?? p
    return sum + Math.hypot(p[0] - before[0], p[1] - before[1])
  }, 0)

/** Middle of the back (toward = -1) or front (1) at height y. */
export const middleAt = (body: Field, y: number, toward: 1 | -1): Vec => [
  0,
  y,
  toward * reachOut(body, [0, y, 0], [0, 0, toward], FURTHEST),
]

/** Length along the surface in the upright plane through two points, slack (contour) and taut. */
export function overSurface(body: Field, a: Vec, b: Vec): { contour: number; taut: number } {
  const flat = Math.hypot(b[0] - a[0], b[2] - a[2])
  const [hx, hz] = [(b[0] - a[0]) / flat, (b[2] - a[2]) / flat]
  // Seen from inside, level with the lower point and a little behind the upper one.
  const pivot: Vec = [a[0] - hx * 20, Math.min(a[1], b[1]), a[2] - hz * 20]
  const angle = (p: Vec): number =>
    Math.atan2(p[1] - pivot[1], (p[0] - pivot[0]) * hx + (p[2] - pivot[2]) * hz)
  const [first, last] = [angle(a), angle(b)]
  const path = Array.from({ length: 401 }, (_, i): Flat => {
    const t = first + ((last - first) * i) / 400
    const ray: Vec = [hx * Math.cos(t), Math.sin(t), hz * Math.cos(t)]
    const out = reachOut(body, pivot, ray, FURTHEST)
    return [out * Math.cos(t), out * Math.sin(t)]
  })
  return { contour: pathLength(path), taut: pathLength(tautOver(path, first > last ? -1 : 1)) }
}

/** The highest line over neck and shoulder, a point for every millimetre of x to her left. */
export function shoulderRidge(body: Field, from: number, to: number): Vec[] {
  return Array.from({ length: to - from + 1 }, (_, i) => {
    const x = from + i
    let best: Vec = [x, 0, 0]
    for (let z = -75; z <= 20; z += 1) {
      const start: Vec = [x, 1335, z]
      if (body(...start) >= 0) continue
      const y = 1335 + reachOut(body, start, [0, 1, 0], FURTHEST)
      if (y > best[1]) best = [x, y, z]
    }
    return best
  })
}

export const apart = (a: Vec, b: Vec): number => length(a[0] - b[0], a[1] - b[1], a[2] - b[2])

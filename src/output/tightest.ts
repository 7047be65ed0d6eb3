/**
 * How tightly an edge bends, and which way. Outlines run clockwise on the page with the cloth on
 * the right hand, so a curve that turns clockwise bulges out: moved outward it grows longer. One
 * that turns the other way is hollow: moved outward it grows shorter. Arcs answer with their
 * radius, cubics with their curvature (x′y″ − y′x″)/|p′|³ sampled along them.
 */
import type { Cubic, Segment } from '../geometry/segment.ts'
import type { Path } from '../geometry/path.ts'
import { cross, subtract } from '../geometry/point.ts'

/** Radii in mm; Infinity where nothing bends that way. */
export interface Tightest {
  readonly bulging: number
  readonly hollow: number
}

/** Steps along a cubic: between two of them a drawn curve changes its radius by a few per cent. */
const SAMPLES = 64
/** Under this speed a cubic stands still at the end of a handle of no length, and has no radius. */
const STANDS = 1e-6

/** Signed curvature, 1/mm: positive bulges outward, negative is hollow. */
export function curvature(s: Segment, t: number): number {
  switch (s.kind) {
    case 'line':
      return 0
    case 'arc':
      return Math.sign(s.sweep) / s.radius
    case 'cubic':
      return cubicCurvature(s, t)
  }
}

/**
 * From the first and second derivatives, written out: this is asked hundreds of times an edge, and
 * points made only to be thrown away took half of the time of a cutting line.
 */
function cubicCurvature({ from, c1, c2, to }: Cubic, t: number): number {
  const u = 1 - t
  const [a, b, c] = [3 * u * u, 6 * u * t, 3 * t * t]
  const dx = a * (c1.x - from.x) + b * (c2.x - c1.x) + c * (to.x - c2.x)
  const dy = a * (c1.y - from.y) + b * (c2.y - c1.y) + c * (to.y - c2.y)
  const speed = Math.sqrt(dx * dx + dy * dy)
  if (speed < STANDS) return 0
  const bx = 6 * u * (from.x - 2 * c1.x + c2.x) + 6 * t * (c1.x - 2 * c2.x + to.x)
  const by = 6 * u * (from.y - 2 * c1.y + c2.y) + 6 * t * (c1.y - 2 * c2.y + to.y)
  return (dx * by - dy * bx) / (speed * speed * speed)
}

/**
 * Surely hollow nowhere: x′y″ − y′x″ of a cubic is a blend of the crosses of its handles, so where
 * none of them turns the other way the curve does not either.
 */
export function neverHollow(s: Segment): boolean {
  switch (s.kind) {
    case 'line':
      return true
    case 'arc':
      return s.sweep > 0
    case 'cubic': {
      const [a, b, c] = [subtract(s.c1, s.from), subtract(s.c2, s.c1), subtract(s.to, s.c2)]
      return cross(a, b) >= 0 && cross(a, c) >= 0 && cross(b, c) >= 0
    }
  }
}

export function tightest(path: Path): Tightest {
  let [most, least] = [0, 0]
  for (const s of path) {
    const steps = s.kind === 'cubic' ? SAMPLES : 0
    for (let i = 0; i <= steps; i++) {
      const k = curvature(s, steps === 0 ? 0 : i / steps)
      if (k > most) most = k
      if (k < least) least = k
    }
  }
  return { bulging: 1 / most, hollow: least === 0 ? Infinity : -1 / least }
}

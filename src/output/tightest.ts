/**
 * How tightly an edge bends, and which way. Outlines run clockwise on the page with the cloth on
 * the right hand, so a curve that turns clockwise bulges out: moved outward it grows longer. One
 * that turns the other way is hollow: moved outward it grows shorter. Arcs answer with their
 * radius, cubics with their curvature (x′y″ − y′x″)/|p′|³ sampled along them.
 */
import { cross, norm, point, type Point } from '../geometry/point.ts'
import { derivative, type Cubic, type Segment } from '../geometry/segment.ts'
import type { Path } from '../geometry/path.ts'

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
    case 'cubic': {
      const d = derivative(s, t)
      const speed = norm(d)
      return speed < STANDS ? 0 : cross(d, bend(s, t)) / speed ** 3
    }
  }
}

/** Second derivative of a cubic by t. */
function bend({ from, c1, c2, to }: Cubic, t: number): Point {
  const part = (a: number, b: number, c: number, d: number): number =>
    6 * (1 - t) * (a - 2 * b + c) + 6 * t * (b - 2 * c + d)
  return point(part(from.x, c1.x, c2.x, to.x), part(from.y, c1.y, c2.y, to.y))
}

export function tightest(path: Path): Tightest {
  const all = path.flatMap((s) =>
    s.kind === 'cubic'
      ? Array.from({ length: SAMPLES + 1 }, (_, i) => curvature(s, i / SAMPLES))
      : [curvature(s, 0)],
  )
  return { bulging: 1 / Math.max(0, ...all), hollow: 1 / Math.max(0, ...all.map((k) => -k)) }
}

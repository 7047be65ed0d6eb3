/**
 * Lines, cubics and true arcs as readonly data, and the questions every one of them answers:
 * where is it at t, which way does it run, what is it after a turn. t runs from 0 to 1.
 * Arcs stay arcs (a quarter circle of radius 180 mm as one cubic is 0.05 mm off).
 */
import {
  add,
  between,
  distance,
  norm,
  point,
  rotate,
  scale,
  subtract,
  unit,
  type Point,
} from './point.ts'

export interface Line {
  readonly kind: 'line'
  readonly from: Point
  readonly to: Point
}
export interface Cubic {
  readonly kind: 'cubic'
  readonly from: Point
  readonly c1: Point
  readonly c2: Point
  readonly to: Point
}
/** `start` and `sweep` in radians, 0 = to the right, growing clockwise on the page. */
export interface Arc {
  readonly kind: 'arc'
  readonly centre: Point
  readonly radius: number
  readonly start: number
  readonly sweep: number
}
export type Segment = Line | Cubic | Arc

export const line = (from: Point, to: Point): Line => ({ kind: 'line', from, to })
export const cubic = (from: Point, c1: Point, c2: Point, to: Point): Cubic => ({
  kind: 'cubic',
  from,
  c1,
  c2,
  to,
})
export function arc(centre: Point, radius: number, start: number, sweep: number): Arc {
  if (!(radius > 0)) throw new Error(`arc: radius ${radius} mm`)
  return { kind: 'arc', centre, radius, start, sweep }
}

/** The shorter arc about `centre` that begins at `from` and ends on the ray through `to`. */
export function arcBetween(centre: Point, from: Point, to: Point): Arc {
  const start = Math.atan2(from.y - centre.y, from.x - centre.x)
  const turn = Math.atan2(to.y - centre.y, to.x - centre.x) - start
  const sweep = turn > Math.PI ? turn - 2 * Math.PI : turn < -Math.PI ? turn + 2 * Math.PI : turn
  return arc(centre, distance(centre, from), start, sweep)
}

export function at(s: Segment, t: number): Point {
  switch (s.kind) {
    case 'line':
      return between(s.from, s.to, t)
    case 'arc': {
      const angle = s.start + s.sweep * t
      return point(s.centre.x + s.radius * Math.cos(angle), s.centre.y + s.radius * Math.sin(angle))
    }
    case 'cubic': {
      const u = 1 - t
      const a = u * u * u
      const b = 3 * u * u * t
      const c = 3 * u * t * t
      const d = t * t * t
      return point(
        a * s.from.x + b * s.c1.x + c * s.c2.x + d * s.to.x,
        a * s.from.y + b * s.c1.y + c * s.c2.y + d * s.to.y,
      )
    }
  }
}

/** First derivative by t: direction and speed of travel. */
export function derivative(s: Segment, t: number): Point {
  switch (s.kind) {
    case 'line':
      return subtract(s.to, s.from)
    case 'arc': {
      const angle = s.start + s.sweep * t
      const speed = s.radius * s.sweep
      return point(-speed * Math.sin(angle), speed * Math.cos(angle))
    }
    case 'cubic': {
      const u = 1 - t
      const a = 3 * u * u
      const b = 6 * u * t
      const c = 3 * t * t
      return point(
        a * (s.c1.x - s.from.x) + b * (s.c2.x - s.c1.x) + c * (s.to.x - s.c2.x),
        a * (s.c1.y - s.from.y) + b * (s.c2.y - s.c1.y) + c * (s.to.y - s.c2.y),
      )
    }
  }
}

/** Unit direction of travel; at a cubic end whose handle has no length the next handle is taken. */
export function tangent(s: Segment, t: number): Point {
  const d = derivative(s, t)
  if (norm(d) > 1e-9) return unit(d)
  const step = t < 0.5 ? 1e-4 : -1e-4
  return unit(scale(subtract(at(s, t + step), at(s, t)), Math.sign(step)))
}

export const startOf = (s: Segment): Point => (s.kind === 'arc' ? at(s, 0) : s.from)
export const endOf = (s: Segment): Point => (s.kind === 'arc' ? at(s, 1) : s.to)

export function reversed(s: Segment): Segment {
  switch (s.kind) {
    case 'line':
      return line(s.to, s.from)
    case 'cubic':
      return cubic(s.to, s.c2, s.c1, s.from)
    case 'arc':
      return arc(s.centre, s.radius, s.start + s.sweep, -s.sweep)
  }
}

/** The part from t0 to t1; t0 > t1 gives it backwards. */
export function part(s: Segment, t0: number, t1: number): Segment {
  switch (s.kind) {
    case 'line':
      return line(at(s, t0), at(s, t1))
    case 'arc':
      return arc(s.centre, s.radius, s.start + s.sweep * t0, s.sweep * (t1 - t0))
    case 'cubic': {
      const [from, to] = [at(s, t0), at(s, t1)]
      const reach = (t1 - t0) / 3
      return cubic(
        from,
        add(from, scale(derivative(s, t0), reach)),
        subtract(to, scale(derivative(s, t1), reach)),
        to,
      )
    }
  }
}

/** Turned about `pivot`; positive radians are clockwise on the page. */
export function turned(s: Segment, pivot: Point, angle: number): Segment {
  const go = (p: Point): Point => rotate(p, pivot, angle)
  switch (s.kind) {
    case 'line':
      return line(go(s.from), go(s.to))
    case 'cubic':
      return cubic(go(s.from), go(s.c1), go(s.c2), go(s.to))
    case 'arc':
      return arc(go(s.centre), s.radius, s.start + angle, s.sweep)
  }
}

export function moved(s: Segment, by: Point): Segment {
  const go = (p: Point): Point => add(p, by)
  switch (s.kind) {
    case 'line':
      return line(go(s.from), go(s.to))
    case 'cubic':
      return cubic(go(s.from), go(s.c1), go(s.c2), go(s.to))
    case 'arc':
      return arc(go(s.centre), s.radius, s.start, s.sweep)
  }
}

/** Mirrored in the vertical x = 0: the other half of a piece on the fold. */
export function mirrored(s: Segment): Segment {
  const go = (p: Point): Point => point(-p.x, p.y)
  switch (s.kind) {
    case 'line':
      return line(go(s.from), go(s.to))
    case 'cubic':
      return cubic(go(s.from), go(s.c1), go(s.c2), go(s.to))
    case 'arc':
      return arc(go(s.centre), s.radius, Math.PI - s.start, -s.sweep)
  }
}

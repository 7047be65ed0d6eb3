/**
 * A piece drawn anew after its paper has been shifted smoothly: every point goes where the field
 * takes it, straight lines stay straight, curves keep the directions that the field gives them.
 * What the field leaves alone is left exactly as it was.
 */
import { add, distance, norm, point, scale, subtract, type Point } from '../../geometry/point.ts'
import {
  at,
  cubic,
  derivative,
  endOf,
  line,
  part,
  startOf,
  type Segment,
} from '../../geometry/segment.ts'
import type { Path } from '../../geometry/path.ts'
import type { Dart, EdgeDart, Level, Piece } from '../../draft/piece.ts'

export type Field = (p: Point) => Point

/** 0 up to `from`, 1 past `to`, level at both: x²(3 − 2x). */
export function ramp(x: number, from: number, to: number): number {
  if (from === to) return x < from ? 0 : 1
  const t = Math.min(1, Math.max(0, (x - from) / (to - from)))
  return t * t * (3 - 2 * t)
}
export const within01 = (t: number): number => Math.min(1, Math.max(0, t))

/** Closer than this a point counts as left alone, mm. */
const STILL = 1e-9
/** A curve is cut into so many parts before it is shifted; more change nothing that is seen. */
const PARTS = 6
/** Step for the direction a field gives, mm. */
const STEP = 1e-3

const still = (field: Field, p: Point): boolean => distance(field(p), p) < STILL

export function shiftedPath(path: Path, field: Field): Path {
  return path.flatMap((s) => shifted(s, field))
}

function shifted(s: Segment, field: Field): Path {
  const probes = [0, 0.2, 0.4, 0.6, 0.8, 1].map((t) => at(s, t))
  if (probes.every((p) => still(field, p))) return [s]
  if (s.kind === 'line') return [line(field(s.from), field(s.to))]
  if (
    probes.every(
      (p) => distance(subtract(field(p), p), subtract(field(probes[0]!), probes[0]!)) < STILL,
    )
  ) {
    const by = subtract(field(probes[0]!), probes[0]!)
    return [carried(s, (p) => add(p, by))]
  }
  return Array.from({ length: PARTS }, (_, i) => {
    const piece = part(s, i / PARTS, (i + 1) / PARTS)
    const [from, to] = [startOf(piece), endOf(piece)]
    const [out, back] = [scale(derivative(piece, 0), 1 / 3), scale(derivative(piece, 1), 1 / 3)]
    return cubic(
      field(from),
      add(field(from), along(field, from, out)),
      subtract(field(to), along(field, to, back)),
      field(to),
    )
  })
}

function carried(s: Segment, go: (p: Point) => Point): Segment {
  if (s.kind === 'line') return line(go(s.from), go(s.to))
  if (s.kind === 'cubic') return cubic(go(s.from), go(s.c1), go(s.c2), go(s.to))
  return { ...s, centre: go(s.centre) }
}

/** What a small way from `p` becomes. */
function along(field: Field, p: Point, way: Point): Point {
  const size = norm(way)
  if (size < STILL) return point(0, 0)
  const h = scale(way, STEP / size)
  return scale(subtract(field(add(p, h)), field(subtract(p, h))), size / (2 * STEP))
}

export function shiftedPiece(piece: Piece, field: Field): Piece {
  return {
    ...piece,
    edges: piece.edges.map((e) => ({ ...e, path: shiftedPath(e.path, field) })),
    darts: piece.darts.map((d) => truedDart(shiftedDart(d, field), d)),
    edgeDarts: piece.edgeDarts.map((d) => truedEdgeDart(shiftedEdgeDart(d, field), d)),
    points: Object.fromEntries(Object.entries(piece.points).map(([n, p]) => [n, field(p)])),
    levels: piece.levels.map((l) => shiftedLevel(l, field)),
  }
}

const shiftedLevel = (l: Level, field: Field): Level => {
  const from = field(l.from)
  return { ...l, from, to: point(l.to.x, l.to.y + from.y - l.from.y) }
}

const shiftedDart = (d: Dart, field: Field): Dart => ({
  ...d,
  upperTip: field(d.upperTip),
  inner: field(d.inner),
  outer: field(d.outer),
  lowerTip: field(d.lowerTip),
  ...(d.open ? { open: { inner: field(d.open.inner), outer: field(d.open.outer) } } : {}),
})
const shiftedEdgeDart = (d: EdgeDart, field: Field): EdgeDart => ({
  ...d,
  tip: field(d.tip),
  upper: field(d.upper),
  lower: field(d.lower),
})

const same = (a: Point, b: Point): boolean => distance(a, b) < STILL

/** Both tips on the line that halves the mouth, so that the legs are equal in pairs. */
export function truedDart(now: Dart, before?: Dart): Dart {
  if (
    before &&
    same(now.inner, before.inner) &&
    same(now.outer, before.outer) &&
    same(now.upperTip, before.upperTip) &&
    same(now.lowerTip, before.lowerTip)
  )
    return now
  const on = halving(now.inner, now.outer)
  const lowerTip = on(now.lowerTip)
  return { ...now, upperTip: on(now.upperTip), lowerTip }
}
export function truedEdgeDart(now: EdgeDart, before?: EdgeDart): EdgeDart {
  if (
    before &&
    same(now.upper, before.upper) &&
    same(now.lower, before.lower) &&
    same(now.tip, before.tip)
  )
    return now
  return { ...now, tip: halving(now.upper, now.lower)(now.tip) }
}

/** Brings a point square onto the line that halves a mouth. */
export function halving(a: Point, b: Point): (p: Point) => Point {
  const middle = scale(add(a, b), 0.5)
  const mouth = subtract(b, a)
  const size = norm(mouth)
  if (size < STILL) return (p) => p
  return (p) => {
    const off = ((p.x - middle.x) * mouth.x + (p.y - middle.y) * mouth.y) / (size * size)
    return subtract(p, scale(mouth, off))
  }
}

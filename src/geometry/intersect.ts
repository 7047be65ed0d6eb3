/**
 * Where two segments cross. Lines meet lines and arcs by formula and cubics at the zeros of the
 * cubic's height over them; two curves by halving both until the boxes part or the pieces are
 * straight, then Newton on the pair of parameters.
 */
import { cubicZeros } from './cubic-zeros.ts'
import { boxesMeet, hull, type Box } from './box.ts'
import { cross, distance, dot, subtract, type Point } from './point.ts'
import { at, derivative, part, type Arc, type Cubic, type Line, type Segment } from './segment.ts'
import type { Path, Place } from './path.ts'

export interface Crossing {
  readonly t: number
  readonly u: number
  readonly at: Point
}

const INSIDE = 1e-9
const within = (t: number): boolean => t >= -INSIDE && t <= 1 + INSIDE
const clip = (t: number): number => Math.min(1, Math.max(0, t))

/** Crossings of a (parameter t) with b (parameter u). Segments that lie on each other give none. */
export function intersect(a: Segment, b: Segment): Crossing[] {
  if (a.kind === 'line' && b.kind === 'line') return lineLine(a, b)
  if (a.kind === 'line' && b.kind === 'arc') return lineArc(a, b)
  if (a.kind === 'arc' && b.kind === 'line') return turnedAbout(lineArc(b, a))
  if (a.kind === 'cubic' && b.kind === 'line') return cubicLine(a, b)
  if (a.kind === 'line' && b.kind === 'cubic') return turnedAbout(cubicLine(b, a))
  return unique(byHalving(stretch(a, 0, 1), stretch(b, 0, 1), 0, []))
}

const turnedAbout = (list: readonly Crossing[]): Crossing[] =>
  list.map(({ t, u, at }) => ({ t: u, u: t, at }))

function lineLine(a: Line, b: Line): Crossing[] {
  const [da, db, gap] = [subtract(a.to, a.from), subtract(b.to, b.from), subtract(b.from, a.from)]
  const across = cross(da, db)
  if (Math.abs(across) < 1e-12) return []
  const [t, u] = [cross(gap, db) / across, cross(gap, da) / across]
  return within(t) && within(u) ? [{ t: clip(t), u: clip(u), at: at(a, t) }] : []
}

function lineArc(l: Line, c: Arc): Crossing[] {
  const [d, f] = [subtract(l.to, l.from), subtract(l.from, c.centre)]
  const [qa, qb, qc] = [dot(d, d), 2 * dot(f, d), dot(f, f) - c.radius * c.radius]
  const root = qb * qb - 4 * qa * qc
  if (qa === 0 || root < 0) return []
  return unique(
    [-1, 1].flatMap((sign) => {
      const t = (-qb + sign * Math.sqrt(root)) / (2 * qa)
      const p = at(l, t)
      const u = turnTo(c, Math.atan2(p.y - c.centre.y, p.x - c.centre.x))
      return within(t) && u !== undefined ? [{ t: clip(t), u, at: p }] : []
    }),
  )
}

function cubicLine(c: Cubic, l: Line): Crossing[] {
  const long = distance(l.from, l.to)
  if (long === 0) return []
  const w = (l.to.x - l.from.x) / long
  const h = (l.to.y - l.from.y) / long
  const off = l.from.x * h - l.from.y * w
  const found: Crossing[] = []
  for (const t of cubicZeros(
    w * c.from.y - h * c.from.x + off,
    w * c.c1.y - h * c.c1.x + off,
    w * c.c2.y - h * c.c2.x + off,
    w * c.to.y - h * c.to.x + off,
  )) {
    const p = at(c, t)
    const u = (w * (p.x - l.from.x) + h * (p.y - l.from.y)) / long
    if (within(u)) found.push({ t, u: clip(u), at: p })
  }
  return found
}

/** The arc's own parameter for a compass direction, if the arc reaches it. */
function turnTo(c: Arc, angle: number): number | undefined {
  const turns = [-2, -1, 0, 1, 2].map((k) => (angle + k * 2 * Math.PI - c.start) / c.sweep)
  const hit = turns.find(within)
  return hit === undefined ? undefined : clip(hit)
}

/** A part of a segment with the box that holds it. */
interface Stretch {
  readonly s: Segment
  readonly from: number
  readonly to: number
  readonly box: Box
}
const stretch = (s: Segment, from: number, to: number): Stretch => ({
  s,
  from,
  to,
  box: hull(from === 0 && to === 1 ? s : part(s, from, to)),
})
const halves = ({ s, from, to }: Stretch): readonly [Stretch, Stretch] => {
  const middle = (from + to) / 2
  return [stretch(s, from, middle), stretch(s, middle, to)]
}

function byHalving(a: Stretch, b: Stretch, depth: number, found: Crossing[]): Crossing[] {
  if (!boxesMeet(a.box, b.box)) return found
  if (depth >= DEEPEST) {
    const hit = newton(a.s, b.s, (a.from + a.to) / 2, (b.from + b.to) / 2)
    if (hit) found.push(hit)
    return found
  }
  const [bs, next] = [halves(b), depth + 1]
  for (const half of halves(a)) for (const other of bs) byHalving(half, other, next, found)
  return found
}
/** So small a part of a drawn curve is straight. */
const DEEPEST = 12

function newton(a: Segment, b: Segment, t: number, u: number): Crossing | undefined {
  for (let i = 0; i < 12; i++) {
    const gap = subtract(at(b, u), at(a, t))
    const [da, db] = [derivative(a, t), derivative(b, u)]
    const across = cross(da, db)
    if (Math.abs(across) < 1e-12) return undefined
    t += cross(gap, db) / across
    u += cross(gap, da) / across
    if (!Number.isFinite(t) || Math.abs(t) > 2 || Math.abs(u) > 2) return undefined
  }
  const [p, q] = [at(a, t), at(b, u)]
  if (!within(t) || !within(u) || Math.hypot(p.x - q.x, p.y - q.y) > 1e-6) return undefined
  return { t: clip(t), u: clip(u), at: p }
}

const unique = (list: readonly Crossing[]): Crossing[] =>
  list.filter(
    (c, i) => list.findIndex((o) => Math.abs(o.t - c.t) < 1e-6 && Math.abs(o.u - c.u) < 1e-6) === i,
  )

/** All crossings of a path with one segment, with their places on the path. */
export const crossings = (path: Path, s: Segment): { place: Place; u: number; at: Point }[] =>
  path.flatMap((own, index) =>
    intersect(own, s).map(({ t, u, at }) => ({ place: { index, t }, u, at })),
  )

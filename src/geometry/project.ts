/** The place on a path nearest to a point: by formula on lines and arcs, searched on cubics. */
import { hull, type Box } from './box.ts'
import { distance, dot, subtract, type Point } from './point.ts'
import { at, derivative, type Cubic, type Segment } from './segment.ts'
import type { Path, Place } from './path.ts'

export interface Nearest {
  readonly place: Place
  readonly at: Point
  readonly distance: number
}

const SAMPLES = 24

function nearestT(s: Segment, p: Point): number {
  switch (s.kind) {
    case 'line': {
      const d = subtract(s.to, s.from)
      const square = dot(d, d)
      return square === 0 ? 0 : clip(dot(subtract(p, s.from), d) / square)
    }
    case 'arc': {
      const angle = Math.atan2(p.y - s.centre.y, p.x - s.centre.x)
      const turns = [-2, -1, 0, 1, 2].map((k) => (angle + 2 * k * Math.PI - s.start) / s.sweep)
      const away = (t: number): number => distance(at(s, clip(t)), p)
      return clip(turns.reduce((best, t) => (away(t) < away(best) ? t : best)))
    }
    case 'cubic':
      return nearestOnCubic(s, p)
  }
}
const clip = (t: number): number => Math.min(1, Math.max(0, t))

/** Sampled first; each sample nearer than its neighbours is followed to the foot beside it. */
function nearestOnCubic(s: Cubic, p: Point): number {
  const away = SAMPLED.map((t) => squared(at(s, t), p))
  let [best, least] = [0, Infinity]
  for (let i = 0; i <= SAMPLES; i++) {
    if (away[i]! > (away[i - 1] ?? Infinity) || away[i]! > (away[i + 1] ?? Infinity)) continue
    if (away[i]! < least) [best, least] = [SAMPLED[i]!, away[i]!]
    for (const from of STARTS[i]!) {
      const t = footBeside(s, p, from)
      const here = squared(at(s, t), p)
      if (here < least) [best, least] = [t, here]
    }
  }
  return best
}
/** From an end whose handles have no length nothing leads on; so it is begun beside it as well. */
const STARTS = Array.from({ length: SAMPLES + 1 }, (_, i) => [
  i / SAMPLES,
  ...(i === 0 ? [0.5 / SAMPLES] : i === SAMPLES ? [1 - 0.5 / SAMPLES] : []),
])
const SAMPLED = Array.from({ length: SAMPLES + 1 }, (_, i) => i / SAMPLES)

/**
 * Beside a sample nearer than its neighbours (q − p)·q′ changes from coming to going: Newton's
 * steps on it, held between the neighbours.
 */
function footBeside(s: Cubic, p: Point, sample: number): number {
  let [low, high] = [Math.max(0, sample - 1 / SAMPLES), Math.min(1, sample + 1 / SAMPLES)]
  let t = sample
  while (high - low > NEAR) {
    const [gap, d] = [subtract(at(s, t), p), derivative(s, t)]
    const going = dot(gap, d)
    if (going < 0) low = t
    else high = t
    const next = t - going / (dot(d, d) + dot(gap, second(s, t)))
    const held = next > low && next < high ? next : (low + high) / 2
    if (Math.abs(held - t) < NEAR) return held
    t = held
  }
  return t
}
/** A t this near is found. */
const NEAR = 1e-12

const squared = (q: Point, p: Point): number => (q.x - p.x) ** 2 + (q.y - p.y) ** 2

/** Second derivative by t. */
function second({ from, c1, c2, to }: Cubic, t: number): Point {
  const [a, b] = [6 * (1 - t), 6 * t]
  return {
    x: a * (c2.x - 2 * c1.x + from.x) + b * (to.x - 2 * c2.x + c1.x),
    y: a * (c2.y - 2 * c1.y + from.y) + b * (to.y - 2 * c2.y + c1.y),
  }
}

/** Segments whose box is farther away than the nearest so far are passed over. */
export function project(path: Path, p: Point): Nearest {
  let best: Nearest | undefined
  for (const [index, s] of path.entries()) {
    if (best && toBox(hull(s), p) > best.distance) continue
    const t = nearestT(s, p)
    const q = at(s, t)
    const away = distance(q, p)
    if (!best || away < best.distance) best = { place: { index, t }, at: q, distance: away }
  }
  if (!best) throw new Error('project: a path without segments')
  return best
}

/** From a point to the nearest point of a box; nought inside. */
function toBox(b: Box, p: Point): number {
  const x = Math.max(b.left - p.x, 0, p.x - b.right)
  const y = Math.max(b.top - p.y, 0, p.y - b.bottom)
  return Math.sqrt(x * x + y * y)
}

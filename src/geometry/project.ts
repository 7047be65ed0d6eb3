/** The place on a path nearest to a point: by formula on lines and arcs, searched on cubics. */
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

/** Sampled first, then golden section between the neighbours of the best sample, then Newton. */
function nearestOnCubic(s: Cubic, p: Point): number {
  const away = (t: number): number => {
    const q = at(s, t)
    return (q.x - p.x) ** 2 + (q.y - p.y) ** 2
  }
  let best = 0
  for (let i = 0; i <= SAMPLES; i++) if (away(i / SAMPLES) < away(best)) best = i / SAMPLES
  let [low, high] = [Math.max(0, best - 1 / SAMPLES), Math.min(1, best + 1 / SAMPLES)]
  const ratio = (Math.sqrt(5) - 1) / 2
  while (high - low > 1e-10) {
    const [a, b] = [high - ratio * (high - low), low + ratio * (high - low)]
    if (away(a) < away(b)) high = b
    else low = a
  }
  const t = (low + high) / 2
  // One Newton step on (q − p)·q′ = 0 removes the flat bottom of the squared distance.
  const [gap, d] = [subtract(at(s, t), p), derivative(s, t)]
  const speed = dot(d, d)
  const better = speed > 0 ? Math.min(1, Math.max(0, t - dot(gap, d) / speed)) : t
  return away(better) <= away(t) ? better : t
}

export function project(path: Path, p: Point): Nearest {
  const all = path.map((s, index) => {
    const t = nearestT(s, p)
    const q = at(s, t)
    return { place: { index, t }, at: q, distance: Math.hypot(q.x - p.x, q.y - p.y) }
  })
  return all.reduce((best, n) => (n.distance < best.distance ? n : best))
}

/**
 * Length along lines, arcs and cubics. Cubics by five-point Gauss–Legendre quadrature, halved
 * until two halves agree with the whole (error under LENGTH_ERROR for any curve a piece has,
 * cusps included, because halving goes on where it must).
 * Nodes and weights: Abramowitz & Stegun, Handbook of Mathematical Functions, table 25.4, n = 5.
 */
import { derivative, type Cubic, type Segment } from './segment.ts'
import { distance } from './point.ts'
import type { Path } from './path.ts'
import { LENGTH_ERROR } from './tolerance.ts'

const NODES = [0, 0.5384693101056831, 0.906179845938664]
const WEIGHTS = [0.5688888888888889, 0.4786286704993665, 0.2369268850561891]
const DEEPEST = 24
/**
 * Two halves may agree with the whole by chance where a curve doubles back on itself; one whose
 * handles run much farther than its chord is halved this often before agreement counts.
 */
const BENT = { times: 1.6, depth: 6 }

function quadrature(s: Cubic, t0: number, t1: number): number {
  const [half, middle] = [(t1 - t0) / 2, (t1 + t0) / 2]
  const speed = (t: number): number => {
    const d = derivative(s, t)
    return Math.hypot(d.x, d.y)
  }
  let sum = WEIGHTS[0]! * speed(middle)
  for (const i of [1, 2])
    sum += WEIGHTS[i]! * (speed(middle - half * NODES[i]!) + speed(middle + half * NODES[i]!))
  return sum * half
}

function halving(
  s: Cubic,
  t0: number,
  t1: number,
  whole: number,
  depth: number,
  trust: number,
): number {
  const middle = (t0 + t1) / 2
  const [a, b] = [quadrature(s, t0, middle), quadrature(s, middle, t1)]
  if ((depth >= trust && Math.abs(a + b - whole) < LENGTH_ERROR / 16) || depth >= DEEPEST)
    return a + b
  return halving(s, t0, middle, a, depth + 1, trust) + halving(s, middle, t1, b, depth + 1, trust)
}

const bent = (s: Cubic): boolean =>
  distance(s.from, s.c1) + distance(s.c1, s.c2) + distance(s.c2, s.to) >
  BENT.times * distance(s.from, s.to)

/** Length of the segment between t0 and t1, mm. */
export function segmentLength(s: Segment, t0 = 0, t1 = 1): number {
  switch (s.kind) {
    case 'line':
      return distance(s.from, s.to) * (t1 - t0)
    case 'arc':
      return s.radius * Math.abs(s.sweep) * (t1 - t0)
    case 'cubic':
      // Halving would go on for ever on a curve that is no curve; that is our own mistake.
      if (
        !Number.isFinite(s.from.x + s.from.y + s.c1.x + s.c1.y + s.c2.x + s.c2.y + s.to.x + s.to.y)
      )
        throw new Error(`segmentLength: a cubic without numbers, from (${s.from.x}, ${s.from.y})`)
      return halving(s, t0, t1, quadrature(s, t0, t1), 0, bent(s) ? BENT.depth : 0)
  }
}

export const pathLength = (path: Path): number => path.reduce((sum, s) => sum + segmentLength(s), 0)

/** The t at which `length` mm of the segment lie behind; bisection on a growing function. */
export function tAtLength(s: Segment, length: number): number {
  if (s.kind !== 'cubic') return length / segmentLength(s)
  let [low, high] = [0, 1]
  while (high - low > 1e-9) {
    const middle = (low + high) / 2
    if (segmentLength(s, 0, middle) < length) low = middle
    else high = middle
  }
  return (low + high) / 2
}

/**
 * Length along lines, arcs and cubics. Cubics by five-point Gauss–Legendre quadrature, halved
 * until two halves agree with the whole (error under LENGTH_ERROR for any curve a piece has,
 * cusps included, because halving goes on where it must).
 * Nodes and weights: Abramowitz & Stegun, Handbook of Mathematical Functions, table 25.4, n = 5.
 */
import type { Cubic, Segment } from './segment.ts'
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

/** Speed of travel at t, mm for each unit of t; written out, because no other sum is done as often. */
function speed({ from, c1, c2, to }: Cubic, t: number): number {
  const u = 1 - t
  const a = 3 * u * u
  const b = 6 * u * t
  const c = 3 * t * t
  const dx = a * (c1.x - from.x) + b * (c2.x - c1.x) + c * (to.x - c2.x)
  const dy = a * (c1.y - from.y) + b * (c2.y - c1.y) + c * (to.y - c2.y)
  return Math.sqrt(dx * dx + dy * dy)
}

function quadrature(s: Cubic, t0: number, t1: number): number {
  const half = (t1 - t0) / 2
  const middle = (t1 + t0) / 2
  let sum = WEIGHTS[0]! * speed(s, middle)
  for (let i = 1; i <= 2; i++) {
    const off = half * NODES[i]!
    sum += WEIGHTS[i]! * (speed(s, middle - off) + speed(s, middle + off))
  }
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
  const a = quadrature(s, t0, middle)
  const b = quadrature(s, middle, t1)
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
      return t0 === 0 && t1 === 1 ? wholeLength(s) : cubicLength(s, t0, t1)
  }
}

function cubicLength(s: Cubic, t0: number, t1: number): number {
  // Halving would go on for ever on a curve that is no curve; that is our own mistake.
  if (!Number.isFinite(s.from.x + s.from.y + s.c1.x + s.c1.y + s.c2.x + s.c2.y + s.to.x + s.to.y))
    throw new Error(`segmentLength: a cubic without numbers, from (${s.from.x}, ${s.from.y})`)
  const trust = bent(s) ? BENT.depth : 0
  const ends = [...turns(s, t0, t1), t1]
  let [sum, from] = [0, t0]
  for (const to of ends) {
    sum += halving(s, from, to, quadrature(s, from, to), 0, trust)
    from = to
  }
  return sum
}

/** Slower than this share of its longest handle a curve has all but stopped. */
const STOPPED = 0.05

/**
 * Where the curve stops to run back on itself, in order. Speed has a corner there that quadrature
 * can miss altogether near an end; so the curve is measured in parts that meet in it.
 */
function turns(s: Cubic, t0: number, t1: number): readonly number[] {
  const { from, c1, c2, to } = s
  const legs = [
    [c1.x - from.x, c1.y - from.y],
    [c2.x - c1.x, c2.y - c1.y],
    [to.x - c2.x, to.y - c2.y],
  ] as const
  const long = legs.map(([x, y]) => x * x + y * y)
  const most = Math.max(...long)
  if (most === 0) return []
  const [ux, uy] = legs[long.indexOf(most)]!
  const [a, b, c] = legs.map(([x, y]) => (x * ux + y * uy) / most) as [number, number, number]
  if (Math.min(a, b, c) >= 0) return []
  const slowest = 3 * STOPPED * Math.sqrt(most)
  return rootsOf(a - 2 * b + c, b - a, a)
    .filter((t) => t > t0 && t < t1 && speed(s, t) < slowest)
    .sort((p, q) => p - q)
}

/** Of p·t² + 2q·t + r; the root that would lose figures by subtraction is taken from the other. */
function rootsOf(p: number, q: number, r: number): readonly number[] {
  const square = q * q - p * r
  if (square < 0) return []
  const sum = -(q + Math.sign(q || 1) * Math.sqrt(square))
  return [sum / p, r / sum].filter(Number.isFinite)
}

/** Curves never change, and the same one is measured again and again. */
const known = new WeakMap<Cubic, number>()
function wholeLength(s: Cubic): number {
  const before = known.get(s)
  if (before !== undefined) return before
  const length = cubicLength(s, 0, 1)
  known.set(s, length)
  return length
}

export const pathLength = (path: Path): number => path.reduce((sum, s) => sum + segmentLength(s), 0)

/**
 * The t at which `length` mm of the segment lie behind: the length grows with t at the speed of
 * travel, so Newton's steps lead there; where the curve nearly stands still they are held in.
 */
export function tAtLength(s: Segment, length: number): number {
  const whole = segmentLength(s)
  if (s.kind !== 'cubic') return length / whole
  if (length <= 0 || length >= whole) return length <= 0 ? 0 : 1
  let [low, high] = [0, 1]
  let t = length / whole
  while (high - low > NEAR) {
    const over = segmentLength(s, 0, t) - length
    if (over < 0) low = t
    else high = t
    const next = t - over / speed(s, t)
    if (Math.abs(next - t) < NEAR) return Math.min(1, Math.max(0, next))
    t = next > low && next < high ? next : (low + high) / 2
  }
  return t
}
/** A t this near is found. */
const NEAR = 1e-10

/**
 * Scale, turn and shift together: how one photograph is brought over another. As complex numbers
 * z' = (a + ib) z + (c + id); the four numbers are linear in every condition put to them, so least
 * squares finds them in one step. Any unit, as long as both sides use it.
 */
import type { Point } from '../geometry/point.ts'

export interface Similarity {
  /** Scale times cosine and scale times sine of the turn, clockwise where y grows downwards. */
  readonly a: number
  readonly b: number
  readonly dx: number
  readonly dy: number
}

export const UNMOVED: Similarity = { a: 1, b: 0, dx: 0, dy: 0 }

export const carried = ({ a, b, dx, dy }: Similarity, p: Point): Point => ({
  x: a * p.x - b * p.y + dx,
  y: b * p.x + a * p.y + dy,
})
export const scaleBy = ({ a, b }: Similarity): number => Math.hypot(a, b)
/** Radians. */
export const turnBy = ({ a, b }: Similarity): number => Math.atan2(b, a)

/** First `first`, then `second`. */
export const after = (second: Similarity, first: Similarity): Similarity => {
  const at = carried(second, { x: first.dx, y: first.dy })
  return {
    a: second.a * first.a - second.b * first.b,
    b: second.b * first.a + second.a * first.b,
    dx: at.x,
    dy: at.y,
  }
}
export function inverse({ a, b, dx, dy }: Similarity): Similarity {
  const size = a * a + b * b
  if (size === 0) throw new Error('inverse: a similarity of scale 0 has none')
  const back = { a: a / size, b: -b / size, dx: 0, dy: 0 }
  const at = carried(back, { x: dx, y: dy })
  return { ...back, dx: -at.x, dy: -at.y }
}

/** One condition: factors of a, b, dx, dy, what they should add up to, and how much it counts. */
export interface Condition {
  readonly factors: readonly [number, number, number, number]
  readonly sum: number
  readonly weight: number
}

/** `p` should come to lie on `q`. */
export const onto = (p: Point, q: Point, weight: number): readonly Condition[] => [
  { factors: [p.x, -p.y, 1, 0], sum: q.x, weight },
  { factors: [p.y, p.x, 0, 1], sum: q.y, weight },
]

/** `p` should come to lie on the line through `q` whose unit normal is `n`. */
export const ontoLine = (p: Point, q: Point, n: Point, weight: number): Condition => ({
  factors: [n.x * p.x + n.y * p.y, n.y * p.x - n.x * p.y, n.x, n.y],
  sum: n.x * q.x + n.y * q.y,
  weight,
})

/** The weighted least-squares similarity; undefined when the conditions leave it open. */
export function solved(conditions: readonly Condition[]): Similarity | undefined {
  const m = Array.from({ length: 4 }, () => [0, 0, 0, 0, 0])
  for (const { factors, sum, weight } of conditions)
    for (const [i, row] of m.entries()) {
      const own = weight * (factors[i] ?? 0)
      for (const [j, factor] of factors.entries()) row[j] = (row[j] ?? 0) + own * factor
      row[4] = (row[4] ?? 0) + own * sum
    }
  const solution = eliminated(m)
  const [a, b, dx, dy] = solution ?? []
  if (a === undefined || b === undefined || dx === undefined || dy === undefined) return undefined
  return { a, b, dx, dy }
}

/** A pivot under this share of the largest number is no condition any more. From trial. */
const OPEN = 1e-10

function eliminated(m: number[][]): number[] | undefined {
  const largest = Math.max(...m.flat().map(Math.abs))
  for (let k = 0; k < m.length; k++) {
    const pivot = m.slice(k).reduce((best, row) => (size(row, k) > size(best, k) ? row : best))
    if (!(size(pivot, k) > OPEN * largest)) return undefined
    const at = m.indexOf(pivot)
    ;[m[k], m[at]] = [pivot, m[k] ?? pivot]
    for (const row of m) {
      if (row === pivot) continue
      const factor = (row[k] ?? 0) / (pivot[k] ?? 1)
      for (let j = k; j < row.length; j++) row[j] = (row[j] ?? 0) - factor * (pivot[j] ?? 0)
    }
  }
  return m.map((row, k) => (row[4] ?? 0) / (row[k] ?? 1))
}
const size = (row: readonly number[], k: number): number => Math.abs(row[k] ?? 0)

/**
 * Between the picture and the plane of a flat card: the homography of four corners, and how the
 * card must be turned to look so. Matrices are 3 x 3, row by row.
 * Source: Hartley, Zisserman, Multiple View Geometry in Computer Vision, 2nd ed., chapter 4.1
 * (four points give eight equations).
 */
import type { Point } from '../geometry/point.ts'
import type { Corners } from './card-marker.ts'

export type Homography = readonly number[]

/** The homography that takes each point of `from` to its partner in `to`; null when three lie in line. */
export function homographyOf(from: Corners, to: Corners): Homography | null {
  const rows: number[][] = []
  for (let i = 0; i < 4; i++) {
    const [p, q] = [from[i], to[i]]
    if (!p || !q) throw new Error(`homographyOf: corner ${i} is missing`)
    rows.push([p.x, p.y, 1, 0, 0, 0, -p.x * q.x, -p.y * q.x, q.x])
    rows.push([0, 0, 0, p.x, p.y, 1, -p.x * q.y, -p.y * q.y, q.y])
  }
  const solution = solve(rows)
  return solution && [...solution, 1]
}

/** Where `p` goes under `h`. */
export function project(h: Homography, p: Point): Point {
  const [a = 0, b = 0, c = 0, d = 0, e = 0, f = 0, g = 0, i = 0, j = 0] = h
  const w = g * p.x + i * p.y + j
  return { x: (a * p.x + b * p.y + c) / w, y: (d * p.x + e * p.y + f) / w }
}

/**
 * Shortest over longest scale of `h` at `p`, from the singular values of its derivative there:
 * 1 = seen face-on; for a card far away against its size the cosine of its tilt.
 */
export function squeezeAt(h: Homography, p: Point): number {
  const step = 0.01
  const at = project(h, p)
  const right = project(h, { x: p.x + step, y: p.y })
  const down = project(h, { x: p.x, y: p.y + step })
  const [a, b] = [(right.x - at.x) / step, (down.x - at.x) / step]
  const [c, d] = [(right.y - at.y) / step, (down.y - at.y) / step]
  const sum = Math.hypot(a + d, c - b)
  const difference = Math.hypot(a - d, c + b)
  return Math.abs(sum - difference) / (sum + difference)
}

/** Gauss elimination with row exchange; each row is 8 factors and the right-hand side. */
function solve(rows: readonly (readonly number[])[]): number[] | null {
  const m = rows.map((row) => [...row])
  const n = m.length
  const at = (r: number, c: number): number => m[r]?.[c] ?? 0
  for (let k = 0; k < n; k++) {
    let best = k
    for (let r = k + 1; r < n; r++) if (Math.abs(at(r, k)) > Math.abs(at(best, k))) best = r
    const [top, pivot] = [m[k], m[best]]
    if (!top || !pivot || Math.abs(at(best, k)) < SINGULAR) return null
    m[k] = pivot
    m[best] = top
    for (let r = 0; r < n; r++) {
      const row = m[r]
      if (r === k || !row) continue
      const factor = at(r, k) / at(k, k)
      for (let c = k; c <= n; c++) row[c] = at(r, c) - factor * at(k, c)
    }
  }
  return m.map((row, k) => (row[n] ?? 0) / (row[k] ?? 1))
}
/** Below this a pivot is rounding noise: coordinates are of the order 1 to 10 000. From trial. */
const SINGULAR = 1e-9

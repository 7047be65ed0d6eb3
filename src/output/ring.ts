/** Closed rings of points against upright boxes: does any part of the ring's inside lie there? */
import { boxOfPoints, type Box } from '../geometry/box.ts'
import type { Point } from '../geometry/point.ts'

export type Ring = readonly Point[]

/** True when the inside of the ring and the box have a part in common, be it a corner. */
export function meetsBox(ring: Ring, box: Box): boolean {
  const own = boxOfPoints(ring)
  if (own.right < box.left || own.left > box.right || own.bottom < box.top || own.top > box.bottom)
    return false
  if (ring.some((p, i) => edgeMeets(p, ring[(i + 1) % ring.length] ?? p, box))) return true
  // No line of the ring touches the box: it lies wholly inside or wholly outside.
  return inside(ring, { x: (box.left + box.right) / 2, y: (box.top + box.bottom) / 2 })
}

/** Liang & Barsky, "A new concept and method for line clipping", ACM Trans. Graphics 3 (1984). */
function edgeMeets(a: Point, b: Point, box: Box): boolean {
  let [from, to] = [0, 1]
  const [dx, dy] = [b.x - a.x, b.y - a.y]
  const sides: readonly (readonly [number, number])[] = [
    [-dx, a.x - box.left],
    [dx, box.right - a.x],
    [-dy, a.y - box.top],
    [dy, box.bottom - a.y],
  ]
  for (const [way, room] of sides) {
    if (way === 0) {
      if (room < 0) return false
    } else if (way < 0) from = Math.max(from, room / way)
    else to = Math.min(to, room / way)
  }
  return from <= to
}

/** Even–odd rule. */
export function inside(ring: Ring, p: Point): boolean {
  let odd = false
  for (const [i, a] of ring.entries()) {
    const b = ring[(i + 1) % ring.length] ?? a
    if (a.y > p.y !== b.y > p.y && p.x < ((b.x - a.x) * (p.y - a.y)) / (b.y - a.y) + a.x) odd = !odd
  }
  return odd
}

/**
 * Is a layout free of overlap and on the cloth? A second road, without no-fit regions: the edges
 * of every two pieces as they lie must not meet, and no piece may hold another.
 */
import { extentOf, movedOutline, type Extent, type Outline } from './outline.ts'
import type { Layout, Strip } from './strip.ts'

/** Beyond an edge of the cloth by rounding only. */
const ROUNDING = 1e-9

export function isSound(strip: Strip, layout: Layout): boolean {
  const lying = layout.placed.map((p) => {
    const pose = strip.pieces[p.piece]!.poses[p.pose]!
    const ring = movedOutline(pose.outline, p.x, p.y)
    return { ring, at: extentOf(ring) }
  })
  const slack = strip.width * ROUNDING
  const onCloth = lying.every(
    ({ at }) =>
      at.left >= -slack &&
      at.low >= -slack &&
      at.high <= strip.width + slack &&
      at.right <= layout.length + slack,
  )
  if (!onCloth || lying.length !== strip.pieces.length) return false
  return lying.every((p, i) =>
    lying.every((q, j) => j <= i || apart(p.at, q.at) || !overlap(p.ring, q.ring)),
  )
}

const apart = (p: Extent, q: Extent): boolean =>
  p.right < q.left || q.right < p.left || p.high < q.low || q.high < p.low

/** Do two outlines share any point, be it only of their edges? */
export function overlap(a: Outline, b: Outline): boolean {
  for (let i = 0; i < a.length; i += 2)
    for (let j = 0; j < b.length; j += 2) if (edgesMeet(a, i, b, j)) return true
  return inside(a, b[0]!, b[1]!) || inside(b, a[0]!, a[1]!)
}

function edgesMeet(a: Outline, i: number, b: Outline, j: number): boolean {
  const [i2, j2] = [(i + 2) % a.length, (j + 2) % b.length]
  const side1 = side(a, i, i2, b[j]!, b[j + 1]!)
  const side2 = side(a, i, i2, b[j2]!, b[j2 + 1]!)
  if ((side1 > 0 && side2 > 0) || (side1 < 0 && side2 < 0)) return false
  const side3 = side(b, j, j2, a[i]!, a[i + 1]!)
  const side4 = side(b, j, j2, a[i2]!, a[i2 + 1]!)
  if ((side3 > 0 && side4 > 0) || (side3 < 0 && side4 < 0)) return false
  // In one line: they meet only where their extents do.
  const [dx, dy] = [a[i2]! - a[i]!, a[i2 + 1]! - a[i + 1]!]
  if (side1 !== 0 || side2 !== 0) return true
  const along = (x: number, y: number): number => (x - a[i]!) * dx + (y - a[i + 1]!) * dy
  const [s, t] = [along(b[j]!, b[j + 1]!), along(b[j2]!, b[j2 + 1]!)]
  return Math.max(s, t) >= 0 && Math.min(s, t) <= dx * dx + dy * dy
}

function side(r: Outline, from: number, to: number, x: number, y: number): number {
  const [ax, ay] = [r[from]!, r[from + 1]!]
  return (r[to]! - ax) * (y - ay) - (r[to + 1]! - ay) * (x - ax)
}

function inside(ring: Outline, x: number, y: number): boolean {
  let within = false
  for (let i = 0, j = ring.length - 2; i < ring.length; j = i, i += 2) {
    const [ay, by] = [ring[i + 1]!, ring[j + 1]!]
    if (ay > y !== by > y && x < ring[i]! + ((y - ay) / (by - ay)) * (ring[j]! - ring[i]!))
      within = !within
  }
  return within
}

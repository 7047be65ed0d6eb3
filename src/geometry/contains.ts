/** Is a point inside a closed ring of points, or within `edge` mm of it? Even–odd rule. */
import { distance, type Point } from './point.ts'
import { line } from './segment.ts'
import { project } from './project.ts'

export function contains(ring: readonly Point[], p: Point, edge = 0.05): boolean {
  let inside = false
  for (const [i, a] of ring.entries()) {
    const b = ring[(i + 1) % ring.length]!
    if (distance(a, b) > 0 && project([line(a, b)], p).distance <= edge) return true
    if (a.y > p.y !== b.y > p.y && p.x < ((b.x - a.x) * (p.y - a.y)) / (b.y - a.y) + a.x)
      inside = !inside
  }
  return inside
}

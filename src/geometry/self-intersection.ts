/** Does an outline cut itself? Neighbours may share their end; anything else is a fault. */
import type { Point } from './point.ts'
import { flatten, type Path } from './path.ts'
import { intersect } from './intersect.ts'
import { line } from './segment.ts'
import { SAME_POINT } from './tolerance.ts'

const COARSE = 0.05

/** Places where a closed path meets itself other than at its joins; empty for a sound outline. */
export function selfIntersections(closed: Path): Point[] {
  const points = flatten(closed, COARSE)
  const chords = points
    .slice(1)
    .map((p, i) => line(points[i]!, p))
    .filter((l) => l.from.x !== l.to.x || l.from.y !== l.to.y)
  const last = chords.length - 1
  const found: Point[] = []
  for (let i = 0; i <= last; i++)
    for (let j = i + 1; j <= last; j++) {
      const [a, b] = [chords[i]!, chords[j]!]
      if (
        Math.min(a.from.y, a.to.y) > Math.max(b.from.y, b.to.y) ||
        Math.min(b.from.y, b.to.y) > Math.max(a.from.y, a.to.y)
      )
        continue
      const neighbours = j === i + 1 || (i === 0 && j === last)
      for (const c of intersect(a, b)) {
        const joint = j === i + 1 ? a.to : a.from
        const atJoint = Math.hypot(c.at.x - joint.x, c.at.y - joint.y) < SAME_POINT * 100
        if (!(neighbours && atJoint)) found.push(c.at)
      }
    }
  return found
}

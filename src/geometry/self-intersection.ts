/**
 * Does an outline cut itself? Neighbours may share their end; anything else is a fault. Chords
 * are swept from the top of the page, so that only those at one height are held together.
 */
import type { Point } from './point.ts'
import { flatten, type Path } from './path.ts'
import { intersect } from './intersect.ts'
import { line, type Line } from './segment.ts'
import { SAME_POINT } from './tolerance.ts'

/** Chords this near the curve: a crossing that matters on paper is far larger. */
const COARSE = 0.1

interface Chord {
  readonly l: Line
  readonly i: number
  readonly top: number
  readonly bottom: number
}

/** Places where a closed path meets itself other than at its joins; empty for a sound outline. */
export function selfIntersections(closed: Path): Point[] {
  const points = flatten(closed, COARSE).filter(
    (p, i, all) => i === 0 || p.x !== all[i - 1]!.x || p.y !== all[i - 1]!.y,
  )
  const last = points.length - 2
  const chords = points.slice(1).map((p, i): Chord => {
    const from = points[i]!
    return { l: line(from, p), i, top: Math.min(from.y, p.y), bottom: Math.max(from.y, p.y) }
  })
  const found: Point[] = []
  let open: Chord[] = []
  for (const b of chords.sort((x, y) => x.top - y.top)) {
    open = open.filter((a) => a.bottom >= b.top)
    for (const a of open) if (overlapAcross(a.l, b.l)) found.push(...meetings(a, b, last))
    open.push(b)
  }
  return found
}

const overlapAcross = (a: Line, b: Line): boolean =>
  Math.max(a.from.x, a.to.x) >= Math.min(b.from.x, b.to.x) &&
  Math.max(b.from.x, b.to.x) >= Math.min(a.from.x, a.to.x)

function meetings(a: Chord, b: Chord, last: number): Point[] {
  const [first, second] = a.i < b.i ? [a, b] : [b, a]
  const joint =
    second.i === first.i + 1
      ? first.l.to
      : first.i === 0 && second.i === last
        ? first.l.from
        : undefined
  return intersect(a.l, b.l)
    .map((c) => c.at)
    .filter((p) => !joint || Math.hypot(p.x - joint.x, p.y - joint.y) > SAME_POINT * 100)
}

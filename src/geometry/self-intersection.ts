/**
 * Does an outline cut itself? Neighbours may share their end; anything else is a fault. Chords
 * are swept from the top of the page, so that only those at one height are held together.
 */
import type { Point } from './point.ts'
import { flatten, type Path } from './path.ts'
import { intersect } from './intersect.ts'
import { line, type Line } from './segment.ts'

/** Chords this near the curve: a crossing that matters on paper is far larger. */
const COARSE = 0.1

interface Chord {
  readonly l: Line
  readonly i: number
  readonly top: number
  readonly bottom: number
}

/**
 * Places where a closed path meets itself other than at its joins; empty for a sound outline.
 * Neighbours are straight and share an end: they have nothing else in common.
 */
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
  const open: Chord[] = []
  for (const b of chords.sort((x, y) => x.top - y.top)) {
    let kept = 0
    for (const a of open) {
      if (a.bottom < b.top) continue
      open[kept++] = a
      const apart = Math.abs(a.i - b.i)
      if (apart > 1 && apart < last && overlapAcross(a.l, b.l))
        for (const { at } of intersect(a.l, b.l)) found.push(at)
    }
    open.length = kept
    open.push(b)
  }
  return found
}

const overlapAcross = (a: Line, b: Line): boolean =>
  Math.max(a.from.x, a.to.x) >= Math.min(b.from.x, b.to.x) &&
  Math.max(b.from.x, b.to.x) >= Math.min(a.from.x, a.to.x)

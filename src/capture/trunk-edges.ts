/**
 * The two edges of the trunk in a photograph, where they were really seen: the outline carries
 * them on straight behind arms and hands, and such a stretch tells nothing about where she stands.
 */
import type { Point } from '../geometry/point.ts'
import type { OutlineRow } from './reading.ts'

export interface TrunkEdge {
  readonly points: readonly Point[]
  /** Where the edge lies at a height and how it leans there (across for each step down), if seen. */
  at(y: number): { readonly x: number; readonly lean: number } | undefined
}

/** An edge carried on lies on a straight line to the last digit; a seen one never does, px. */
const STRAIGHT = 1e-6
/** Of five neighbouring rows so many must bend for the edge to be seen there. */
const BENT = 3
/** The lean is taken over so many rows to each side: one row strays by a pixel. */
const LEAN_ROWS = 5

export function trunkEdge(
  outline: readonly OutlineRow[],
  side: 'left' | 'right',
  from: number,
  to: number,
): TrunkEdge {
  const bends = outline.map((row, k) => {
    const [above, below] = [outline[k - 1], outline[k + 1]]
    return above && below && Math.abs(above[side] - 2 * row[side] + below[side]) > STRAIGHT
  })
  const seen = (k: number): boolean =>
    bends.slice(Math.max(0, k - 2), k + 3).filter(Boolean).length >= BENT
  // Row y means the row's centre.
  const points = outline.flatMap((row, k): Point[] => {
    const y = row.y + 0.5
    return y >= from && y <= to && seen(k) ? [{ x: row[side], y }] : []
  })
  const byRow = new Map(points.map((p) => [p.y - 0.5, p.x]))
  return {
    points,
    at(y) {
      const row = Math.floor(y - 0.5)
      const [here, next] = [byRow.get(row), byRow.get(row + 1)]
      const [above, below] = [byRow.get(row - LEAN_ROWS), byRow.get(row + LEAN_ROWS)]
      if ([here, next, above, below].includes(undefined)) return undefined
      const t = y - 0.5 - row
      return {
        x: (here ?? 0) * (1 - t) + (next ?? 0) * t,
        lean: ((below ?? 0) - (above ?? 0)) / (2 * LEAN_ROWS),
      }
    },
  }
}

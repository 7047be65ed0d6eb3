/** The smallest upright rectangle round paths or points. */
import type { Point } from './point.ts'
import { flatten, type Path } from './path.ts'

export interface Box {
  readonly left: number
  readonly top: number
  readonly right: number
  readonly bottom: number
}

export function boxOfPoints(points: readonly Point[]): Box {
  if (points.length === 0) throw new Error('box: no points')
  const [xs, ys] = [points.map((p) => p.x), points.map((p) => p.y)]
  return {
    left: Math.min(...xs),
    top: Math.min(...ys),
    right: Math.max(...xs),
    bottom: Math.max(...ys),
  }
}
export const boxOf = (paths: readonly Path[]): Box => boxOfPoints(paths.flatMap((p) => flatten(p)))
export const grown = (b: Box, by: number): Box => ({
  left: b.left - by,
  top: b.top - by,
  right: b.right + by,
  bottom: b.bottom + by,
})
export const boxWidth = (b: Box): number => b.right - b.left
export const boxHeight = (b: Box): number => b.bottom - b.top

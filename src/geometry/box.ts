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
  let [left, top, right, bottom] = [Infinity, Infinity, -Infinity, -Infinity]
  for (const { x, y } of points) {
    if (x < left) left = x
    if (x > right) right = x
    if (y < top) top = y
    if (y > bottom) bottom = y
  }
  return { left, top, right, bottom }
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
/** Do two boxes have a point in common? */
export const boxesMeet = (a: Box, b: Box): boolean =>
  a.left <= b.right && b.left <= a.right && a.top <= b.bottom && b.top <= a.bottom

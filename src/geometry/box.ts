/** The smallest upright rectangle round paths or points. */
import type { Point } from './point.ts'
import { flatten, type Path } from './path.ts'
import { endOf, startOf, type Segment } from './segment.ts'

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
/** A box that surely holds the segment: control points of a cubic, bulge of an arc. */
export function hull(s: Segment): Box {
  switch (s.kind) {
    case 'cubic':
      return {
        left: Math.min(s.from.x, s.c1.x, s.c2.x, s.to.x),
        right: Math.max(s.from.x, s.c1.x, s.c2.x, s.to.x),
        top: Math.min(s.from.y, s.c1.y, s.c2.y, s.to.y),
        bottom: Math.max(s.from.y, s.c1.y, s.c2.y, s.to.y),
      }
    case 'line':
    case 'arc': {
      const bulge =
        s.kind === 'arc' ? s.radius * (1 - Math.cos(Math.min(Math.PI, Math.abs(s.sweep) / 2))) : 0
      return grown(boxOfPoints([startOf(s), endOf(s)]), bulge)
    }
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
/** Do two boxes have a point in common? */
export const boxesMeet = (a: Box, b: Box): boolean =>
  a.left <= b.right && b.left <= a.right && a.top <= b.bottom && b.top <= a.bottom

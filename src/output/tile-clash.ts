/** Whether a piece lies on another, in squares, and where beyond it may lie again. */
import type { Runs, Shape } from './tile-raster.ts'

/** A shape with its frame's corner at these squares of the board; may be negative. */
export interface Laid {
  /** Which of the inputs. */
  readonly index: number
  readonly shape: Shape
  readonly x: number
  readonly y: number
}

/** Rows between those that are looked at first: a clash is mostly found in a few of them. */
const STRIDE = 9

/** undefined where the place is free; else the next x at which it may be. */
export function blockedUntil(
  laid: readonly Laid[],
  shape: Shape,
  x: number,
  y: number,
): number | undefined {
  for (const other of laid) {
    if (other.x >= x + shape.width || x >= other.x + other.shape.width) continue
    const from = Math.max(y, other.y)
    const to = Math.min(y + shape.height, other.y + other.shape.height)
    for (const step of [STRIDE, 1]) {
      const onward = clearOf(x, shape.body, from - y, other, from - other.y, to - from, step)
      if (onward > x) return onward
    }
  }
  return undefined
}

/** The least place from x on at which no two rows of cloth that were looked at lie together. */
function clearOf(
  x: number,
  own: Runs,
  ownRow: number,
  { x: fixed, shape: { body: its } }: Laid,
  itsRow: number,
  rows: number,
  step: number,
): number {
  let onward = x
  for (let r = 0; r < rows; r += step) {
    const [i0, i1] = [own.starts[ownRow + r] ?? 0, own.starts[ownRow + r + 1] ?? 0]
    const [k0, k1] = [its.starts[itsRow + r] ?? 0, its.starts[itsRow + r + 1] ?? 0]
    for (let i = i0; i < i1; i += 2)
      for (let k = k0; k < k1; k += 2) {
        const first = own.ends[i] ?? 0
        const end = fixed + (its.ends[k + 1] ?? 0)
        const meets = fixed + (its.ends[k] ?? 0) <= onward + (own.ends[i + 1] ?? 0)
        if (meets && onward + first <= end) onward = end + 1 - first
      }
  }
  return onward
}

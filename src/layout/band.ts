/** Where across the strip a pose may lie, and the places of a lattice within bounds. */
import { extentOf } from './outline.ts'
import type { Pose } from './strip.ts'

/** The band the middle of a pose may lie in, and its lattice there; step 0 when it may lie anywhere. */
export interface Band {
  readonly low: number
  readonly high: number
  readonly stepY: number
  readonly offY: number
}

export function bandOf(pose: Pose, width: number): Band {
  const e = extentOf(pose.outline)
  const [middle, half] = [(e.low + e.high) / 2, (e.high - e.low) / 2]
  return {
    low: (pose.low ?? 0) + half,
    high: Math.min(pose.high ?? Infinity, width - 2 * half) + half,
    stepY: pose.across?.step ?? 0,
    offY: pose.across ? pose.across.first + middle : 0,
  }
}

/** Beyond an edge by rounding only. */
const ROUNDING = 1e-9

/** Is the band wide enough for the pose at all? */
export const isWideEnough = (b: Band): boolean => b.low <= b.high + ROUNDING

/** Has it a place, on the lattice if there is one? */
export const hasPlace = (b: Band): boolean =>
  isWideEnough(b) && !Number.isNaN(nearest(b.low, b.low, b.high, b.stepY, b.offY))

/** The nearest allowed place to `v` in [least, most] on a lattice; NaN when there is none. */
export function nearest(v: number, least: number, most: number, step: number, off: number): number {
  if (step === 0) return v < least ? least : v > most ? most : v
  const [from, to] = [
    Math.ceil((least - off) / step - ROUNDING),
    Math.floor((most - off) / step + ROUNDING),
  ]
  if (from > to) return NaN
  const k = Math.round((v - off) / step)
  return off + step * (k < from ? from : k > to ? to : k)
}

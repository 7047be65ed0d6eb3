/**
 * What is to be laid out and how it lies. The strip runs from x = 0 onward without end, its width
 * from y = 0 to `width`. All lengths in one unit, millimetres in this program.
 */
import type { Outline } from './outline.ts'

/** Places allowed along one axis: anywhere, or at `first` and every `step` after and before it. */
export interface Lattice {
  readonly first: number
  readonly step: number
}

/** One way a piece may lie. Turned already: nothing in the layout turns an outline again. */
export interface Pose {
  readonly outline: Outline
  /** Lowest and highest y its lowest edge may have; without them the whole width. */
  readonly low?: number
  readonly high?: number
  /** Where the origin of `outline` may come to lie along and across the cloth. */
  readonly along?: Lattice
  readonly across?: Lattice
  /** For telling only: end for end, or the other side up. */
  readonly round?: true
  readonly over?: true
}

export interface StripPiece {
  readonly id: string
  readonly poses: readonly Pose[]
}

export interface Strip {
  readonly width: number
  readonly pieces: readonly StripPiece[]
  /** Least room left between pieces. */
  readonly gap: number
}

/** The origin of the pose's outline lies at (x, y). */
export interface Placed {
  readonly piece: number
  readonly pose: number
  readonly x: number
  readonly y: number
}

export interface Layout {
  readonly length: number
  readonly placed: readonly Placed[]
}

/**
 * What the pose model says about one photograph, as plain data. Only `detector.ts` makes it;
 * everything else in this room works from it without the model.
 */
import type { Point } from '../geometry/point.ts'

/** A joint of the model: its centre in picture px and how sure the model is, 0 to 1. */
export interface Joint {
  readonly at: Point
  readonly score: number
}

/** How much of each pixel belongs to the person, 0 to 255, row by row, as large as the picture. */
export interface Mask {
  readonly width: number
  readonly height: number
  readonly data: Uint8Array
}

export interface Person {
  readonly score: number
  /** By the model's own names: nose, left_shoulder, … left and right are the person's. */
  readonly joints: Readonly<Record<string, Joint>>
  readonly mask: Mask
}

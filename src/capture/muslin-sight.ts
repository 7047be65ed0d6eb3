/** What the photo of a muslin shows beside the points of the body. Plain data, kept with the photo. */
import type { Point } from '../geometry/point.ts'
import type { FoldsOutcome } from './folds/read-folds.ts'
import type { MuslinLine } from './muslin-lines.ts'

/** The upper place first. */
export type Marks = readonly [Point, Point]

export interface MuslinSight {
  /** Absent where it was not looked for: from the side, or before the photo was read. */
  readonly folds?: FoldsOutcome
  readonly lines: readonly MuslinLine[]
  /** Two places of the body she marked by hand, to lay two photos over each other. */
  readonly marks?: Marks
}

export const NOTHING_SEEN: MuslinSight = { lines: [] }

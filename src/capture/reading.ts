/**
 * One photograph read: the card, the person, and the points the measures are taken between.
 * Plain cloneable data, so that it crosses from the worker to the page and lies in a store;
 * after a point is dragged the numbers follow from it without the model.
 */
import type { Point } from '../geometry/point.ts'
import type { ApexSpot } from './apex-shading.ts'
import type { CardOutcome } from './card.ts'
import type { Refused } from './fault.ts'
import type { Joint } from './person.ts'
import type { Reach, Relief } from './relief.ts'
import type { Tie } from './scale.ts'
import type { FromId } from './seen.ts'

export const VIEWS = ['front', 'side', 'back'] as const
export type View = (typeof VIEWS)[number]

/** Left and right are the wearer's, in every view. */
export const POINT_NAMES = [
  'nape',
  'waistBack',
  'waistFront',
  'bustLevel',
  'apexLeft',
  'apexRight',
  'sideNeckLeft',
  'sideNeckRight',
  'shoulderLeft',
  'shoulderRight',
  'bustLeft',
  'bustRight',
  'bustFront',
  'bustBack',
  'waistLeft',
  'waistRight',
  'hipLeft',
  'hipRight',
  'hipFront',
  'hipBack',
] as const
export type PointName = (typeof POINT_NAMES)[number]

export interface PlacedPoint {
  /** Picture px. */
  readonly at: Point
  /** Standard deviation of the place, px, in the direction the measure uses it. */
  readonly sdPx: number
  /** Why it lies there: a FromId (seen.ts), or a sentence of before. */
  readonly from: string
  /**
   * camera: seen in this photo. lent: seen in another photo, its level carried over here.
   * guess: a usual place to start dragging from; nothing is measured to it. hand: she put it there.
   * dot: the middle of a sticker dot she wears at the place.
   */
  readonly by: 'camera' | 'lent' | 'guess' | 'hand' | 'dot'
}

/** She said herself where it is, with a dot or by dragging; nothing else may move it. */
export const markedByHer = (point: PlacedPoint | undefined): boolean =>
  point?.by === 'hand' || point?.by === 'dot'

/** One row of the outline: where the body begins and ends, px. Arms that hang free are left out. */
export interface OutlineRow {
  readonly y: number
  readonly left: number
  readonly right: number
}

export type PersonOutcome =
  | { readonly ok: true; readonly score: number; readonly joints: Readonly<Record<string, Joint>> }
  | Refused

export interface ViewReading {
  readonly view: View
  readonly size: { readonly width: number; readonly height: number }
  /** Focal length in px where the photo's own data told it. */
  readonly focalPx?: number
  readonly person: PersonOutcome
  readonly card: CardOutcome
  readonly points: Readonly<Partial<Record<PointName, PlacedPoint>>>
  /** The fault (fault.ts) for which a point was not found, though a guess may lie there; dragging removes it. */
  readonly missing: Readonly<Partial<Record<PointName, string>>>
  /** Crown to thigh, top row first; from front and back without the arms below the armpits. */
  readonly outline: readonly OutlineRow[]
  /** From front and back: from this row down the edges are her trunk's own; above, an arm lies on them. px. */
  readonly trunkFrom?: number
  /** Which way she looks in a side view: -1 to the left of the picture, 1 to the right. */
  readonly facing: -1 | 1
  /** Set while estimates are made: how far forward each place of her lies, by the side photo. */
  readonly relief?: Relief
  /** Set while estimates are made: how far the card lies before the trunk's middle, where seen. */
  readonly cardBefore?: Reach
  /** Set while estimates are made: how the other photographs correct this one's scale. */
  readonly tie?: Tie
  /** Front only: places of the chest that could be apexes by the light on them. */
  readonly apexSpots?: readonly ApexSpot[]
  /** Height of the crown over the ears, px, where the mask shows it. */
  readonly crown?: number
}

export type Readings = Readonly<Partial<Record<View, ViewReading>>>

/** A finger or a mouse lands within this many px of where she means (common practice, no source). */
const DRAG_SD_PX = 2

/** A reading with one point where she dragged it. */
export function movePoint(reading: ViewReading, name: PointName, at: Point): ViewReading {
  const { [name]: _reason, ...missing } = reading.missing
  const moved: PlacedPoint = { at, sdPx: DRAG_SD_PX, from: 'ownMark' satisfies FromId, by: 'hand' }
  return { ...reading, points: { ...reading.points, [name]: moved }, missing }
}

/**
 * The reference card that gives a photograph its scale: our printed sheet, found by its marker,
 * or a card of ISO/IEC 7810 size whose corners she taps. Both end in the same refined corners.
 * Picture points are pixels as in picture.ts; the card's own plane is millimetres from its top
 * left corner, x along its first edge, y down.
 * Not for lens distortion, and says nothing about how far the card lies in front of the body.
 */
import { distance } from '../geometry/point.ts'
import { mm, type Mm } from '../units/length.ts'
import { sameMarker, sightMarker, MARKER_CELLS, type Corners } from './card-marker.ts'
import type { Homography } from './card-plane.ts'
import { refineCorners } from './card-refine.ts'
import { clockwise, largeEnough } from './card-shape.ts'
import { refused, type Refused } from './fault.ts'
import { linearGrey, mirrored, type Part, type Picture } from './picture.ts'

export interface Card {
  readonly kind: 'sheet' | 'id1'
  /** Picture pixels, clockwise from the card's own top left. For the sheet: of its black square. */
  readonly corners: Corners
  readonly widthMm: Mm
  readonly heightMm: Mm
  /** 3 x 3, row by row: picture pixels to millimetres in the card's plane. */
  readonly homography: Homography
  /** Millimetres per pixel at the card's middle, its tilt allowed for. */
  readonly mmPerPx: number
  /** Root mean square distance of the seen edges from straight lines, pixels. */
  readonly residualPx: number
  /** Set when other lines near the taps make another card that fits about as well: half the difference in scale. */
  readonly doubt?: number
}

export type CardOutcome = { readonly ok: true; readonly card: Card } | Refused

export interface CardSize {
  readonly widthMm: Mm
  readonly heightMm: Mm
}

/** ISO/IEC 7810:2019, ID-1: a bank card, a library card. */
export const ID1: CardSize = { widthMm: mm(85.6), heightMm: mm(53.98) }
/** The black square of our printed sheet (marker-sheet.ts). */
export const BLACK_SQUARE: CardSize = { widthMm: mm(100), heightMm: mm(100) }

/** Sheets of paper she may tap instead. ISO 216:2007 A4; ANSI/ASME Y14.1 A (Letter). */
export const A4: CardSize = { widthMm: mm(210), heightMm: mm(297) }
export const LETTER: CardSize = { widthMm: mm(215.9), heightMm: mm(279.4) }
/** A rectangle smaller than this gives no scale, a larger one hangs before too much of the body; mm. */
const RECTANGLE = { least: 50, most: 400, longest: 3 } as const

/** A rectangle she measured herself, or why it will not do. */
export function rectangle(
  widthMm: number,
  heightMm: number,
): { readonly ok: true; readonly size: CardSize } | Refused {
  const [short, long] = [Math.min(widthMm, heightMm), Math.max(widthMm, heightMm)]
  const fits = short >= RECTANGLE.least && long <= RECTANGLE.most
  if (!fits || long > RECTANGLE.longest * short) return refused('noGoodRectangle')
  return { ok: true, size: { widthMm: mm(widthMm), heightMm: mm(heightMm) } }
}

/** How far a true corner may lie from a tap, pixels. Beyond it a neighbouring edge is taken too often. */
export const TAP_REACH_PX = 6
/** Copies of the picture the marker is looked for in: half size first, it is quick and enough. */
const SHRINKS = [2, 1, 3, 4]
/** Below this side no sheet and no card can be measured, pixels. */
const SMALLEST_PICTURE_PX = 64

/**
 * Finds the printed sheet and refines the corners of its black square.
 * @param near where the person is: looked in first, at a fraction of the time
 */
export function findSheet(picture: Picture, near?: Part): CardOutcome {
  if (Math.min(picture.width, picture.height) < SMALLEST_PICTURE_PX)
    return refused('pictureTooSmall')
  const grey = linearGrey(picture)
  let lastRefusal: CardOutcome | null = null
  const tries = SHRINKS.map((shrinkBy) => ({ shrinkBy, part: undefined as Part | undefined }))
  if (near) tries.unshift(...SHRINKS.slice(0, 2).map((shrinkBy) => ({ shrinkBy, part: near })))
  for (const { shrinkBy, part } of tries) {
    const [first, ...others] = sightMarker(picture, shrinkBy, part)
    if (!first) continue
    if (others.some((other) => !sameMarker(other, first))) return refused('twoCards')
    // Corners stray by up to two pixels of the copy; a whole cell further in the code begins.
    const cell = distance(first[0], first[2]) / Math.SQRT2 / MARKER_CELLS
    const reach = Math.min(Math.max(2.5, 2 * shrinkBy), 0.8 * cell)
    const outcome = refineCorners(grey, first, BLACK_SQUARE, reach, 'lighter')
    if (outcome.ok) return outcome
    lastRefusal = outcome
  }
  if (lastRefusal) return lastRefusal
  const seenInMirror = sightMarker(mirrored(picture), 2).length > 0
  return refused(seenInMirror ? 'mirrored' : 'noCard')
}

/**
 * Refines four tapped corners, clockwise from the card's top left as she sees it.
 * A card may hang upright or lie across: its width is the edge that fits better.
 * @param size ID1, or BLACK_SQUARE for a sheet whose code cannot be read
 */
export function refineTaps(picture: Picture, taps: Corners, size: CardSize): CardOutcome {
  if (Math.min(picture.width, picture.height) < SMALLEST_PICTURE_PX)
    return refused('pictureTooSmall')
  if (!clockwise(taps)) return refused('outOfOrder')
  if (!largeEnough(taps)) return refused('cardTooSmall')
  return refineCorners(linearGrey(picture), taps, size, TAP_REACH_PX, 'either')
}

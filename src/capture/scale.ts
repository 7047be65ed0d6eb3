/**
 * Millimetres per pixel where the body is, not where the card is. A card nearer to the camera than
 * what is measured looks larger and makes every length too short: 150 mm at 2.5 m is 6 %. How far
 * the card hangs before the body's middle plane depends on where it is held, and is known on
 * average, better from the photos that show her from another side (relief.ts); the focal length
 * of a phone is taken as usual. Distances mm, px.
 */
import { centreOf } from './card-shape.ts'
import { focalOf } from './focal.ts'
import { bodyFrame } from './frame.ts'
import { rowAt } from './outline.ts'
import type { View, ViewReading } from './reading.ts'
import type { Place, Reach } from './relief.ts'
import { USUAL_RELIEF } from './relief.ts'
import type { ScaleId } from './seen.ts'

export type CardPlace = 'waist' | 'hand'

/** What the other photographs say of this one's scale in the body's middle plane (body-height.ts). */
export interface Tie {
  readonly factor: number
  /** Standard deviation of the corrected scale, as a share. */
  readonly sdShare: number
  /** Height in the picture for which it holds, px. */
  readonly y: number
}

/**
 * Card before the trunk's middle at the waist, towards the camera, where the other photographs do not
 * show it. Mean over 16 rendered bodies (truth alone, sheets and bank cards), a held card's spread as
 * measured, a hung card's widened by a half: there it is the body that varies.
 */
export const CARD_BEFORE: Readonly<Record<View, Readonly<Record<CardPlace, Reach>>>> = {
  front: { waist: { mm: 110, sd: 40 }, hand: { mm: 88, sd: 42 } },
  side: { waist: { mm: 199, sd: 30 }, hand: { mm: 345, sd: 35 } },
  back: { waist: { mm: 162, sd: 36 }, hand: { mm: 6, sd: 40 } },
}

/**
 * How far a leaned or propped camera looks up or down, standard deviation in radians: 2 degrees, as the
 * phone's own level shows it (common practice, no source). It changes the scale with the height.
 */
export const PITCH_SD = 0.035

/** The scale by a card strays by this share, beside the fit's own residual (scripts/bench/card.ts). */
const EDGE_SHARE = { sheet: 0.002, id1: 0.008 } as const
/** A card nearer to a wrist than this, in torsos, is held in that hand. */
const IN_HAND = 0.6

const SCALE_BY = {
  sheet: { waist: 'sheetHung', hand: 'sheetHeld' },
  id1: { waist: 'cardHung', hand: 'cardHeld' },
} as const satisfies Record<string, Record<CardPlace, ScaleId>>

export interface Scale {
  readonly mmPerPx: number
  /** Standard deviation as a share of any length, but for the next. */
  readonly sdShare: number
  /**
   * What one standard deviation of the points' own depth, forward, does to a length, as a share; from
   * the back it has the other sign than from the front.
   */
  readonly depthShare: number
  /** For the basis line: which card, and where. */
  readonly by: ScaleId
}

/** Where a place lies behind the trunk's middle as this photo sees it, and how far that strays. */
export function behindIn({ view, relief = USUAL_RELIEF }: ViewReading, place: Place): Reach {
  const { mm, sd } = relief[place]
  return { mm: view === 'front' ? -mm : mm, sd }
}

/** Apexes and waist at the front together: the middle between them. */
export function frontSurface(reading: ViewReading): Reach {
  const [apex, waist] = [behindIn(reading, 'apexes'), behindIn(reading, 'waistFront')]
  return { mm: (apex.mm + waist.mm) / 2, sd: Math.hypot(apex.sd, waist.sd) / 2 }
}

/**
 * @param behind how far the measured points lie behind the trunk's middle (nearer is negative)
 * @param spread its standard deviation
 * @param y their height in the picture, px; where the camera's tilt is not known it costs sureness
 */
export function scaleAt(
  reading: ViewReading,
  behind: number,
  spread: number,
  y?: number,
): Scale | undefined {
  if (!reading.card.ok) return undefined
  const { mmPerPx, corners, residualPx, kind, doubt = 0 } = reading.card.card
  const place = cardPlace(reading)
  const before = reading.cardBefore ?? CARD_BEFORE[reading.view][place]
  const { px: focal, sdShare: focalSd } = focalOf(reading.size, reading.focalPx)
  const middle = (mmPerPx + before.mm / focal) * (reading.tie?.factor ?? 1)
  const there = middle + behind / focal
  const edge = Math.hypot(corners[1].x - corners[0].x, corners[1].y - corners[0].y)
  // Four edges, two ends each, share the residual.
  const card = Math.hypot(EDGE_SHARE[kind], residualPx / edge / 2, doubt)
  const from = reading.tie?.y ?? centreOf(corners).y
  const tilt = y === undefined ? 0 : (PITCH_SD * Math.abs(y - from)) / focal
  const lens = (focalSd * (before.mm + behind)) / focal / there
  const depth = before.sd / focal / there
  const points = spread / focal / there
  const own = Math.hypot(card, depth, lens)
  const tied = reading.tie && Math.hypot(reading.tie.sdShare, (focalSd * behind) / focal / there)
  const forward = reading.view === 'back' ? 1 : -1
  return {
    mmPerPx: there,
    sdShare: Math.hypot(tied ?? own, tilt),
    depthShare: forward * points,
    by: SCALE_BY[kind][place],
  }
}

/** Where the card is: in a hand when a wrist is near it and it lies outside the trunk's middle. */
export function cardPlace(reading: ViewReading): CardPlace {
  if (!reading.card.ok || !reading.person.ok) return 'waist'
  const frame = bodyFrame(reading.person.joints)
  if (!frame) return 'waist'
  const centre = centreOf(reading.card.card.corners)
  const { left_wrist, right_wrist } = reading.person.joints
  // From the side the far hand hangs behind a card on the near hip and does not hold it.
  const nearWrist = reading.facing === -1 ? left_wrist : right_wrist
  const wrists = reading.view === 'side' ? [nearWrist] : [left_wrist, right_wrist]
  const near = wrists.some(
    (wrist) =>
      wrist && Math.hypot(wrist.at.x - centre.x, wrist.at.y - centre.y) < IN_HAND * frame.torso,
  )
  if (reading.view === 'side') return near ? 'hand' : 'waist'
  const row = rowAt(reading.outline, centre.y)
  const inside = row !== undefined && centre.x > row.left && centre.x < row.right
  return near && !inside ? 'hand' : inside ? 'waist' : 'hand'
}

/**
 * Millimetres per pixel where the body is, not where the card is. A card nearer to the camera than
 * what is measured looks larger and makes every length too short: 150 mm at 2.5 m is 6 %. How far
 * the card hangs before the body's middle plane depends on where it is held, and is known on
 * average, better with her own depth and breadth; the focal length of a phone is taken as usual. Distances mm, px.
 */
import type { Point } from '../geometry/point.ts'
import { focalOf } from './focal.ts'
import { bodyFrame } from './frame.ts'
import { rowAt } from './outline.ts'
import type { View, ViewReading } from './reading.ts'

export type CardPlace = 'waist' | 'hand'
type CardKind = 'sheet' | 'id1'

interface Offset {
  /** For a body of the bench's mean build. */
  readonly mm: number
  readonly sd: number
  /** More for each mm of bust depth (front, back) or hip breadth (side) above the mean build. */
  readonly perMm: number
  /**
   * Standard deviation once the build is known. Wider than on the bench (8 to 20 mm): its bodies
   * share one skeleton; a figure of another make lay 40 mm off (tests/photos).
   */
  readonly sdKnown: number
}

/** How deep and how wide she is, mm, from the other photographs. */
export interface Build {
  readonly bustDepth?: number
  readonly hipBreadth?: number
}
/** What the other photographs say of this one's scale in the body's middle plane (body-height.ts). */
export interface Tie {
  readonly factor: number
  /** Standard deviation of the corrected scale, as a share. */
  readonly sdShare: number
}
/** Mean build of the bench's bodies, mm. */
export const MEAN_BUILD = { bustDepth: 235, hipBreadth: 374 } as const

/**
 * Middle plane of the body minus card, towards the camera positive. Source: straight lines through
 * 16 rendered bodies with cards hung below the waist or held in one hand (128 pictures; the card's
 * poses are common practice). A card in the hand follows the arm, not the build, seen from front
 * and back; from the side the hand hangs beside the hip.
 */
const CARD_BEFORE_BODY: Readonly<
  Record<View, Readonly<Record<CardPlace, Readonly<Record<CardKind, Offset>>>>>
> = {
  front: {
    waist: {
      sheet: { mm: 166, sd: 42, perMm: 0.9, sdKnown: 26 },
      id1: { mm: 161, sd: 40, perMm: 0.95, sdKnown: 28 },
    },
    hand: {
      sheet: { mm: 136, sd: 48, perMm: 0, sdKnown: 48 },
      id1: { mm: 130, sd: 45, perMm: 0, sdKnown: 45 },
    },
  },
  side: {
    waist: {
      sheet: { mm: 198, sd: 21, perMm: 0.44, sdKnown: 22 },
      id1: { mm: 198, sd: 25, perMm: 0.44, sdKnown: 24 },
    },
    hand: {
      sheet: { mm: 345, sd: 28, perMm: 0.5, sdKnown: 24 },
      id1: { mm: 346, sd: 26, perMm: 0.5, sdKnown: 24 },
    },
  },
  back: {
    waist: {
      sheet: { mm: 118, sd: 24, perMm: 0.33, sdKnown: 22 },
      id1: { mm: 85, sd: 29, perMm: 0.4, sdKnown: 28 },
    },
    hand: {
      sheet: { mm: -45, sd: 42, perMm: 0, sdKnown: 42 },
      id1: { mm: -45, sd: 48, perMm: 0, sdKnown: 48 },
    },
  },
}

function cardOffset(
  view: View,
  offset: Offset,
  build: Build | undefined,
): { mm: number; sd: number } {
  const measure = view === 'side' ? 'hipBreadth' : 'bustDepth'
  const known = build?.[measure]
  if (known === undefined) return offset
  return { mm: offset.mm + offset.perMm * (known - MEAN_BUILD[measure]), sd: offset.sdKnown }
}

/**
 * How far the apexes lie before the middle plane: the deeper the bust, the further. Straight line
 * through the 16 bodies; without a depth their mean.
 */
export function apexesBefore(build: Build | undefined): { mm: number; sd: number } {
  const depth = build?.bustDepth
  return depth === undefined ? { mm: 172, sd: 30 } : { mm: 8 + 0.7 * depth, sd: 20 }
}

/** The scale by a card strays by this share, beside the fit's own residual (scripts/bench/card.ts). */
const EDGE_SHARE = { sheet: 0.002, id1: 0.008 } as const
/** A card nearer to a wrist than this, in torsos, is held in that hand. */
const IN_HAND = 0.6

export interface Scale {
  readonly mmPerPx: number
  /** Standard deviation as a share of any length. */
  readonly sdShare: number
  /** For the basis line: "card at the waist". */
  readonly words: string
}

/**
 * @param behind how far the measured points lie behind the body's middle plane (nearer is negative)
 * @param spread its standard deviation
 */
export function scaleAt(reading: ViewReading, behind: number, spread: number): Scale | undefined {
  if (!reading.card.ok) return undefined
  const { mmPerPx, corners, residualPx, kind, doubt = 0 } = reading.card.card
  const place = cardPlace(reading)
  const offset = cardOffset(
    reading.view,
    CARD_BEFORE_BODY[reading.view][place][kind],
    reading.build,
  )
  const { px: focal, sdShare: focalSd } = focalOf(reading.size, reading.focalPx)
  const middle = (mmPerPx + offset.mm / focal) * (reading.tie?.factor ?? 1)
  const there = middle + behind / focal
  const edge = Math.hypot(corners[1].x - corners[0].x, corners[1].y - corners[0].y)
  // Four edges, two ends each, share the residual.
  const card = Math.hypot(EDGE_SHARE[kind], residualPx / edge / 2, doubt)
  const lens = focalSd * (offset.mm + behind)
  const depth = Math.hypot(offset.sd, spread, lens) / focal / there
  const points = Math.hypot(spread, focalSd * behind) / focal / there
  const name = kind === 'sheet' ? 'sheet' : 'card'
  const words = place === 'waist' ? `${name} hung at the waist` : `${name} held in the hand`
  const own = Math.hypot(card, depth)
  const sdShare = reading.tie ? Math.min(own, Math.hypot(reading.tie.sdShare, points)) : own
  return { mmPerPx: there, sdShare, words }
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

const centreOf = (corners: readonly Point[]): Point => ({
  x: corners.reduce((sum, p) => sum + p.x, 0) / corners.length,
  y: corners.reduce((sum, p) => sum + p.y, 0) / corners.length,
})

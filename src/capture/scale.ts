/**
 * Millimetres per pixel where the body is, not where the card is. A card nearer to the camera than
 * what is measured looks larger and makes every length too short: 150 mm at 2.5 m is 6 %. How far
 * the card hangs before the body's middle plane depends on where it is held, and is known on
 * average; the focal length of a phone is taken as usual. Distances mm, px.
 */
import type { Point } from '../geometry/point.ts'
import { bodyFrame } from './frame.ts'
import { rowAt } from './outline.ts'
import type { View, ViewReading } from './reading.ts'

export type CardPlace = 'waist' | 'hand'
type CardKind = 'sheet' | 'id1'

interface Offset {
  readonly mm: number
  readonly sd: number
}

/**
 * Middle plane of the body minus card, towards the camera positive. Source: means and standard
 * deviations over 16 rendered bodies with cards hung below the waist or held in one hand
 * (common-practice poses); a card at the waist cord of a side view: half a waist breadth and a bit.
 */
const CARD_BEFORE_BODY: Readonly<
  Record<View, Readonly<Record<CardPlace, Readonly<Record<CardKind, Offset>>>>>
> = {
  front: {
    waist: { sheet: { mm: 173, sd: 44 }, id1: { mm: 156, sd: 35 } },
    hand: { sheet: { mm: 138, sd: 50 }, id1: { mm: 130, sd: 45 } },
  },
  side: {
    waist: { sheet: { mm: 160, sd: 30 }, id1: { mm: 155, sd: 30 } },
    hand: { sheet: { mm: 345, sd: 28 }, id1: { mm: 346, sd: 26 } },
  },
  back: {
    waist: { sheet: { mm: 118, sd: 22 }, id1: { mm: 86, sd: 29 } },
    hand: { sheet: { mm: -46, sd: 45 }, id1: { mm: -47, sd: 50 } },
  },
}

/**
 * Focal length in lengths of the picture's long side: a vertical field of 67.5 degrees, between the
 * 69.4 degrees of a lens "26 mm" on 36 mm film (common in phones, from memory) and longer ones.
 */
const FOCAL = 0.748
/** Card edges in the picture: refined to this share of their length, beside the fit's own residual. */
const EDGE_SHARE = 0.002
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
  const { mmPerPx, corners, residualPx, kind } = reading.card.card
  const place = cardPlace(reading)
  const offset = CARD_BEFORE_BODY[reading.view][place][kind]
  const focal = FOCAL * Math.max(reading.size.width, reading.size.height)
  const there = mmPerPx + (offset.mm + behind) / focal
  const edge = Math.hypot(corners[1].x - corners[0].x, corners[1].y - corners[0].y)
  // Four edges, two ends each, share the residual.
  const card = Math.hypot(EDGE_SHARE, residualPx / edge / 2)
  const depth = Math.hypot(offset.sd, spread) / focal / there
  const name = kind === 'sheet' ? 'sheet' : 'card'
  const words = place === 'waist' ? `${name} hung at the waist` : `${name} held in the hand`
  return { mmPerPx: there, sdShare: Math.hypot(card, depth), words }
}

/** Where the card is: in a hand when a wrist is near it and it lies outside the trunk's middle. */
export function cardPlace(reading: ViewReading): CardPlace {
  if (!reading.card.ok || !reading.person.ok) return 'waist'
  const frame = bodyFrame(reading.person.joints)
  if (!frame) return 'waist'
  const centre = centreOf(reading.card.card.corners)
  const wrists = [reading.person.joints.left_wrist, reading.person.joints.right_wrist]
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

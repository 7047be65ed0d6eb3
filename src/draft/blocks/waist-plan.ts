/**
 * How the waist is taken in: what the side takes, which darts, and a centre-back seam where
 * neither is enough. The side takes the same on back and front, so that the side seams stay equal.
 * Rules: common practice, no source, but for the widths a dart holds.
 */
import type { Choices } from '../choices.ts'
import type { OptionWord } from '../options.ts'
import type { HalfId } from './blouse-numbers.ts'

/** Mouth a single dart holds, mm: back 25–32, front 38–44 (common practice and a public draft). */
export const DART_MOST = { back: 32, front: 44 } as const
/** A full angle past this pokes at the tip: 22°. */
export const DART_ANGLE_MOST = (22 * Math.PI) / 180
/** A leg at least so many times the mouth keeps the tip's full angle under 22°: 1/(2·tan 11°). */
export const LEG_TO_MOUTH = 2.6
/** Under this much difference a waist needs no shaping, mm. */
const NO_SHAPING = 8
/** The side may take a little more before a second dart is asked for, mm. */
const SIDE_MOST = 25
/** A second dart stands lower by this, mm, and nearer the side. */
export const SECOND_TIP = 20
/** Less than this left over is lost in the pencil line, mm. */
const PENCIL = 0.5
/** A second dart narrower than this is not worth sewing, mm. */
const DART_LEAST = 6

export interface HalfPlan {
  /** Mouths, inner dart first; empty when nothing is shaped. */
  readonly darts: readonly number[]
  /** Taken at a centre-back seam. */
  readonly centre: number
  /** What neither holds: the waist hangs looser by it. */
  readonly left: number
}
export interface WaistPlan {
  readonly kind: 'shaped' | 'straight' | 'wider'
  /** Taken at the side, on back and front alike; negative where the waist is the wider. */
  readonly side: number
  readonly back: HalfPlan
  readonly front: HalfPlan
}
export interface Widths {
  readonly bust: Readonly<Record<HalfId, number>>
  /** Half piece at the waist, sewn. */
  readonly waist: number
}

const NONE: HalfPlan = { darts: [], centre: 0, left: 0 }

/** @param legs from the waist up to where the first dart's tip lies, mm */
export function waistPlan(
  widths: Widths,
  choices: Choices,
  legs: Readonly<Record<HalfId, number>>,
): WaistPlan {
  const surplus = (half: HalfId): number => widths.bust[half] - widths.waist
  const [least, most] = [
    Math.min(surplus('back'), surplus('front')),
    Math.max(surplus('back'), surplus('front')),
  ]
  if (least < 0) return { kind: 'wider', side: least, back: NONE, front: NONE }
  if (choices.shaping === 'straight' || most <= NO_SHAPING)
    return { kind: 'straight', side: 0, back: NONE, front: NONE }
  const wanted = Math.min(least / 2, choices.sideIntake)
  const overOne = Math.max(
    ...(['back', 'front'] as const).map((h) => surplus(h) - holds(h, legs[h])),
  )
  const side =
    choices.surplus === 'auto'
      ? Math.min(Math.max(wanted, overOne), Math.max(SIDE_MOST, wanted), least)
      : wanted
  const half = (h: HalfId): HalfPlan => halfPlan(h, surplus(h) - side, legs[h], choices)
  return { kind: 'shaped', side, back: half('back'), front: half('front') }
}

/** What a dart on a leg of this length holds. */
const holds = (half: HalfId, leg: number): number =>
  Math.max(0, Math.min(DART_MOST[half], leg / LEG_TO_MOUTH))

function halfPlan(
  half: HalfId,
  left: number,
  leg: number,
  { centreBackMost, surplus, waistDarts }: Choices,
): HalfPlan {
  const one = holds(half, leg)
  const second = holds(half, leg - SECOND_TIP)
  const two = second < DART_LEAST ? 0 : second
  if (left <= PENCIL) return NONE
  // Two were asked for, and both are wide enough to be sewn.
  const pair = waistDarts === 'two' && two > 0 && left >= 2 * DART_LEAST
  if (left <= one + PENCIL / 10 && !pair) return { darts: [left], centre: 0, left: 0 }
  const past = surplus === 'centreBack' && !pair ? left - one : left - one - two
  const centre = half === 'back' ? Math.min(centreBackMost, Math.max(0, past)) : 0
  const inDarts = Math.min(left - centre, one + two)
  const rest = left - centre - inDarts
  // Nearly alike, the inner one a little wider; neither more than it holds.
  const outer = Math.min(two, Math.max(inDarts / 2 - 1, inDarts - one))
  const darts = inDarts <= one + PENCIL / 10 && !pair ? [inDarts] : [inDarts - outer, outer]
  return { darts: darts.filter((d) => d > PENCIL), centre, left: rest }
}

/** The ways to place the surplus, each with its numbers, for her to choose among. */
export const waistPlans = (
  widths: Widths,
  choices: Choices,
  legs: Readonly<Record<HalfId, number>>,
): readonly { readonly order: OptionWord<'surplus'>; readonly plan: WaistPlan }[] =>
  (['auto', 'twoDarts', 'centreBack'] as const).map((order) => ({
    order,
    plan: waistPlan(widths, { ...choices, surplus: order }, legs),
  }))

/** Width of a diamond dart `below` the waist, while it closes `down` of it. */
export const dartWidthBelow = (mouth: number, down: number, below: number): number =>
  mouth * Math.max(0, 1 - below / down)

/** A lower dart tip stays this far from the hem, else the dart runs out open, mm. */
const TIP_TO_HEM = 25
/** and this far above the hip line, mm. */
const TIP_TO_HIP = 15
export type TipWhy = 'chosen' | 'shortOfHem' | 'shortOfHip' | 'runsOut' | 'longerLeg'
/**
 * How far below the waist the legs of a dart meet; past the hem when it runs out open there.
 * @param toHip a dart closes above the hip, which has no width to spare for it
 */
export function lowerTip(
  mouth: number,
  wanted: number,
  toHem: number,
  toHip: number,
): { readonly down: number; readonly why: TipWhy } {
  const least = mouth * LEG_TO_MOUTH
  const aboveHip = Math.max(toHip - TIP_TO_HIP, 0)
  const chosen = Math.min(wanted, aboveHip)
  const room = toHem - TIP_TO_HEM
  if (room < least) return { down: Math.max(least, chosen, toHem + TIP_TO_HEM), why: 'runsOut' }
  if (chosen > room) return { down: room, why: 'shortOfHem' }
  if (chosen < least) return { down: least, why: 'longerLeg' }
  return { down: chosen, why: chosen < wanted ? 'shortOfHip' : 'chosen' }
}

/** What a half piece still has open `below` the waist: darts, and the bow of a centre-back seam. */
export function openBelow(
  plan: HalfPlan,
  chosenTip: number,
  toHem: number,
  toHip: number,
  below: number,
): number {
  const darts = plan.darts.map((mouth) =>
    dartWidthBelow(mouth, lowerTip(mouth, chosenTip, toHem, toHip).down, below),
  )
  return darts.reduce((a, b) => a + b, 0) + plan.centre * bow(below / Math.min(toHem, toHip))
}
/** The share of a centre-back seam's intake left at `t` of its way: level at both ends. */
export const bow = (t: number): number => (t >= 1 ? 0 : 1 - 3 * t ** 2 + 2 * t ** 3)

/**
 * The numbers of the draped blouse that back and front share: widths, levels, the length that a
 * side bust dart takes up, and how the waist is shaped. Worked out once, before either is drawn.
 * Rules: common practice, no source, worked out on test bodies and a survey of 2,208 women.
 */
import { knows, lengthOf, type Body } from '../../measurements/confirmed.ts'
import type { Choices } from '../choices.ts'
import { waistPlan, waistPlans, type WaistPlan } from './waist-plan.ts'

/** More balance than this is no raise but a side bust dart. */
export const RAISE_MOST = 20
/** A bust dart narrower than this is not worth sewing; the raise takes it. */
const DART_LEAST = 5
/** A bust this much fuller than the high bust wants the front dart lower and a share in front. */
export const FULLER = 50
const FULLER_TIP = 38

export type HalfId = 'back' | 'front'

export interface TorsoNumbers {
  /** Front longer than back over the body; undefined while it is not taped. */
  readonly balance: number | undefined
  readonly raise: number
  /** Width of the side bust dart's mouth; 0 for none. */
  readonly bustDart: number
  /** What that width rests on beside the balance: the rule of a block. */
  readonly dartRests?: readonly string[]
  /** Waist up to bust line, with what was added between them. */
  readonly rise: number
  readonly waist: WaistPlan
}

export const fullerBust = (body: Body): boolean =>
  knows(body, 'highBustGirth') &&
  lengthOf(body, 'bustGirth') - lengthOf(body, 'highBustGirth') > FULLER
/** How far the tip of the front dart stays below the apex. */
export const frontTip = (body: Body, choices: Choices): number =>
  fullerBust(body) ? Math.max(choices.frontDartTip, FULLER_TIP) : choices.frontDartTip

export function blouseNumbers(body: Body, choices: Choices): TorsoNumbers {
  const { balance, bustDart } = frontLength(body)
  const rise = riseOf(body, choices)
  return {
    balance,
    raise: (balance ?? choices.frontRaise) - bustDart,
    bustDart,
    rise,
    waist: waistPlan(widths(body, choices), choices, legs(body, choices)),
  }
}

function frontLength(body: Body): Pick<TorsoNumbers, 'balance' | 'bustDart'> {
  const balance =
    knows(body, 'sideNeckOverApexToWaist') && knows(body, 'sideNeckOverBladeToWaist')
      ? lengthOf(body, 'sideNeckOverApexToWaist') - lengthOf(body, 'sideNeckOverBladeToWaist')
      : undefined
  const rest = (balance ?? 0) - RAISE_MOST
  return { balance, bustDart: rest >= DART_LEAST ? rest : 0 }
}
const riseOf = (body: Body, choices: Choices): number =>
  lengthOf(body, 'waistToBustLevel') + choices.lengthAdded

/** From the waist up to where the tip of the first dart lies. */
const legs = (body: Body, choices: Choices): Readonly<Record<HalfId, number>> => ({
  back: riseOf(body, choices) - choices.backDartTip,
  front: riseOf(body, choices) + frontLength(body).bustDart / 2 - frontTip(body, choices),
})

/** What the front is wider than a quarter, and the back narrower. */
export const share = (choices: Choices, half: HalfId): number =>
  half === 'front' ? choices.frontShare : -choices.frontShare

const widths = (body: Body, choices: Choices) => {
  const bust = lengthOf(body, 'bustGirth') / 4 + choices.easeBust
  return {
    bust: { back: bust + share(choices, 'back'), front: bust + share(choices, 'front') },
    waist: lengthOf(body, 'waistGirth') / 4 + choices.easeWaist,
  }
}

/** The ways the waist could be taken in, each with its numbers, for her to choose among. */
export const blouseWaistPlans = (body: Body, choices: Choices): ReturnType<typeof waistPlans> =>
  waistPlans(widths(body, choices), choices, legs(body, choices))

/**
 * How a skirt is taken in from hip to waist. Its waist is as long as the bodice's and its darts
 * stand where those of the bodice end; only their widths are its own. The side takes the same on
 * back and front, so that the side seams stay equal. Rules: common practice, no source, but for
 * the widths a dart holds.
 */
import type { Choices } from '../choices.ts'
import type { HalfId } from '../piece.ts'
import { DART_MOST, LEG_TO_MOUTH } from './waist-plan.ts'

/** Sewn distance from the centre to a dart of the bodice, mm. */
export interface SkirtWaist {
  readonly sewn: number
  readonly dartsAt: readonly number[]
}
export interface SkirtHalf {
  /** Width at the waist as drawn, darts counted in. */
  readonly width: number
  /** Width at the hip; never less than the waist, and within a millimetre or two of a quarter. */
  readonly hip: number
  readonly darts: readonly { readonly at: number; readonly mouth: number }[]
}

/** A dart narrower than this is lost in the seam, mm: the side takes it and stays equal to 0.5 mm. */
const DART_LEAST = 3
/** Where a dart stands that no dart of the bodice meets: share of the sewn waist from the centre. */
const FREE_DART = { one: 0.5, first: 0.4, second: 0.72 } as const

/** @param legs from the waist down to where a dart may end, mm */
export function skirtPlan(
  waists: Readonly<Record<HalfId, SkirtWaist>>,
  hips: Readonly<Record<HalfId, number>>,
  choices: Choices,
  legs: Readonly<Record<HalfId, number>>,
): Readonly<Record<HalfId, SkirtHalf>> {
  const over = (h: HalfId): number => Math.max(0, hips[h] - waists[h].sewn)
  const most = (h: HalfId): number => 2 * holds(h, legs[h])
  const least = Math.min(over('back'), over('front'))
  const wanted = Math.min(least / 2, choices.sideIntake)
  // Below a dart's least the side takes all; past what two darts hold it takes the rest.
  const needed = Math.max(over('back') - most('back'), over('front') - most('front'), 0)
  const plain = Math.max(over('back'), over('front')) - wanted < DART_LEAST
  const side = Math.min(plain ? least : Math.max(wanted, needed), least)
  const mouths = (h: HalfId): number[] => dartsOf(over(h) - side, holds(h, legs[h]))
  const sum = (list: readonly number[]): number => list.reduce((a, b) => a + b, 0)
  // What is too little for a dart is shared by both sides, so that the seams stay equal.
  const lost = (h: HalfId): number => Math.max(0, over(h) - side - sum(mouths(h)))
  const shared = side + (lost('back') + lost('front')) / 2
  const half = (h: HalfId): SkirtHalf => {
    const { sewn, dartsAt } = waists[h]
    const own = mouths(h)
    const width = sewn + sum(own)
    const free = own.length === 1 ? [FREE_DART.one] : [FREE_DART.first, FREE_DART.second]
    return {
      width,
      hip: width + shared,
      darts: own.map((mouth, i) => ({ mouth, at: dartsAt[i] ?? sewn * (free[i] ?? NaN) })),
    }
  }
  return { back: half('back'), front: half('front') }
}

const holds = (half: HalfId, leg: number): number => Math.min(DART_MOST[half], leg / LEG_TO_MOUTH)

function dartsOf(intake: number, one: number): number[] {
  if (intake < DART_LEAST) return []
  if (intake <= one) return [intake]
  return [intake / 2, intake / 2]
}

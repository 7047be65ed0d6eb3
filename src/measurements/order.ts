/**
 * Sizes that stand in an order. Some hold by definition (part of a tape is shorter than the
 * whole tape), the others held for all but a few of 3183 women of the 7th Korean body survey,
 * 2015; the share that breaks them is written beside each. Front length over the bust against
 * back length is not here: the front is the shorter one in 56 % of women.
 */
import { formatLength, type UnitChoice } from '../units/format.ts'
import type { Mm } from '../units/length.ts'
import type { MeasurementId } from './catalogue.ts'
import type { Finding, TapedValues } from './plausibility.ts'
import { PLAUSIBILITY_WORDS, type SaidLength } from './plausibility.words.ts'

interface Order {
  readonly smaller: MeasurementId
  readonly larger: MeasurementId
  /** Share of women who break it; 0 where it holds by definition. */
  readonly broken: number
  readonly mayBeEqual: boolean
}

const seldom = (smaller: MeasurementId, larger: MeasurementId, broken: number): Order => ({
  smaller,
  larger,
  broken,
  mayBeEqual: false,
})
const byDefinition = (smaller: MeasurementId, larger: MeasurementId): Order =>
  seldom(smaller, larger, 0)

export const ORDERS: readonly Order[] = [
  seldom('underbustGirth', 'bustGirth', 0.0006),
  seldom('waistGirth', 'bustGirth', 0.0041),
  seldom('waistGirth', 'hipGirth', 0.0198),
  seldom('upperArmGirth', 'armholeGirth', 0),
  { ...seldom('acrossChest', 'acrossBack', 0.0192), mayBeEqual: true },
  { ...seldom('frontNeckToWaist', 'napeToWaist', 0.0239), mayBeEqual: true },
  byDefinition('sideNeckToApex', 'sideNeckOverApexToWaist'),
  byDefinition('napeToArmpitLevel', 'napeToWaist'),
  byDefinition('waistToBustLevel', 'napeToWaist'),
  byDefinition('waistToHighHip', 'waistToHip'),
  byDefinition('shoulderSlopeLeft', 'shoulderLengthLeft'),
  byDefinition('shoulderSlopeRight', 'shoulderLengthRight'),
  byDefinition('waistToFloor', 'stature'),
  byDefinition('headGirth', 'slipThroughGirth'),
]

/** Rarer than this, her word is wanted before the number is used. Judgement. */
const ASK_BELOW = 0.001

export function orderFindings(values: TapedValues, choice: UnitChoice): readonly Finding[] {
  return ORDERS.flatMap(({ smaller, larger, broken, mayBeEqual }) => {
    const [low, high] = [values[smaller], values[larger]]
    if (low === undefined || high === undefined) return []
    if (low < high || (mayBeEqual && low === high)) return []
    const [one, other] = [said(smaller, low, choice), said(larger, high, choice)]
    const level = broken < ASK_BELOW ? 'ask' : 'onceMore'
    return [{ id: smaller, beside: larger, level, sentence: sentence(one, other, broken) }]
  })
}

const said = (id: MeasurementId, length: Mm, choice: UnitChoice): SaidLength => ({
  id,
  length: formatLength(length, choice),
})

/** A share of women is said in whole numbers: 2 of 100, 4 of 1000. */
function sentence(one: SaidLength, other: SaidLength, broken: number): string {
  if (broken === 0) return PLAUSIBILITY_WORDS.shouldBeLess(one, other)
  const base = [100, 1000, 10000].find((size) => broken * size >= 1) ?? 10000
  return PLAUSIBILITY_WORDS.seldom(one, other, Math.round(broken * base), base)
}

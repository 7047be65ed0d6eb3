/**
 * Sizes that stand in an order. Some hold by definition (part of a tape is shorter than the
 * whole tape), the others held for all but a few of 3183 women of the 7th Korean body survey,
 * 2015; the share that breaks them is written beside each. Front length over the bust against
 * back length is not here: the front is the shorter one in 56 % of women.
 */
import { formatLength, type UnitChoice } from '../units/format.ts'
import { measure, type MeasurementId } from './catalogue.ts'
import type { Finding, TapedValues } from './plausibility.ts'

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
    const first = `${measure(smaller).label} ${formatLength(low, choice)}`
    const second = `${measure(larger).spoken} ${formatLength(high, choice)}`
    const level = broken < ASK_BELOW ? 'ask' : 'once more'
    return [{ id: smaller, beside: larger, level, sentence: sentence(first, second, broken) }]
  })
}

const sentence = (first: string, second: string, broken: number): string =>
  broken === 0
    ? `${first} should be less than ${second}. Tape both once more.`
    : `${first} beside ${second} is an unusual combination, ${share(broken)}. Tape both once more.`

/** "2 women in 100", "4 in 1000": whole numbers read easier than percent of percent. */
function share(broken: number): string {
  const base = [100, 1000, 10000].find((size) => broken * size >= 1) ?? 10000
  return `met in ${Math.round(broken * base)} of ${base} women`
}

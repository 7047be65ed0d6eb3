/**
 * The women of ANSUR II (US Government work). It measured no natural waist, no bust points and
 * no scye depth: those are fitted to the columns that both surveys of the US Army have, among the
 * women of ANSUR 1988, with the scatter drawn. A set to be reported apart.
 */
import type { MeasurementId } from '../../../src/measurements/catalogue.ts'
import { RULES_1988 } from './ansur-1988.ts'
import { normal } from './chance.ts'
import { overBlade, SHARED_RULES } from './derive.ts'
import { numberOf, type BodySet, type Numbers } from './numbers.ts'
import { filled, fit } from './regression.ts'
import type { Row, Survey } from './survey-file.ts'

export const ANSUR_II = 'ANSUR_II_FEMALE_Public.csv.gz'

/** Columns that are one of our measurements as they stand. */
const TAPED: readonly (readonly [id: MeasurementId, column: string])[] = [
  ['bustGirth', 'chestcircumference'],
  ['hipGirth', 'buttockcircumference'],
  // Over the side and front neck points.
  ['neckBaseGirth', 'neckcircumferencebase'],
  ['headGirth', 'headcircumference'],
  ['shoulderLengthLeft', 'shoulderlength'],
  ['shoulderLengthRight', 'shoulderlength'],
  ['stature', 'stature'],
]

/**
 * The same thing in both surveys: what the missing numbers are fitted to. Left out because their
 * landmarks moved: the nape (15 mm lower in ANSUR II than its other heights lead one to expect, so
 * back lengths would come out 20 mm short), the hip bone, the tenth rib, the shoulder length and
 * the shoulder girth (unchanged while the bust grew by 40 mm).
 */
const IN_BOTH: readonly (readonly [in1988: string, inII: string])[] = [
  ['STATURE', 'stature'],
  // Tenths of a kilogram in both.
  ['WEIGHT', 'weightkg'],
  ['CHEST_CIRC', 'chestcircumference'],
  ['CHEST_DEPTH', 'chestdepth'],
  ['WAIST_CIRC-OMPHALION', 'waistcircumference'],
  ['WAIST_DEPTH-OMPHALION', 'waistdepth'],
  ['BUTTOCK_CIRC', 'buttockcircumference'],
  ['ARMCIRCBCPS_FLEX', 'bicepscircumferenceflexed'],
  ['SUPRASTERNALE_HT', 'suprasternaleheight'],
  ['ACROMION_HT', 'acromialheight'],
  ['AXILLA_HT', 'axillaheight'],
  ['CHEST_HT', 'chestheight'],
  ['WAIST_HT-OMPHALION', 'waistheightomphalion'],
  ['BUTT_HT', 'buttockheight'],
  ['BIACROMIAL_BRTH', 'biacromialbreadth'],
]

/** Measured in 1988 only. */
const MISSING: readonly MeasurementId[] = [
  'highBustGirth',
  'underbustGirth',
  'waistGirth',
  'upperArmGirth',
  'armholeGirth',
  'napeToWaist',
  'sideNeckToApex',
  'frontNeckToWaist',
  'napeToArmpitLevel',
  'apexSpacing',
  'acrossBack',
  'waistToBustLevel',
  'waistToHip',
  'highHipGirth',
  'shoulderSlopeLeft',
]
/** Mean shoulder length of 1988; ANSUR II begins 9 mm farther out and so 4 mm lower. */
const SHOULDER_1988 = 144.7
function in1988(id: MeasurementId): (r: Row) => number {
  const rule = RULES_1988.get(id)
  if (!rule) throw new Error(`ANSUR II: ${id} has no rule in ANSUR 1988 either`)
  return rule
}

export function womenII(survey: Survey, of1988: Survey, seed: number): BodySet {
  const chance = normal(seed)
  const missing = fit(
    of1988.rows.map((r) => IN_BOTH.map(([column]) => r(column))),
    of1988.rows.map((r) => MISSING.map((id) => in1988(id)(r))),
  )
  const bodies = survey.rows.map((row): Numbers => {
    const off = IN_BOTH.map(([, column], i) => row(column) - (missing.from[i] ?? NaN))
    const found = filled(missing, off, chance)
    const own: Numbers = Object.fromEntries([
      ...TAPED.map(([id, column]) => [id, row(column)]),
      ...MISSING.map((id, j) => [id, found[j]]),
    ])
    const drop = (numberOf(own, 'shoulderSlopeLeft') * row('shoulderlength')) / SHOULDER_1988
    return {
      ...own,
      shoulderSlopeLeft: drop,
      shoulderSlopeRight: drop,
      waistToHighHip: numberOf(own, 'waistToHip') / 2,
      slipThroughGirth: Math.max(row('chestcircumference'), row('shouldercircumference')),
      sideNeckOverApexToWaist: numberOf(own, 'sideNeckToApex') + numberOf(own, 'waistToBustLevel'),
      sideNeckOverBladeToWaist: overBlade(numberOf(own, 'napeToWaist'), row('chestcircumference')),
    }
  })
  const how = `fitted to ANSUR 1988 on ${IN_BOTH.length} columns of both surveys, scatter drawn`
  const drop = `${how}, in proportion to the shoulder length`
  const derived = {
    ...Object.fromEntries(MISSING.map((id) => [id, how])),
    ...SHARED_RULES,
    shoulderSlopeLeft: drop,
    shoulderSlopeRight: drop,
  }
  return { name: 'ANSUR II', bodies, derived }
}

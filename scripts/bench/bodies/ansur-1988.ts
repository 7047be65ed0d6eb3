/**
 * The women of ANSUR 1988 (US Government work), read by definition: every column that is one of
 * our measurements, and a rule for those that nobody taped. Millimetres throughout.
 */
import type { MeasurementId } from '../../../src/measurements/catalogue.ts'
import { girthBetween, overBlade, SHARED_RULES } from './derive.ts'
import type { BodySet, Numbers } from './numbers.ts'
import type { Row, Survey } from './survey-file.ts'

export const ANSUR_1988 = 'ANSUR_1988_women.tsv.gz'

/** One row a measurement: the column, and why it is the same thing. */
const COLUMNS_1988: readonly (readonly [id: MeasurementId, column: string])[] = [
  // Level round the chest at the bust points, quiet breath.
  ['bustGirth', 'CHEST_CIRC'],
  // Level with the armpits, arms hanging.
  ['highBustGirth', 'CHEST_CIRC_AT_SCYE'],
  // At the lowest join of breast and ribs.
  ['underbustGirth', 'CHEST_CIRC-BELOW_BUST_'],
  // At the natural indentation; the other waist of this survey lies at the navel, 74 mm lower.
  ['waistGirth', 'WAIST_CIRC_NATURAL'],
  // At the greatest protrusion of the seat.
  ['hipGirth', 'BUTTOCK_CIRC'],
  // Over the side and front neck points; 25 mm smaller than in ANSUR II.
  ['neckBaseGirth', 'NECK_CIRC-BASE'],
  ['headGirth', 'HEAD_CIRC'],
  // At the armpit, arm hanging; the flexed biceps is another column.
  ['upperArmGirth', 'ARM_CIRC-AXILLARY'],
  ['armholeGirth', 'SCYE_CIRC_OVER_ACROMION'],
  // Down the spine from the nape bone to the natural waist, on the skin.
  ['napeToWaist', 'WAIST_NAT_LNTH'],
  // From where the neck meets the trapezius to the bust point, by tape.
  ['sideNeckToApex', 'NECK_TO_BUSTPOINT_LNTH'],
  // From the hollow of the neck to the natural waist, on the skin.
  ['frontNeckToWaist', 'WST_NAT_FRONT'],
  // Down the spine from the nape bone to the level of the armpits.
  ['napeToArmpitLevel', 'SCYE_DEPTH'],
  // Beam calliper, so straight from point to point.
  ['apexSpacing', 'BUSTPOINT_TO_BUSTPOINT_BRTH'],
  // Between the middles of the armholes.
  ['acrossBack', 'INTRSCY_MID_DIST'],
  // One side was measured; it starts 30 mm further in than in the Korean survey.
  ['shoulderLengthLeft', 'SHOULDER_LNTH'],
  ['shoulderLengthRight', 'SHOULDER_LNTH'],
  ['stature', 'STATURE'],
]

type Rule = (r: Row) => number

const waistToBustLevel: Rule = (r) => r('CHEST_HT') - r('WAIST_HT_NATURAL')
/**
 * The survey's own waist to hip starts at the navel: it follows navel height less seat height
 * (r 0.93), not natural waist height less seat height (r 0.55). So natural waist to navel is added.
 */
const waistToHip: Rule = (r) => r('WAIST_HIP_LNTH') + r('WAIST_NATURAL_TO_WAIST_UMBILICUS')
const highHipGirth: Rule = (r) =>
  girthBetween(
    [
      [0, r('WAIST_CIRC_NATURAL')],
      [r('WAIST_NATURAL_TO_WAIST_UMBILICUS'), r('WAIST_CIRC-OMPHALION')],
      [waistToHip(r), r('BUTTOCK_CIRC')],
    ],
    waistToHip(r) / 2,
  )

/** Both ends are those of the shoulder length: where the neck meets the trapezius, and the bone. */
const shoulderDrop: Rule = (r) => r('NECK_HT-LATERAL') - r('ACROMION_HT')

/** Measurements that heights and lengths of the survey make only together. */
export const DERIVED_1988 = {
  waistToBustLevel,
  waistToHip,
  waistToHighHip: (r) => waistToHip(r) / 2,
  highHipGirth,
  // Round the shoulders, arms hanging: more than a loop over raised arms needs, so on the safe side.
  slipThroughGirth: (r) => Math.max(r('CHEST_CIRC'), r('SHOULDER_CIRC')),
  // A catalogue tape falls straight from the apex, so the way from apex to waist is upright.
  sideNeckOverApexToWaist: (r) => r('NECK_TO_BUSTPOINT_LNTH') + waistToBustLevel(r),
  shoulderSlopeLeft: shoulderDrop,
  shoulderSlopeRight: shoulderDrop,
  sideNeckOverBladeToWaist: (r) => overBlade(r('WAIST_NAT_LNTH'), r('CHEST_CIRC')),
} as const satisfies Partial<Record<MeasurementId, Rule>>

/** All that can be had from a woman of 1988. */
export const RULES_1988: ReadonlyMap<string, Rule> = new Map<string, Rule>([
  ...COLUMNS_1988.map(([id, column]): [string, Rule] => [id, (r) => r(column)]),
  ...Object.entries(DERIVED_1988),
])

export const women1988 = ({ rows }: Survey): BodySet => ({
  name: 'ANSUR 1988',
  bodies: rows.map((row): Numbers =>
    Object.fromEntries([...RULES_1988].map(([id, rule]): [string, number] => [id, rule(row)])),
  ),
  derived: {
    ...SHARED_RULES,
    waistToBustLevel: 'chest height less natural waist height',
    shoulderSlopeLeft: 'side neck height less shoulder bone height',
    shoulderSlopeRight: 'side neck height less shoulder bone height',
    waistToHip: 'navel to hip (WAIST_HIP_LNTH) and natural waist to navel, added',
    highHipGirth: 'straight between the girths at natural waist, navel and seat',
  },
})

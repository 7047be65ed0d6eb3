/**
 * The measurement catalogue: every measurement the book can hold, once. The entries themselves
 * lie in `catalogue/`, one file a region of the body.
 */
import { ACROSS } from './catalogue/across.ts'
import { AROUND } from './catalogue/around.ts'
import { BACK } from './catalogue/back.ts'
import { FLAT } from './catalogue/flat.ts'
import { FRONT } from './catalogue/front.ts'
import { SHOULDER } from './catalogue/shoulder.ts'
import { SIDE } from './catalogue/side.ts'
import type { Measure, MeasureRule } from './measure.ts'
import { MEASURE_NAMES } from './names.words.ts'

/** In the order in which the tape book lists them. */
export const MEASUREMENT_IDS = [
  'bustGirth',
  'highBustGirth',
  'underbustGirth',
  'waistGirth',
  'highHipGirth',
  'waistToHighHip',
  'hipGirth',
  'waistToHip',
  'neckBaseGirth',
  'headGirth',
  'upperArmGirth',
  'armholeGirth',
  'slipThroughGirth',
  'napeToWaist',
  'sideNeckOverBladeToWaist',
  'sideNeckOverApexToWaist',
  'sideNeckToApex',
  'frontNeckToWaist',
  'waistToBustLevel',
  'napeToArmpitLevel',
  'armpitToWaist',
  'apexSpacing',
  'acrossBack',
  'acrossChest',
  'shoulderLengthLeft',
  'shoulderLengthRight',
  'shoulderSlopeLeft',
  'shoulderSlopeRight',
  'sideNeckToSleeveEdge',
  'waistToFloor',
  'stature',
  'flatBustWidth',
  'flatWaistWidth',
  'flatHemWidth',
  'flatBackLength',
] as const
export type MeasurementId = (typeof MEASUREMENT_IDS)[number]

export type CatalogueEntry = Measure<MeasurementId>

/** Complete by construction: a missing or a misnamed entry does not compile. */
const RULES: { readonly [Id in MeasurementId]: MeasureRule<Id> } = {
  ...AROUND,
  ...BACK,
  ...FRONT,
  ...SIDE,
  ...ACROSS,
  ...SHOULDER,
  ...FLAT,
}

export const CATALOGUE = Object.fromEntries(
  MEASUREMENT_IDS.map((id): readonly [MeasurementId, CatalogueEntry] => {
    const { label, spoken } = MEASURE_NAMES[id]
    return [id, { ...RULES[id], label, spoken }]
  }),
) as Readonly<Record<MeasurementId, CatalogueEntry>>

export const measure = (id: MeasurementId): CatalogueEntry => CATALOGUE[id]

export function isMeasurementId(name: string): name is MeasurementId {
  return Object.hasOwn(RULES, name)
}

/**
 * The larger women, whom both surveys met too seldom: drawn from the pooled tape model on a bust
 * that is spread evenly. The model is linear and its mean lies 210 to 510 mm away: the hip
 * follows more slowly than among women (at bust 1143 it expects 1084; the 86 women of ANSUR II
 * with a bust of 1100 and more have 1141), so the bodies are narrower below than they would be.
 */
import type { MeasurementId } from '../../../src/measurements/catalogue.ts'
import { TAPE_VARIABLES } from '../../../src/measurements/tape-model.ts'
import { DERIVED_1988 } from './ansur-1988.ts'
import { normal, type Chance } from './chance.ts'
import { overBlade, SHARED_RULES } from './derive.ts'
import { numberOf, type BodySet, type Numbers } from './numbers.ts'
import { covarianceOf, filled, fit, meanOf } from './regression.ts'
import type { Row, Survey } from './survey-file.ts'
import { drawOn, drawnBust, expectedOn, offMiddle } from './tape-model-draw.ts'

/** The columns of ANSUR 1988 that are the variables of the model. */
const COLUMN: Readonly<Record<string, string>> = {
  stature: 'STATURE',
  // In tenths of a kilogram; a fit does not mind, and `known` below divides.
  'weight-in-kg': 'WEIGHT',
  bust: 'CHEST_CIRC',
  underbust: 'CHEST_CIRC-BELOW_BUST_',
  'high-bust': 'CHEST_CIRC_AT_SCYE',
  waist: 'WAIST_CIRC_NATURAL',
  hip: 'BUTTOCK_CIRC',
  'bust-point-distance': 'BUSTPOINT_TO_BUSTPOINT_BRTH',
  'neck-side-to-bust-point': 'NECK_TO_BUSTPOINT_LNTH',
  'nape-to-waist': 'WAIST_NAT_LNTH',
  'front-neck-to-waist': 'WST_NAT_FRONT',
  'shoulder-length': 'SHOULDER_LNTH',
  'across-back': 'INTRSCY_MID_DIST',
  'scye-depth': 'SCYE_DEPTH',
  armscye: 'SCYE_CIRC_OVER_ACROMION',
  'neck-base': 'NECK_CIRC-BASE',
  'upper-arm': 'ARM_CIRC-AXILLARY',
  sleeve: 'SLEEVE-OUTSEAM_LNTH',
  wrist: 'WRIST_CIRC-STYLION',
  biacromial: 'BIACROMIAL_BRTH',
}

interface Beside {
  readonly name: MeasurementId | 'shoulderGirth'
  readonly of: (r: Row) => number
  /**
   * Mean, and growth with the bust, among the women of the 7th Korean body survey, 2015, where it
   * has the like; the body drawn stands midway. Elsewhere ANSUR 1988 stands alone.
   */
  readonly korea?: { readonly mean: number; readonly onBust: number }
}
const BESIDE: readonly Beside[] = [
  {
    name: 'waistToBustLevel',
    of: DERIVED_1988.waistToBustLevel,
    // Over the apex to the waist less to the apex: 421.0 − 252.9.
    korea: { mean: 168.1, onBust: -0.0818 },
  },
  // At the side, on the skin.
  { name: 'waistToHip', of: DERIVED_1988.waistToHip, korea: { mean: 192.5, onBust: 0.0307 } },
  {
    name: 'highHipGirth',
    of: DERIVED_1988.highHipGirth,
    // Half way to the hip, straight between navel (798.5, 35.8 below) and hip (930.3, 176.4 below).
    korea: { mean: 847.6, onBust: 0.794 },
  },
  // The right one, 3183 women; hardly tied to size (r −0.07 with the body mass index).
  {
    name: 'shoulderSlopeLeft',
    of: DERIVED_1988.shoulderSlopeLeft,
    korea: { mean: 38.7, onBust: 0 },
  },
  { name: 'headGirth', of: (r) => r('HEAD_CIRC') },
  { name: 'shoulderGirth', of: (r) => r('SHOULDER_CIRC') },
]

export const LEAST_BUST = 1100
export const MOST_BUST = 1400

export function drawnBodies(survey: Survey, count: number, seed: number): BodySet {
  const spread = (k: number): number => LEAST_BUST + ((MOST_BUST - LEAST_BUST) * (k + 0.5)) / count
  return {
    name: `tape model on bust ${LEAST_BUST}–${MOST_BUST}`,
    bodies: drawnOn(survey, count, seed, spread),
    derived,
  }
}

/** Drawn from the pooled model as it is, the bust too. */
export function pooledBodies(survey: Survey, count: number, seed: number): BodySet {
  return {
    name: 'pooled tape model',
    bodies: drawnOn(survey, count, seed, (_, chance) => drawnBust(chance)),
    derived: { ...derived, bustGirth: 'drawn' },
  }
}

function drawnOn(
  survey: Survey,
  count: number,
  seed: number,
  bustOf: (k: number, chance: Chance) => number,
): readonly Numbers[] {
  const chance = normal(seed)
  const beside = fitBeside(survey)
  return Array.from({ length: count }, (_, k) => {
    const bust = bustOf(k, chance)
    const drawn = drawOn(bust, chance)
    const expected = expectedOn(bust)
    const means = BESIDE.map(
      (_, j) => (beside.mean[j] ?? NaN) + (beside.onBust[j] ?? NaN) * offMiddle(bust),
    )
    const off = drawn.map((value, i) => value - (expected[i] ?? NaN))
    const rest = filled(beside.fit, off, chance, means)
    return numbersOf(drawn, Object.fromEntries(BESIDE.map(({ name }, j) => [name, rest[j] ?? NaN])))
  })
}

/** Fitted to what the other variables have beyond their expectation on the bust. */
function fitBeside({ rows }: Survey) {
  const known = rows.map((r) =>
    TAPE_VARIABLES.map(({ name }) => r(COLUMN[name] ?? name) / (name === 'weight-in-kg' ? 10 : 1)),
  )
  const wanted = rows.map((r) => BESIDE.map(({ of }) => of(r)))
  const bust = rows.map((r) => [r('CHEST_CIRC')])
  const growth = covarianceOf(wanted, bust)
  const own = covarianceOf(bust, bust)[0]?.[0] ?? NaN
  const midway = (a: number, b: number | undefined): number => (a + (b ?? a)) / 2
  return {
    fit: fit(known, wanted),
    mean: meanOf(wanted).map((m, j) => midway(m, BESIDE[j]?.korea?.mean)),
    onBust: growth.map(([c = NaN], j) => midway(c / own, BESIDE[j]?.korea?.onBust)),
  }
}

function numbersOf(drawn: readonly number[], rest: Readonly<Record<string, number>>): Numbers {
  const { shoulderGirth = NaN, ...others } = rest
  const own: Numbers = {
    ...Object.fromEntries(TAPE_VARIABLES.flatMap(({ is }, i) => is.map(([id]) => [id, drawn[i]]))),
    ...others,
  }
  const bust = numberOf(own, 'bustGirth')
  return {
    ...own,
    shoulderSlopeRight: numberOf(own, 'shoulderSlopeLeft'),
    waistToHighHip: numberOf(own, 'waistToHip') / 2,
    slipThroughGirth: Math.max(bust, shoulderGirth),
    sideNeckOverApexToWaist: numberOf(own, 'sideNeckToApex') + numberOf(own, 'waistToBustLevel'),
    sideNeckOverBladeToWaist: overBlade(numberOf(own, 'napeToWaist'), bust),
  }
}

const drawn = 'drawn on the bust'
const fitted = 'fitted to ANSUR 1988 on the variables of the model, scatter drawn'
const midway = `${fitted}, mean and growth with the bust midway to the Korean survey`
const derived: Readonly<Partial<Record<MeasurementId, string>>> = {
  ...Object.fromEntries(TAPE_VARIABLES.flatMap(({ is }) => is.map(([id]) => [id, drawn]))),
  ...SHARED_RULES,
  bustGirth: 'spread evenly',
  waistToBustLevel: midway,
  waistToHip: midway,
  highHipGirth: midway,
  shoulderSlopeLeft: midway,
  shoulderSlopeRight: midway,
  headGirth: fitted,
}

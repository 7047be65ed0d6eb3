/** Girths: the tape goes round and meets itself. Breathe out, one finger under the tape. */
import { judged, observer, own, seen, type MeasureRule } from '../measure.ts'
import { CLAUSES, JUDGEMENTS, SURVEYS } from '../sources.ts'
import { AROUND_WORDS as W } from './around.words.ts'

const girth = { kind: 'girth', readingsNeeded: 2 } as const

export const AROUND = {
  bustGirth: {
    ...girth,
    ...W.bustGirth,
    id: 'bustGirth',
    definition: 'bustGirth/level-over-apex',
    tolerance: observer(14),
    plausible: seen(671, 1222),
    iso: CLAUSES.bust,
  },
  highBustGirth: {
    ...girth,
    ...W.highBustGirth,
    id: 'highBustGirth',
    definition: 'highBustGirth/under-arms-above-bust',
    tolerance: own(12),
    plausible: seen(697, 1135),
  },
  underbustGirth: {
    ...girth,
    ...W.underbustGirth,
    id: 'underbustGirth',
    definition: 'underbustGirth/below-breast',
    tolerance: own(8),
    plausible: seen(600, 1071),
    iso: CLAUSES.underbust,
  },
  waistGirth: {
    ...girth,
    ...W.waistGirth,
    id: 'waistGirth',
    // ISO 8559-1, 5.3.10 puts the waist midway between rib and hip bone: another measurement.
    definition: 'waistGirth/natural',
    tolerance: observer(12),
    plausible: seen(562, 1187),
  },
  highHipGirth: {
    ...girth,
    ...W.highHipGirth,
    id: 'highHipGirth',
    definition: 'highHipGirth/hip-bone-level',
    tolerance: own(12),
    plausible: seen(623, 1221, SURVEYS.koreaAtAbdomen),
    iso: CLAUSES.highHip,
  },
  hipGirth: {
    ...girth,
    ...W.hipGirth,
    id: 'hipGirth',
    definition: 'hipGirth/fullest-seat',
    tolerance: observer(12),
    plausible: seen(777, 1241),
    iso: CLAUSES.hip,
  },
  neckBaseGirth: {
    ...girth,
    ...W.neckBaseGirth,
    id: 'neckBaseGirth',
    definition: 'neckBaseGirth/nape-to-front-neck-point',
    tolerance: observer(8),
    plausible: seen(295, 520),
    iso: CLAUSES.neckBase,
  },
  headGirth: {
    ...girth,
    ...W.headGirth,
    id: 'headGirth',
    definition: 'headGirth/largest',
    tolerance: own(5),
    plausible: seen(500, 635, SURVEYS.ansur2),
  },
  upperArmGirth: {
    ...girth,
    ...W.upperArmGirth,
    id: 'upperArmGirth',
    definition: 'upperArmGirth/at-armpit-arm-hanging',
    tolerance: own(5),
    plausible: seen(195, 392),
    iso: CLAUSES.upperArm,
  },
  armholeGirth: {
    ...girth,
    ...W.armholeGirth,
    id: 'armholeGirth',
    definition: 'armholeGirth/over-shoulder-bone',
    tolerance: own(8),
    plausible: seen(298, 555),
  },
  slipThroughGirth: {
    ...girth,
    ...W.slipThroughGirth,
    id: 'slipThroughGirth',
    definition: 'slipThroughGirth/smallest-closed-loop-over-head-arms-bust',
    tolerance: own(15),
    plausible: judged(680, 1750, JUDGEMENTS.slipThrough),
  },
} as const satisfies Record<string, MeasureRule>

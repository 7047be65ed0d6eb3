/** Girths: the tape goes round and meets itself. Breathe out, one finger under the tape. */
import { ISO_8559_1, judged, KOREA, observer, own, seen, type MeasureRule } from '../measure.ts'
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
    iso: `${ISO_8559_1}, 5.3.4 bust girth`,
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
    iso: `${ISO_8559_1}, 5.3.8 under-bust girth`,
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
    plausible: seen(623, 1221, 'women of the 7th Korean body survey, 2015, at the abdomen'),
    iso: `${ISO_8559_1}, 5.3.12 top hip girth`,
  },
  hipGirth: {
    ...girth,
    ...W.hipGirth,
    id: 'hipGirth',
    definition: 'hipGirth/fullest-seat',
    tolerance: observer(12),
    plausible: seen(777, 1241),
    iso: `${ISO_8559_1}, 5.3.13 hip girth`,
  },
  neckBaseGirth: {
    ...girth,
    ...W.neckBaseGirth,
    id: 'neckBaseGirth',
    definition: 'neckBaseGirth/nape-to-front-neck-point',
    tolerance: observer(8),
    plausible: seen(295, 520),
    iso: `${ISO_8559_1}, 5.3.3 neck base girth`,
  },
  headGirth: {
    ...girth,
    ...W.headGirth,
    id: 'headGirth',
    definition: 'headGirth/largest',
    tolerance: own(5),
    plausible: seen(500, 635, 'the 1986 women of ANSUR II'),
  },
  upperArmGirth: {
    ...girth,
    ...W.upperArmGirth,
    id: 'upperArmGirth',
    definition: 'upperArmGirth/at-armpit-arm-hanging',
    tolerance: own(5),
    plausible: seen(195, 392),
    iso: `${ISO_8559_1}, 5.3.16 upper arm girth`,
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
    plausible: judged(
      680,
      1750,
      `852 to 1225 mm round the shoulders among the women of ANSUR II, widened as for ${KOREA}`,
    ),
  },
} as const satisfies Record<string, MeasureRule>

/** Heights and depths read at the side, and the heights to the floor. */
import { judged, observer, own, seen, type MeasureRule } from '../measure.ts'
import { SIDE_WORDS as W } from './side.words.ts'

const length = { kind: 'length', readingsNeeded: 2 } as const
const HIP_DEPTHS = '77 to 301 mm from waist to hip in the same surveys'

export const SIDE = {
  waistToBustLevel: {
    ...length,
    ...W.waistToBustLevel,
    id: 'waistToBustLevel',
    definition: 'waistToBustLevel/vertical-natural-waist',
    tolerance: own(5),
    plausible: seen(39, 211, 'the women of ANSUR 1988 (2208), chest height less waist height'),
  },
  armpitToWaist: {
    ...length,
    ...W.armpitToWaist,
    id: 'armpitToWaist',
    definition: 'armpitToWaist/natural-waist-at-side',
    tolerance: own(6),
    plausible: seen(105, 268, 'the women of ANSUR 1988 (2208), axilla height less waist height'),
  },
  waistToHighHip: {
    ...length,
    ...W.waistToHighHip,
    id: 'waistToHighHip',
    definition: 'waistToHighHip/natural-waist-at-side',
    tolerance: own(5),
    plausible: judged(40, 220, `about half of ${HIP_DEPTHS}`),
  },
  waistToHip: {
    ...length,
    ...W.waistToHip,
    id: 'waistToHip',
    definition: 'waistToHip/natural-waist-at-side',
    tolerance: own(5),
    plausible: seen(77, 301),
  },
  waistToFloor: {
    ...length,
    ...W.waistToFloor,
    id: 'waistToFloor',
    definition: 'waistToFloor/natural-waist-at-side-no-shoes',
    tolerance: own(5),
    plausible: seen(811, 1234),
  },
  stature: {
    ...length,
    ...W.stature,
    id: 'stature',
    definition: 'stature/no-shoes',
    tolerance: observer(6),
    plausible: judged(1200, 2100, '1394 to 1870 mm in the same surveys, widened'),
  },
} as const satisfies Record<string, MeasureRule>

/** Heights and depths read at the side, and the heights to the floor. */
import { judged, observer, own, seen, type MeasureRule } from '../measure.ts'
import { JUDGEMENTS, SURVEYS } from '../sources.ts'
import { SIDE_WORDS as W } from './side.words.ts'

const length = { kind: 'length', readingsNeeded: 2 } as const

export const SIDE = {
  waistToBustLevel: {
    ...length,
    ...W.waistToBustLevel,
    id: 'waistToBustLevel',
    definition: 'waistToBustLevel/vertical-natural-waist',
    tolerance: own(5),
    plausible: seen(39, 211, SURVEYS.chestLessWaist),
  },
  armpitToWaist: {
    ...length,
    ...W.armpitToWaist,
    id: 'armpitToWaist',
    definition: 'armpitToWaist/natural-waist-at-side',
    tolerance: own(6),
    plausible: seen(105, 268, SURVEYS.axillaLessWaist),
  },
  waistToHighHip: {
    ...length,
    ...W.waistToHighHip,
    id: 'waistToHighHip',
    definition: 'waistToHighHip/natural-waist-at-side',
    tolerance: own(5),
    plausible: judged(40, 220, JUDGEMENTS.highHip),
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
    plausible: judged(1200, 2100, JUDGEMENTS.stature),
  },
} as const satisfies Record<string, MeasureRule>

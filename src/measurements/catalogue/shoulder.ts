/**
 * Shoulders, left and right apart: the two slopes differ by 4 degrees or more in 32 % of women
 * (7th Korean body survey, 2015). The slope is taken as a drop, a length between two rulers.
 */
import { judged, observer, own, seen, type MeasureRule } from '../measure.ts'
import { JUDGEMENTS } from '../sources.ts'
import { SHOULDER_WORDS as W } from './shoulder.words.ts'

const length = { kind: 'length', readingsNeeded: 2 } as const

/** Drop over the right shoulder: P1 18.7, mean 38.7, P99 59.2 mm, 7th Korean body survey, 2015. */
const drop = {
  ...length,
  ...W.drop,
  tolerance: own(6),
  plausible: judged(5, 95, JUDGEMENTS.shoulderDrop),
} as const

const shoulder = {
  ...length,
  ...W.shoulder,
  tolerance: observer(3),
  plausible: seen(82, 182),
} as const

export const SHOULDER = {
  shoulderLengthLeft: {
    ...shoulder,
    id: 'shoulderLengthLeft',
    definition: 'shoulderLengthLeft/side-neck-to-bone',
  },
  shoulderLengthRight: {
    ...shoulder,
    id: 'shoulderLengthRight',
    definition: 'shoulderLengthRight/side-neck-to-bone',
  },
  shoulderSlopeLeft: {
    ...drop,
    id: 'shoulderSlopeLeft',
    definition: 'shoulderSlopeLeft/drop-side-neck-to-bone',
  },
  shoulderSlopeRight: {
    ...drop,
    id: 'shoulderSlopeRight',
    definition: 'shoulderSlopeRight/drop-side-neck-to-bone',
  },
  sideNeckToSleeveEdge: {
    ...length,
    ...W.sideNeckToSleeveEdge,
    id: 'sideNeckToSleeveEdge',
    definition: 'sideNeckToSleeveEdge/over-shoulder-bone-arm-hanging',
    tolerance: own(8),
    plausible: judged(80, 900, JUDGEMENTS.sleeveEdge),
  },
} as const satisfies Record<string, MeasureRule>

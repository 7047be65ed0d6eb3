/**
 * Shoulders, left and right apart: the two slopes differ by 4 degrees or more in 32 % of women
 * (7th Korean body survey, 2015). The slope is taken as a drop, a length between two rulers.
 */
import { judged, observer, own, seen, type Measure } from '../measure.ts'

const length = { kind: 'length', group: 'shoulder and sleeve', readingsNeeded: 2 } as const

/** Drop over the right shoulder: P1 18.7, mean 38.7, P99 59.2 mm, 7th Korean body survey, 2015. */
const drop = {
  ...length,
  from: 'the level of the side neck point',
  to: 'the shoulder bone',
  words: 'How far the shoulder bone lies below the side neck point. It is a height.',
  alone:
    'Rest a ruler on the side neck point and hold it level over the shoulder, spirit level or phone on it. Stand a second ruler on the shoulder bone and read how far the first lies above.',
  tolerance: own(6),
  plausible: judged(
    5,
    95,
    '18.7 to 59.2 mm holds 98 of 100 women of the 7th Korean body survey, 2015; widened',
  ),
} as const
const slopeMoves = 'the shoulder slope'

const shoulder = {
  ...length,
  from: 'the side neck point',
  to: 'the shoulder bone',
  words: 'Along the ridge of the shoulder from the side of the neck to the outer shoulder bone.',
  alone:
    'Leave the neck cord on. Lift the arm: the dimple is the end of the bone; put a dot there. Drop the arm and lay the tape from cord to dot.',
  tolerance: observer(3),
  plausible: seen(82, 182),
} as const
const shoulderMoves = 'the shoulder and the armhole'

export const SHOULDER = {
  shoulderLengthLeft: {
    ...shoulder,
    id: 'shoulderLengthLeft',
    label: 'Shoulder length, left',
    spoken: 'left shoulder',
    definition: 'shoulderLengthLeft/side-neck-to-bone',
    moves: shoulderMoves,
  },
  shoulderLengthRight: {
    ...shoulder,
    id: 'shoulderLengthRight',
    label: 'Shoulder length, right',
    spoken: 'right shoulder',
    definition: 'shoulderLengthRight/side-neck-to-bone',
    moves: shoulderMoves,
  },
  shoulderSlopeLeft: {
    ...drop,
    id: 'shoulderSlopeLeft',
    label: 'Shoulder drop, left',
    spoken: 'left shoulder drop',
    definition: 'shoulderSlopeLeft/drop-side-neck-to-bone',
    moves: slopeMoves,
  },
  shoulderSlopeRight: {
    ...drop,
    id: 'shoulderSlopeRight',
    label: 'Shoulder drop, right',
    spoken: 'right shoulder drop',
    definition: 'shoulderSlopeRight/drop-side-neck-to-bone',
    moves: slopeMoves,
  },
  sideNeckToSleeveEdge: {
    ...length,
    id: 'sideNeckToSleeveEdge',
    label: 'Side neck to sleeve edge',
    spoken: 'side neck to sleeve edge',
    definition: 'sideNeckToSleeveEdge/over-shoulder-bone-arm-hanging',
    from: 'the side neck point',
    to: 'where the sleeve is to end',
    words: 'From the side of the neck over the shoulder bone and down the arm to the wanted edge.',
    alone:
      'Fix the zero end at the side neck point with sticking plaster. Let the arm hang, lay the tape over the shoulder bone and read where the sleeve is to end, in the mirror.',
    moves: 'the sleeve length',
    tolerance: own(8),
    plausible: judged(80, 900, 'from just past the shoulder to the wrist of a long arm'),
  },
} as const satisfies Record<string, Measure>

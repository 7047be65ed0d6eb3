/** How the measurements of `shoulder.ts` are taken; left and right are taken alike. */
import type { MeasureWords } from '../measure.ts'

export const SHOULDER_WORDS = {
  drop: {
    from: 'the level of the side neck point',
    to: 'the shoulder bone',
    words: 'How far the shoulder bone lies below the side neck point. It is a height.',
    alone:
      'Rest a ruler on the side neck point and hold it level over the shoulder, spirit level or phone on it. Stand a second ruler on the shoulder bone and read how far the first lies above.',
    moves: 'the shoulder slope',
  },
  shoulder: {
    from: 'the side neck point',
    to: 'the shoulder bone',
    words: 'Along the ridge of the shoulder from the side of the neck to the outer shoulder bone.',
    alone:
      'Leave the neck cord on. Lift the arm: the dimple is the end of the bone; put a dot there. Drop the arm and lay the tape from cord to dot.',
    moves: 'the shoulder and the armhole',
  },
  sideNeckToSleeveEdge: {
    from: 'the side neck point',
    to: 'where the sleeve is to end',
    words: 'From the side of the neck over the shoulder bone and down the arm to the wanted edge.',
    alone:
      'Fix the zero end at the side neck point with sticking plaster. Let the arm hang, lay the tape over the shoulder bone and read where the sleeve is to end, in the mirror.',
    moves: 'the sleeve length',
  },
} satisfies Record<string, MeasureWords>

/** How the measurements of `front.ts` are taken. */
import type { MeasureWords } from '../measure.ts'

export const FRONT_WORDS = {
  sideNeckOverApexToWaist: {
    from: 'the side neck point',
    to: 'the cord at the waist, in front',
    words: 'From the side of the neck over the apex, then straight down to the cord.',
    alone:
      'Hold the zero end where the neck cord crosses the shoulder line. Bring the tape over the apex and let it fall straight to the cord. Read it in the mirror, arms down.',
    moves: 'the front length',
  },
  sideNeckToApex: {
    from: 'the side neck point',
    to: 'the apex',
    words: 'From the side of the neck straight to the apex, lying on the skin.',
    alone: 'Same tape, same start as side neck over apex to waist; read it at the apex.',
    moves: 'the dart point, up and down',
  },
  frontNeckToWaist: {
    from: 'the hollow at the front of the neck',
    to: 'the cord at the waist, front middle',
    words: 'Down the middle of the front from the hollow of the neck to the cord.',
    alone:
      'Hold the zero end in the hollow, let the tape hang and press it to the skin at the cord.',
    moves: 'the middle of the front',
  },
  apexSpacing: {
    from: 'the left apex',
    to: 'the right apex',
    words: 'Straight from apex to apex, without dipping between them.',
    alone: 'Hold a ruler level across both apexes, both hands on it, and read it in the mirror.',
    moves: 'the dart point, in and out',
  },
} satisfies Record<string, MeasureWords>

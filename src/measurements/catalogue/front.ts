/** Lengths down the front, all by mirror. The apex is the point that stands out most from the side. */
import { own, seen, type Measure } from '../measure.ts'

const length = { kind: 'length', group: 'down the front', readingsNeeded: 2 } as const

export const FRONT = {
  sideNeckOverApexToWaist: {
    ...length,
    id: 'sideNeckOverApexToWaist',
    label: 'Side neck over apex to waist',
    spoken: 'side neck over the apex to the waist',
    definition: 'sideNeckOverApexToWaist/natural-waist',
    from: 'the side neck point',
    to: 'the cord at the waist, in front',
    words: 'From the side of the neck over the apex, then straight down to the cord.',
    alone:
      'Hold the zero end where the neck cord crosses the shoulder line. Bring the tape over the apex and let it fall straight to the cord. Read it in the mirror, arms down.',
    moves: 'the front length',
    tolerance: own(5),
    plausible: seen(346, 530, 'women of the 7th Korean body survey, 2015'),
  },
  sideNeckToApex: {
    ...length,
    id: 'sideNeckToApex',
    label: 'Side neck to apex',
    spoken: 'side neck to apex',
    definition: 'sideNeckToApex/on-skin',
    from: 'the side neck point',
    to: 'the apex',
    words: 'From the side of the neck straight to the apex, lying on the skin.',
    alone: 'Same tape, same start as side neck over apex to waist; read it at the apex.',
    moves: 'the dart point, up and down',
    tolerance: own(5),
    plausible: seen(185, 384),
  },
  frontNeckToWaist: {
    ...length,
    id: 'frontNeckToWaist',
    label: 'Front neck to waist',
    spoken: 'front neck to waist',
    definition: 'frontNeckToWaist/natural-waist',
    from: 'the hollow at the front of the neck',
    to: 'the cord at the waist, front middle',
    words: 'Down the middle of the front from the hollow of the neck to the cord.',
    alone:
      'Hold the zero end in the hollow, let the tape hang and press it to the skin at the cord.',
    moves: 'the middle of the front',
    tolerance: own(5),
    plausible: seen(238, 460),
  },
  apexSpacing: {
    ...length,
    id: 'apexSpacing',
    label: 'Apex spacing',
    spoken: 'apex spacing',
    definition: 'apexSpacing/straight',
    from: 'the left apex',
    to: 'the right apex',
    words: 'Straight from apex to apex, without dipping between them.',
    alone: 'Hold a ruler level across both apexes, both hands on it, and read it in the mirror.',
    moves: 'the dart point, in and out',
    tolerance: own(5),
    plausible: seen(111, 285),
  },
} as const satisfies Record<string, Measure>

/** Lengths down the back. The cord at the waist stays on; the nape bone is marked first. */
import { ISO_8559_1, observer, own, seen, type Measure } from '../measure.ts'

const length = { kind: 'length', group: 'down the back', readingsNeeded: 2 } as const

export const BACK = {
  napeToWaist: {
    ...length,
    id: 'napeToWaist',
    label: 'Nape to waist',
    spoken: 'nape to waist',
    definition: 'napeToWaist/natural-waist-on-skin',
    from: 'the nape bone',
    to: 'the cord at the waist',
    words: 'Down the middle of the back from the nape bone to the cord, lying on the skin.',
    alone:
      'Bend the head to find the nape bone, then hold the head up. Fix the zero end to it with sticking plaster and let the tape hang. Stand with your back to a door edge so that it lies on the skin. Pinch it where it meets the cord.',
    moves: 'the back length',
    tolerance: observer(5),
    plausible: seen(283, 481),
    iso: `${ISO_8559_1}, 5.4.5 back neck point to waist, to our waist`,
  },
  sideNeckOverBladeToWaist: {
    ...length,
    id: 'sideNeckOverBladeToWaist',
    label: 'Side neck over blade to waist',
    spoken: 'side neck over the blade to the waist',
    definition: 'sideNeckOverBladeToWaist/natural-waist',
    from: 'the side neck point',
    to: 'the cord at the waist, behind',
    words: 'From the side of the neck over the fullest of the shoulder blade straight to the cord.',
    alone:
      'Fix the zero end at the side neck point with sticking plaster, throw the tape over the shoulder, let it hang over the blade. Read it at the cord in a photo or with two mirrors.',
    moves: 'the back balance',
    tolerance: own(10),
    plausible: seen(360, 515, 'women of the 7th Korean body survey, 2015'),
  },
  napeToArmpitLevel: {
    ...length,
    id: 'napeToArmpitLevel',
    label: 'Nape to armpit level',
    spoken: 'nape to armpit level',
    definition: 'napeToArmpitLevel/down-centre-back',
    from: 'the nape bone',
    to: 'the level of the armpits, at the middle of the back',
    words: 'Down the middle of the back to a level line that touches both armpits.',
    alone:
      'Hold a strip of card level under both arms, across the back. Let the tape hang from the nape bone and read it at the upper edge of the card in a photo.',
    moves: 'the armhole depth',
    tolerance: own(8),
    plausible: seen(102, 249),
  },
} as const satisfies Record<string, Measure>

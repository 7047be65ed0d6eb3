/** How the measurements of `back.ts` are taken. */
import type { MeasureWords } from '../measure.ts'

export const BACK_WORDS = {
  napeToWaist: {
    from: 'the nape bone',
    to: 'the cord at the waist',
    words: 'Down the middle of the back from the nape bone to the cord, lying on the skin.',
    alone:
      'Bend the head to find the nape bone, then hold the head up. Fix the zero end to it with sticking plaster and let the tape hang. Stand with your back to a door edge so that it lies on the skin. Pinch it where it meets the cord.',
    moves: 'the back length',
  },
  sideNeckOverBladeToWaist: {
    from: 'the side neck point',
    to: 'the cord at the waist, behind',
    words: 'From the side of the neck over the fullest of the shoulder blade straight to the cord.',
    alone:
      'Fix the zero end at the side neck point with sticking plaster, throw the tape over the shoulder, let it hang over the blade. Read it at the cord in a photo or with two mirrors.',
    moves: 'the back balance',
  },
  napeToArmpitLevel: {
    from: 'the nape bone',
    to: 'the level of the armpits, at the middle of the back',
    words: 'Down the middle of the back to a level line that touches both armpits.',
    alone:
      'Hold a strip of card level under both arms, across the back. Let the tape hang from the nape bone and read it at the upper edge of the card in a photo.',
    moves: 'the armhole depth',
  },
} satisfies Record<string, MeasureWords>

/** How the measurements of `side.ts` are taken. */
import type { MeasureWords } from '../measure.ts'

export const SIDE_WORDS = {
  waistToBustLevel: {
    from: 'the cord at the waist',
    to: 'the level of the apexes',
    words: 'Straight up at the side from the cord to the level of the apexes. It is a height.',
    alone:
      'Stand a ruler upright at your side with its zero on the cord. Hold a second ruler level at the apex so that the two cross, and read the crossing in the mirror.',
    moves: 'the bust line',
  },
  armpitToWaist: {
    from: 'the level of the armpit',
    to: 'the cord at the waist, at the side',
    words: 'Down the side from the level of the armpit to the cord.',
    alone:
      'Hold a card level up into the armpit, drop the arm over it, and let the tape hang from the card to the cord.',
    moves: 'the side seam',
  },
  waistToHighHip: {
    from: 'the cord at the waist, at the side',
    to: 'the level of the high hip',
    words: 'Down the side on the skin from the cord to the level of the high hip girth.',
    alone: 'Leave a second elastic at the high hip. Hang the tape at the side between the two.',
    moves: 'the level of the high hip',
  },
  waistToHip: {
    from: 'the cord at the waist, at the side',
    to: 'the level of the hip girth',
    words: 'Down the side on the skin from the cord to the level of the hip girth.',
    alone: 'Leave a second elastic at the hip. Hang the tape at the side between the two.',
    moves: 'the level of the hip',
  },
  waistToFloor: {
    from: 'the cord at the waist, at the side',
    to: 'the floor',
    words: 'From the cord at the side straight to the floor, without shoes.',
    alone: 'Hang the tape from the cord with a small weight on its end and read it at the cord.',
    moves: 'the length of a dress',
  },
  stature: {
    from: 'the floor',
    to: 'the top of the head',
    words: 'From the floor to the top of the head, without shoes, standing tall.',
    alone:
      'Stand with your back to a wall, lay a book flat on your head and against the wall, step away, measure up to the lower edge of the book.',
    moves: 'nothing; it checks the other lengths',
  },
} satisfies Record<string, MeasureWords>

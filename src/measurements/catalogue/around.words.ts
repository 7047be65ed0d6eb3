/** How the measurements of `around.ts` are taken. */
import type { MeasureWords } from '../measure.ts'

export const AROUND_WORDS = {
  bustGirth: {
    from: 'the fuller apex',
    to: 'the same apex, once round',
    words: 'Level round the body over both apexes and the shoulder blades.',
    alone:
      'Wear the bra the garment is for. Pass the tape behind you, bring it level over the apexes and check it in two mirrors, front and side. Breathe out, then read.',
    moves: 'the width and the dart',
  },
  highBustGirth: {
    from: 'high under the left arm',
    to: 'the same place, once round',
    words: 'Level across the back at the armpits, under both arms, above the bust in front.',
    alone:
      'Lay a cord high under the arms first and make it level at the back in the mirror. Lay the tape on the cord, drop the arms, breathe out, then read.',
    moves: 'the shoulder width and the size of the dart',
  },
  underbustGirth: {
    from: 'below the left breast',
    to: 'the same place, once round',
    words: 'Level round the ribs, directly below the bust.',
    alone: 'Push the tape up until it meets the bust. Level it in the mirror, breathe out, read.',
    moves: 'the depth of the dart below the bust',
  },
  waistGirth: {
    from: 'the cord at the waist, front middle',
    to: 'the same place, once round',
    words: 'On the cord that marks the natural waist, all the way round.',
    alone:
      'Tie a narrow elastic round the waist and bend side to side until it settles. Lay the tape on it, breathe out, read. Leave the elastic on for every length that ends at the waist.',
    moves: 'the waist darts',
  },
  highHipGirth: {
    from: 'the hip bone at the side',
    to: 'the same place, once round',
    words: 'Level round the body over the top edge of the hip bones.',
    alone: 'Feel for the top of the hip bone, mark it, and level the tape there in the mirror.',
    moves: 'the width below the waist',
  },
  hipGirth: {
    from: 'the side, at the fullest of the seat',
    to: 'the same place, once round',
    words: 'Level round the body where the seat is fullest seen from the side.',
    alone:
      'Stand side on to the mirror, feet together. Find the fullest level of the seat, keep the tape level there, read.',
    moves: 'the hem width',
  },
  neckBaseGirth: {
    from: 'the nape bone',
    to: 'the same bone, once round',
    words: 'Round the base of the neck over the nape bone and the hollow in front.',
    alone:
      'Lay a fine chain or cord where a necklace settles, over the nape bone. Mark where it meets, take it off, lay it straight beside a ruler. Never tie it tight.',
    moves: 'the neckline',
  },
  headGirth: {
    from: 'the forehead',
    to: 'the forehead, once round',
    words: 'Round the head above the ears where it is largest, hair worn as usual.',
    alone: 'Slide the tape up and down at the back of the head and keep the largest reading.',
    moves: 'the neck opening',
  },
  upperArmGirth: {
    from: 'the outside of the upper arm',
    to: 'the same place, once round',
    words: 'Round the upper arm directly below the armpit, square to the arm, arm hanging.',
    alone:
      'Hold a loop of tape closed with a clip, slide it up with the other hand, let the arm hang, draw the loop snug, read in the mirror.',
    moves: 'the sleeve opening',
  },
  armholeGirth: {
    from: 'the shoulder bone',
    to: 'the same bone, once round',
    words: 'Over the shoulder bone, down in front, under the arm and up behind.',
    alone:
      'Put the zero end on the shoulder bone with sticking plaster, pass the tape under the arm and back up. Let the arm hang before reading in the mirror.',
    moves: 'the depth of the sleeve opening',
  },
  slipThroughGirth: {
    from: 'a closed loop of tape',
    to: 'the same loop, once round',
    words: 'The smallest closed loop that passes over the head, the raised arms and the bust.',
    alone:
      'Close the tape into a loop with a clip that cannot slip. Draw it over head, raised arms and bust as you would a blouse. Make it smaller until it stops passing, then go back one step. Stop if you cannot get it off with ease.',
    moves: 'whether a placket is needed',
  },
} satisfies Record<string, MeasureWords>

/** Words of what she says: first things, movements, the figure, the dial, her own words. */
import type { Understood } from '../../fitting/finding/understood.ts'
import type { FigureView } from './figure-places.ts'

const VIEW: Readonly<Record<FigureView, string>> = {
  front: 'Front',
  back: 'Back',
  side: 'Side',
  arm: 'Arm',
}
const FROM: Readonly<Record<FigureView, string>> = {
  front: 'the front',
  back: 'the back',
  side: 'the side',
  arm: 'the arm',
}
const KIND: Readonly<Record<Understood['kind'], string>> = {
  place: 'Place',
  part: 'Part',
  sign: 'What it does',
  direction: 'Which way',
  side: 'Side',
  movement: 'When',
  figure: 'Figure of speech',
  relation: 'Relation',
}

export const SAY_WORDS = {
  title: 'Say it',
  fact: '1 of 3',
  dial: 'Which way do the folds lie, on the half at the right?',
  cloth: 'What does the cloth do there?',
  keepSentence: 'Keep the sentence as a note',
  byName: 'All complaints by name',

  own: 'Or in your own words',
  example: 'my bra shows when I reach',
  find: 'Find it',
  findLabel: 'Find the complaint in these words',
  keepWords: 'Keep these words as a note',

  pickOne: 'That speaks for one of these. Pick the one you see.',
  nothingHeard:
    'No complaint is heard in these words. Say where it is and what the cloth does there.',
  several: (parts: readonly string[]) =>
    `More than one thing is heard: ${parts.map((part) => `“${part}”`).join(' and ')}. Take one now; “I see something else too” goes on to the next, and all are decided together.`,
  /** What is left of a sentence, as one to be heard again. */
  rest: (parts: readonly string[]) => parts.join(', and '),
  understood: 'Understood. A word that is wrong can be changed.',
  kind: (kind: Understood['kind'], denied: boolean) => `${KIND[kind]}${denied ? ', denied' : ''}`,
  somethingElse: 'something else',
  notUnderstood: (words: readonly string[]) => `Not understood: ${words.join(', ')}.`,

  view: VIEW,
  sideOfGarment: 'Side of the garment',
  looksRight: 'The front looks to the right.',
  asInMirror: 'As in a mirror: your left is at the left.',
  point: 'Point at the place',
  /** @param place what is marked */
  figure: (view: FigureView, place: string | undefined) =>
    `The garment from ${FROM[view]}, ${place === undefined ? 'no place marked' : `the ${place} marked`}.`,

  firstThings: 'First things first',
  all: (count: number) => `all ${count}`,
  of: (done: number, count: number) => `${done} of ${count}`,
  lines: 'The lines come before the folds. How do they lie?',
  notLookedAt: 'not looked at yet',
  linesLead: 'Begin with what the lines say.',
  linesText: 'Many folds go once the lines lie right.',

  movements: 'Movement check',
  movementsHow:
    'Mark where the hem lies on the body, standing. Move slowly, then measure how far it has climbed.',
  hemRose: 'The hem rose by',
  movingLead: 'Moving says something too.',
  movingText: 'Look at the muslin with the arms down as well, then take up what it says.',
}

/** What is looked at before any fold is read, and how each line of a muslin may lie, in words. */
import type { FirstThing, LiesWords, LineId } from './first-things.ts'

export const FIRST_THING_WORDS: Readonly<Record<FirstThing, string>> = {
  pressed: 'The muslin is pressed, allowances pressed the way they will lie.',
  grain: 'The grain was laid as marked: along the centres, and down the sleeve.',
  square: 'The printed square measured right, or the pieces were drawn by hand.',
  underwear: 'Under it is what will be worn under the garment.',
  arms: 'Arms hang down, weight on both feet, eyes on a mirror or a camera.',
  levels: 'Bust, waist and hip lines and both centres are drawn on the cloth.',
}

export const LINE_WORDS: Readonly<Record<LineId, string>> = {
  waist: 'Waist line',
  side: 'Side seam',
  centres: 'Centre front and back',
  hem: 'Hem',
}

export const LIES_WORDS: LiesWords = {
  waist: {
    true: 'level, on the waist',
    above: 'above the waist all round',
    frontUp: 'up at the centre front',
    frontDown: 'down at the centre front',
    backUp: 'up at the centre back',
    oneSide: 'lower on one side',
  },
  side: {
    true: 'plumb',
    forward: 'its lower end swings forward',
    backward: 'its lower end swings back',
    bows: 'it bows',
  },
  centres: { true: 'plumb', lean: 'they lean' },
  hem: {
    true: 'level with the floor',
    frontUp: 'up at the centre front',
    backUp: 'up at the centre back',
    uneven: 'uneven',
  },
}

/** "waist line: up at the centre front", as a reason within a sentence. */
export const LINE_READ = (line: string, lies: string): string => `${line.toLowerCase()}: ${lies}`

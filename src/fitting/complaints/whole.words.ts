/** What she reads of the complaints in whole.ts; causes and tests by their numbers. */
const SCALE =
  'The test square does not measure what is written in it: print at full size and cut anew; leave the draft.'

const ALLOWANCE =
  'Measure an allowance: it was sewn too narrow or too wide. Sew it anew; leave the draft.'
const ANEW =
  'More than 40 mm round the body is not corrected at the seams: tape bust, waist and hip again and draft it anew.'

export const WHOLE_WORDS = {
  X1: {
    said: ['the centre is not straight', 'seams spiral'],
    where: 'all of it',
    sign: 'The marked grain lines lean.',
    causes: { 1: 'cut off the grain', 2: 'the cloth itself is askew', 3: 'left and right differ' },
    advice: {
      1: 'Cut it anew on the grain; leave the draft.',
      2: 'Draw the cloth square and cut it anew.',
      3: 'Measure left and right and say which differs.',
    },
    tests: {
      1: 'Compare the marked grain with the selvedge. Is it off?',
      2: 'Is the grain right, and the cloth’s crosswise thread not square to it?',
    },
    trueAfter: [],
    doNot: 'Do not change the draft.',
  },
  X2: {
    said: ['too tight all over', 'too small'],
    where: 'all of it',
    sign: 'Level strain everywhere.',
    causes: {
      1: 'a measurement or the ease is short',
      2: 'printed too small',
      3: 'allowances sewn too wide',
    },
    advice: { 2: SCALE, 3: ALLOWANCE },
    past: ANEW,
    tests: {
      1: 'Does the test square measure what is written in it, and is the muslin round the bust as long as the draft?',
      2: 'Is the test square smaller than is written in it?',
      3: 'Is the muslin smaller round than the draft?',
    },
    trueAfter: ['everything'],
    doNot: 'The scale of the print first, then the fit.',
  },
  X3: {
    said: ['too big all over', 'too large'],
    where: 'all of it',
    sign: 'Upright folds everywhere.',
    causes: {
      1: 'a measurement or the ease is too long',
      2: 'printed too large',
      3: 'allowances sewn too narrow',
    },
    advice: { 2: SCALE, 3: ALLOWANCE },
    past: ANEW,
    tests: {
      1: 'Does the test square measure what is written in it, and is the muslin round the bust as long as the draft?',
      2: 'Is the test square larger than is written in it?',
      3: 'Is the muslin larger round than the draft?',
    },
    trueAfter: ['everything'],
    doNot: 'The scale of the print first, then the fit.',
  },
  X4: {
    said: ['the muslin was right', 'new folds in the real cloth'],
    where: 'all of it',
    sign: 'Folds that the muslin did not have.',
    causes: {
      1: 'the cloth drapes, shrinks or stretches differently',
      2: 'other allowances or facings',
      3: 'the body or the underwear changed',
    },
    advice: {
      1: 'Keep the draft. Choose more or less ease for this cloth.',
      2: ALLOWANCE,
      3: 'Tape bust, waist and hip again before anything is changed.',
    },
    tests: { 1: 'Measure both garments. Are they alike?', 2: 'Do they differ along the seams?' },
    trueAfter: [],
    doNot: 'Do not write over the fitted block.',
  },
}

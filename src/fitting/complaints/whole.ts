/** Complaints of the whole garment: cloth, scale and measuring before any change of the draft. */
import type { ComplaintBody, Edit } from './complaint.ts'
import { causes, edit, letOut, making, takeIn, tape, tests } from './work.ts'

const sides = (way: 'in' | 'out'): readonly Edit[] => [
  edit('EDGE', 'front.side', way),
  edit('EDGE', 'back.side', way),
]
const scale =
  'Measure the test square of a printed sheet. It is not what is written in it: print at full size, cut anew, leave the draft.'
const allowance =
  'Measure an allowance: it was sewn too narrow or too wide. Sew it anew; leave the draft.'

/** Four edges of 10 mm are 40 round the body: past that it is another body's draft. */
const anew = {
  past: {
    ids: ['bustGirth', 'waistGirth', 'hipGirth'],
    why: 'Over 40 mm round the body is not corrected at the seams: tape bust, waist and hip again and draft it anew.',
  },
} as const

export const WHOLE: readonly ComplaintBody[] = [
  {
    id: 'X1',
    said: ['the centre is not straight', 'seams spiral'],
    where: 'all of it',
    sign: 'The marked grain lines lean.',
    causes: causes(
      ['cut off the grain', making('Cut it anew on the grain; leave the draft.')],
      ['the cloth itself is askew', making('Draw the cloth square and cut it anew.')],
      ['left and right differ', making('Measure left and right and say which differs.')],
    ),
    tests: tests(
      ['Compare the marked grain with the selvage. Is it off?', [1]],
      ['Is the grain right, and the cloth’s crosswise thread not square to it?', [2]],
    ),
    usual: undefined,
    cap: undefined,
    trueAfter: [],
    doNot: 'Do not change the draft.',
    source: ['R1'],
    evidence: 'partly seen',
  },
  {
    id: 'X2',
    said: ['too tight all over', 'too small'],
    where: 'all of it',
    sign: 'Level strain everywhere.',
    causes: causes(
      ['a measurement or the ease is short', letOut('across', 10, sides('out'), anew)],
      ['printed too small', making(scale)],
      ['allowances sewn too wide', making(allowance)],
    ),
    tests: tests(
      [
        'Does the test square measure what is written in it, and is the muslin round the bust as long as the draft?',
        [1],
      ],
      ['Is the test square smaller than is written in it?', [2]],
      ['Is the muslin smaller round than the draft?', [3]],
    ),
    usual: undefined,
    cap: 40,
    trueAfter: ['everything'],
    doNot: 'The scale of the print first, then the fit.',
    source: ['CP'],
    evidence: 'common practice',
  },
  {
    id: 'X3',
    said: ['too big all over', 'too large'],
    where: 'all of it',
    sign: 'Upright folds everywhere.',
    causes: causes(
      ['a measurement or the ease is too long', takeIn('across', 10, sides('in'), anew)],
      ['printed too large', making(scale)],
      ['allowances sewn too narrow', making(allowance)],
    ),
    tests: tests(
      [
        'Does the test square measure what is written in it, and is the muslin round the bust as long as the draft?',
        [1],
      ],
      ['Is the test square larger than is written in it?', [2]],
      ['Is the muslin larger round than the draft?', [3]],
    ),
    usual: undefined,
    cap: undefined,
    trueAfter: ['everything'],
    doNot: 'The scale of the print first, then the fit.',
    source: ['CP'],
    evidence: 'common practice',
  },
  {
    id: 'X4',
    said: ['the muslin was right', 'new folds in the real cloth'],
    where: 'all of it',
    sign: 'Folds that the muslin did not have.',
    causes: causes(
      [
        'the cloth drapes, shrinks or stretches differently',
        making('Keep the draft. Choose more or less ease for this cloth.'),
      ],
      ['other allowances or facings', making(allowance)],
      [
        'the body or the underwear changed',
        tape(
          ['bustGirth', 'waistGirth', 'hipGirth'],
          'Tape bust, waist and hip again before anything is changed.',
        ),
      ],
    ),
    tests: tests(
      ['Measure both garments. Are they alike?', [1]],
      ['Do they differ along the seams?', [2]],
    ),
    usual: undefined,
    cap: undefined,
    trueAfter: [],
    doNot: 'Do not write over the fitted block.',
    source: ['PUBLIC', 'CP'],
    evidence: 'partly seen',
  },
]

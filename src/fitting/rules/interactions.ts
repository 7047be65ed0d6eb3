/**
 * How complaints bear on each other: which comes first, which are one slack told twice, which
 * pull opposite ways, which lengths are split into an even part and a wedge. Sources: the
 * articles and texts named in `complaints/sources.ts`; where none says it, common practice.
 */
import type { ComplaintId } from '../complaints/complaint.ts'

interface Pair {
  readonly of: readonly ComplaintId[]
  readonly before: readonly ComplaintId[]
  readonly why: string
}

/** The first is done this round; the others wait and are looked at again. */
export const FIRST: readonly Pair[] = [
  {
    of: ['B1', 'B12'],
    before: ['N1', 'B8'],
    why: 'a tight bust is let out first; the gape that is left is pinned again',
  },
  { of: ['W9'], before: ['K2'], why: 'the hip first: a tight hip pushes the same fold up' },
  {
    of: ['K3', 'K7'],
    before: ['N3', 'SH5', 'L4'],
    why: 'length over the blades first; neck, seam place and sleeve follow it',
  },
  { of: ['SH5'], before: ['L4'], why: 'the shoulder seam first, the sleeve hangs from it' },
  { of: ['SH2'], before: ['A1'], why: 'the slope carries the underarm with it' },
  {
    of: ['L1', 'L3'],
    before: ['L6', 'L7'],
    why: 'width and height of the cap first, its length after',
  },
  {
    of: ['B2', 'B1', 'W10', 'K3'],
    before: ['W6', 'W7', 'W8'],
    why: 'the balance first, the place of the side seam last',
  },
  {
    of: ['B1'],
    before: ['B5', 'B6'],
    why: 'the width of the front first, then where the bust tip lies',
  },
]

/** One slack seen in two places: the first found takes it all, the other is only watched. */
export const SAME_SLACK: readonly Pair[] = [
  {
    of: ['B9'],
    before: ['N1'],
    why: 'the level tuck above the bust takes the slack of the neck edge too',
  },
  { of: ['B9', 'N1'], before: ['B14'], why: 'the slack above the bust is taken once' },
  {
    of: ['SH1', 'SH8'],
    before: ['A2', 'B8', 'A3'],
    why: 'the slope of the shoulder is behind the slack at the armhole',
  },
  { of: ['SH8'], before: ['SH1'], why: 'one shoulder is lower: the sides are corrected apart' },
  {
    of: ['SH3'],
    before: ['B8', 'B10', 'A4', 'N5', 'L6'],
    why: 'the long shoulder is behind the slack beside the armhole',
  },
  { of: ['B8'], before: ['A2', 'B10'], why: 'the wedge at the armhole takes the same slack' },
  { of: ['K5'], before: ['N4'], why: 'the pleat across the back takes the fold at the neck too' },
  { of: ['SH2'], before: ['N4', 'N6'], why: 'the slope is behind the folds at the neck' },
  { of: ['W4'], before: ['K6', 'B13'], why: 'the waist is taken in once, all round' },
  {
    of: ['X3'],
    before: ['B3', 'W4', 'K6'],
    why: 'everything is loose: the whole is taken in once',
  },
  {
    of: ['X2'],
    before: ['B1', 'B12', 'W3', 'W9'],
    why: 'everything is tight: the whole is let out once',
  },
  { of: ['B1'], before: ['B12'], why: 'the same width is missing: it is added once' },
  {
    of: ['B2'],
    before: ['B15', 'N7', 'W10'],
    why: 'the same length is missing in front: it is added once',
  },
  {
    of: ['K3'],
    before: ['K7', 'N8', 'W5'],
    why: 'the same length is missing over the blades: it is added once',
  },
  {
    of: ['B14', 'B9'],
    before: ['W5', 'N8'],
    why: 'the same length is too much in front: it is taken once',
  },
  { of: ['D6'], before: ['D4'], why: 'the underarm is raised once' },
  { of: ['A2'], before: ['L5'], why: 'the underarm is raised once' },
  { of: ['B3'], before: ['B13'], why: 'the width of the front is taken in once' },
  { of: ['L2'], before: ['L6'], why: 'a lower cap is shorter too' },
]

/** The even part is done all round, and the wedge is what is left of the other. */
export const EVEN_PART: readonly Pair[] = [
  {
    of: ['W2'],
    before: ['K2', 'B14', 'K5', 'B9'],
    why: 'the even part first, a wedge for what is left',
  },
  { of: ['W1'], before: ['B2', 'K3', 'B15'], why: 'the even part first, a wedge for what is left' },
]

/** Opposite work in one place: both numbers are shown and she decides. */
export const OPPOSED: readonly (readonly [ComplaintId, ComplaintId, string])[] = [
  [
    'K1',
    'A4',
    'the back is let out for reach and taken in for slack; 6 to 13 mm a half stay to reach with',
  ],
  ['W3', 'W4', 'the waist is too tight and too loose'],
  ['B1', 'B3', 'the bust is too tight and too big'],
  ['SH1', 'SH2', 'the shoulder is drawn too flat and too steep'],
  ['SH3', 'SH4', 'the shoulder is too long and too short'],
  ['SH5', 'SH6', 'the seam lies too far back and too far forward'],
  ['N2', 'N5', 'the neck is too tight and too wide'],
  ['W1', 'W2', 'the waist lies too high and too low'],
  ['A1', 'A2', 'the underarm is too high and too low'],
  ['A1', 'L5', 'the underarm should go down for comfort and up for lift'],
  ['L1', 'L2', 'the cap is too low and too high'],
  ['L6', 'L7', 'the cap has too much ease and too little'],
  ['D1', 'D2', 'the overarm is too flat and too steep'],
  ['D1', 'D3', 'a steeper overarm lies closer and lifts less'],
  ['D4', 'D7', 'the sweep is too large and too small'],
  ['X2', 'X3', 'everything is too tight and too loose'],
  ['B10', 'B11', 'the chest is too wide and too narrow'],
  ['W6', 'W7', 'the side seam swings forward and back'],
  ['K3', 'K5', 'the back is too short and too long above the waist'],
  ['B2', 'B14', 'the front is too short and too long under the bust'],
  ['B9', 'B15', 'the front is too long and too short above the bust'],
]

/** One cause behind several complaints: they count as one group of changes. */
export const TOGETHER: readonly (readonly ComplaintId[])[] = [
  ['N1', 'B8'],
  ['W2', 'K2', 'B14', 'K5', 'B9'],
  ['W1', 'B2', 'K3', 'B15'],
  ['W3', 'W9'],
  ['B2', 'B9'],
]
export const ONE_CAUSE =
  'Neck and armhole gape for one reason: the darts hold too little. One turn at each edge, both into the darts; the front is not widened as well.'

/**
 * How complaints bear on each other: which comes first, which are one slack told twice, which
 * pull opposite ways, which lengths are split into an even part and a wedge. Sources: the
 * articles and texts named in `complaints/sources.ts`; where none says it, common practice.
 */
import type { ComplaintId } from '../complaints/complaint.ts'
import { INTERACTION_WORDS as W } from './interactions.words.ts'

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
    why: W.first.tightBust,
  },
  { of: ['W9'], before: ['K2'], why: W.first.hip },
  {
    of: ['K3', 'K7'],
    before: ['N3', 'SH5', 'L4'],
    why: W.first.overBlades,
  },
  { of: ['SH5'], before: ['L4'], why: W.first.shoulderSeam },
  { of: ['SH2'], before: ['A1'], why: W.first.slope },
  {
    of: ['L1', 'L3'],
    before: ['L6', 'L7'],
    why: W.first.capWidth,
  },
  {
    of: ['B2', 'B1', 'W10', 'K3'],
    before: ['W6', 'W7', 'W8'],
    why: W.first.balance,
  },
  {
    of: ['B1'],
    before: ['B5', 'B6'],
    why: W.first.frontWidth,
  },
]

/** One slack seen in two places: the first found takes it all, the other is only watched. */
export const SAME_SLACK: readonly Pair[] = [
  {
    of: ['B9'],
    before: ['N1'],
    why: W.sameSlack.levelTuck,
  },
  { of: ['B9', 'N1'], before: ['B14'], why: W.sameSlack.aboveBust },
  {
    of: ['SH1', 'SH8'],
    before: ['A2', 'B8', 'A3'],
    why: W.sameSlack.slope,
  },
  { of: ['SH8'], before: ['SH1'], why: W.sameSlack.oneShoulder },
  {
    of: ['SH3'],
    before: ['B8', 'B10', 'A4', 'N5', 'L6'],
    why: W.sameSlack.longShoulder,
  },
  { of: ['B8'], before: ['A2', 'B10'], why: W.sameSlack.wedgeAtArmhole },
  { of: ['K5'], before: ['N4'], why: W.sameSlack.pleat },
  { of: ['SH2'], before: ['N4', 'N6'], why: W.sameSlack.foldsAtNeck },
  { of: ['W4'], before: ['K6', 'B13'], why: W.sameSlack.waist },
  {
    of: ['X3'],
    before: ['B3', 'W4', 'K6'],
    why: W.sameSlack.allLoose,
  },
  {
    of: ['X2'],
    before: ['B1', 'B12', 'W3', 'W9'],
    why: W.sameSlack.allTight,
  },
  { of: ['B1'], before: ['B12'], why: W.sameSlack.width },
  {
    of: ['B2'],
    before: ['B15', 'N7', 'W10'],
    why: W.sameSlack.frontLength,
  },
  {
    of: ['K3'],
    before: ['K7', 'N8', 'W5'],
    why: W.sameSlack.bladeLength,
  },
  {
    of: ['B14', 'B9'],
    before: ['W5', 'N8'],
    why: W.sameSlack.tooMuchInFront,
  },
  { of: ['D6'], before: ['D4'], why: W.sameSlack.underarm },
  { of: ['A2'], before: ['L5'], why: W.sameSlack.underarm },
  { of: ['B3'], before: ['B13'], why: W.sameSlack.frontWidth },
  { of: ['L2'], before: ['L6'], why: W.sameSlack.lowerCap },
]

/** The even part is done all round, and the wedge is what is left of the other. */
export const EVEN_PART: readonly Pair[] = [
  {
    of: ['W2'],
    before: ['K2', 'B14', 'K5', 'B9'],
    why: W.evenPart,
  },
  { of: ['W1'], before: ['B2', 'K3', 'B15'], why: W.evenPart },
]

/** Opposite work in one place: both numbers are shown and she decides. */
export const OPPOSED: readonly (readonly [ComplaintId, ComplaintId, string])[] = [
  ['K1', 'A4', W.opposed.reach],
  ['W3', 'W4', W.opposed.waistWidth],
  ['B1', 'B3', W.opposed.bust],
  ['SH1', 'SH2', W.opposed.slope],
  ['SH3', 'SH4', W.opposed.shoulderLength],
  ['SH5', 'SH6', W.opposed.shoulderSeam],
  ['N2', 'N5', W.opposed.neck],
  ['W1', 'W2', W.opposed.waistHeight],
  ['A1', 'A2', W.opposed.underarm],
  ['A1', 'L5', W.opposed.underarmLift],
  ['L1', 'L2', W.opposed.capHeight],
  ['L6', 'L7', W.opposed.capEase],
  ['D1', 'D2', W.opposed.overarm],
  ['D1', 'D3', W.opposed.overarmLift],
  ['D4', 'D7', W.opposed.sweep],
  ['X2', 'X3', W.opposed.all],
  ['B10', 'B11', W.opposed.chest],
  ['W6', 'W7', W.opposed.sideSeam],
  ['K3', 'K5', W.opposed.backLength],
  ['B2', 'B14', W.opposed.underBust],
  ['B9', 'B15', W.opposed.aboveBust],
]

/** One cause behind several complaints: they count as one group of changes. */
export const TOGETHER: readonly (readonly ComplaintId[])[] = [
  ['N1', 'B8'],
  ['W2', 'K2', 'B14', 'K5', 'B9'],
  ['W1', 'B2', 'K3', 'B15'],
  ['W3', 'W9'],
  ['B2', 'B9'],
]

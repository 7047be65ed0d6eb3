/**
 * The cuff: a straight band folded lengthwise, outside and inside in one. x = 0 is the end that
 * laps over, with the buttonhole; y = 0 the edge that is sewn to the sleeve, mm. Source: a band as
 * long as the sleeve end once it is drawn up, and an overlap beyond the slit for the button; common
 * practice, no source. Not for: shaped or turned-back cuffs.
 */
import { mm } from '../../units/length.ts'
import { found, minus, type Amount } from '../../units/amount.ts'
import { choice, type Choices } from '../choices.ts'
import { Sheet } from '../sheet.ts'
import { CUFF_WORDS as W } from './cuff.words.ts'
import type { SleeveEnd } from './sleeve-end.ts'

/** @param rests what the sleeve end rests on */
export function drawCuff(end: SleeveEnd, choices: Choices, rests: readonly string[]): Sheet {
  const s = new Sheet('cuff')
  const laps = end.slit > 0
  s.start('A', laps ? W.frontEdgeOfSlit : W.atSleeveSeam)
  s.measure('B', 'A', 'right', lengthOf(end, choices, rests), laps ? W.backEdgeOfSlit : W.otherEnd)
  if (laps) s.measure('C', 'B', 'right', choice(choices, 'cuffOverlap'), W.overlapForButton)
  const last = laps ? 'C' : 'B'
  s.measure('F', 'A', 'down', choice(choices, 'cuffHeight'), W.foldBegins)
  s.measure('G', 'F', 'right', s.across('A', last), W.foldEnds)
  s.measure('D', 'F', 'down', choice(choices, 'cuffHeight'), W.insideAsHigh)
  s.measure('E', 'D', 'right', s.across('A', last), W.lastCorner)
  s.join('A', last, 'sleeveEnd', 'seam', laps ? W.sewnAsFarAsB : W.sewnToSleeve)
  s.join(last, 'E', 'end', 'seam', laps ? W.sewnShut : W.sewnToOtherEnd)
  s.join('E', 'D', 'outer', 'seam', W.turnedUnderInside)
  s.join('D', 'A', 'start', 'seam', laps ? W.sewnShut : W.sewnToOtherEnd)
  return s
}

function lengthOf(end: SleeveEnd, choices: Choices, rests: readonly string[]): Amount {
  const round = found(W.sleeveEnd, mm(end.round), rests)
  return end.round - choices.cuffFullness === end.closed
    ? minus(round, choice(choices, 'cuffFullness'))
    : found(W.noNarrowerThanWrist, mm(end.closed), [...rests, 'cuffFullness', 'sleeveSlit'])
}

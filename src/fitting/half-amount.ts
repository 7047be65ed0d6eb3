/**
 * From what was pinned or cut on the body to the amount for a half piece: how it was read says
 * how much cloth that is, where it was read says how it is shared. Source: rules of our notes on
 * turning pins into pattern amounts, common practice with the references named there.
 */
import { mm, type Mm } from '../units/length.ts'

/**
 * fold: a tuck lies flat, read from its fold to the pin. pinch: the whole width taken out.
 * slit: the opening between two cut edges. level: from the line drawn to where it should be.
 * newLine: from the seam to the new line of pins.
 */
export type How = 'fold' | 'pinch' | 'slit' | 'level' | 'newLine'
/** Where the cloth lies: at a centre, inside a half, at a seam of two pieces, or round the body. */
export type Place = 'centre' | 'inside' | 'seam' | 'allRound'
/** A vertical tuck takes width, a horizontal one takes length. */
export type Runs = 'upright' | 'level'

export interface Read {
  readonly how: How
  readonly value: Mm
  readonly place: Place
  readonly runs: Runs
}

/** All the cloth that is to go or to come, mm, on the whole body where it was read. */
export const clothOf = ({ how, value }: Pick<Read, 'how' | 'value'>): Mm =>
  how === 'fold' ? mm(2 * value) : value

/**
 * The amount on the half piece, mm; at a seam the amount on each of the two edges.
 * - an upright tuck on the centre line is shared by two halves; one inside a half is not, and is
 *   repeated on the other side;
 * - a level tuck across a centre runs through both halves and keeps its depth on each;
 * - at a seam the two edges share it; from the seam to a new line is already the amount of an edge;
 * - an upright amount all round is shared by four edges: two side seams, back and front.
 */
export function halfAmount(read: Read): Mm {
  const cloth = clothOf(read)
  if (read.how === 'newLine') return read.value
  if (read.how === 'level') return read.value
  if (read.runs === 'level') return cloth
  switch (read.place) {
    case 'centre':
      return mm(cloth / 2)
    case 'inside':
      return cloth
    case 'seam':
      return mm(cloth / 2)
    case 'allRound':
      return mm(cloth / 4)
  }
}

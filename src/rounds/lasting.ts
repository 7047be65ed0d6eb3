/**
 * Corrections that come from the body and go with it into the next garment, and those that belong
 * to the style and stay. A change of shape or length of the frame is the body's: a gaping armhole,
 * a short front. Ease, necklines, hems and sleeves are the style's. Common practice, no source.
 */
import type { ChoiceId } from '../draft/choices.ts'
import { HEADS } from '../fitting/complaints/heads.ts'
import { inForce, type Correction } from '../fitting/correction.ts'
import type { Round } from './round.ts'

/** Choices that say where the body is, not how the garment is meant to look. */
const OF_THE_BODY: readonly ChoiceId[] = [
  'lengthAdded',
  'frontRaise',
  'frontShort',
  'frontShare',
  'shoulderDart',
  'overarmDrop',
]

function lasts(c: Correction): boolean {
  if (c.kind === 'withdraw') return false
  if (c.kind === 'turn-choice') return OF_THE_BODY.includes(c.choice)
  // Too tight or too loose all round is ease.
  return HEADS[c.because.complaint].kind !== 'girth'
}

export const lastingOf = (round: Pick<Round, 'corrections'>): readonly Correction[] =>
  inForce(round.corrections).filter(lasts)

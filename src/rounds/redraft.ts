/** A round drawn from what it keeps, and closed once it goes on paper. */
import { record } from '../draft/record.ts'
import { sentence } from '../draft/sentence.words.ts'
import { stepTitle } from '../draft/step-title.ts'
import { correctedDraft, type Corrected } from '../fitting/apply.ts'
import type { UnitChoice } from '../units/format.ts'
import { open, type Round } from './round.ts'

/** The frozen words are kept in centimetres, whatever the screen shows. */
export const FROZEN_UNITS: UnitChoice = { unit: 'cm', inchStep: 8 }

export const redraft = (
  round: Pick<Round, 'garment' | 'body' | 'choices' | 'corrections'>,
): Corrected => correctedDraft(round.garment, round.body, round.choices, round.corrections)

const worded = (round: Round): readonly string[] =>
  redraft(round).draft.steps.map((step) => `${stepTitle(step)} ${sentence(step, FROZEN_UNITS)}`)

export function close(round: Round, on: string): Round {
  const { draft } = redraft(open(round))
  return { ...round, printed: { on, record: record(draft), words: worded(round) } }
}

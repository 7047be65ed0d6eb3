/** What changed between two rounds that is no number: words picked, pieces that came or went. */
import { OPTION_IDS, OPTIONS, type OptionId, type Options } from '../../draft/options.ts'
import { GARMENTS } from '../../draft/garments.ts'
import type { PieceId } from '../../draft/piece.ts'
import { PIECE_WORDS } from '../../draft/piece.words.ts'
import { redraft } from '../../rounds/redraft.ts'
import type { Round } from '../../rounds/round.ts'
import { capital } from '../../units/capital.ts'
import { CHANGED_WORDS } from './compare.words.ts'

export interface WordChange {
  /** "Neck shape", "A piece". */
  readonly name: string
  readonly before: string
  readonly after: string
}

export function wordsBetween(before: Round, after: Round): readonly WordChange[] {
  const [old, now] = [piecesOf(before), piecesOf(after)]
  const gone = old.filter((id) => !now.includes(id))
  const come = now.filter((id) => !old.includes(id))
  return [
    ...pickedBetween(before, after),
    ...gone.map((id) => ({
      name: capital(PIECE_WORDS[id]),
      before: CHANGED_WORDS.aPiece,
      after: CHANGED_WORDS.noPiece,
    })),
    ...come.map((id) => ({
      name: capital(PIECE_WORDS[id]),
      before: CHANGED_WORDS.noPiece,
      after: CHANGED_WORDS.aPiece,
    })),
  ]
}
const piecesOf = (round: Round): readonly PieceId[] => redraft(round).draft.pieces.map((p) => p.id)

/** The options that stand at another word. */
export const pickedBetween = (before: Round, after: Round): readonly WordChange[] =>
  optionsOf(after)
    .filter((id) => before.choices[id] !== after.choices[id])
    .map((id) => ({
      name: capital(OPTIONS[id].label),
      before: optionWord(before.choices, id),
      after: optionWord(after.choices, id),
    }))

/** The options the garment of a round reads. */
export const optionsOf = (round: Round): readonly OptionId[] =>
  OPTION_IDS.filter((id) => GARMENTS[round.garment].options.includes(id))

/** "slit at the back neck with a loop" */
export const optionWord = (options: Options, id: OptionId): string =>
  Object.entries(OPTIONS[id].words).find(([word]) => word === options[id])?.[1] ?? options[id]

/** A round drawn with other choices than it has; nothing is kept. */
import { CHOICES, type ChoiceId, type Choices } from '../../draft/choices.ts'
import { correctedDraft, type Corrected } from '../../fitting/apply.ts'
import type { Round } from '../../rounds/round.ts'
import type { Mm } from '../../units/length.ts'
import { TURNING_WORDS as W } from './turning.words.ts'

export type Turned =
  | { readonly ok: true; readonly corrected: Corrected }
  | { readonly ok: false; readonly sentence: string }

/** One amount at another setting. */
export const turned = (round: Round, id: ChoiceId, setting: Mm): Turned =>
  drawnWith(round, { ...round.choices, [id]: setting }, W.tooFar(CHOICES[id].label))

/** Words picked, or several amounts at once; `words` name them in the refusal. */
export const picked = (round: Round, choices: Choices, words: string): Turned =>
  drawnWith(round, choices, W.doNotMeet(words))

function drawnWith(round: Round, choices: Choices, sentence: string): Turned {
  try {
    const { garment, body, corrections } = round
    return { ok: true, corrected: correctedDraft(garment, body, choices, corrections) }
  } catch {
    // The construction throws where lines it needs do not meet; she only has to turn back.
    return { ok: false, sentence }
  }
}

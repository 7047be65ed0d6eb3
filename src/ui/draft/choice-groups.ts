/** The choices in the order she meets them on the body, and what a knob shows for each. */
import { CHOICES, type ChoiceId, type Choices } from '../../draft/choices.ts'
import type { Draft } from '../../draft/draft.ts'
import { correctedDraft, type Corrected } from '../../fitting/apply.ts'
import type { Round } from '../../rounds/round.ts'
import { mm, type Mm } from '../../units/length.ts'

export interface ChoiceGroup {
  readonly words: string
  readonly ids: readonly ChoiceId[]
}

export const CHOICE_GROUPS: readonly ChoiceGroup[] = [
  { words: 'Ease', ids: ['easeBust', 'easeWaist', 'easeHip'] },
  { words: 'Neck', ids: ['neckHalfWidth', 'sideNeckRise', 'frontNeckDrop'] },
  { words: 'Sleeve and underarm', ids: ['underarmDrop', 'overarmDrop', 'frontRaise'] },
  { words: 'Length', ids: ['lengthAdded', 'lengthBelowWaist'] },
  {
    words: 'Waist and darts',
    ids: ['sideIntake', 'frontDartTip', 'backDartTip', 'frontDartLow', 'backDartLow'],
  },
]

export interface KnobState {
  /** What the draft is drawn with. */
  readonly value: Mm
  readonly min: Mm
  readonly max: Mm
  /** How much of it corrections turned; 0 when none did. */
  readonly corrected: Mm
}

/**
 * A choice as its knob shows it: her own setting with the corrections in force on top. The ends
 * are drawn in so far that neither the setting nor the sum leaves the range of the choice.
 */
export function knobState(choices: Choices, draft: Draft, id: ChoiceId): KnobState {
  const corrected = draft.choices[id] - choices[id]
  const { min, max } = CHOICES[id]
  return {
    value: draft.choices[id],
    min: mm(Math.max(min, min + corrected)),
    max: mm(Math.min(max, max + corrected)),
    corrected: mm(corrected),
  }
}

export type Turned =
  | { readonly ok: true; readonly corrected: Corrected }
  | { readonly ok: false; readonly sentence: string }

/** Her setting that gives `value` once the corrections are added. */
export const settingFor = (value: Mm, corrected: Mm): Mm => mm(value - corrected)

/** The round drawn with one choice at another setting; nothing is kept. */
export function turned(round: Round, id: ChoiceId, setting: Mm): Turned {
  try {
    const choices = { ...round.choices, [id]: setting }
    return {
      ok: true,
      corrected: correctedDraft(round.garment, round.body, choices, round.corrections),
    }
  } catch {
    // The construction throws where lines it needs do not meet; she only has to turn back.
    return {
      ok: false,
      sentence: `${CHOICES[id].label}: that far the lines no longer meet. It stays as it was.`,
    }
  }
}

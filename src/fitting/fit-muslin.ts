/**
 * One muslin, from what she says of it to what changes: the complaints with answers and pins are
 * decided, the edits become recorded corrections of this garment, and a number that the muslin
 * proves wrong goes back as a proposal to be taped. Pure: ids and the date come in.
 */
import type { Choices } from '../draft/choices.ts'
import type { GarmentId } from '../draft/draft.ts'
import type { MeasurementId } from '../measurements/catalogue.ts'
import type { Body } from '../measurements/confirmed.ts'
import { correctedDraft } from './apply.ts'
import type { Correction } from './correction.ts'
import { STANDARD_RULES, type AmountRules } from './half-amount.ts'
import { dartsOf, measuredReaches } from './measured-reaches.ts'
import type { NewCorrection } from './propose.ts'
import type { Reaches } from './reaches.ts'
import { decide, type Decision } from './rules/decide.ts'
import type { Reported } from './rules/judged.ts'
import { proposalsFrom, type TapeProposal } from './rules/tape-proposals.ts'
import { correctionsFor, type NotDrawn } from './rules/to-corrections.ts'

export interface Muslin {
  readonly garment: GarmentId
  readonly body: Body
  readonly choices: Choices
  /** Already in force when this muslin was sewn. */
  readonly corrections: readonly Correction[]
  readonly complaints: readonly Reported[]
  /** Lengths measured on the sewn muslin, by the names of `reaches.ts`; they outweigh the draft's. */
  readonly sewn?: Reaches
  /** Taped once more since, and found to stand. */
  readonly retaped?: readonly MeasurementId[]
  /** Number of the round whose muslin it is, and the day, ISO. */
  readonly round: number
  readonly on: string
  readonly rules?: AmountRules
}

export interface Fitted {
  readonly decision: Decision
  readonly corrections: readonly NewCorrection[]
  readonly proposals: readonly TapeProposal[]
  /** Edits that no drawing of this garment can carry, each with what to do instead. */
  readonly notDrawn: readonly NotDrawn[]
}

export function fitMuslin(m: Muslin): Fitted {
  const { draft } = correctedDraft(m.garment, m.body, m.choices, m.corrections)
  const decision = decide(
    m.complaints,
    {
      garment: m.garment,
      reaches: { ...measuredReaches(draft), ...m.sewn },
      darts: dartsOf(draft),
      ...(m.retaped ? { retaped: m.retaped } : {}),
    },
    m.rules ?? STANDARD_RULES,
  )
  const { corrections, notDrawn } = correctionsFor(decision, draft, m.round, m.rules)
  return { decision, corrections, proposals: proposalsFrom(decision, m.on), notDrawn }
}

/** The list with ids, after those that are kept. */
export const numbered = (list: readonly NewCorrection[], from: number): readonly Correction[] =>
  list.map((c, i) => ({ ...c, v: 1, id: `c${from + i}` }))

/**
 * One muslin, from what she says of it to what changes: the complaints with answers and pins are
 * decided, the edits become recorded corrections of this garment, and a number that the muslin
 * proves wrong goes back as a proposal to be taped. Pure: ids and the date come in.
 */
import type { Choices } from '../draft/choices.ts'
import type { Draft, GarmentId } from '../draft/draft.ts'
import { MEASUREMENT_IDS, type MeasurementId } from '../measurements/catalogue.ts'
import { knows, type Body } from '../measurements/confirmed.ts'
import { correctedDraft, type Corrected } from './apply.ts'
import type { Correction } from './correction.ts'
import { STANDARD_RULES, type AmountRules } from './half-amount.ts'
import { dartsOf, measuredReaches } from './measured-reaches.ts'
import type { Base, NewCorrection } from './preview.ts'
import type { Reaches } from './reaches.ts'
import type { LineSays } from './rules/beside.ts'
import { decideOn, type Drawable, type OnDraft } from './rules/drawable.ts'
import type { Facts, Reported } from './rules/judged.ts'
import { watchedFrom } from './rules/watched.ts'
import { proposalsFrom, type TapeProposal } from './rules/tape-proposals.ts'
import { besideOf, type Known } from './whys.ts'

export interface Muslin {
  readonly garment: GarmentId
  readonly body: Body
  readonly choices: Choices
  /** Already in force when this muslin was sewn. */
  readonly corrections: readonly Correction[]
  readonly complaints: readonly Reported[]
  /** Lengths measured on the sewn muslin, by the names of `reaches.ts`; they outweigh the draft's. */
  readonly sewn?: Reaches
  /** What it did when she moved, and how its lines lay. */
  readonly moves?: Pick<Known, 'armsForward' | 'armsUp' | 'sit'>
  readonly linesSay?: { readonly named: readonly LineSays[]; readonly denied: readonly LineSays[] }
  /** The numbers it was cut from, where some were taped again since. */
  readonly cutFrom?: Body['values']
  /** Taped once more since. */
  readonly retaped?: readonly MeasurementId[]
  /** Number of the round whose muslin it is, and the day, ISO. */
  readonly round: number
  readonly on: string
  readonly rules?: AmountRules
}

export interface Fitted extends Drawable {
  readonly proposals: readonly TapeProposal[]
}

export function fitMuslin(m: Muslin): Fitted {
  const { draft } = correctedDraft(m.garment, m.body, m.choices, m.corrections)
  const reaches = { ...measuredReaches(draft), ...m.sewn }
  const on: OnDraft = {
    draft,
    facts: {
      ...factsOf(draft),
      reaches,
      beside: besideOf(
        m.complaints.map(({ id }) => id),
        { draft, reaches, ...m.moves, ...(m.linesSay ? { lines: m.linesSay.named } : {}) },
        m.linesSay?.denied,
      ),
      ...(m.retaped ? { retaped: m.retaped } : {}),
      ...(m.retaped && m.cutFrom ? { moved: movedSince(m.retaped, m.cutFrom, m.body) } : {}),
      watched: watchedFrom(m.corrections, m.round),
    },
    round: m.round,
    tries: triesOn(m),
  }
  const made = decideOn(m.complaints, on, m.rules ?? STANDARD_RULES)
  return { ...made, proposals: proposalsFrom(made.decision, m.on) }
}

/** By how much each of these numbers is more than it was. */
export const movedSince = (
  ids: readonly MeasurementId[],
  was: Body['values'],
  { values: is }: Body,
): NonNullable<Facts['moved']> =>
  Object.fromEntries(
    ids.flatMap((id) => {
      const [a, b] = [was[id], is[id]]
      return a === undefined || b === undefined ? [] : [[id, b - a]]
    }),
  )

/** What further corrections would make of the draft that is made from `base`. */
export const triesOn = ({ garment, body, choices, corrections }: Base): OnDraft['tries'] => {
  const made = (list: readonly Correction[]): Corrected =>
    correctedDraft(garment, body, choices, [...corrections, ...list])
  const before = new Set(made([]).refused.map(({ correction }) => correction))
  return (list) => {
    const fresh = numbered(list, FRESH)
    const all = made(fresh)
    const refused = all.refused.find(({ correction }) => !before.has(correction))
    return {
      draft: all.draft,
      refused: refused && { at: causeOf(refused.correction, fresh, made), why: refused.why },
      notes: fresh.flatMap(({ id }) => all.notes[id] ?? []),
    }
  }
}
/** Its own place in the list; of one made before, that of the new one it cannot stand with. */
function causeOf(
  correction: string,
  fresh: readonly Correction[],
  made: (list: readonly Correction[]) => Corrected,
): number {
  const own = fresh.findIndex(({ id }) => id === correction)
  if (own >= 0) return own
  const stands = fresh.findIndex(
    (out) => !made(fresh.filter((c) => c !== out)).refused.some((r) => r.correction === correction),
  )
  return Math.max(0, stands)
}
/** Past the number of any correction that is kept. */
const FRESH = 1e6

/** What the rules read of a draft. */
export const factsOf = (draft: Draft): Facts => ({
  garment: draft.garment,
  reaches: measuredReaches(draft),
  darts: dartsOf(draft),
  taped: MEASUREMENT_IDS.filter((id) => knows(draft.body, id)),
})

/** The list with ids, after those that are kept. */
export const numbered = (list: readonly NewCorrection[], from: number): readonly Correction[] =>
  list.map((c, i) => ({ ...c, v: 1, id: `c${from + i}` }))

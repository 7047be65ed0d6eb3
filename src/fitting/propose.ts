/**
 * From an answered complaint to what may be done about it: a correction with its amount settled,
 * a piece of advice, or the reason why not. And what that correction would do to the draft, before
 * anyone decides on it: the same replay with the candidate put last.
 */
import type { Choices } from '../draft/choices.ts'
import type { Draft, GarmentId } from '../draft/draft.ts'
import type { Finding } from '../draft/finding.ts'
import type { MeasurementId } from '../measurements/catalogue.ts'
import type { Body } from '../measurements/confirmed.ts'
import { mm } from '../units/length.ts'
import { correctedDraft } from './apply.ts'
import { COMPLAINTS, type ComplaintId, type Outcome } from './complaints.ts'
import type { Because, Correction } from './correction.ts'
import { cannotUse, settle, type Pinned, type Settled } from './pinned.ts'
import type { Why } from './refusal.ts'
import type { Wedge } from './wedge.ts'

/** A correction that is not decided yet: the session gives it its id. */
export type NewCorrection = Correction extends infer C
  ? C extends Correction
    ? Omit<C, 'v' | 'id'>
    : never
  : never

export interface Answered {
  readonly complaint: ComplaintId
  readonly outcome: Outcome
  /** What was read on the muslin; undefined until she has read it. */
  readonly pinned: Pinned | undefined
  /** Place on the edge as a share of its length, counted from the underarm; for a wedge. */
  readonly along: number
  /** The round whose muslin said it. */
  readonly round: number
}

export type Proposal =
  | {
      readonly kind: 'change'
      readonly correction: NewCorrection
      readonly settled: Settled
    }
  /** The draft is right as it is. */
  | { readonly kind: 'leave'; readonly advice: string }
  | {
      readonly kind: 'tape-again'
      readonly advice: string
      readonly ids: readonly MeasurementId[]
    }
  /** What is still missing or cannot be used, as a sentence. */
  | { readonly kind: 'not-yet'; readonly reason: string }

export function propose({ complaint, outcome, pinned, along, round }: Answered): Proposal {
  const { remedy } = outcome
  if (remedy.kind === 'leave') return { kind: 'leave', advice: remedy.advice }
  if (remedy.kind === 'tape-again')
    return { kind: 'tape-again', advice: remedy.advice, ids: remedy.ids }
  if (!pinned) return { kind: 'not-yet', reason: COMPLAINTS[complaint].howMuch }
  const unusable = cannotUse(pinned)
  if (unusable !== undefined) return { kind: 'not-yet', reason: unusable }
  const settled = settle(pinned, COMPLAINTS[complaint].cap)
  const because: Because = { complaint, cause: outcome.cause, pinned, watch: settled.watch, round }
  switch (remedy.kind) {
    case 'turn-choice': {
      const by = mm(settled.applied * remedy.sign)
      return {
        kind: 'change',
        correction: { kind: 'turn-choice', choice: remedy.choice, by, because },
        settled,
      }
    }
    case 'close-wedge': {
      const { piece, edge } = remedy
      return {
        kind: 'change',
        correction: { kind: 'close-wedge', piece, edge, along, width: settled.applied, because },
        settled,
      }
    }
  }
}

/** What a draft is made from; a round is one. */
export interface Base {
  readonly garment: GarmentId
  readonly body: Body
  readonly choices: Choices
  readonly corrections: readonly Correction[]
}

export interface Preview {
  readonly before: Draft
  readonly after: Draft
  readonly correction: NewCorrection
  /** What the wedge did, when the correction is one. */
  readonly wedge: Wedge | undefined
  /** What the proof finds after the change and did not find before it. */
  readonly found: readonly Finding[]
}

export type PreviewOutcome =
  { readonly ok: true; readonly preview: Preview } | { readonly ok: false; readonly why: Why }

/** Ids of kept corrections have no blank in them, so these are never taken. */
const candidateId = (i: number): string => ` ${i}`

/** What one correction would do, or several that are decided together; the first refusal counts. */
export function previewOf(
  base: Base,
  correction: NewCorrection,
  ...more: readonly NewCorrection[]
): PreviewOutcome {
  const { garment, body, choices, corrections } = base
  const before = correctedDraft(garment, body, choices, corrections).draft
  const candidates = [correction, ...more].map((c, i): Correction => ({
    ...c,
    v: 1,
    id: candidateId(i),
  }))
  const made = correctedDraft(garment, body, choices, [...corrections, ...candidates])
  const refusal = made.refused.find((r) => candidates.some(({ id }) => id === r.correction))
  if (refusal) return { ok: false, why: refusal.why }
  const known = new Set(before.findings.map(nameOf))
  const found = made.draft.findings.filter((f) => !known.has(nameOf(f)))
  const wedge = made.wedges[candidateId(0)]
  return { ok: true, preview: { before, after: made.draft, correction, wedge, found } }
}
const nameOf = (f: Finding): string => `${f.id} ${f.place}`

/**
 * What corrections would do to the draft before anyone decides on them: the same replay with the
 * candidates put last.
 */
import type { Choices } from '../draft/choices.ts'
import type { Draft, GarmentId } from '../draft/draft.ts'
import type { Finding } from '../draft/finding.ts'
import type { Body } from '../measurements/confirmed.ts'
import { correctedDraft } from './apply.ts'
import type { Correction } from './correction.ts'
import type { Why } from './refusal.ts'

/** A correction that is not decided yet: the session gives it its id. */
export type NewCorrection = Correction extends infer C
  ? C extends Correction
    ? Omit<C, 'v' | 'id'>
    : never
  : never

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
  /** The first of what is decided together. */
  readonly correction: NewCorrection
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
  return { ok: true, preview: { before, after: made.draft, correction, found } }
}
const nameOf = (f: Finding): string => `${f.id} ${f.place}`

/**
 * A round is one muslin. It keeps everything its pieces were made from, so it stands alone in a
 * backup; once printed it is closed: numbers, choices, corrections and what was printed never
 * change again, and what comes next goes into the next round.
 */
import { GARMENTS, standardFor } from '../draft/garments.ts'
import type { GarmentId } from '../draft/draft.ts'
import { record, type NumberRecord } from '../draft/record.ts'
import type { Choices } from '../draft/choices.ts'
import { correctedDraft, type Corrected } from '../fitting/apply.ts'
import type { ComplaintId } from '../fitting/complaints.ts'
import type { Correction } from '../fitting/correction.ts'
import type { Pinned } from '../fitting/pinned.ts'
import type { Confirmed } from '../measurements/confirmed.ts'

/** What she saw on this round's muslin, whether or not it led to a correction. */
export interface Seen {
  readonly complaint: ComplaintId
  /** Where it was settled: a cause of the complaint, 'unsettled', or 'nothing to change'. */
  readonly answer: string
  readonly pinned?: Pinned
  readonly on: string
}

/** A photograph by its content: the round stays readable when the photo is let go. */
export interface PhotoRef {
  readonly view: 'front' | 'side' | 'back'
  readonly sha256: string
  readonly removedOn?: string
}

export interface Round {
  readonly v: 1
  readonly id: string
  readonly garmentId: string
  readonly garment: GarmentId
  readonly number: number
  readonly body: Confirmed
  readonly choices: Choices
  readonly corrections: readonly Correction[]
  readonly seen: readonly Seen[]
  readonly photos: readonly PhotoRef[]
  readonly notes: string
  readonly startedOn: string
  /** Set once, when the muslin is printed. */
  readonly printed?: Printed
}

export interface Printed {
  readonly on: string
  readonly record: NumberRecord
}

export const redraft = (
  round: Pick<Round, 'garment' | 'body' | 'choices' | 'corrections'>,
): Corrected => correctedDraft(round.garment, round.body, round.choices, round.corrections)

export const firstRound = (
  ids: { id: string; garmentId: string },
  garment: GarmentId,
  body: Confirmed,
  on: string,
  choices: Choices = standardFor(garment),
): Round => ({
  v: 1,
  ...ids,
  garment,
  number: 1,
  body,
  choices,
  corrections: [],
  seen: [],
  photos: [],
  notes: '',
  startedOn: on,
})

/** The next muslin begins where this one ended. */
export const nextRound = (round: Round, id: string, on: string): Round => {
  if (!round.printed)
    throw new Error(`round ${round.number} is not printed yet; there is nothing to sew`)
  const { printed: _printed, ...kept } = round
  return { ...kept, id, number: round.number + 1, seen: [], photos: [], notes: '', startedOn: on }
}

const open = (round: Round): Round => {
  if (round.printed)
    throw new Error(`round ${round.number} is printed; changes go into the next round`)
  return round
}

export const withChoices = (round: Round, choices: Choices): Round => ({ ...open(round), choices })
export const withBody = (round: Round, body: Confirmed): Round => ({ ...open(round), body })
export const withCorrection = (round: Round, correction: Correction): Round => ({
  ...open(round),
  corrections: [...round.corrections, correction],
})
/** Photos, complaints and notes belong to the sewn muslin, so they are added after it is printed. */
export const withSeen = (round: Round, seen: Seen): Round => ({
  ...round,
  seen: [...round.seen, seen],
})
export const withPhoto = (round: Round, photo: PhotoRef): Round => ({
  ...round,
  photos: [...round.photos.filter((p) => p.view !== photo.view), photo],
})
export const withNotes = (round: Round, notes: string): Round => ({ ...round, notes })

export function close(round: Round, on: string): Round {
  return { ...open(round), printed: { on, record: record(redraft(round).draft) } }
}

/** Names whose redrafted number no longer matches the printed page, when the program has changed. */
export function drift(round: Round): string[] {
  if (!round.printed) return []
  const [was, now] = [round.printed.record, record(redraft(round).draft)]
  const lengths = Object.keys(was.lengths).filter((n) => was.lengths[n] !== now.lengths[n])
  const points = Object.keys(was.points).filter((n) => `${was.points[n]}` !== `${now.points[n]}`)
  return [...lengths, ...points]
}

export const garmentName = (garment: GarmentId): string => GARMENTS[garment].name

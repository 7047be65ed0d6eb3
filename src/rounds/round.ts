/**
 * A round is one muslin. It keeps everything its pieces were made from, so it stands alone in a
 * backup; once printed it is closed: numbers, choices, corrections and what was printed never
 * change again, and what comes next goes into the next round. What is drawn from it: redraft.ts.
 */
import { GARMENTS, standardFor } from '../draft/garments.ts'
import type { GarmentId } from '../draft/draft.ts'
import type { Choices } from '../draft/choices.ts'
import type { NumberRecord } from '../draft/record.ts'
import type { ComplaintId } from '../fitting/complaints/complaint.ts'
import type { Correction } from '../fitting/correction.ts'
import type { Pinned } from '../fitting/pinned.ts'
import type { Confirmed } from '../measurements/confirmed.ts'
import { NOT_WORN, type Worn } from './worn.ts'
import type { Zone } from './zones.ts'

/** Answers to a complaint that are no cause, as every round keeps them. */
export const UNSETTLED = 'unsettled'
// eslint-disable-next-line words/apart -- kept, not shown
export const NOTHING_TO_CHANGE = 'nothing to change'

/** What she saw on this round's muslin, whether or not it led to a correction. */
export interface Seen {
  readonly complaint: ComplaintId
  /**
   * Where it was settled: a cause of the complaint by its id (by its name in older rounds),
   * or one of the two above.
   */
  readonly answer: string
  readonly pinned?: Pinned
  readonly on: string
}

/** A photograph by its content: the round stays readable when the photo is let go. */
export interface PhotoRef {
  readonly view: 'front' | 'side' | 'back' | 'closeUp'
  readonly sha256: string
  /** What a close-up shows. */
  readonly zone?: Zone
  readonly addedOn?: string
  readonly removedOn?: string
}

export interface Round extends Worn {
  readonly v: 1
  readonly id: string
  readonly garmentId: string
  readonly garment: GarmentId
  readonly number: number
  /** The round this one went on from, where that is not the one before it. */
  readonly from?: string
  readonly body: Confirmed
  readonly choices: Choices
  readonly corrections: readonly Correction[]
  readonly seen: readonly Seen[]
  /** Of one view the last one is shown; none is ever taken out of the list. */
  readonly photos: readonly PhotoRef[]
  readonly notes: string
  readonly startedOn: string
  /** Set once, when the muslin is printed. */
  readonly printed?: Printed
}

export interface Printed {
  readonly on: string
  readonly record: NumberRecord
  /** Every step as it was worded, "A–B: …", in the units the words were frozen in. */
  readonly words?: readonly string[]
}

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
  ...NOT_WORN,
})

/** The next muslin begins where this one ended. */
export const nextRound = (round: Round, id: string, on: string): Round => {
  if (!round.printed)
    throw new Error(`round ${round.number} is not printed yet; there is nothing to sew`)
  return branchFrom(round, round.number + 1, id, on)
}

/**
 * A further muslin that goes on from this one, whatever was made since; `number` is the next free
 * one. A round that was set aside before it was printed may be gone on from as well.
 */
export const branchFrom = (round: Round, number: number, id: string, on: string): Round => {
  if (number <= round.number) throw new Error(`branchFrom: round ${number} is not after it`)
  const { printed: _printed, from: _from, ...kept } = round
  const from = number === round.number + 1 ? {} : { from: round.id }
  const fresh = { seen: [], photos: [], notes: '', startedOn: on, ...NOT_WORN }
  return { ...kept, ...from, id, number, ...fresh }
}

/** The round itself while it may be changed; one on paper is our own mistake. */
export const open = (round: Round): Round => {
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
  photos: [
    ...round.photos.filter((p) => p.sha256 !== photo.sha256 || p.view !== photo.view),
    photo,
  ],
})
export const withNotes = (round: Round, notes: string): Round => ({ ...round, notes })

/** Adds one word to what was worn; what was said before stays in the record. */
export const withWorn = <K extends keyof Worn>(
  round: Round,
  what: K,
  entry: Worn[K][number],
): Round => ({ ...round, [what]: [...round[what], entry] })

/** The photo of a view that is shown: the last one. */
export const photoOf = (round: Round, view: PhotoRef['view']): PhotoRef | undefined =>
  round.photos.findLast((p) => p.view === view)

export const garmentName = (garment: GarmentId): string => GARMENTS[garment].name

/** One complaint as reported, and what its own answers and numbers say, before others are heard. */
import type { MeasurementId } from '../../measurements/catalogue.ts'
import type { Mm } from '../../units/length.ts'
import type { ComplaintId, Work } from '../complaints/complaint.ts'
import type { Kind } from '../complaints/heads.ts'
import type { Pin } from '../half-amount.ts'
import type { Answers } from './answers.ts'
import type { Beside } from './beside.ts'
import type { EditAmount } from './edit-amounts.ts'
import type { GarmentFacts } from './for-garment.ts'
import type { Watched } from './watched.ts'

export interface Reported {
  readonly id: ComplaintId
  readonly answers: Answers
  readonly pin?: Pin
  /** Numbers of tests she tried and cannot tell. */
  readonly cannotTell?: readonly number[]
  /** How much longer the complained-of edge is sewn than drafted, as she measured it. */
  readonly longer?: Mm
}

export interface Facts extends GarmentFacts {
  /** Girths taped once more since the muslin: numbers that speak against a complaint stand then. */
  readonly retaped?: readonly MeasurementId[]
  /** By how much numbers taped again have moved since the muslin was cut, mm. */
  readonly moved?: Readonly<Partial<Record<MeasurementId, number>>>
  /** What the muslin before left over. */
  readonly watched?: readonly Watched[]
  readonly beside?: Beside
}

export interface Asked {
  readonly complaint: ComplaintId
  /** A test to make, an amount to read, a place to pin, or a tape. */
  readonly what: string
  /** The number of the test, where it is one. */
  readonly test?: number
  readonly tape?: readonly MeasurementId[]
}

export interface HeldBack {
  readonly complaint: ComplaintId
  readonly target: string
  readonly op: string
  readonly mm: Mm
  readonly why: string
}

export interface Judged {
  readonly id: ComplaintId
  readonly status: 'change' | 'ask' | 'nothing'
  readonly side?: 'left' | 'right'
  /** "N4.1", and the cause it is the same as: "SH2.1". */
  readonly causes: readonly string[]
  /** The complaint whose work is done: its own, or the one its cause leads to. */
  readonly leads: ComplaintId
  /** Its own causes still possible, by number. */
  readonly open: readonly number[]
  /** Its own causes that were confirmed. */
  readonly found: readonly number[]
  readonly kind: Kind
  readonly order: number
  /** Taken as the likeliest of what she could not tell. */
  readonly guess?: true
  readonly work?: Work
  readonly raw?: Mm
  readonly pin?: Pin
  readonly cap?: number
  readonly edits: readonly EditAmount[]
  readonly heldBack: readonly HeldBack[]
  readonly asks: readonly Asked[]
  readonly reasons: readonly string[]
}

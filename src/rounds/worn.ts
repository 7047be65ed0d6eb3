/**
 * What a sewn muslin was seen to do, beside its complaints: movements tried in it, notes by zone,
 * what it was sewn of, the verdict. All of it is only ever added to; the last word on a thing holds.
 */
import type { Mm } from '../units/length.ts'
import type { Before } from './first-things.ts'
import type { Zone } from './zones.ts'

/** Movements that a fitting is tried in. Common practice, no source. */
export const MOVEMENTS = ['armsForward', 'armsUp', 'handsToNeck', 'bend', 'sit'] as const
export type Movement = (typeof MOVEMENTS)[number]
export const FREEDOMS = ['free', 'pulls', 'cannot'] as const
export type Freedom = (typeof FREEDOMS)[number]

export interface Moved {
  readonly movement: Movement
  readonly freedom: Freedom
  /** How far the hem rose with it, mm; left out where it was not measured. */
  readonly rose?: Mm
  readonly on: string
}

export interface ZoneNote {
  readonly zone: Zone
  readonly text: string
  readonly on: string
}

export const VERDICTS = ['anotherMuslin', 'wearable', 'readyForCloth'] as const
export type Verdict = (typeof VERDICTS)[number]
export interface Judged {
  readonly verdict: Verdict
  readonly on: string
}

/**
 * Sheets to paste, one large sheet, drawn by hand, thrown by a projector, a drawing for a cutter;
 * the two plans, which put no piece on paper.
 */
export const PAPER_HOWS = [
  'sheets',
  'roll',
  'byHand',
  'projector',
  'drawing',
  'cuttingPlan',
  'sewingPlan',
] as const
export type PaperHow = (typeof PAPER_HOWS)[number]
/** What left the program for the table, and when. */
export interface PaperWork {
  readonly how: PaperHow
  readonly on: string
  /** "A4, 14 sheets", where there is more to say. */
  readonly about?: string
}

export interface Worn extends Before {
  readonly zoneNotes: readonly ZoneNote[]
  readonly movements: readonly Moved[]
  readonly verdicts: readonly Judged[]
  readonly paperWork: readonly PaperWork[]
  /** The cloth of the muslin, in her words; the last one holds. */
  readonly cloths: readonly { readonly text: string; readonly on: string }[]
}

export const NOT_WORN: Worn = {
  zoneNotes: [],
  movements: [],
  verdicts: [],
  paperWork: [],
  cloths: [],
  firstThings: [],
  lines: [],
}

export const verdictOf = ({ verdicts }: Pick<Worn, 'verdicts'>): Verdict | undefined =>
  verdicts.at(-1)?.verdict
export const clothOf = ({ cloths }: Pick<Worn, 'cloths'>): string => cloths.at(-1)?.text ?? ''
export const freedomOf = (
  { movements }: Pick<Worn, 'movements'>,
  movement: Movement,
): Freedom | undefined => movements.findLast((m) => m.movement === movement)?.freedom
/** How far the hem rose when it was last measured. */
export const roseOf = (
  { movements }: Pick<Worn, 'movements'>,
  movement: Movement,
): Mm | undefined => movements.findLast((m) => m.movement === movement)?.rose
/** The note of a zone that holds; an empty text takes the one before back. */
export const noteOf = ({ zoneNotes }: Pick<Worn, 'zoneNotes'>, zone: Zone): string =>
  zoneNotes.findLast((n) => n.zone === zone)?.text ?? ''

/**
 * What a photograph can say about a length: a starting value and how far to trust it. An
 * estimate may enter the book; it never leaves it for a draft (see `confirmed.ts`).
 */
import type { Mm } from '../units/length.ts'

export interface Estimate {
  readonly value: Mm
  /** Half width of the interval that holds the true value nine times in ten. */
  readonly pm90: Mm
  /** Which photo, what gave the scale, what was seen: kept as ids, read by capture/seen.ts. */
  readonly basis: string
}

/**
 * What the photographs are asked for. Breadths and depths check girths, and `shoulderLength` is the mean
 * of both sides; these are no tape numbers.
 */
export const ESTIMATE_IDS = [
  'napeToWaist',
  'waistToBustLevel',
  'apexSpacing',
  'sideNeckToApex',
  'sideNeckOverApexToWaist',
  'shoulderLength',
  'shoulderLengthLeft',
  'shoulderLengthRight',
  'shoulderSlopeLeft',
  'shoulderSlopeRight',
  'acrossBack',
  'napeToArmpitLevel',
  'waistToHip',
  'bustBreadth',
  'waistBreadth',
  'hipBreadth',
  'bustDepth',
  'waistDepth',
  'hipDepth',
  'bustGirth',
  'waistGirth',
  'hipGirth',
] as const
export type EstimateId = (typeof ESTIMATE_IDS)[number]

/** An estimate, or the sentence that says why the photographs give none. */
export type EstimateOutcome =
  | { readonly ok: true; readonly estimate: Estimate }
  | { readonly ok: false; readonly reason: string }

export type EstimateOutcomes = Readonly<Record<EstimateId, EstimateOutcome>>

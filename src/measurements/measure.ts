/**
 * What a measurement is: from which landmark to which, how the tape runs, how she takes it
 * alone, what it moves in the draft, and when two readings of it agree.
 *
 * All of them are lengths. The shoulder slope too: it is taken as the drop in millimetres
 * between two rulers, because that is what can be read alone; `shoulder-slope.ts` turns drop
 * and shoulder length into the angle.
 */
import { mm, type Mm } from '../units/length.ts'
import { SOURCE_WORDS } from './measure.words.ts'
import type { MeasureName } from './names.words.ts'
import { BOTH_SURVEYS, widened } from './sources.ts'

/** A length with where it comes from, so that no limit stands without its reason. */
export interface Sourced {
  readonly value: Mm
  readonly source: string
}

export interface Range {
  readonly min: Mm
  readonly max: Mm
  readonly source: string
}

export type MeasureKind = 'girth' | 'length' | 'flat'

/** How she takes it, in words. */
export interface MeasureWords {
  readonly from: string
  readonly to: string
  /** How the tape runs. */
  readonly words: string
  readonly alone: string
  /** What it moves in the draft: "the back length". */
  readonly moves: string
}

/** All of a measurement but its name. */
export interface MeasureRule<Id extends string = string> extends MeasureWords {
  readonly id: Id
  /** Two tapes with different landmarks are two measurements: 'waistGirth/natural'. */
  readonly definition: string
  /** Two readings that differ by no more than this agree. */
  readonly tolerance: Sourced
  /** What the field expects; beyond it the field asks, it does not forbid. */
  readonly plausible: Range
  readonly kind: MeasureKind
  /** One reading stands alone only where `readingsNeeded` is 1; see `catalogue/flat.ts`. */
  readonly readingsNeeded: 1 | 2
  /** Name and clause of ISO 8559-1:2017 where the definition is the standard's own. */
  readonly iso?: string
}
export interface Measure<Id extends string = string> extends MeasureRule<Id>, MeasureName {}

/** Repeatability of one person's own tape; a judgement of common practice, no source. */
export const OWN_TAPE = SOURCE_WORDS.ownTape
/** As quoted by a public audit note; the handbook itself was not seen. */
export const ANSUR_OBSERVER = SOURCE_WORDS.observer
/**
 * Surveys miss the smallest and above all the largest women, so what they saw is widened; no
 * wider, or a bust of 54 in would also pass for 54 cm and be asked about. Judgement.
 */
const BELOW_THE_SMALLEST = 0.9
const ABOVE_THE_LARGEST = 1.35

/** The range of a survey, widened for the women it did not meet and rounded to 5 mm. */
export const seen = (smallest: number, largest: number, source = BOTH_SURVEYS): Range => ({
  min: toFive(smallest * BELOW_THE_SMALLEST),
  max: toFive(largest * ABOVE_THE_LARGEST),
  source: widened(smallest, largest, source),
})
export const judged = (min: number, max: number, why: string): Range => ({
  min: mm(min),
  max: mm(max),
  source: why,
})

export const own = (millimetres: number): Sourced => ({ value: mm(millimetres), source: OWN_TAPE })
export const observer = (millimetres: number): Sourced => ({
  value: mm(millimetres),
  source: ANSUR_OBSERVER,
})

const toFive = (length: number): Mm => mm(Math.round(length / 5) * 5)

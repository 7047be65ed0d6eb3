/**
 * What a garment is to the rest of the program: the numbers it needs and the choices it reads
 * (`garments.ts`), the construction that draws it, and how it is made whole and proved (one file
 * each in `garments/`).
 */
import type { MeasurementId } from '../measurements/catalogue.ts'
import type { Body } from '../measurements/confirmed.ts'
import type { ChoiceId, Choices } from './choices.ts'
import type { Draft, GarmentId } from './draft.ts'
import type { Finding } from './finding.ts'
import type { OptionId } from './options.ts'
import type { CutOut } from './piece.ts'
import type { Sheet } from './sheet.ts'

export interface DrawnPiece {
  readonly sheet: Sheet
  /** 'Back, half': the name on the paper. */
  readonly words: string
  readonly cut: CutOut
}

export interface Garment {
  readonly id: GarmentId
  readonly name: string
  /** One sentence: what it is, and what it is not for. */
  readonly what: string
  readonly notFor: string
  /** Without these nothing is drawn. */
  readonly needs: readonly MeasurementId[]
  /** Used when taped; what happens otherwise is a finding. */
  readonly uses: readonly MeasurementId[]
  /** The amounts and words its construction reads, in the order of the table. */
  readonly choices: readonly ChoiceId[]
  readonly options: readonly OptionId[]
  /** Where its standard is another than that of the table. */
  readonly standard: Partial<Choices>
}

export interface Making {
  /** The pieces as constructed, before any correction. */
  readonly draw: (body: Body, choices: Choices) => readonly DrawnPiece[]
  /** After the last correction: pieces that rest on others, openings, finishing pieces. */
  readonly complete: (corrected: Draft) => Draft
  readonly prove: (whole: Draft) => readonly Finding[]
}

/** Why a correction could not be made; the draft stands as it was. */
import type { ChoiceId } from '../draft/choices.ts'
import type { AnyDart, EdgeName, PieceId } from '../draft/piece.ts'
import { formatLength, type UnitChoice } from '../units/format.ts'
import type { Mm } from '../units/length.ts'
import { refusalSaid } from './refusal.words.ts'

export type Why =
  | { readonly id: 'choiceOutOfRange'; readonly choice: ChoiceId; readonly to: Mm }
  | { readonly id: 'noDart'; readonly piece: PieceId }
  | { readonly id: 'noEdge'; readonly piece: PieceId; readonly edge: EdgeName }
  | { readonly id: 'wedgeTooWide'; readonly width: Mm; readonly reach: Mm }
  | { readonly id: 'wedgeMissesEdge'; readonly edge: EdgeName }
  /** Closed there, a wedge takes at the most so much off the length of the edge. */
  | { readonly id: 'edgeSlants'; readonly edge: EdgeName; readonly width: Mm; readonly most: Mm }
  | {
      readonly id: 'dartTooWide'
      readonly to: Mm
      readonly most: Mm
      /** The waist dart where none is named. */
      readonly dart?: AnyDart
    }
  | { readonly id: 'cannotDraw'; readonly edge: EdgeName }
  | { readonly id: 'noPlace'; readonly piece: PieceId; readonly edge: EdgeName }
  | { readonly id: 'noTip'; readonly piece: PieceId }
  | { readonly id: 'noSideDart'; readonly piece: PieceId }
  | { readonly id: 'dartTooSmall'; readonly piece: PieceId; readonly to: Mm }
  | { readonly id: 'sideTooShort'; readonly piece: PieceId; readonly by: Mm }
  | { readonly id: 'nothingToWithdraw' }

export interface Refusal {
  readonly correction: string
  readonly why: Why
}

export const refusalSentence = (why: Why, units: UnitChoice): string =>
  refusalSaid(why, (length) => formatLength(length, units))

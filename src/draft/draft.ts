/**
 * A draft: the pieces of one garment from one body and one set of choices, with the steps that
 * made them. Pure data; `garments.ts` makes it.
 */
import type { Body } from '../measurements/confirmed.ts'
import type { PieceId, Piece, Side } from './piece.ts'
import type { Choices } from './choices.ts'
import type { Finding } from './finding.ts'
import type { Opening, Together } from './opening.ts'
import type { Step } from './step.ts'

export type GarmentId = 'blouse' | 'block' | 'sleeveless' | 'sleeve' | 'dress'

export interface Draft {
  readonly garment: GarmentId
  /** `body.standing` is 'preview' while a camera number stands in: never for cutting. */
  readonly body: Body
  readonly choices: Choices
  readonly pieces: readonly Piece[]
  /** How she gets in; empty where neck and waist pass as they are. */
  readonly openings: readonly Opening[]
  readonly steps: readonly Step[]
  /** `back.U` → the measurements and choices the point rests on. */
  readonly restsOn: Readonly<Record<string, readonly string[]>>
  readonly findings: readonly Finding[]
  /**
   * Where left and right are not alike: the same garment drawn for either side of the body. The
   * pieces above are then the mean of both, for comparing and pinning; what is cut is `asWorn`.
   */
  readonly sides?: Readonly<Record<Side, Draft>>
  /** Of a side, or of the mean of both: neck and waist all round, half from either side. */
  readonly together?: Together
}

export function pieceOf(draft: Draft, id: PieceId): Piece {
  const found = draft.pieces.find((p) => p.id === id)
  if (!found) throw new Error(`${draft.garment}: no piece ${id}`)
  return found
}

export const withPiece = (draft: Draft, piece: Piece): Draft => ({
  ...draft,
  pieces: draft.pieces.map((p) => (p.id === piece.id ? piece : p)),
})

/** "What will this reading move?": the points that rest on a measurement or a choice. */
export const movedBy = (draft: Draft, name: string): string[] =>
  Object.entries(draft.restsOn).flatMap(([place, names]) => (names.includes(name) ? [place] : []))

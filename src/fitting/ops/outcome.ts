/** What an operation gives: both halves anew and what is worth saying, or why it cannot be done. */
import type { HalfId, Piece } from '../../draft/piece.ts'
import type { Why } from '../refusal.ts'

export interface Halves {
  readonly back: Piece
  readonly front: Piece
}
export type Made =
  | { readonly ok: true; readonly halves: Halves; readonly notes: readonly string[] }
  | { readonly ok: false; readonly why: Why }

export const made = (halves: Halves, ...notes: readonly string[]): Made => ({
  ok: true,
  halves,
  notes,
})
export const refused = (why: Why): Made => ({ ok: false, why })

export const withHalf = (halves: Halves, piece: Piece): Halves =>
  piece.id === 'back' ? { ...halves, back: piece } : { ...halves, front: piece }
export const halfOf = (halves: Halves, id: HalfId): Piece => halves[id]

/**
 * Where she is on the Draft page: the piece on the table and the one thing that is lit on it.
 * Steps are walked over the whole draft, back first, and bring their piece along.
 */
import { untrack } from 'svelte'
import type { Draft } from '../../draft/draft.ts'
import type { PieceId } from '../../draft/piece.ts'
import { lightOf, pieceFor, type Attention } from './attention.ts'

export class Walk {
  readonly #draft: () => Draft
  #piece = $state.raw<PieceId>('back')
  attention = $state.raw<Attention>({ on: 'step', index: 0 })

  constructor(draft: () => Draft) {
    this.#draft = draft
    this.#piece = untrack(draft).steps[0]?.piece ?? 'back'
  }

  get piece(): PieceId {
    return this.#piece
  }
  /** The other piece comes with its own first step. */
  set piece(piece: PieceId) {
    this.#piece = piece
    const index = this.#draft().steps.findIndex((s) => s.piece === piece)
    if (this.attention.on !== 'number') this.look({ on: 'step', index: Math.max(0, index) })
  }

  light = $derived.by(() => lightOf(this.#draft(), this.#piece, this.attention))
  /** Index of the step that is lit; undefined while she looks at something else. */
  step = $derived.by(() => (this.attention.on === 'step' ? this.attention.index : undefined))

  look = (attention: Attention) => {
    const piece = pieceFor(this.#draft(), attention)
    if (piece) this.#piece = piece
    this.attention = attention
    if (attention.on === 'step') this.#last = attention.index
  }

  /** The step she left when she looked elsewhere; walking goes on from there. */
  #last = $state.raw(0)
  next = $derived.by(() => this.#to(this.#last + 1))
  back = $derived.by(() => this.#to(this.#last - 1))
  #to(index: number): (() => void) | undefined {
    return index >= 0 && index < this.#draft().steps.length
      ? () => this.look({ on: 'step', index })
      : undefined
  }
}

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
  #looked = $state.raw<Attention>({ on: 'step', index: 0 })

  constructor(draft: () => Draft) {
    this.#draft = draft
    this.#piece = untrack(draft).steps[0]?.piece ?? 'back'
  }

  /** A piece may be gone once a choice was turned; then the first lies here, mostly the back. */
  get piece(): PieceId {
    const { pieces } = this.#draft()
    return pieces.some(({ id }) => id === this.#piece) ? this.#piece : (pieces[0]?.id ?? 'back')
  }
  /** Another piece comes with its own first step. */
  set piece(piece: PieceId) {
    this.#piece = piece
    if (this.#looked.on !== 'number' && this.#looked.on !== 'line')
      this.look({ on: 'step', index: this.#firstStep(piece) })
  }

  /** A turned choice may take away what she looked at: then the first step of the piece is lit. */
  attention: Attention = $derived.by(() => {
    const looked = this.#looked
    const draft = this.#draft()
    const first: Attention = { on: 'step', index: this.#firstStep(this.piece) }
    switch (looked.on) {
      case 'step':
        return draft.steps[looked.index]?.piece === this.piece ? looked : first
      case 'finding': {
        const { id, place } = looked.finding
        const finding = draft.findings.find((f) => f.id === id && f.place === place)
        return finding ? { on: 'finding', finding } : first
      }
      case 'line':
      case 'number':
        return looked
    }
  })
  light = $derived.by(() => lightOf(this.#draft(), this.piece, this.attention))
  /** Index of the step that is lit; undefined while she looks at something else. */
  step = $derived.by(() => (this.attention.on === 'step' ? this.attention.index : undefined))

  look = (attention: Attention) => {
    const piece = pieceFor(this.#draft(), attention)
    if (piece) this.#piece = piece
    this.#looked = attention
    if (attention.on === 'step') this.#last = attention.index
  }

  /** The step she left when she looked elsewhere; walking goes on from there. */
  #last = $state.raw(0)
  next = $derived.by(() => this.#to(this.#from() + 1))
  back = $derived.by(() => this.#to(this.#from() - 1))
  #from(): number {
    return this.step ?? Math.min(this.#last, this.#draft().steps.length - 1)
  }
  #to(index: number): (() => void) | undefined {
    return index >= 0 && index < this.#draft().steps.length
      ? () => this.look({ on: 'step', index })
      : undefined
  }
  #firstStep(piece: PieceId): number {
    return Math.max(
      0,
      this.#draft().steps.findIndex((s) => s.piece === piece),
    )
  }
}

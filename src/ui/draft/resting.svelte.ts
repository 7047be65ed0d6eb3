/**
 * What is read and not drawn follows when the hand rests: a drag redraws the piece alone. It
 * follows part by part, each in a task of its own, so that a hand that goes on waits for one part
 * at the most. Until then a part says what the round says that is kept.
 */
import type { Draft } from '../../draft/draft.ts'

/** In the order in which they follow: nearest to the hand first. */
const PARTS = ['choices', 'proof', 'steps', 'numbers'] as const
type Part = (typeof PARTS)[number]

/** A hand that did not move for so long rests, ms. Judgement. */
const RESTS_MS = 120

export class Resting {
  readonly #shown: () => Draft
  readonly #kept: () => Draft
  readonly #inHand: () => boolean
  #followed = $state.raw<Partial<Record<Part, Draft>>>({})
  #timer: ReturnType<typeof setTimeout> | undefined
  #stirredAt = 0

  /**
   * Made while a component is.
   * @param shown the draft with the choice in hand, `kept` the one the round holds
   */
  constructor(shown: () => Draft, kept: () => Draft, inHand: () => boolean) {
    this.#shown = shown
    this.#kept = kept
    this.#inHand = inHand
    $effect(() => {
      if (!inHand()) return this.#end()
      shown()
      this.stir()
    })
    $effect(() => () => this.#end())
  }

  choices = $derived.by(() => this.#read('choices'))
  proof = $derived.by(() => this.#read('proof'))
  steps = $derived.by(() => this.#read('steps'))
  numbers = $derived.by(() => this.#read('numbers'))
  #read(part: Part): Draft {
    return this.#inHand() ? (this.#followed[part] ?? this.#kept()) : this.#shown()
  }

  /** The hand has moved. One timer serves a whole drag: it asks how long ago that was. */
  stir = () => {
    if (!this.#inHand()) return
    this.#stirredAt = performance.now()
    this.#timer ??= setTimeout(this.#ask, RESTS_MS)
  }
  #ask = () => {
    const left = this.#stirredAt + RESTS_MS - performance.now()
    if (left > 0) this.#timer = setTimeout(this.#ask, left)
    else this.#follow()
  }
  /** The next part that is behind; a hand that stirs meanwhile is waited for again. */
  #follow = () => {
    this.#timer = undefined
    const now = this.#shown()
    const part = PARTS.find((one) => this.#followed[one] !== now)
    if (!part) return
    this.#followed = { ...this.#followed, [part]: now }
    this.#timer = setTimeout(this.#ask)
  }
  #end() {
    clearTimeout(this.#timer)
    this.#timer = undefined
    this.#followed = {}
  }
}

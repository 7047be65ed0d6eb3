/**
 * What is read follows when the hand rests: while it moves, the lines of the piece alone are drawn
 * anew. The rest follows part by part, each in a task of its own, so that a hand that goes on waits
 * for one part at the most; when she lets go, in the same way. Until then a part says what it said.
 */
import { untrack } from 'svelte'
import type { Draft } from '../../draft/draft.ts'

/** In the order in which they follow: nearest to the hand first. */
const PARTS = ['words', 'choices', 'proof', 'steps', 'numbers'] as const
type Part = (typeof PARTS)[number]

/** A hand that did not move for so long rests, ms. Judgement. */
const RESTS_MS = 120

export class Resting {
  readonly #shown: () => Draft
  readonly #kept: () => Draft
  readonly #inHand: () => boolean
  /** As it was taken in hand; undefined once all have followed what was let go. */
  #taken = $state.raw<Draft | undefined>()
  #followed = $state.raw<Partial<Record<Part, Draft>>>({})
  #timer: ReturnType<typeof setTimeout> | undefined
  #stirredAt = 0

  /**
   * Made while a component is.
   * @param shown the draft with the choice in hand, `kept` the one the round holds
   */
  constructor(shown: () => Draft, kept: () => Draft, inHand: () => boolean) {
    this.#shown = shown
    this.#inHand = inHand
    this.#kept = kept
    $effect(() => {
      const held = inHand()
      if (held) untrack(() => (this.#taken ??= kept()))
      else if (!untrack(() => this.#taken)) return
      shown()
      if (held) this.stir()
      else this.#now()
    })
    $effect(() => () => clearTimeout(this.#timer))
  }

  /** As it was before the hand, while something has not followed. */
  #before = $derived.by(() => this.#taken ?? (this.#inHand() ? this.#kept() : undefined))
  words = $derived.by(() => this.#read('words'))
  choices = $derived.by(() => this.#read('choices'))
  proof = $derived.by(() => this.#read('proof'))
  steps = $derived.by(() => this.#read('steps'))
  numbers = $derived.by(() => this.#read('numbers'))
  #read(part: Part): Draft {
    return this.#before ? (this.#followed[part] ?? this.#before) : this.#shown()
  }
  /** The draft on which words have their places: as it was taken, until they say what was let go. */
  stood = $derived.by(() =>
    this.#inHand() || this.words !== this.#shown() ? this.#before : undefined,
  )

  /** The hand has moved. One timer serves a whole drag: it asks how long ago that was. */
  stir = () => {
    if (!this.#inHand()) return
    this.#stirredAt = performance.now()
    this.#timer ??= setTimeout(this.#ask, RESTS_MS)
  }
  #now() {
    clearTimeout(this.#timer)
    this.#timer = setTimeout(this.#ask)
  }
  #ask = () => {
    const left = this.#inHand() ? this.#stirredAt + RESTS_MS - performance.now() : 0
    if (left > 0) this.#timer = setTimeout(this.#ask, left)
    else this.#follow()
  }
  /** The next part that is behind; a hand that stirs meanwhile is waited for again. */
  #follow() {
    this.#timer = undefined
    const now = this.#shown()
    const part = PARTS.find((one) => (this.#followed[one] ?? this.#before) !== now)
    if (part) {
      this.#followed = { ...this.#followed, [part]: now }
      this.#now()
    } else if (!this.#inHand()) {
      this.#taken = undefined
      this.#followed = {}
    }
  }
}

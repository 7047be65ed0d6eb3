/**
 * A choice in hand: what the draft would be with it, before it is kept. Every move of a ruler
 * redraws, once the ruler itself stands on the screen as it was moved; only letting go saves, so a
 * drag is one change. Words are kept as they are picked. The last change can be taken back.
 */
import { CHOICES, type ChoiceId, type Choices } from '../../draft/choices.ts'
import type { Draft } from '../../draft/draft.ts'
import type { Corrected } from '../../fitting/apply.ts'
import type { Round } from '../../rounds/round.ts'
import type { Mm } from '../../units/length.ts'
import { afterPaint, painted } from '../parts/after-paint.ts'
import { picked, turned, type Turned } from './turned.ts'

export type ChangeChoices = (choices: Choices) => Choices

/** What was kept last, in words, and the choices before it. */
interface Last {
  readonly name: string
  readonly words: string
  readonly before: Choices
}

export class Turning {
  readonly #round: () => Round
  readonly #keep: (change: ChangeChoices) => Promise<boolean>
  /** The choice in hand and the value its knob shows. */
  hand = $state.raw<{ readonly id: ChoiceId; readonly value: Mm } | undefined>()
  /** The choice in hand without its value: what does not move with it hears of taking and letting go. */
  held = $state.raw<ChoiceId | undefined>()
  /** The choice in hand, once the draft is drawn with it. */
  shows = $state.raw<ChoiceId | undefined>()
  /** The round as it would be; undefined while nothing is in hand. */
  drawn = $state.raw<Corrected | undefined>()
  /** By the name of what was turned. */
  refused = $state.raw<{ readonly name: string; readonly sentence: string } | undefined>()
  /** The words just picked, until they are kept. */
  picking = $state.raw<Choices | undefined>()
  last = $state.raw<Last | undefined>()
  /** The draft before the words just picked, until she looks away. */
  glance = $state.raw<Draft | undefined>()

  constructor(round: () => Round, keep: (change: ChangeChoices) => Promise<boolean>) {
    this.#round = round
    this.#keep = keep
  }

  /** With the words just picked; `kept` is what the round holds. */
  get choices(): Choices {
    return this.picking ?? this.kept
  }
  get kept(): Choices {
    return this.#round().choices
  }

  /** What its knob shows: the value in hand, else the one that is kept. */
  valueOf(id: ChoiceId, kept: Mm): Mm {
    return this.held === id && this.hand ? this.hand.value : kept
  }

  turn = (id: ChoiceId, value: Mm, setting: Mm) => {
    this.#take({ id, value })
    this.#soon.next({ id, setting })
  }
  readonly #soon = afterPaint(
    ({ id, setting }: { readonly id: ChoiceId; readonly setting: Mm }) => {
      this.#show(id, turned(this.#round(), id, setting))
      this.shows = this.held
    },
  )

  /** Keeps what is in hand. One after the other: two saves at once would begin two rounds. */
  letGo = (id: ChoiceId, setting: Mm): Promise<void> => {
    const held = this.hand
    return this.#next(async () => {
      await painted()
      this.#soon.flush()
      await painted()
      const before = this.#round().choices
      if (before[id] !== setting && this.refused?.name !== id)
        if (await this.#keep((c) => ({ ...c, [id]: setting })))
          this.#remember({ name: id, words: CHOICES[id].label, before }, true)
      // She may have taken it, or another, in hand again while this was being kept.
      if (this.hand !== held) return
      this.#take(undefined)
      this.shows = undefined
      this.drawn = undefined
    })
  }

  /** @param name of what is picked, for its refusal; @param words what it is now: "neck shape: square" */
  pick = (name: string, words: string, change: ChangeChoices): Promise<void> => {
    const choices = change(this.choices)
    const [was, outcome] = [
      picked(this.#round(), this.choices, words),
      picked(this.#round(), choices, words),
    ]
    this.#show(name, outcome)
    if (!outcome.ok) return Promise.resolve()
    this.picking = choices
    this.glance = was.ok ? was.corrected.draft : undefined
    return this.#next(async () => {
      const before = this.#round().choices
      if (await this.#keep(change)) this.#remember({ name, words, before }, false)
      if (this.picking !== choices) return
      this.picking = undefined
      if (!this.hand) this.drawn = undefined
    })
  }

  lookAway = () => (this.glance = undefined)

  takeBack = (): Promise<void> =>
    this.#next(async () => {
      const { last } = this
      if (last && (await this.#keep(() => last.before))) this.last = undefined
    })

  #take(hand: Turning['hand']) {
    this.hand = hand
    this.held = hand?.id
  }
  #show(name: string, outcome: Turned) {
    this.refused = outcome.ok ? undefined : { name, sentence: outcome.sentence }
    if (outcome.ok) this.drawn = outcome.corrected
  }
  /** Key after key on one ruler is one change. */
  #remember(kept: Last, joins: boolean) {
    const before = joins && this.last?.name === kept.name ? this.last.before : kept.before
    this.last = { ...kept, before }
  }
  #next(act: () => Promise<void>): Promise<void> {
    this.#saving = this.#saving.catch(() => undefined).then(act)
    return this.#saving
  }
  #saving: Promise<void> = Promise.resolve()
}

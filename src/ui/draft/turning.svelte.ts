/**
 * A choice in hand: what the draft would be with it, before it is kept. Every move redraws;
 * only letting go saves, so a drag across the ruler is one change.
 */
import type { ChoiceId } from '../../draft/choices.ts'
import type { Corrected } from '../../fitting/apply.ts'
import type { Round } from '../../rounds/round.ts'
import type { Mm } from '../../units/length.ts'
import { turned } from './choice-groups.ts'

export class Turning {
  readonly #round: () => Round
  readonly #keep: (id: ChoiceId, setting: Mm) => Promise<boolean>
  /** The choice in hand and the value its knob shows. */
  hand = $state.raw<{ readonly id: ChoiceId; readonly value: Mm } | undefined>()
  /** The round as it would be; undefined while nothing is in hand. */
  drawn = $state.raw<Corrected | undefined>()
  refused = $state.raw<{ readonly id: ChoiceId; readonly sentence: string } | undefined>()

  constructor(round: () => Round, keep: (id: ChoiceId, setting: Mm) => Promise<boolean>) {
    this.#round = round
    this.#keep = keep
  }

  turn = (id: ChoiceId, value: Mm, setting: Mm) => {
    this.hand = { id, value }
    const outcome = turned(this.#round(), id, setting)
    this.refused = outcome.ok ? undefined : { id, sentence: outcome.sentence }
    if (outcome.ok) this.drawn = outcome.corrected
  }

  /** Keeps what is in hand. One after the other: two saves at once would begin two rounds. */
  letGo = (id: ChoiceId, setting: Mm): Promise<void> => {
    const held = this.hand
    this.#saving = this.#saving.then(async () => {
      const same = this.#round().choices[id] === setting
      if (!same && this.refused?.id !== id) await this.#keep(id, setting)
      // She may have taken it, or another, in hand again while this was being kept.
      if (this.hand !== held) return
      this.hand = undefined
      this.drawn = undefined
    })
    return this.#saving
  }
  #saving: Promise<void> = Promise.resolve()
}

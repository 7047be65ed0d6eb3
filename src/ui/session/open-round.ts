/**
 * The round of a garment that may still be changed, and a change of a round as it is by then. What
 * draws is fetched when it is needed: the places that show a drawing have brought it along.
 */
import { nextRound, withBody, type Round } from '../../rounds/round.ts'
import type { Keeping } from './keeping.ts'
import { confirmedFor } from './taped.ts'
import type { Work } from './work.svelte.ts'

export class OpenRound {
  readonly #keeping: Keeping
  readonly #work: Work

  constructor(keeping: Keeping) {
    this.#keeping = keeping
    this.#work = keeping.work
  }

  /** Made from the last one where that is on paper already; not kept before it is changed. */
  async of(garmentId: string): Promise<Round | undefined> {
    const hung = this.#work.garment(garmentId)
    const last = this.#work.latest(garmentId)
    if (last && !last.printed) return last
    if (last) return this.retaped(nextRound(last, this.#keeping.newId(), this.#work.today()))
    const taped = hung && confirmedFor(this.#work.book, hung.garment)
    if (!hung || !taped?.ok) return undefined
    const { firstRoundOf } = await import('./first-round.ts')
    return firstRoundOf(this.#keeping.newId(), hung, taped.body, this.#work.today())
  }
  /** What was taped again since the last muslin enters a further round. */
  retaped(next: Round): Round {
    const again = confirmedFor(this.#work.book, next.garment)
    return again.ok ? withBody(next, again.body) : next
  }
  /** Gives the round as it was kept, to be called in turn. */
  async changed(garmentId: string, change: (open: Round) => Round): Promise<Round | undefined> {
    const open = await this.of(garmentId)
    if (!open) return undefined
    const changed = change(open)
    return (await this.#keeping.keepRound(changed)) ? changed : undefined
  }
  change(garmentId: string, change: (open: Round) => Round): Promise<boolean> {
    return this.#keeping.inTurn(async () => (await this.changed(garmentId, change)) !== undefined)
  }
  /** A change of one round, made on it as it is when its turn comes. */
  changeRound(round: Round, change: (now: Round) => Round): Promise<boolean> {
    return this.#keeping.inTurn(() => this.#keeping.keepRound(change(this.asItIs(round))))
  }
  asItIs = (round: Round): Round => this.#work.rounds.find(({ id }) => id === round.id) ?? round
  /** The round an act went into, while it is still the one that may be changed. */
  still(done: Round | undefined): Round | undefined {
    const last = done && this.#work.latest(done.garmentId)
    return last?.id === done?.id && !last?.printed ? last : undefined
  }
}

/** What she does on the rail: a garment is hung, changed, taken off. */
import type { GarmentId } from '../../draft/draft.ts'
import type { Correction } from '../../fitting/correction.ts'
import { mergedGarment } from '../../storage/merge-garment.ts'
import { NO_NAME, type HungGarment } from '../../storage/schema/garment.ts'
import { garmentChanged, hung as wasHung } from '../undo/act-words.ts'
import type { Keeping } from './keeping.ts'
import type { Work } from './work.svelte.ts'
import { CHANGED_ELSEWHERE } from '../../storage/storage.words.ts'

export class RailActs {
  readonly #keeping: Keeping
  readonly #work: Work

  constructor(keeping: Keeping) {
    this.#keeping = keeping
    this.#work = keeping.work
  }

  hang = async (
    garment: GarmentId,
    name: string = NO_NAME,
    carried: readonly Correction[] = [],
  ): Promise<string | undefined> => {
    const hung: HungGarment = {
      v: 1,
      id: this.#keeping.newId(),
      garment,
      name,
      hungOn: this.#work.today(),
      order: Math.max(0, ...this.#work.garments.map((g) => g.order)) + 1,
      ...(carried.length > 0 ? { carried } : {}),
    }
    const done = await this.#keeping.act({
      what: wasHung(hung),
      again: () => {
        const { takenOffOn: _off, ...again } = this.#work.garment(hung.id) ?? hung
        return this.#keepGarment(again)
      },
      back: () => {
        const now = this.#work.garment(hung.id)
        return now && !now.takenOffOn
          ? this.#keepGarment({ ...now, takenOffOn: this.#work.today() })
          : Promise.resolve(false)
      },
    })
    return done ? hung.id : undefined
  }
  /** What the program found for a garment: no act of hers, so nothing to take back. */
  found = (id: string, what: Pick<HungGarment, 'laid'>): Promise<boolean> =>
    this.#keeping.inTurn(() => {
      const now = this.#work.garment(id)
      return now ? this.#keepGarment({ ...now, ...what }) : Promise.resolve(false)
    })
  /** `seen`: the garment as it was shown when she began to change it. */
  changeGarment = (
    garment: HungGarment,
    seen = this.#work.garment(garment.id),
  ): Promise<boolean> => (seen ? this.#exchange(seen, garment) : Promise.resolve(false))
  /** What was changed between `before` and `after` is changed of the garment as it is now. */
  #exchange(before: HungGarment, after: HungGarment): Promise<boolean> {
    const make = (from: HungGarment, to: HungGarment) => {
      const now = this.#work.garment(from.id)
      const next = now && mergedGarment(from, to, now)
      if (next) return this.#keepGarment(next)
      this.#work.problem = CHANGED_ELSEWHERE
      return Promise.resolve(false)
    }
    return this.#keeping.act({
      what: garmentChanged(before, after),
      again: () => make(before, after),
      back: () => make(after, before),
    })
  }
  async #keepGarment(garment: HungGarment): Promise<boolean> {
    const kept = await this.#keeping.kept(this.#keeping.store.saveGarment(garment))
    if (!kept) return false
    const { garments } = this.#work
    this.#work.garments = garments.some(({ id }) => id === garment.id)
      ? garments.map((g) => (g.id === garment.id ? kept.value : g))
      : [...garments, kept.value]
    return true
  }
}

/** What she changes of the draft in the open round: choices of the construction, corrections. */
import type { ChoiceId, Choices } from '../../draft/choices.ts'
import { standardFor } from '../../draft/garments.ts'
import type { NewCorrection } from '../../fitting/preview.ts'
import { withChoices, withCorrection, type Round } from '../../rounds/round.ts'
import { sameData } from '../../storage/same.ts'
import type { Mm } from '../../units/length.ts'
import { changeMade, changeTakenBack, choicesChanged } from '../undo/act-words.ts'
import type { Keeping } from './keeping.ts'
import type { OpenRound } from './open-round.ts'

export class ChangeActs {
  readonly #keeping: Keeping
  readonly #open: OpenRound

  constructor(keeping: Keeping, open: OpenRound) {
    this.#keeping = keeping
    this.#open = open
  }

  turnChoice = (garmentId: string, id: ChoiceId, value: Mm): Promise<boolean> =>
    this.changeChoices(garmentId, (c) => ({ ...c, [id]: value }))
  /** Words as well as amounts, and several at once; `change` gets the choices of the open round. */
  changeChoices = (garmentId: string, change: (choices: Choices) => Choices): Promise<boolean> => {
    let [before, after] = [standardFor('blouse'), standardFor('blouse')]
    let done: Round | undefined
    let changed: readonly (keyof Choices)[] = []
    return this.#keeping.act({
      what: (units) => choicesChanged(before, after, changed)(units),
      again: async () => {
        const kept = await this.#open.changed(garmentId, (open) => {
          before = open.choices
          after = change(before)
          return withChoices(open, after)
        })
        if (!kept) return false
        done = kept
        changed = choiceKeys(after).filter((id) => !sameData(before[id], after[id]))
        return true
      },
      back: () => {
        const open = this.#open.still(done)
        const mine = open && changed.every((id) => sameData(open.choices[id], after[id]))
        if (!open || !mine) return Promise.resolve(false)
        const former = Object.fromEntries(changed.map((id) => [id, before[id]]))
        return this.#keeping.keepRound(withChoices(open, { ...open.choices, ...former }))
      },
    })
  }
  makeChange = (garmentId: string, correction: NewCorrection): Promise<boolean> => {
    if (correction.kind === 'withdraw') return this.takeBack(garmentId, correction.correction)
    return this.#keeping.act({
      what: changeMade(correction.because),
      ...this.#decides(garmentId, correction),
    })
  }
  takeBack = (garmentId: string, id: string): Promise<boolean> => {
    const latest = this.#keeping.work.latest(garmentId)
    const made = latest?.corrections.find((c) => c.id === id)
    if (!made || made.kind === 'withdraw') return Promise.resolve(false)
    const { id: _id, v: _v, ...correction } = made
    const decision = this.#decides(garmentId, correction, id)
    return this.#keeping.act({
      what: changeTakenBack(made.because),
      again: decision.back,
      back: decision.again,
    })
  }
  /** A change and the decision that takes it back; made again it is a new decision of its own. */
  #decides(garmentId: string, correction: NewCorrection, kept?: string) {
    let id = kept
    let done: Round | undefined
    const decide = async (next: NewCorrection, named: string): Promise<boolean> => {
      if (done && !this.#open.still(done)) return false
      const made = await this.#open.changed(garmentId, (r) =>
        withCorrection(r, { ...next, v: 1, id: named }),
      )
      done = made ?? done
      return made !== undefined
    }
    return {
      again: () => {
        id = this.#keeping.newId()
        return decide(correction, id)
      },
      back: async () => {
        const round = (await this.#open.of(garmentId))?.number
        if (id === undefined || round === undefined) return false
        return decide({ kind: 'withdraw', correction: id, round }, this.#keeping.newId())
      },
    }
  }
}

const choiceKeys = (choices: Choices) => Object.keys(choices) as (keyof Choices)[]

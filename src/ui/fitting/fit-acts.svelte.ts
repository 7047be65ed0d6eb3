/**
 * What is done from the Fit screen and kept: a change, a taking back, a thing seen, a note. One
 * act at a time; what was done last is told until the next one.
 */
import type { Preview } from '../../fitting/propose.ts'
import type { Round } from '../../rounds/round.ts'
import type { Session } from '../session.svelte.ts'
import type { FitTalk } from './fit-talk.svelte.ts'
import { alreadySeen, withNote } from './seen.ts'

export interface MadeChange {
  readonly correction: string
  readonly preview: Preview
  /** The round it went into. */
  readonly round: number
}

export class FitActs {
  made = $state.raw<MadeChange | undefined>()
  /** What was kept last, as a sentence; empty when there is nothing to tell. */
  told = $state.raw('')
  #busy = false
  readonly #session: Session
  readonly #talk: FitTalk
  readonly #muslin: () => Round

  constructor(session: Session, talk: FitTalk, muslin: () => Round) {
    this.#session = session
    this.#talk = talk
    this.#muslin = muslin
  }

  /** Keeps what was seen with the muslin's round, then the change in the next one. */
  make = (): Promise<boolean> =>
    this.#once(async () => {
      const { proposal, outcomeOfChange, outcome } = this.#talk
      if (proposal?.kind !== 'change' || !outcomeOfChange?.ok || !outcome) return false
      if (!(await this.#seen(outcome.cause))) return false
      const { garmentId } = this.#muslin()
      if (!(await this.#session.makeChange(garmentId, proposal.correction))) return false
      const last = this.#session.latest(garmentId)
      const correction = last?.corrections.at(-1)?.id
      if (!last || correction === undefined) throw new Error('fit: the change was not kept')
      this.made = { correction, preview: outcomeOfChange.preview, round: last.number }
      return true
    })
  takeBack = (correction: string): Promise<boolean> =>
    this.#once(async () => {
      if (!(await this.#session.takeBack(this.#muslin().garmentId, correction))) return false
      this.made = undefined
      this.told = 'Taken back. The draft is as it was before this change.'
      return true
    })
  takeBackMade = (): void => {
    if (this.made) void this.takeBack(this.made.correction)
  }
  /** Kept without a change: undecided, stretched while sewn, or a number to tape again first. */
  keepSeen = (answer: string): Promise<boolean> =>
    this.#once(async () => {
      if (!(await this.#seen(answer))) return false
      this.#talk.startOver()
      this.told = `Kept with round ${this.#muslin().number}. The draft stays as it is.`
      return true
    })
  note = (words: string): Promise<boolean> =>
    this.#once(async () => {
      const round = this.#muslin()
      if (!(await this.#session.writeNotes(round, withNote(round.notes, words)))) return false
      this.told = `Kept as a note with round ${round.number}: ${words}`
      return true
    })
  notYet = (): void => {
    this.#talk.answer(undefined)
    this.told = 'Nothing was changed.'
  }
  goOn = (): void => {
    this.made = undefined
    this.told = ''
    this.#talk.startOver()
  }

  async #seen(answer: string): Promise<boolean> {
    const { complaint, pinned } = this.#talk
    if (!complaint) return false
    const seen = { complaint, answer, ...(pinned ? { pinned } : {}) }
    return alreadySeen(this.#muslin(), seen) || this.#session.noteSeen(this.#muslin(), seen)
  }
  /** A second press while the first is being kept does nothing. */
  async #once(act: () => Promise<boolean>): Promise<boolean> {
    if (this.#busy) return false
    this.#busy = true
    this.told = ''
    try {
      return await act()
    } finally {
      this.#busy = false
    }
  }
}

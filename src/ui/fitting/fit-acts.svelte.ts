/**
 * What is done from the Fit screen and kept: a change, a taking back, a thing seen, a note. One
 * act at a time; what was done last is told until the next one.
 */
import type { NewCorrection, Preview } from '../../fitting/preview.ts'
import type { Round } from '../../rounds/round.ts'
import type { Session } from '../session.svelte.ts'
import { FIT_WORDS } from './fit.words.ts'
import { alreadySeen, withNote } from './seen.ts'
import type { SentenceTalk } from './sentence-talk.svelte.ts'
import type { FitTalk } from './fit-talk.svelte.ts'

export interface MadeChange {
  /** Ids of what was decided together, in the order in which it was kept. */
  readonly corrections: readonly string[]
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
  readonly #sentence: SentenceTalk
  readonly #muslin: () => Round

  constructor(session: Session, talk: FitTalk, sentence: SentenceTalk, muslin: () => Round) {
    this.#session = session
    this.#talk = talk
    this.#sentence = sentence
    this.#muslin = muslin
  }

  /** Keeps what was seen with the muslin's round, then the changes in the next one. */
  make = (): Promise<boolean> =>
    this.#once(async () => {
      const { corrections, outcomeOfChange } = this.#talk
      if (corrections.length === 0 || !outcomeOfChange?.ok) return false
      if (!(await this.#seenAll())) return false
      return this.#makeAll(corrections, outcomeOfChange.preview)
    })
  async #makeAll(list: readonly NewCorrection[], preview: Preview): Promise<boolean> {
    const { garmentId } = this.#muslin()
    for (const correction of list)
      if (!(await this.#session.makeChange(garmentId, correction))) return false
    const last = this.#session.latest(garmentId)
    const corrections = last?.corrections.slice(-list.length).map(({ id }) => id) ?? []
    if (!last || corrections.length < list.length) throw new Error('fit: a change was not kept')
    this.made = { corrections, preview, round: last.number }
    return true
  }
  takeBack = (correction: string): Promise<boolean> =>
    this.#once(async () => {
      if (!(await this.#session.takeBack(this.#muslin().garmentId, correction))) return false
      this.made = undefined
      this.told = FIT_WORDS.takenBack
      return true
    })
  takeBackMade = async (): Promise<void> => {
    for (const id of this.made?.corrections.toReversed() ?? []) await this.takeBack(id)
  }
  /** Keeps what was seen and decided, without a change. */
  keepSeen = (): Promise<boolean> =>
    this.#once(async () => {
      if (!(await this.#seenAll())) return false
      this.#startOver()
      this.told = FIT_WORDS.kept(this.#muslin().number)
      return true
    })
  note = (words: string): Promise<boolean> =>
    this.#once(async () => {
      const round = this.#muslin()
      if (!(await this.#session.writeNotes(round, withNote(round.notes, words)))) return false
      this.told = FIT_WORDS.noted(round.number, words)
      return true
    })
  notYet = (): void => {
    this.#talk.startOver()
    this.told = FIT_WORDS.nothingChanged
  }
  goOn = (): void => {
    this.made = undefined
    this.told = ''
    this.#startOver()
  }
  #startOver(): void {
    this.#talk.startOver()
    this.#sentence.startOver()
  }

  async #seenAll(): Promise<boolean> {
    // What the book should tape again is asked there, whatever is decided here.
    if (!(await this.#session.doubt(this.#talk.proposals(this.#session.today())))) return false
    for (const seen of this.#talk.seen)
      if (
        !alreadySeen(this.#muslin(), seen) &&
        !(await this.#session.noteSeen(this.#muslin(), seen))
      )
        return false
    return true
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

/** What she does in the tape book. */
import {
  addTape,
  askAgain,
  doubtAll,
  keptReadings,
  proposeAll,
  tapeAnew,
  tapeStands,
  withdrawTape,
  type Book,
  type NewDoubt,
} from '../../measurements/book.ts'
import type { MeasurementId } from '../../measurements/catalogue.ts'
import type { EstimateOutcomes } from '../../measurements/estimate.ts'
import { isAside } from '../../rounds/line.ts'
import { withBody } from '../../rounds/round.ts'
import type { Mm } from '../../units/length.ts'
import {
  readingCorrected,
  readingTyped,
  readingWithdrawn,
  saidTapeStands,
  tapedAnew,
} from '../undo/act-words.ts'
import { confirmedFor } from './taped.ts'
import type { Keeping } from './keeping.ts'
import type { SafeKeeping } from './safe-keeping.ts'
import type { Work } from './work.svelte.ts'

export class TapeActs {
  readonly #keeping: Keeping
  readonly #work: Work
  readonly #safe: SafeKeeping

  constructor(keeping: Keeping, safe: SafeKeeping) {
    this.#keeping = keeping
    this.#work = keeping.work
    this.#safe = safe
  }

  typeReading = (id: MeasurementId, value: Mm): Promise<boolean> =>
    this.#keeping
      .act({
        what: readingTyped(id, value),
        again: () => this.#add(id, value),
        back: () => this.#withdraw(id, value),
      })
      .then((done) => {
        // Asked with the first number: before it there is nothing to keep.
        if (done) this.#safe.askOnce()
        return done
      })
  withdrawReading = (id: MeasurementId, index: number): Promise<boolean> => {
    const { value } = this.#reading(id, index)
    return this.#keeping.act({
      what: readingWithdrawn(id, value),
      again: () => this.#withdraw(id, value, index),
      back: () => this.#add(id, value),
    })
  }
  /** One reading typed over another: the old one is withdrawn and stays in the book, marked. */
  correctReading = (id: MeasurementId, index: number, value: Mm): Promise<boolean> => {
    const old = this.#reading(id, index).value
    const exchange = (from: Mm, to: Mm, at?: number) =>
      this.#withdraw(id, from, at, (book) => addTape(book, id, to, this.#work.today()))
    return this.#keeping.act({
      what: readingCorrected(id, old, value),
      again: () => exchange(old, value, index),
      back: () => exchange(value, old),
    })
  }
  propose = (outcomes: EstimateOutcomes): Promise<boolean> =>
    this.#keeping.inTurn(() =>
      this.#editBook((book) =>
        proposeAll(book, outcomes, this.#work.today(), this.#keeping.newId()),
      ),
    )

  /** Numbers that a muslin speaks against: they wait in the book to be taped again. */
  doubt = (list: readonly NewDoubt[]): Promise<boolean> =>
    list.length === 0
      ? Promise.resolve(true)
      : this.#keeping.inTurn(() => this.#editBook((book) => doubtAll(book, list)))

  /** Asked which is right, tape or photo: the tape. */
  tapeStands = (id: MeasurementId): Promise<boolean> => {
    if (!this.#work.book[id]?.proposal) return Promise.resolve(false)
    return this.#keeping.act({
      what: saidTapeStands(id),
      again: () => this.#editBook((book) => tapeStands(book, id, this.#work.today())),
      back: () => this.#editBook((book) => askAgain(book, id)),
    })
  }
  /** Neither: all readings are withdrawn, and it is taped anew. */
  tapeAnew = (id: MeasurementId): Promise<boolean> => {
    const values = keptReadings(this.#work.book[id], id).map(({ reading }) => reading.value)
    return this.#keeping.act({
      what: tapedAnew(id),
      again: () => this.#editBook((book) => tapeAnew(book, id)),
      back: () =>
        this.#editBook((book) =>
          values.reduce((b, value) => addTape(b, id, value, this.#work.today()), book),
        ),
    })
  }

  #reading(id: MeasurementId, index: number) {
    const reading = this.#work.book[id]?.tape[index]
    if (!reading) throw new Error(`session: ${id} has no reading ${index}`)
    return reading
  }
  #add = (id: MeasurementId, value: Mm): Promise<boolean> =>
    this.#editBook((book) => addTape(book, id, value, this.#work.today()))
  /** By its value: another window may have brought its own readings into the list meanwhile. */
  #withdraw(
    id: MeasurementId,
    value: Mm,
    index?: number,
    then: (book: Book) => Book = (book) => book,
  ): Promise<boolean> {
    const tape = this.#work.book[id]?.tape ?? []
    const meant = tape[index ?? -1]
    const at =
      index !== undefined && meant?.value === value && !meant.withdrawn
        ? index
        : tape.findLastIndex((r) => r.value === value && !r.withdrawn)
    return at < 0
      ? Promise.resolve(false)
      : this.#editBook((book) => then(withdrawTape(book, id, at)))
  }

  async #editBook(change: (book: Book) => Book): Promise<boolean> {
    const kept = await this.#keeping.kept(this.#keeping.store.saveBook(change(this.#work.book)))
    if (!kept) return false
    this.#work.book = kept.value
    // The round being drawn follows the book; a printed one and one set aside never change.
    const { rounds } = this.#work
    for (const round of rounds.filter((r) => !r.printed && !isAside(rounds, r))) {
      const again = confirmedFor(this.#work.book, round.garment)
      if (again.ok) await this.#keeping.keepRound(withBody(round, again.body))
    }
    return true
  }
}

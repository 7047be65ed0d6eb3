/**
 * The order in which her work is kept. An edit waits until the store has kept the result, and only
 * then is it shown; when keeping fails, nothing changes on the screen but the sentence that says
 * why. Edits wait for one another, and what another window kept is read in between them, so each
 * is made on the work as it is.
 */
import type { Round } from '../../rounds/round.ts'
import { type Kept } from '../../storage/failure.ts'
import type { Store } from '../../storage/store.ts'
import type { Act } from '../undo/undoing.svelte.ts'
import type { Work, World } from './work.svelte.ts'
import { CHANGED_ELSEWHERE } from '../../storage/storage.words.ts'

export class Keeping {
  readonly work: Work
  readonly store: Store
  readonly #world: World

  constructor(work: Work, store: Store, world: World) {
    this.work = work
    this.store = store
    this.#world = world
  }

  newId = (): string => this.#world.newId()

  open = async (): Promise<void> => {
    await this.inTurn(() => this.load())
    this.work.promised = await this.store.promised()
    this.store.watch(() => void this.#readElsewhere())
  }
  /** Shows what the store holds. To be called in turn. */
  async load(): Promise<void> {
    const loaded = await this.store.load()
    if (!loaded.ok) {
      this.work.problem = loaded.sentence
      return
    }
    const { book, garments, rounds, photoLock, aside } = loaded.value
    this.work.book = book
    this.work.garments = garments
    this.work.rounds = rounds
    this.work.photosAre = this.store.safe.are(photoLock)
    this.work.aside = aside
    this.work.opened = true
    await this.work.showPhotosAnew()
  }

  /** Several calls of another window while one edit is under way are answered by one reading. */
  #readElsewhere(): Promise<void> {
    this.#waiting ??= this.inTurn(async () => {
      this.#waiting = undefined
      await this.load()
      this.work.changedElsewhere = this.#world.now()
    })
    return this.#waiting
  }
  #waiting: Promise<void> | undefined

  /**
   * One edit after another, each on what the one before left: two equal readings typed in quick
   * succession are two readings, and not one that was united with itself.
   */
  inTurn<T>(edit: () => Promise<T>): Promise<T> {
    const turn = this.#lastEdit.then(edit)
    this.#lastEdit = turn.catch(() => undefined)
    return turn
  }
  #lastEdit: Promise<unknown> = Promise.resolve()

  /** Does an act in turn; once it is kept it can be taken back. */
  act(act: Act): Promise<boolean> {
    return this.inTurn(async () => {
      const done = await act.again()
      if (done) this.work.undoing.did(act)
      return done
    })
  }
  undo = (): Promise<boolean> => this.inTurn(() => this.work.undoing.back())
  redo = (): Promise<boolean> => this.inTurn(() => this.work.undoing.again())

  /** What the store made of it; undefined when it was not kept, with the reason shown. */
  async kept<T>(saving: Promise<Kept<T>>): Promise<{ readonly value: T } | undefined> {
    const outcome = await saving
    if (!outcome.ok) {
      this.work.problem = outcome.sentence
      if (outcome.sentence === CHANGED_ELSEWHERE) void this.#readElsewhere()
      return undefined
    }
    this.work.problem = undefined
    this.work.keptAt = this.#world.now()
    return { value: outcome.value }
  }

  /** Here, because an edit of the tape book moves rounds as well. */
  async keepRound(round: Round): Promise<boolean> {
    if (!(await this.kept(this.store.saveRound(round)))) return false
    this.showRound(round)
    return true
  }
  /** As it was kept. */
  showRound(round: Round): void {
    const { rounds } = this.work
    this.work.rounds = rounds.some((r) => r.id === round.id)
      ? rounds.map((r) => (r.id === round.id ? round : r))
      : [...rounds, round]
  }
}

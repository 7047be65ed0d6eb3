/**
 * Whose work lies on the table: hers, or the invented example. The example lies in a database of
 * its own, so no number of it can come into her book, her rail or her backup, and taking it down
 * is deleting that database.
 */
import { createContext } from 'svelte'
import { removeDatabase } from '../../storage/db.ts'
import { openStore, type Store } from '../../storage/store.ts'
import { hungParts } from '../rail/hung-parts.svelte.ts'
import { Session } from '../session.svelte.ts'
import type { World } from '../session/work.svelte.ts'
import { LOOKING } from './looking.ts'
import { WHOLE } from './whole.ts'
import { EXAMPLE_WORDS } from './example.words.ts'

export const EXAMPLE_DATABASE = 'tapetrue-example'

/** What the desk needs of the page besides the store. */
export interface Tab {
  readonly memory: Pick<Storage, 'getItem' | 'setItem' | 'removeItem'> | undefined
  readonly locks: Pick<LockManager, 'request'> | undefined
}

export class Desk {
  shown = $state.raw<Session>() as Session
  hanging = $state.raw(false)
  /** Why the example does not hang, and what to do. */
  problem = $state.raw<string | undefined>()
  readonly own: Session
  readonly #world: World
  readonly #tab: Tab
  #example: Store | undefined
  #letGo: (() => void) | undefined

  constructor(own: Session, world: World, tab: Tab) {
    this.own = own
    this.shown = own
    this.#world = world
    this.#tab = tab
  }

  get isExample(): boolean {
    return this.shown !== this.own
  }

  /** Called once when the page opens: goes on looking, or clears away what a closed tab left. */
  async begin(): Promise<void> {
    // In the page of another language it is cleared away: its texts are in that language.
    if (this.#tab.memory?.getItem(LOOKING) === EXAMPLE_WORDS.name) return this.lookAtExample()
    await this.#tab.locks?.request(EXAMPLE_DATABASE, { ifAvailable: true }, async (lock) => {
      if (lock) await removeDatabase(EXAMPLE_DATABASE)
    })
  }

  async lookAtExample(): Promise<void> {
    if (this.hanging || this.isExample) return
    this.hanging = true
    this.problem = undefined
    try {
      this.problem = await this.#hang()
    } finally {
      this.hanging = false
    }
  }

  async #hang(): Promise<string | undefined> {
    const opened = await openStore({
      name: EXAMPLE_DATABASE,
      onOvertaken: () => this.#back(),
    })
    if (!opened.ok) return opened.sentence
    const { store } = opened
    this.#example = store
    const there = await store.load()
    const whole = there.ok && there.value.settings[WHOLE] === true
    const why = whole ? undefined : await this.#build(store)
    if (why !== undefined) {
      await this.takeDown()
      return why
    }
    const session = new Session(store, this.#world)
    await session.open()
    await hungParts.fetch()
    this.#hold()
    this.#tab.memory?.setItem(LOOKING, EXAMPLE_WORDS.name)
    this.shown = session
    return undefined
  }

  async #build(store: Store): Promise<string | undefined> {
    const { hangExample } = await import('./build.ts')
    return hangExample(store, this.#world.newId)
  }

  /** Takes the example down without a trace; her own work lies on the table again. */
  async takeDown(): Promise<void> {
    this.#back()
    await removeDatabase(EXAMPLE_DATABASE)
  }

  #back(): void {
    this.#example?.close()
    this.#example = undefined
    this.#letGo?.()
    this.#tab.memory?.removeItem(LOOKING)
    this.shown = this.own
  }

  /** While it is looked at here, no other tab that opens clears it away. */
  #hold(): void {
    const looking = new Promise<void>((done) => (this.#letGo = done))
    void this.#tab.locks?.request(EXAMPLE_DATABASE, { mode: 'shared' }, () => looking)
  }
}

export const [useDesk, provideDesk, hasDesk] = createContext<Desk>()

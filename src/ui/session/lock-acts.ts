/** What she does with the passphrase of her photos. Each gives why it was not done, or undefined. */
import type { Kept } from '../../storage/failure.ts'
import type { Told } from '../../storage/photo-safe.ts'
import type { Keeping } from './keeping.ts'

export class LockActs {
  readonly #keeping: Keeping

  constructor(keeping: Keeping) {
    this.#keeping = keeping
  }

  setPassphrase = (passphrase: string, told?: Told) =>
    this.#shown(this.#keeping.store.safe.set(passphrase, told))
  unlockPhotos = (passphrase: string, told?: Told) =>
    this.#shown(this.#keeping.store.safe.unlock(passphrase, told))
  lockPhotos = () => this.#shown(this.#keeping.store.safe.lockNow())
  changePassphrase = (was: string, now: string) =>
    this.#shown(this.#keeping.store.safe.changePassphrase(was, now))
  takeOffPassphrase = (passphrase: string, told?: Told) =>
    this.#shown(this.#keeping.store.safe.takeOff(passphrase, told))
  /** Forgotten: the locked photos go, the numbers stay. */
  letLockedGo = () => this.#shown(this.#keeping.store.letLockedGo(this.#keeping.work.today()))

  /** Whatever came of it, what lies in the store is shown. */
  async #shown(act: Promise<Kept<unknown>>): Promise<string | undefined> {
    const outcome = await act
    await this.#keeping.inTurn(() => this.#keeping.load())
    return outcome.ok ? undefined : outcome.sentence
  }
}

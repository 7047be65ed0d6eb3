/** Backup and restoring, the room there is, and the browser's promise not to clear the work. */
import { readBackup, writeBackup } from '../../storage/backup.ts'
import type { Kept } from '../../storage/failure.ts'
import { restore, type Restored } from '../../storage/restore.ts'
import { sealed } from '../../storage/sealed.ts'
import type { Keeping } from './keeping.ts'
import type { Work } from './work.svelte.ts'

export class SafeKeeping {
  readonly #keeping: Keeping
  readonly #work: Work

  constructor(keeping: Keeping) {
    this.#keeping = keeping
    this.#work = keeping.work
  }

  /** Everything, or one garment, as one file she keeps; photos go in only under a passphrase. */
  backup = async (wish: { passphrase?: string; garment?: string } = {}): Promise<Kept<Blob>> => {
    const { passphrase, garment } = wish
    const photos = passphrase !== undefined
    const on = this.#work.today()
    const written = await writeBackup(this.#keeping.store, { on, photos, garment })
    return written.ok && photos ? sealed(await written.value.text(), passphrase) : written
  }
  /** Reads a backup into the present work; a file that cannot be used changes nothing. */
  restore = async (text: string): Promise<Kept<Restored>> => {
    const read = await readBackup(text)
    if (!read.ok) return read
    return this.#keeping.inTurn(async () => {
      const restored = await restore(this.#keeping.store, read.content)
      if (restored.ok) await this.#keeping.load()
      return restored
    })
  }
  room = () => this.#keeping.store.room()
  /** Asks the browser to promise that the work is not cleared when the device gets full. */
  askToKeep = async (): Promise<void> => {
    this.#asked = true
    this.#work.promised = await this.#keeping.store.persist()
  }
  /** Asks where it was not asked since the page opened and nothing is promised yet. */
  askOnce(): void {
    if (!this.#asked && this.#work.promised === false) void this.askToKeep()
  }
  #asked = false
}

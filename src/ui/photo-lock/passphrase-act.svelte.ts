/** One act with a passphrase at a time: under way, how far, and why it was not done. */
import type { Told } from '../../storage/photo-safe.ts'
import { LOCK_WORDS } from './photo-lock.words.ts'

export class PassphraseAct {
  /** What is being done, "3 of 12 photos"; undefined when nothing is. */
  doing = $state.raw<string | undefined>()
  refused = $state.raw<string | undefined>()

  /** @returns whether it was done */
  async run(act: (told: Told) => Promise<string | undefined>): Promise<boolean> {
    if (this.doing !== undefined) return false
    this.doing = LOCK_WORDS.workedOut
    this.refused = undefined
    try {
      this.refused = await act((done, all) => {
        this.doing = LOCK_WORDS.photosOf(done, all)
      })
      return this.refused === undefined
    } finally {
      this.doing = undefined
    }
  }
}

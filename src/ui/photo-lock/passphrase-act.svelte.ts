/** One act with a passphrase at a time: under way, how far, and why it was not done. */
import type { Told } from '../../storage/photo-safe.ts'

export class PassphraseAct {
  /** What is being done, "3 of 12 photos"; undefined when nothing is. */
  doing = $state.raw<string | undefined>()
  refused = $state.raw<string | undefined>()

  /** @returns whether it was done */
  async run(act: (told: Told) => Promise<string | undefined>): Promise<boolean> {
    if (this.doing !== undefined) return false
    this.doing = 'The passphrase is being worked out.'
    this.refused = undefined
    try {
      this.refused = await act((done, all) => {
        this.doing = `${done} of ${all} photos. Each is kept before the next: nothing is lost if the page closes.`
      })
      return this.refused === undefined
    } finally {
      this.doing = undefined
    }
  }
}

/** One thing she may hand to the share sheet of her device, and what came of the last press. */
import { canShare, shareFiles } from './save-file.ts'

/** The kinds of file the page shares. */
export type SharedKind = 'application/json' | 'application/pdf' | 'image/jpeg'

/** Makes what is shared as it is now; undefined where that fails, which the maker says itself. */
type Make = () => Promise<File | readonly File[] | undefined>

export class Sharing {
  /** This browser hands such files on; else only saving is shown. */
  readonly can: boolean
  busy = $state.raw(false)
  /** What she is told: ready for one more press, or refused; a share she left says nothing. */
  came = $state.raw<'ready' | 'refused' | undefined>()
  #ready: readonly File[] | undefined
  readonly #make: Make

  /**
   * To be made with its component.
   * @param follows reads what the files follow from; what lies ready is dropped when that changes
   */
  constructor(kind: SharedKind, make: Make, follows: () => unknown) {
    this.can = canShare(new File([' '], 'file', { type: kind }))
    this.#make = make
    $effect(() => {
      follows()
      this.#forget()
    })
  }

  press = async (): Promise<void> => {
    if (this.busy) return
    this.busy = true
    try {
      const made = this.#ready ?? (await this.#make())
      this.#forget()
      if (!made) return
      const files = made instanceof File ? [made] : made
      const came = await shareFiles(files)
      if (came === 'pressAgain') this.#ready = files
      this.came = came === 'pressAgain' ? 'ready' : came === 'refused' ? came : undefined
    } finally {
      this.busy = false
    }
  }
  #forget(): void {
    this.#ready = undefined
    this.came = undefined
  }
}

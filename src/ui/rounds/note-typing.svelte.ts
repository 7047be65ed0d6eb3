/**
 * A note of a round while she types it: what another window keeps meanwhile is no word of hers, and
 * does not take hers out of the field.
 */
import type { Round } from '../../rounds/round.ts'

interface Note {
  /** The round as the screen shows it now. */
  readonly round: () => Round
  /** What it says in this note. */
  readonly told: (round: Round) => string
  /** Keeps `text` in the place of what `begun` told. */
  readonly keep: (begun: Round, text: string) => Promise<boolean>
}

export class NoteTyping {
  kept = $state.raw(false)
  readonly #note: Note
  /** The round as it was when she began to type. */
  #begun = $state.raw<Round | undefined>()
  #typed = $state.raw('')

  constructor(note: Note) {
    this.#note = note
  }

  get shown(): string {
    return this.#begun ? this.#typed : this.#note.told(this.#note.round())
  }
  type = (text: string): void => {
    this.#begun ??= this.#note.round()
    this.#typed = text
    this.kept = false
  }
  keep = async (): Promise<void> => {
    const begun = this.#begun
    if (!begun) return
    const text = this.#typed
    const same = text.trim() === this.#note.told(begun).trim()
    this.kept = !same && (await this.#note.keep(begun, text))
    // Not kept, it stays in the field; typed on meanwhile, it goes on from what was kept.
    if (this.kept || same) this.#begun = this.#typed === text ? undefined : this.#note.round()
  }
}

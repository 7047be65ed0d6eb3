/**
 * What can be taken back while the page is open, whatever place it was done in. Nothing is rolled
 * back: taking back is a further decision, kept like any other, so another window and an older
 * backup stay true. The list itself ends with the page.
 */
import type { UnitChoice } from '../../units/format.ts'

/** An act with its opposite. Each says false when it cannot be done any more. */
export interface Act {
  /** "Bust girth, 92.0 cm": what the screen says after "Taken back:". */
  readonly what: (units: UnitChoice) => string
  readonly again: () => Promise<boolean>
  readonly back: () => Promise<boolean>
}
export interface Undone {
  readonly how: 'back' | 'again' | 'tooLate'
  readonly act: Act
}

/** More acts than anyone walks back through. */
const MOST = 100

export class Undoing {
  past = $state.raw<readonly Act[]>([])
  future = $state.raw<readonly Act[]>([])
  /** What was taken back or done again last; gone with the next act. */
  last = $state.raw<Undone | undefined>()

  did(act: Act): void {
    this.past = [...this.past.slice(1 - MOST), act]
    this.future = []
    this.last = undefined
  }

  async back(): Promise<boolean> {
    const act = this.past.at(-1)
    if (!act) return false
    const done = await act.back()
    this.past = this.past.slice(0, -1)
    if (done) this.future = [...this.future, act]
    this.last = { how: done ? 'back' : 'tooLate', act }
    return done
  }

  async again(): Promise<boolean> {
    const act = this.future.at(-1)
    if (!act) return false
    const done = await act.again()
    this.future = this.future.slice(0, -1)
    if (done) this.past = [...this.past, act]
    this.last = { how: done ? 'again' : 'tooLate', act }
    return done
  }
}

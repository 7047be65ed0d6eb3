/** How one kind of trouble ended, over all tries. */
export interface Outcome {
  readonly tries: number
  /** Tries after which the page worked on. */
  readonly survived: number
  /** Entries that had been told as kept and were not there afterwards. */
  readonly lost: number
  /** What the page said, or how it went on where nothing had to be said. */
  readonly sentence: string
}

/** Counts tries; a try that throws did not survive, and its message is kept for the log. */
export class Tally {
  tries = 0
  survived = 0
  lost = 0
  sentence = ''
  readonly faults: string[] = []

  async try(work: () => Promise<{ lost?: number; sentence?: string } | undefined>): Promise<void> {
    this.tries += 1
    try {
      const said = await work()
      this.survived += 1
      this.lost += said?.lost ?? 0
      if (said?.sentence) this.sentence ||= said.sentence.replaceAll(/\s+/g, ' ').trim()
    } catch (error) {
      this.faults.push(error instanceof Error ? error.message : String(error))
    }
  }
  get outcome(): Outcome {
    const { tries, survived, lost, sentence } = this
    return { tries, survived, lost, sentence }
  }
}

export function must(holds: unknown, what: string): asserts holds {
  if (!holds) throw new Error(what)
}

/**
 * Two joined devices, from the first byte to the last: each proves that it knows the secret, then
 * she compares the words on both, and only then is anything sent or taken. What comes out of turn
 * ends the talk. Everything heard is worked off in order, also where that takes time.
 */
import type { Side } from './description.ts'
import { fromFrame, toFrame, type Answer, type Frame } from './frame.ts'
import { proofOf, proves, wordsOf, type Bytes, type Pairing } from './proof.ts'
import { sendAll, type Going, type Outgoing } from './sending.ts'
import { hexOf, type Arriving, type Taken, type Taking } from './taking.ts'
import { OUT_OF_TURN, WRONG_SECRET } from './handover.words.ts'

export interface TalkWith {
  readonly subtle: SubtleCrypto
  readonly side: Side
  readonly pairing: Pairing
  readonly taking: Taking
  /** Resolves once the channel has room for more. */
  readonly send: (frame: Bytes) => Promise<void>
}
export interface TalkHears {
  /** The other device knows the secret; these are the words to compare. */
  readonly proven: (words: readonly string[]) => void
  /** She has agreed on the other device. */
  readonly agreed: () => void
  readonly arriving: (what: Arriving | undefined) => void
  readonly going: (what: Going | undefined) => void
  readonly took: (name: string, what: Taken) => void
  /** The talk is over, and why. */
  readonly broken: (sentence: string) => void
}

export class Talk {
  readonly #with: TalkWith
  readonly #hears: TalkHears
  #proven = false
  #agreedHere = false
  #agreedThere = false
  #over = false
  #sending = false
  #stopped = false
  #heard: Promise<void> = Promise.resolve()
  #lastId = 0
  /** Answers of the other device to what is sent from here, and who waits for one. */
  #answers: Answer[] = []
  #waiting: ((answer: Answer | 'stop') => void) | undefined

  constructor(by: TalkWith, hears: TalkHears) {
    this.#with = by
    this.#hears = hears
  }

  /** Both have agreed: things may be sent. */
  get open(): boolean {
    return this.#proven && this.#agreedHere && this.#agreedThere && !this.#over
  }

  async begin(): Promise<void> {
    const { subtle, pairing, side } = this.#with
    await this.#say({ say: 'proof', proof: hexOf(await proofOf(subtle, pairing, side)) })
  }
  async agree(): Promise<void> {
    if (!this.#proven || this.#agreedHere) return
    this.#agreedHere = true
    await this.#say({ say: 'agreed' })
  }
  /** Sends in order; gives whether all of it went. One sending at a time. */
  async send(things: readonly Outgoing[]): Promise<boolean> {
    if (!this.open || this.#sending) throw new Error('talk: not open, or something is being sent')
    this.#sending = true
    this.#stopped = false
    try {
      return await sendAll(things, {
        subtle: this.#with.subtle,
        send: (frame) => this.#say(frame),
        newId: () => (this.#lastId += 1),
        answer: (id) => this.#answer(id),
        stopped: () => this.#stopped,
        going: this.#hears.going,
        took: this.#hears.took,
      })
    } finally {
      this.#sending = false
      this.#hears.going(undefined)
    }
  }
  /** She stops what goes out from here. */
  stop(): void {
    this.#stopped = true
    this.#give('stop')
  }
  /** She does not want what is coming in. */
  enough(): Promise<void> {
    return this.#say({ say: 'enough' })
  }
  /** The connection is gone or she leaves: whoever waits is let go. */
  close(): void {
    this.#over = true
    this.stop()
    this.#with.taking.pause()
  }

  hear(bytes: Bytes): Promise<void> {
    return (this.#heard = this.#heard.then(() => this.#hear(bytes)))
  }

  async #hear(bytes: Bytes): Promise<void> {
    if (this.#over) return
    const frame = fromFrame(bytes)
    if (!frame) return this.#break(OUT_OF_TURN)
    if (frame.say === 'proof') return this.#prove(frame.proof)
    if (!this.#proven) return this.#break(WRONG_SECRET)
    if (frame.say === 'agreed') {
      this.#agreedThere = true
      return this.#hears.agreed()
    }
    if (!this.open) return this.#break(OUT_OF_TURN)
    if (frame.say === 'want' || frame.say === 'taken') return this.#give(frame)
    if (frame.say === 'enough') return this.stop()
    const { taking } = this.#with
    const answer = await taking.hear(frame)
    if (answer === 'broken') return this.#break(OUT_OF_TURN)
    this.#hears.arriving(taking.arriving)
    if (answer) await this.#say(answer)
  }

  async #prove(hex: string): Promise<void> {
    const { subtle, pairing, side } = this.#with
    const other = side === 'offer' ? 'answer' : 'offer'
    const proof = Uint8Array.from(hex.match(/../g) ?? [], (pair) => parseInt(pair, 16))
    if (!(await proves(subtle, pairing, other, proof))) return this.#break(WRONG_SECRET)
    this.#proven = true
    this.#hears.proven(await wordsOf(subtle, pairing))
  }
  #break(sentence: string): void {
    this.close()
    this.#hears.broken(sentence)
  }

  async #say(frame: Frame): Promise<void> {
    if (!this.#over) await this.#with.send(toFrame(frame))
  }
  async #answer(id: number): Promise<Answer | 'stop'> {
    for (;;) {
      if (this.#stopped) return 'stop'
      const next = this.#answers.shift() ?? (await new Promise<Answer | 'stop'>(this.#wait))
      // One to an earlier thing, whose sending was stopped, comes late.
      if (next === 'stop' || next.id === id) return next
    }
  }
  readonly #wait = (given: (answer: Answer | 'stop') => void): void => {
    this.#waiting = given
  }
  #give(answer: Answer | 'stop'): void {
    const waiting = this.#waiting
    this.#waiting = undefined
    if (waiting) waiting(answer)
    else if (answer !== 'stop') this.#answers.push(answer)
  }
}

/**
 * One meeting of two devices, as the screen shows it: from the first code to the last file. Nothing
 * is opened before `ask` or `answerTo`, and `leave` closes all of it.
 */
import { readCode, writeCode } from '../../handover/code.ts'
import { shortened, type Description, type Side } from '../../handover/description.ts'
import { SECRET_BYTES, type Bytes } from '../../handover/proof.ts'
import type { Going, Outgoing } from '../../handover/sending.ts'
import { Talk } from '../../handover/talk.ts'
import { Taking, type Arriving, type Take, type Taken } from '../../handover/taking.ts'
import type { PeerHears, PeerLike } from './peer.ts'
import { DIFFERENT, LOST, NO_NETWORK, NO_WAY, NOT_JOINED } from './why-closed.words.ts'

/**
 * asking: the first code is shown. answering: the second one is. joining: both are read.
 * comparing: the words are shown. over: closed, with the reason in `problem`.
 */
export type Stage = 'off' | 'asking' | 'answering' | 'joining' | 'comparing' | 'open' | 'over'

export interface ShownCode {
  /** For the square: every address of this device. */
  readonly square: string
  /** For a hand that types: shorter, with one address. */
  readonly groups: readonly string[]
}
export interface Listed extends Taken {
  readonly name: string
}
/** What it needs of the page; a test brings its own. */
export interface Means {
  readonly crypto: Crypto
  readonly peer: (hears: PeerHears) => PeerLike
  readonly take: Take
  /** How long two devices that have read each other's codes may look for each other. */
  readonly joiningMs?: number
}

const JOINING_MS = 20_000

export class HandOver {
  stage = $state.raw<Stage>('off')
  code = $state.raw<ShownCode | undefined>()
  /** Why it is over, or could not begin. */
  problem = $state.raw<string | undefined>()
  words = $state.raw<readonly string[]>([])
  agreedHere = $state.raw(false)
  going = $state.raw<Going | undefined>()
  arriving = $state.raw<Arriving | undefined>()
  sending = $state.raw(false)
  sent = $state.raw<readonly Listed[]>([])
  arrived = $state.raw<readonly Listed[]>([])

  readonly #means: Means
  readonly #taking: Taking
  #peer: PeerLike | undefined
  #talk: Talk | undefined
  #secret: Bytes | undefined
  #own: Description | undefined
  #other: Description | undefined
  #side: Side = 'offer'
  #timer: ReturnType<typeof setTimeout> | undefined

  constructor(means: Means) {
    this.#means = means
    this.#taking = new Taking(means.crypto.subtle, async (thing, file) => {
      const taken = await means.take(thing, file)
      this.arrived = [...this.arrived, { name: thing.name, ...taken }]
      return taken
    })
  }

  /** Shows a first code. */
  async ask(): Promise<void> {
    if (!this.#able()) return
    const peer = this.#begin('offer')
    if (!peer) return
    this.#secret = this.#means.crypto.getRandomValues(new Uint8Array(SECRET_BYTES))
    await this.#show(peer, () => peer.offer(), 'asking')
  }
  /** The first code of the other device was read or typed; gives what is wrong with it. */
  async answerTo(text: string): Promise<string | undefined> {
    if (!this.#able()) return undefined
    const read = await readCode(this.#means.crypto.subtle, text, undefined)
    if (!read.ok) return read.sentence
    const peer = this.#begin('answer')
    if (!peer) return undefined
    const { about, secret } = read.code
    this.#secret = secret
    this.#other = about
    await this.#show(peer, () => peer.answer(about), 'answering')
    return undefined
  }
  /** The answer of the other device was read or typed; gives what is wrong with it. */
  async join(text: string): Promise<string | undefined> {
    const peer = this.#peer
    if (this.stage !== 'asking' || !peer || !this.#secret) return undefined
    const read = await readCode(this.#means.crypto.subtle, text, this.#secret)
    if (!read.ok) return read.sentence
    this.#other = read.code.about
    this.stage = 'joining'
    this.#timer = setTimeout(() => this.#end(NOT_JOINED), this.#means.joiningMs ?? JOINING_MS)
    await peer.join(read.code.about).catch(() => this.#end(NOT_JOINED))
    return undefined
  }

  agree(): void {
    if (this.stage !== 'comparing' || this.agreedHere) return
    this.agreedHere = true
    void this.#talk?.agree().then(() => this.#whenOpen())
  }
  differ(): void {
    this.#end(DIFFERENT)
  }

  /** Gives whether all of it went. */
  async send(things: readonly Outgoing[]): Promise<boolean> {
    const talk = this.#talk
    if (this.stage !== 'open' || this.sending || !talk) return false
    this.sending = true
    try {
      return await talk.send(things)
    } finally {
      this.sending = false
    }
  }
  stop(): void {
    this.#talk?.stop()
  }
  enough(): void {
    void this.#talk?.enough()
  }

  /** Back to the beginning; what was cut off is remembered. */
  again(): void {
    this.#close()
    this.problem = undefined
    this.stage = 'off'
  }
  leave(): void {
    this.#close()
    this.#taking.forget()
  }

  /** A page that was not opened safely has no such thing, whatever the type says. */
  #able(): boolean {
    const subtle: SubtleCrypto | undefined = this.#means.crypto.subtle
    if (!subtle) this.#end(NO_WAY)
    return subtle !== undefined
  }
  #begin(side: Side): PeerLike | undefined {
    this.again()
    this.#side = side
    try {
      const peer: PeerLike = this.#means.peer({
        opened: () => this.#opened(peer),
        heard: (bytes) => void this.#talk?.hear(bytes),
        lost: () => this.#lost(peer),
      })
      return (this.#peer = peer)
    } catch {
      this.#end(NO_WAY) // no such thing in this browser, or switched off in its settings
      return undefined
    }
  }
  async #show(
    peer: PeerLike,
    describe: () => Promise<Description | undefined>,
    stage: Stage,
  ): Promise<void> {
    const own = await describe().catch(() => undefined)
    if (this.#peer !== peer || !this.#secret) return
    if (!own) return this.#end(NO_NETWORK)
    this.#own = own
    const { subtle } = this.#means.crypto
    const whole = { side: this.#side, about: own, secret: this.#secret }
    const square = (await writeCode(subtle, whole)).join('')
    const groups = await writeCode(subtle, { ...whole, about: shortened(own) })
    if (this.#peer !== peer) return
    this.code = { square, groups }
    this.stage = stage
  }

  #opened(peer: PeerLike): void {
    const [own, other, secret] = [this.#own, this.#other, this.#secret]
    if (this.#peer !== peer || !own || !other || !secret) return
    clearTimeout(this.#timer)
    const [offer, answer] = this.#side === 'offer' ? [own, other] : [other, own]
    const pairing = { secret, offer: offer.fingerprint, answer: answer.fingerprint }
    const send = (bytes: Bytes): Promise<void> => peer.send(bytes)
    this.#talk = new Talk(
      { subtle: this.#means.crypto.subtle, side: this.#side, pairing, taking: this.#taking, send },
      {
        proven: (words) => {
          this.words = words
          this.code = undefined
          this.stage = 'comparing'
        },
        agreed: () => this.#whenOpen(),
        arriving: (what) => (this.arriving = what),
        going: (what) => (this.going = what),
        took: (name, what) => (this.sent = [...this.sent, { name, ...what }]),
        broken: (sentence) => this.#end(sentence),
      },
    )
    void this.#talk.begin()
  }
  #whenOpen(): void {
    if (this.#talk?.open) this.stage = 'open'
  }
  #lost(peer: PeerLike): void {
    if (this.#peer !== peer) return
    // Who answered cannot know when its code is read: the addresses it tried may yet answer.
    if (this.stage === 'answering' && !this.#talk) return
    this.#end(this.#talk ? LOST : NOT_JOINED)
  }
  #end(problem: string): void {
    this.#close()
    this.problem = problem
    this.stage = 'over'
  }
  #close(): void {
    clearTimeout(this.#timer)
    this.#talk?.close()
    this.#peer?.close()
    this.#talk = this.#peer = this.#secret = this.#own = this.#other = undefined
    this.code = this.going = this.arriving = undefined
    this.agreedHere = this.sending = false
    this.words = []
  }
}

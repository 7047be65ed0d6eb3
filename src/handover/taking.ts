/**
 * What comes in, one thing at a time: put together in order, held against its SHA-256, and only
 * then handed on. What was cut off is remembered by its SHA-256, so that the same thing goes on
 * from there when the devices are joined again.
 */
import { LONGEST_SENTENCE, type Answer, type Frame, type Thing } from './frame.ts'
import type { Bytes } from './proof.ts'
import { SPOILT } from './handover.words.ts'

export interface Taken {
  readonly ok: boolean
  /** What became of it, for both screens. */
  readonly sentence: string
}
/** Keeps a whole thing whose bytes are what they should be. */
export type Take = (thing: Thing, file: Blob) => Promise<Taken>
export interface Arriving {
  readonly thing: Thing
  readonly at: number
  readonly of: number
  readonly here: number
}

export class Taking {
  readonly #subtle: SubtleCrypto
  readonly #take: Take
  /** What has begun to arrive, by SHA-256, for as long as the page is open. */
  readonly #begun = new Map<string, Begun>()
  #now: Now | undefined

  constructor(subtle: SubtleCrypto, take: Take) {
    this.#subtle = subtle
    this.#take = take
  }

  /** What is coming in now. */
  get arriving(): Arriving | undefined {
    if (!this.#now) return undefined
    const { thing, at, of } = this.#now
    return { thing, at, of, here: this.#parts(thing).here }
  }

  /** Answers a frame of the sender; undefined where there is nothing to answer, `'broken'` where it breaks the order. */
  async hear(frame: Frame): Promise<Answer | 'broken' | undefined> {
    if (frame.say === 'thing') {
      const { id, thing } = (this.#now = frame)
      const { here } = this.#parts(thing)
      return here < thing.bytes ? { say: 'want', id, from: here } : this.#whole(this.#now)
    }
    if (frame.say === 'end') {
      this.#now = undefined
      return undefined
    }
    if (frame.say !== 'part' || !this.#now) return 'broken'
    const { thing } = this.#now
    const begun = this.#parts(thing)
    const after = begun.here + frame.bytes.length
    if (frame.from !== begun.here || after > thing.bytes) return 'broken'
    begun.parts.push(frame.bytes.slice())
    begun.here = after
    return after === thing.bytes ? this.#whole(this.#now) : undefined
  }

  /** The connection is gone; what came so far stays. */
  pause(): void {
    this.#now = undefined
  }
  forget(): void {
    this.#begun.clear()
  }

  async #whole({ id, thing }: Now): Promise<Answer> {
    const file = new Blob(this.#parts(thing).parts)
    this.#begun.delete(thing.sha256)
    const digest = await this.#subtle.digest('SHA-256', await file.arrayBuffer())
    const own = hexOf(new Uint8Array(digest)) === thing.sha256
    const { ok, sentence } = own ? await this.#take(thing, file) : { ok: false, sentence: SPOILT }
    return { say: 'taken', id, ok, sentence: sentence.slice(0, LONGEST_SENTENCE) }
  }

  #parts({ sha256 }: Thing): Begun {
    const begun = this.#begun.get(sha256) ?? { parts: [], here: 0 }
    this.#begun.set(sha256, begun)
    return begun
  }
}

type Now = Extract<Frame, { readonly say: 'thing' }>
interface Begun {
  readonly parts: Bytes[]
  /** Bytes of all parts. */
  here: number
}

export const hexOf = (bytes: Uint8Array): string =>
  Array.from(bytes, (byte) => byte.toString(16).padStart(2, '0')).join('')

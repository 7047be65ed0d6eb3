/** What goes out, one thing at a time, each only after the other device has said what it has of it. */
import { LONGEST_NAME, PART_BYTES, type Answer, type Frame, type Thing } from './frame.ts'
import { hexOf, type Taken } from './taking.ts'

/** A thing to send; its bytes are fetched when its turn comes, so that never two lie in memory. */
export interface Outgoing {
  readonly kind: Thing['kind']
  readonly name: string
  readonly view?: Thing['view']
  /** undefined when it is no longer here: it is passed over. */
  readonly file: () => Promise<Blob | undefined>
}
export interface Going {
  readonly name: string
  readonly at: number
  readonly of: number
  readonly sent: number
  readonly bytes: number
}
export interface SendingWith {
  readonly subtle: SubtleCrypto
  /** Resolves once the channel has room for more. */
  readonly send: (frame: Frame) => Promise<void>
  /** A number for a thing that none had in this talk. */
  readonly newId: () => number
  /** The next answer to that thing, or `'stop'` when she stopped it on either device. */
  readonly answer: (id: number) => Promise<Answer | 'stop'>
  /** Whether she stopped it; looked at between parts. */
  readonly stopped: () => boolean
  readonly going: (how: Going) => void
  readonly took: (name: string, what: Taken) => void
}

/** Sends all of it in order; gives whether it came to its end. Throws when the other breaks the order. */
export async function sendAll(things: readonly Outgoing[], by: SendingWith): Promise<boolean> {
  for (const [k, outgoing] of things.entries()) {
    if (by.stopped()) return ended(by, true)
    const file = await outgoing.file()
    if (!file) continue
    const { kind, view } = outgoing
    const name = outgoing.name.slice(0, LONGEST_NAME)
    const digest = await by.subtle.digest('SHA-256', await file.arrayBuffer())
    const sha256 = hexOf(new Uint8Array(digest))
    const thing: Thing = { kind, name, ...(view && { view }), bytes: file.size, sha256 }
    const id = by.newId()
    await by.send({ say: 'thing', id, at: k + 1, of: things.length, thing })
    let said = await by.answer(id)
    if (said !== 'stop' && said.say === 'want') {
      const where = { name, at: k + 1, of: things.length, bytes: file.size }
      const whole = await sendParts(file, said.from, by, (sent) => by.going({ ...where, sent }))
      said = whole ? await by.answer(id) : 'stop'
    }
    if (said === 'stop') return ended(by, true)
    if (said.say !== 'taken') throw new Error(`sendAll: "${said.say}" is no answer to a thing`)
    by.took(name, { ok: said.ok, sentence: said.sentence })
  }
  return ended(by, false)
}

async function sendParts(
  file: Blob,
  begin: number,
  by: SendingWith,
  going: (sent: number) => void,
): Promise<boolean> {
  for (let from = begin; from < file.size; from += PART_BYTES) {
    if (by.stopped()) return false
    const part = file.slice(from, Math.min(from + PART_BYTES, file.size))
    await by.send({ say: 'part', from, bytes: new Uint8Array(await part.arrayBuffer()) })
    going(from + part.size)
  }
  return true
}

async function ended(by: SendingWith, stopped: boolean): Promise<boolean> {
  await by.send({ say: 'end', stopped })
  return !stopped
}

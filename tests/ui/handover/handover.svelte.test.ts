/**
 * One meeting of two devices as the screen holds it: through a line in memory for what goes wrong,
 * and through the browser's own connection for many megabytes. SHA-256 by the browser.
 */
import { describe, expect, it } from 'vitest'
import type { Description } from '../../../src/handover/description.ts'
import type { Outgoing } from '../../../src/handover/sending.ts'
import { HandOver, type Means } from '../../../src/ui/handover/handover.svelte.ts'
import {
  DIFFERENT,
  LOST,
  NO_NETWORK,
  NO_WAY,
  NOT_JOINED,
} from '../../../src/ui/handover/why-closed.words.ts'
import { Peer, type PeerHears, type PeerLike } from '../../../src/ui/handover/peer.ts'
import { FIRST, SECOND } from '../../handover/invented.ts'

/** A line in memory between two devices, with what the browser would tell each. */
class Line {
  readonly hears: PeerHears[] = []
  closed = 0
  /** Frames that still go through; the line is cut after them. */
  left = Infinity
  joins = true
  /** Parts of files that were sent. */
  parts = 0

  readonly peer = (hears: PeerHears): PeerLike => {
    const at = this.hears.push(hears) - 1
    return {
      offer: async () => FIRST as Description | undefined,
      answer: async () => SECOND,
      join: async () => {
        if (this.joins) for (const each of this.hears) setTimeout(each.opened)
      },
      send: async (bytes) => {
        this.parts += bytes[0] ?? 0
        if (this.left-- > 0) setTimeout(() => this.hears[1 - at]?.heard(bytes.slice()))
        else if (this.left === -1) for (const each of this.hears) setTimeout(each.lost)
      },
      close: () => void (this.closed += 1),
    }
  }
}
const taken = async () => ({ ok: true, sentence: 'Kept.' })
const device = (peer: Means['peer'], more: Partial<Means> = {}): HandOver =>
  new HandOver({ crypto, peer, take: taken, ...more })

async function compared(a: HandOver, b: HandOver): Promise<void> {
  await a.ask()
  expect(await b.answerTo(a.code?.square ?? '')).toBeUndefined()
  expect(await a.join(b.code?.groups.join(' ') ?? '')).toBeUndefined()
  await expect.poll(() => [a.stage, b.stage]).toEqual(['comparing', 'comparing'])
}
async function opened(a: HandOver, b: HandOver): Promise<void> {
  await compared(a, b)
  a.agree()
  b.agree()
  await expect.poll(() => [a.stage, b.stage]).toEqual(['open', 'open'])
}
const photo = (name: string, bytes: Uint8Array<ArrayBuffer>): Outgoing => ({
  kind: 'photo',
  name,
  file: async () => new Blob([bytes]),
})
function noise(length: number): Uint8Array<ArrayBuffer> {
  const bytes = new Uint8Array(length)
  for (let at = 0; at < length; at += 65_536)
    crypto.getRandomValues(bytes.subarray(at, Math.min(at + 65_536, length)))
  return bytes
}
async function sha(blob: Blob): Promise<string> {
  const digest = await crypto.subtle.digest('SHA-256', await blob.arrayBuffer())
  return [...new Uint8Array(digest)].join(' ')
}

describe('what goes wrong is said', () => {
  it('a browser that joins no devices', async () => {
    const a = device(() => {
      throw new ReferenceError('RTCPeerConnection is not defined')
    })
    await a.ask()
    expect([a.stage, a.problem]).toEqual(['over', NO_WAY])
  })
  it('a device in no network', async () => {
    const line = new Line()
    const a = device((hears) => ({ ...line.peer(hears), offer: async () => undefined }))
    await a.ask()
    expect([a.stage, a.problem]).toEqual(['over', NO_NETWORK])
  })
  it('two devices that do not find each other', async () => {
    const line = new Line()
    line.joins = false
    const [a, b] = [device(line.peer, { joiningMs: 20 }), device(line.peer)]
    await a.ask()
    await b.answerTo(a.code?.square ?? '')
    await a.join(b.code?.square ?? '')
    expect(a.stage).toBe('joining')
    await expect.poll(() => [a.stage, a.problem]).toEqual(['over', NOT_JOINED])
    // The one that answered keeps its code up: it cannot know when it is read.
    line.hears[1]?.lost()
    expect(b.stage).toBe('answering')
  })
  it('words that differ', async () => {
    const line = new Line()
    const [a, b] = [device(line.peer), device(line.peer)]
    await compared(a, b)
    expect(a.words).toEqual(b.words)
    b.differ()
    expect([b.stage, b.problem, b.words]).toEqual(['over', DIFFERENT, []])
  })
})

it('cut off in the middle: what came is listed, and the rest goes on in the next meeting', async () => {
  const files: Blob[] = []
  const first = new Line()
  let line = first
  const peer = (hears: PeerHears): PeerLike => line.peer(hears)
  const a = device(peer)
  const b = device(peer, {
    take: async (_, file) => (files.push(file), { ok: true, sentence: 'Kept.' }),
  })
  await opened(a, b)
  const [small, big] = [noise(1_000), noise(300_000)]
  first.left = 9
  expect(await a.send([photo('small', small), photo('big', big)])).toBe(false)
  await expect.poll(() => [a.problem, b.problem]).toEqual([LOST, LOST])
  expect(b.arrived.map(({ name }) => name)).toEqual(['small'])
  line = new Line()
  await opened(a, b)
  expect(await a.send([photo('big', big)])).toBe(true)
  // 300,000 bytes are ten parts; what had come before did not come again.
  expect(line.parts).toBeLessThan(10)
  expect(b.arrived.map(({ name, ok }) => [name, ok])).toEqual([
    ['small', true],
    ['big', true],
  ])
  expect(await Promise.all(files.map(sha))).toEqual(
    await Promise.all([small, big].map((bytes) => sha(new Blob([bytes])))),
  )
  for (const each of [a, b]) each.leave()
  expect(line.closed).toBe(2)
})

it('24 MB through the browser’s own connection, both ways at once, byte for byte', async () => {
  const files: Blob[] = []
  const take: Means['take'] = async (_, file) => (files.push(file), { ok: true, sentence: 'Kept.' })
  const make = (hears: PeerHears): PeerLike => new Peer(hears)
  const [a, b] = [device(make, { take }), device(make, { take })]
  await opened(a, b)
  const [there, back] = [noise(20_000_003), noise(4_000_001)]
  expect(
    await Promise.all([a.send([photo('there', there)]), b.send([photo('back', back)])]),
  ).toEqual([true, true])
  const came = await Promise.all(files.map(sha))
  const sent = await Promise.all([there, back].map((bytes) => sha(new Blob([bytes]))))
  expect(came.sort()).toEqual(sent.sort())
  a.leave()
  await expect.poll(() => [b.stage, b.problem]).toEqual(['over', LOST])
})

/** Two devices joined by a line in memory. SHA-256 of what arrives is held against Node's own. */
import { createHash } from 'node:crypto'
import { expect, test } from 'vitest'
import type { Side } from '../../src/handover/description.ts'
import { toFrame, type Frame, type Thing } from '../../src/handover/frame.ts'
import type { Bytes, Pairing } from '../../src/handover/proof.ts'
import type { Outgoing } from '../../src/handover/sending.ts'
import { OUT_OF_TURN, WRONG_SECRET } from '../../src/handover/handover.words.ts'
import { Talk } from '../../src/handover/talk.ts'
import { Taking, type Taken } from '../../src/handover/taking.ts'
import { filled, PAIRING, subtle } from './invented.ts'

interface Device {
  readonly talk: Talk
  readonly taken: { thing: Thing; bytes: Buffer }[]
  readonly took: [string, Taken][]
  readonly broken: string[]
  words: readonly string[]
  agreedThere: boolean
}
interface Wish {
  readonly pairing?: Pairing
  readonly taking?: Taking
  /** Sees every frame before it goes; gives what goes instead. */
  readonly on?: (frame: Bytes) => Bytes | 'lost'
}

/** What was said and is not heard to its end. */
const onTheWay = new Set<Promise<void>>()
/** Until all that was said is heard, and what was answered to it: both queues rest. */
async function settled(): Promise<void> {
  do {
    await Promise.all(onTheWay)
    await new Promise((done) => setTimeout(done, 5))
  } while (onTheWay.size > 0)
}

function taker(): { taking: Taking; taken: Device['taken'] } {
  const taken: Device['taken'] = []
  const taking = new Taking(subtle, async (thing, file) => {
    taken.push({ thing, bytes: Buffer.from(await file.arrayBuffer()) })
    return { ok: true, sentence: `${thing.name} is here.` }
  })
  return { taking, taken }
}

function joined(first: Wish = {}, second: Wish = {}): readonly [Device, Device] {
  const devices: Device[] = []
  const device = (side: Side, { pairing = PAIRING, taking, on }: Wish, other: () => Device) => {
    const own = taker()
    const made: Device = {
      talk: new Talk(
        {
          subtle,
          side,
          pairing,
          taking: taking ?? own.taking,
          send: async (frame) => {
            const goes = on ? on(frame) : frame
            if (goes === 'lost') return
            const heard = other().talk.hear(goes.slice())
            onTheWay.add(heard)
            void heard.finally(() => onTheWay.delete(heard))
          },
        },
        {
          proven: (words) => void (made.words = words),
          agreed: () => void (made.agreedThere = true),
          arriving: () => undefined,
          going: () => undefined,
          took: (name, what) => void made.took.push([name, what]),
          broken: (sentence) => void made.broken.push(sentence),
        },
      ),
      taken: own.taken,
      took: [],
      broken: [],
      words: [],
      agreedThere: false,
    }
    devices.push(made)
    return made
  }
  const a = device('offer', first, () => devices[1] as Device)
  const b = device('answer', second, () => devices[0] as Device)
  return [a, b]
}
async function agreed(a: Device, b: Device): Promise<void> {
  await Promise.all([a.talk.begin(), b.talk.begin()])
  await settled()
  await Promise.all([a.talk.agree(), b.talk.agree()])
  await settled()
}

const noise = (length: number, seed: number): Bytes => {
  let state = seed
  return Uint8Array.from({ length }, () => (state = (state * 1_103_515_245 + 12_345) >>> 0) >>> 24)
}
const outgoing = (name: string, bytes: Bytes): Outgoing => ({
  kind: 'photo',
  name,
  file: async () => new Blob([bytes]),
})
const sha = (bytes: Uint8Array): string => createHash('sha256').update(bytes).digest('hex')

test('both show the same words, agree, and send both ways, byte for byte', async () => {
  const [a, b] = joined()
  await agreed(a, b)
  expect(a.words).toHaveLength(4)
  expect(a.words).toEqual(b.words)
  // Over several parts, one byte past a part, a single byte, nothing at all.
  const sizes = [200_001, 32_769, 1, 0]
  const things = sizes.map((size, k) => outgoing(`${k}`, noise(size, k + 1)))
  const [whole, back] = await Promise.all([
    a.talk.send(things),
    b.talk.send([outgoing('back', noise(70_000, 9))]),
  ])
  expect([whole, back]).toEqual([true, true])
  expect(b.taken.map(({ bytes }) => bytes.length)).toEqual(sizes)
  for (const [k, { bytes, thing }] of b.taken.entries()) {
    expect(sha(bytes)).toBe(sha(noise(sizes[k] ?? 0, k + 1)))
    expect(thing.sha256).toBe(sha(bytes))
  }
  expect(a.taken.map(({ bytes }) => sha(bytes))).toEqual([sha(noise(70_000, 9))])
  expect(a.took.map(([name, { ok, sentence }]) => [name, ok, sentence])).toEqual(
    sizes.map((_, k) => [`${k}`, true, `${k} is here.`]),
  )
  expect([...a.broken, ...b.broken]).toEqual([])
})

test('a wrong secret is refused by both before a word is shown', async () => {
  const [a, b] = joined({}, { pairing: { ...PAIRING, secret: filled(16, 1) } })
  await agreed(a, b)
  expect(a.broken).toEqual([WRONG_SECRET])
  expect([a.words, b.words]).toEqual([[], []])
  expect(a.talk.open || b.talk.open).toBe(false)
})

test('so is a certificate that is not the one in the code', async () => {
  const [a, b] = joined({ pairing: { ...PAIRING, answer: filled(32, 3) } })
  await agreed(a, b)
  expect([...a.broken, ...b.broken]).toContain(WRONG_SECRET)
})

test('nothing is taken before she agreed on both devices', async () => {
  const [a, b] = joined()
  await Promise.all([a.talk.begin(), b.talk.begin()])
  await settled()
  await a.talk.agree()
  await settled()
  expect([a.talk.open, b.talk.open, b.agreedThere]).toEqual([false, false, true])
  await expect(a.talk.send([outgoing('early', noise(5, 1))])).rejects.toThrow('not open')
  const thing: Thing = { kind: 'photo', name: 'early', bytes: 1, sha256: sha(noise(1, 1)) }
  await b.talk.hear(toFrame({ say: 'thing', id: 1, at: 1, of: 1, thing }))
  expect(b.broken).toEqual([OUT_OF_TURN])
  expect(b.taken).toEqual([])
})

test('before the proof nothing else is heard', async () => {
  const early: readonly Frame[] = [
    { say: 'agreed' },
    { say: 'part', from: 0, bytes: filled(4, 4) },
    { say: 'proof', proof: '00'.repeat(32) },
  ]
  for (const frame of early) {
    const [a] = joined()
    await a.talk.hear(toFrame(frame))
    expect(a.broken).toEqual([WRONG_SECRET])
  }
})

test('stopped here or there, what came stays and the same thing goes on from it', async () => {
  const big = noise(1_000_000, 4)
  const { taking, taken } = taker()
  let parts = 0
  const [a, b] = joined(
    {
      on: (frame) => {
        parts += frame[0] ?? 0
        if (frame[0] === 1 && parts === 10) void b.talk.enough()
        return frame
      },
    },
    { taking },
  )
  await agreed(a, b)
  expect(await a.talk.send([outgoing('big', big)])).toBe(false)
  await settled()
  expect(taken).toEqual([])
  expect(parts).toBeLessThan(31)
  // 1,000,000 bytes are 31 parts of 32,768: none of them goes twice.
  expect(await a.talk.send([outgoing('big', big)])).toBe(true)
  expect(parts).toBe(31)
  expect(taken.map(({ bytes }) => sha(bytes))).toEqual([sha(big)])
})

test('a lost connection: a new pairing goes on where the old one broke off', async () => {
  const big = noise(400_000, 5)
  const { taking, taken } = taker()
  let parts = 0
  const [a, b] = joined({ on: (f) => ((parts += f[0] ?? 0) > 5 ? 'lost' : f) }, { taking })
  await agreed(a, b)
  const sent = a.talk.send([outgoing('big', big)])
  await expect.poll(() => parts).toBeGreaterThan(5)
  await settled()
  for (const { talk } of [a, b]) talk.close()
  expect(await sent).toBe(false)
  const wanted: number[] = []
  const [c, d] = joined({}, { taking, on: (f) => (wanted.push(...from(f)), f) })
  await agreed(c, d)
  expect(await c.talk.send([outgoing('big', big)])).toBe(true)
  expect(wanted).toEqual([5 * 32_768])
  expect(taken.map(({ bytes }) => sha(bytes))).toEqual([sha(big)])
})
const from = (frame: Bytes): number[] =>
  [
    ...Buffer.from(frame)
      .toString()
      .matchAll(/"from":(\d+)/g),
  ].map((m) => Number(m[1]))

test('bytes that were changed on the way are not taken, and it is said', async () => {
  const [a, b] = joined({
    on: (frame) => (frame[0] === 1 ? frame.with(frame.length - 1, 0x55) : frame),
  })
  await agreed(a, b)
  expect(await a.talk.send([outgoing('spoilt', filled(100, 1))])).toBe(true)
  expect(b.taken).toEqual([])
  expect(a.took).toEqual([
    ['spoilt', { ok: false, sentence: expect.stringContaining('did not arrive as it was sent') }],
  ])
})

test('a part that does not follow, or runs over, ends the talk', async () => {
  const thing: Thing = { kind: 'photo', name: 'x', bytes: 10, sha256: sha(noise(10, 1)) }
  for (const part of [
    { from: 4, bytes: filled(2, 0) },
    { from: 0, bytes: filled(11, 0) },
  ]) {
    const [a, b] = joined()
    await agreed(a, b)
    await b.talk.hear(toFrame({ say: 'thing', id: 1, at: 1, of: 1, thing }))
    await b.talk.hear(toFrame({ say: 'part', ...part }))
    expect(b.broken).toEqual([OUT_OF_TURN])
  }
})

/** What goes over the channel: ways round, and nothing but our own frames is read. */
import fc from 'fast-check'
import { expect, test } from 'vitest'
import { fromFrame, PART_BYTES, toFrame, type Frame } from '../../src/handover/frame.ts'
import { LARGEST_MESSAGE } from '../../src/handover/description.ts'
import { filled } from './invented.ts'

const SHA = 'ab'.repeat(32)
const FRAMES: readonly Frame[] = [
  { say: 'proof', proof: SHA },
  { say: 'agreed' },
  {
    say: 'thing',
    id: 1,
    at: 1,
    of: 2,
    thing: { kind: 'photo', name: 'é front.jpg', view: 'front', bytes: 5, sha256: SHA },
  },
  { say: 'want', id: 1, from: 3 },
  { say: 'taken', id: 1, ok: false, sentence: 'No room.' },
  { say: 'end', stopped: true },
  { say: 'enough' },
  { say: 'part', from: 5_000_000_123, bytes: filled(3, 7) },
]

test('every frame comes back as it went', () => {
  for (const frame of FRAMES) expect(fromFrame(toFrame(frame))).toEqual(frame)
})

test('the largest part is within what every browser takes (RFC 8841, 6.1: 64 KiB)', () => {
  const frame = toFrame({ say: 'part', from: 0, bytes: filled(PART_BYTES, 1) })
  expect(frame.length).toBeLessThanOrEqual(LARGEST_MESSAGE)
  expect(LARGEST_MESSAGE).toBe(64 * 1024)
})

test('what is not ours is no frame, and nothing throws', () => {
  const said = (value: unknown): Frame | undefined =>
    fromFrame(Uint8Array.from([0, ...new TextEncoder().encode(JSON.stringify(value))]))
  const thing = { kind: 'photo', name: 'a', bytes: 5, sha256: SHA }
  expect(said({ say: 'thing', id: 1, at: 1, of: 1, thing })).toBeDefined()
  for (const spoilt of [
    { ...thing, kind: 'program' },
    { ...thing, bytes: -1 },
    { ...thing, bytes: 2e9 },
    { ...thing, sha256: 'short' },
    { ...thing, name: 'x'.repeat(201) },
    { ...thing, __proto__2: 1 },
  ])
    expect(said({ say: 'thing', id: 1, at: 1, of: 1, thing: spoilt })).toBeUndefined()
  for (const value of [null, 3, 'proof', [], { say: 'run' }, { say: 'want', id: 1, from: 0.5 }])
    expect(said(value)).toBeUndefined()
  fc.assert(
    fc.property(fc.uint8Array({ maxLength: 60 }), (any) => {
      const read = fromFrame(new Uint8Array(any))
      expect(read === undefined || read.say === 'part').toBe(true)
    }),
  )
})

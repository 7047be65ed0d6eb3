/** HMAC-SHA-256 by the vectors of RFC 4231; proofs and words by Node's own HMAC. */
import { createHmac } from 'node:crypto'
import { describe, expect, test } from 'vitest'
import { hmac, proofOf, proves, wordsOf, type Bytes } from '../../src/handover/proof.ts'
import { WORDS } from '../../src/handover/word-list.ts'
import { filled, FIRST, PAIRING, SECOND, SECRET, subtle } from './invented.ts'

const hex = (bytes: Uint8Array): string => Buffer.from(bytes).toString('hex')
const ascii = (text: string): Bytes => new Uint8Array(Buffer.from(text, 'latin1'))

describe('RFC 4231, section 4', () => {
  test.each([
    [
      filled(20, 0x0b),
      ascii('Hi There'),
      'b0344c61d8db38535ca8afceaf0bf12b881dc200c9833da726e9376c2e32cff7',
    ],
    [
      ascii('Jefe'),
      ascii('what do ya want for nothing?'),
      '5bdcc146bf60754e6a042426089575c75a003f089d2739839dec58b964ec3843',
    ],
    [
      filled(20, 0xaa),
      filled(50, 0xdd),
      '773ea91e36800e46854db8ebd09181a72959098b3ef8c122d9635514ced565fe',
    ],
    [
      Uint8Array.from({ length: 25 }, (_, k) => k + 1),
      filled(50, 0xcd),
      '82558a389a443c0ea4cc819899f2083a85f0faa3e578f8077a2e3ff46729665b',
    ],
    [
      filled(131, 0xaa),
      ascii('Test Using Larger Than Block-Size Key - Hash Key First'),
      '60e431591ee0b67f0d8a26aacbf5b77f8e0bc6213728c5140546040f0ee37f54',
    ],
  ])('case %#', async (key, data, expected) => {
    expect(hex(await hmac(subtle, key, data))).toBe(expected)
  })
})

const byNode = (what: string): Buffer =>
  createHmac('sha256', SECRET)
    .update(`tapetrue handover 1, ${what}:`)
    .update(FIRST.fingerprint)
    .update(SECOND.fingerprint)
    .digest()

test('a proof is the HMAC of who proves it and both fingerprints', async () => {
  expect(hex(await proofOf(subtle, PAIRING, 'offer'))).toBe(
    byNode('proof of the offer').toString('hex'),
  )
  expect(
    await proves(subtle, PAIRING, 'answer', new Uint8Array(byNode('proof of the answer'))),
  ).toBe(true)
})

test('nothing else is taken for it', async () => {
  const own = await proofOf(subtle, PAIRING, 'offer')
  // Sent back to the one who made it.
  expect(await proves(subtle, PAIRING, 'answer', own)).toBe(false)
  expect(await proves(subtle, { ...PAIRING, secret: filled(16, 0x5f) }, 'offer', own)).toBe(false)
  expect(await proves(subtle, { ...PAIRING, answer: filled(32, 0) }, 'offer', own)).toBe(false)
  expect(await proves(subtle, PAIRING, 'offer', own.slice(0, 31))).toBe(false)
  expect(await proves(subtle, PAIRING, 'offer', filled(0, 0))).toBe(false)
})

test('four words stand for the first 32 bits', async () => {
  const words = await wordsOf(subtle, PAIRING)
  expect(words).toEqual([...byNode('words').subarray(0, 4)].map((byte) => WORDS[byte]))
  expect(await wordsOf(subtle, { ...PAIRING, offer: filled(32, 9) })).not.toEqual(words)
  expect(await wordsOf(subtle, { ...PAIRING, secret: filled(16, 9) })).not.toEqual(words)
})

test('256 plain words, none a letter away from another', () => {
  expect(new Set(WORDS).size).toBe(256)
  for (const word of WORDS) expect(word).toMatch(/^[a-z]{3,9}$/)
  for (const [k, a] of WORDS.entries())
    for (const b of WORDS.slice(0, k)) expect(distance(a, b), `${a} ${b}`).toBeGreaterThan(1)
})
/** Letters put in, left out or changed (Levenshtein 1966). */
function distance(a: string, b: string): number {
  let row = Array.from({ length: b.length + 1 }, (_, k) => k)
  for (const [i, x] of [...a].entries()) {
    const next = [i + 1]
    for (const [k, y] of [...b].entries())
      next.push(
        Math.min((next[k] ?? 0) + 1, (row[k + 1] ?? 0) + 1, (row[k] ?? 0) + Number(x !== y)),
      )
    row = next
  }
  return row.at(-1) ?? 0
}

/**
 * What both devices work out from the one-time secret and both certificates: the proof that the
 * other knows the secret, the four words she compares, and the mark that closes a code. Each is an
 * HMAC-SHA-256 under a name of its own, so none can stand in for another, and a proof cannot be
 * sent back to the one who made it. Sources: RFC 2104, RFC 4231 (vectors), FIPS 180-4.
 */
import type { Side } from './description.ts'
import { WORDS } from './word-list.ts'

export type Bytes = Uint8Array<ArrayBuffer>
/** 128 bits: no one guesses it while two devices stand side by side. */
export const SECRET_BYTES = 16
/** Four words of 256 are 32 bits. */
const WORD_COUNT = 4

/** What the two devices have in common once both codes are read. */
export interface Pairing {
  readonly secret: Bytes
  readonly offer: Bytes
  readonly answer: Bytes
}

export async function hmac(subtle: SubtleCrypto, secret: Bytes, message: Bytes): Promise<Bytes> {
  return new Uint8Array(await subtle.sign('HMAC', await keyOf(subtle, secret), message))
}

/** What the device of this side says to prove that it knows the secret; 32 bytes. */
export const proofOf = (subtle: SubtleCrypto, pairing: Pairing, side: Side): Promise<Bytes> =>
  hmac(subtle, pairing.secret, named(`proof of the ${side}`, pairing))

/** Whether these bytes are that device's proof; compared by the browser in constant time. */
export async function proves(
  subtle: SubtleCrypto,
  pairing: Pairing,
  side: Side,
  proof: Bytes,
): Promise<boolean> {
  const key = await keyOf(subtle, pairing.secret)
  return subtle.verify('HMAC', key, proof, named(`proof of the ${side}`, pairing))
}

/** The same four words on both screens, or the two screens are not joined with each other. */
export async function wordsOf(subtle: SubtleCrypto, pairing: Pairing): Promise<readonly string[]> {
  const mark = await hmac(subtle, pairing.secret, named('words', pairing))
  return [...mark.subarray(0, WORD_COUNT)].map((byte) => WORDS[byte] ?? '')
}

/** A name and both fingerprints; those have a fixed length, so no two messages run together. */
function named(what: string, { offer, answer }: Pairing): Bytes {
  const name = new TextEncoder().encode(`tapetrue handover 1, ${what}:`)
  return Uint8Array.from([...name, ...offer, ...answer])
}

const keyOf = (subtle: SubtleCrypto, secret: Bytes): Promise<CryptoKey> =>
  subtle.importKey('raw', secret, { name: 'HMAC', hash: 'SHA-256' }, false, ['sign', 'verify'])

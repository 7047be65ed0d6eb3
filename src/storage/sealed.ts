/**
 * A file closed with a passphrase: PBKDF2 with HMAC-SHA-256 makes the key, AES-256-GCM closes and
 * vouches for the contents and for the head beside them. Everything but the passphrase stands in
 * the head, so a later count of rounds reads files of today.
 * Sources: RFC 8018 (PBKDF2), NIST SP 800-38D (GCM, 96-bit nonce), Web Cryptography API; count of
 * iterations: OWASP Password Storage Cheat Sheet, 600,000 for PBKDF2-HMAC-SHA256 (2023 and since).
 */
import * as v from 'valibot'
import { fromBase64, toBase64 } from './bytes.ts'
import { failed, kept, type Kept } from './failure.ts'
import { parsed } from './schema/parsed.ts'
import { SEALED_WORDS } from './storage.words.ts'

export const SEALED_FORMAT = 'tapetrue-sealed'
const ITERATIONS = 600_000
/** A file that asks for more would stall the page (ten times today's count is far ahead). */
const MOST_ITERATIONS = 6_000_000
const SALT_BYTES = 16
const NONCE_BYTES = 12
/** NIST SP 800-63B-4: 15 characters where a passphrase alone protects. */
export const SHORTEST_PASSPHRASE = 15

const HeadSchema = v.strictObject({
  format: v.literal(SEALED_FORMAT),
  v: v.literal(1),
  key: v.strictObject({
    name: v.literal('PBKDF2'),
    hash: v.literal('SHA-256'),
    iterations: v.pipe(v.number(), v.integer(), v.minValue(1), v.maxValue(MOST_ITERATIONS)),
    salt: v.string(),
  }),
  cipher: v.strictObject({ name: v.literal('AES-GCM'), length: v.literal(256), iv: v.string() }),
})
const SealedSchema = v.strictObject({ ...HeadSchema.entries, data: v.string() })
type Head = v.InferOutput<typeof HeadSchema>

/** Whether a file has to be opened with a passphrase before it can be read. */
export const isSealed = (text: string): boolean =>
  text.slice(0, 200).includes(`"format":"${SEALED_FORMAT}"`)

/** The same text closed; another salt and nonce every time. */
export async function sealed(text: string, passphrase: string): Promise<Kept<Blob>> {
  if ([...passphrase].length < SHORTEST_PASSPHRASE)
    return failed(SEALED_WORDS.tooShort(SHORTEST_PASSPHRASE))
  const random = (count: number): string => toBase64(crypto.getRandomValues(new Uint8Array(count)))
  const head: Head = {
    format: SEALED_FORMAT,
    v: 1,
    key: { name: 'PBKDF2', hash: 'SHA-256', iterations: ITERATIONS, salt: random(SALT_BYTES) },
    cipher: { name: 'AES-GCM', length: 256, iv: random(NONCE_BYTES) },
  }
  const parts = await readied(head, passphrase)
  if (!parts) throw new Error('sealed: salt or nonce of our own is no base64')
  const data = await crypto.subtle.encrypt(parts.how, parts.key, new TextEncoder().encode(text))
  const file = { ...head, data: toBase64(new Uint8Array(data)) }
  return kept(new Blob([JSON.stringify(file)], { type: 'application/json' }))
}

/** The text within, or one sentence why it stays closed. */
export async function unsealed(text: string, passphrase: string): Promise<Kept<string>> {
  let file: unknown
  try {
    file = JSON.parse(text)
  } catch {
    return failed(SEALED_WORDS.damaged)
  }
  const read = parsed(SealedSchema, file)
  if (!read.ok) return failed(SEALED_WORDS.damaged)
  const { data, ...head } = read.value
  const bytes = fromBase64(data)
  const parts = await readied(head, passphrase)
  if (!bytes || !parts) return failed(SEALED_WORDS.damaged)
  try {
    const open = await crypto.subtle.decrypt(parts.how, parts.key, bytes)
    return kept(new TextDecoder().decode(open))
  } catch {
    // GCM does not say which of the two it is, and must not.
    return failed(SEALED_WORDS.wrong)
  }
}

/** Key and parameters; the head is vouched for too. Passphrases differ in how a keyboard composes. */
async function readied(head: Head, passphrase: string) {
  const [salt, iv] = [fromBase64(head.key.salt), fromBase64(head.cipher.iv)]
  if (salt?.length !== SALT_BYTES || iv?.length !== NONCE_BYTES) return undefined
  const typed = new TextEncoder().encode(passphrase.normalize('NFKC'))
  const material = await crypto.subtle.importKey('raw', typed, 'PBKDF2', false, ['deriveKey'])
  const { hash, iterations } = head.key
  const { length } = head.cipher
  const key = await crypto.subtle.deriveKey(
    { name: 'PBKDF2', hash, iterations, salt },
    material,
    { name: 'AES-GCM', length },
    false,
    ['encrypt', 'decrypt'],
  )
  const additionalData = new TextEncoder().encode(JSON.stringify(head))
  return { key, how: { name: 'AES-GCM', iv, additionalData } }
}

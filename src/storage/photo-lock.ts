/**
 * The lock of the photos as it lies in the store. The photos are closed with a random key of 256
 * bits; only that key is closed with her passphrase (see sealed.ts, where PBKDF2 and its numbers
 * stand in the head). So another passphrase does not touch a single photo.
 */
import * as v from 'valibot'
import type { Tables } from './db.ts'
import { fromBase64, toBase64 } from './bytes.ts'
import { failed, kept, type Kept } from './failure.ts'
import { parseSettingRow } from './rows.ts'
import { CountSchema } from './schema/length.ts'
import { parsed } from './schema/parsed.ts'
import { sealed, unsealed } from './sealed.ts'
import { LOCK_SPOILT, WRONG_PASSPHRASE } from './storage.words.ts'

/** Its place among the settings; it goes into no backup. */
export const PHOTO_LOCK = 'photoLock'
const KEY_BYTES = 32

const LockSchema = v.strictObject({
  v: v.literal(1),
  /** Photos in the open are being closed, or closed ones opened for good. */
  way: v.picklist(['closing', 'opening']),
  /** How often it was locked in all windows at once. */
  turned: CountSchema,
  /** The key of the photos, closed with the passphrase. */
  key: v.string(),
})
export type PhotoLock = v.InferOutput<typeof LockSchema>

/** Whether there is one, read within a transaction; undefined where the photos lie in the open. */
export async function lockIn(db: Tables): Promise<PhotoLock | undefined> {
  return lockOfRow(await db.settings.get(PHOTO_LOCK))
}
export function lockOfRow(stored: unknown): PhotoLock | undefined {
  const row = parseSettingRow(stored)
  return row.ok ? lockOf(row.value.value) : undefined
}
/** A damaged lock is a lock: what it closed does not open without it. */
export function lockOf(stored: unknown): PhotoLock | undefined {
  if (stored === undefined) return undefined
  const read = parsed(LockSchema, stored)
  return read.ok ? read.value : { v: 1, way: 'closing', turned: -1, key: '' }
}

export async function newLock(
  passphrase: string,
): Promise<Kept<{ readonly lock: PhotoLock; readonly key: CryptoKey }>> {
  const raw = crypto.getRandomValues(new Uint8Array(KEY_BYTES))
  const closed = await sealed(toBase64(raw), passphrase)
  if (!closed.ok) return closed
  const text = await closed.value.text()
  return kept({ lock: { v: 1, way: 'closing', turned: 1, key: text }, key: await asKey(raw) })
}

export async function keyOf(lock: PhotoLock, passphrase: string): Promise<Kept<CryptoKey>> {
  const raw = await rawOf(lock, passphrase)
  return raw.ok ? kept(await asKey(raw.value)) : raw
}

/** The same key under another passphrase, with a salt and nonce of its own. */
export async function relocked(
  lock: PhotoLock,
  was: string,
  now: string,
): Promise<Kept<PhotoLock>> {
  const raw = await rawOf(lock, was)
  if (!raw.ok) return raw
  const closed = await sealed(toBase64(raw.value), now)
  return closed.ok ? kept({ ...lock, key: await closed.value.text() }) : closed
}

async function rawOf(lock: PhotoLock, passphrase: string): Promise<Kept<Uint8Array<ArrayBuffer>>> {
  if (lock.turned < 0) return failed(LOCK_SPOILT)
  const text = await unsealed(lock.key, passphrase)
  const raw = text.ok ? fromBase64(text.value) : undefined
  return raw?.length === KEY_BYTES ? kept(raw) : failed(WRONG_PASSPHRASE)
}

/** It cannot be read out again: it lives in this page as long as the page does. */
const asKey = (raw: Uint8Array<ArrayBuffer>): Promise<CryptoKey> =>
  crypto.subtle.importKey('raw', raw, 'AES-GCM', false, ['encrypt', 'decrypt'])

/**
 * Photos closed for keeping: the pixels, and with them what was read from them, for an outline of a
 * body is a picture too. What stays in the open is which view of which round it is, and the day.
 * Every photo is bound to its own name, so that no two can be exchanged.
 * Sources: NIST SP 800-38D (GCM, 96-bit nonce), Web Cryptography API.
 */
import { isRecord } from '../measurements/stored.ts'
import { parsePhotoRow, type PixelsRow } from './rows.ts'
import type { Closed } from './schema/closed.ts'
import type { KeptPhoto } from './schema/photo.ts'

const NONCE_BYTES = 12

/** What was read and traced, closed; a photo from which nothing was read has nothing to close. */
export async function closedPhoto(photo: KeptPhoto, key: CryptoKey): Promise<KeptPhoto> {
  const { reading, muslin, ...about } = photo
  if (!hasOpen(photo)) return photo
  const text = JSON.stringify({ reading, muslin })
  const closed = await close(key, `${photo.sha256} read`, new TextEncoder().encode(text))
  return { ...about, closed }
}
export const hasOpen = ({ reading, muslin }: KeptPhoto): boolean =>
  reading !== undefined || muslin !== undefined

/** The photo as it was before it was closed; one that the key does not open stays closed. */
export async function openedPhoto(photo: KeptPhoto, key: CryptoKey): Promise<KeptPhoto> {
  const { closed, ...about } = photo
  if (!closed) return photo
  const bytes = await open(key, `${photo.sha256} read`, closed)
  if (!bytes) return photo
  const read: unknown = JSON.parse(new TextDecoder().decode(bytes))
  const whole = parsePhotoRow({ ...about, ...(isRecord(read) ? read : {}) })
  return whole.ok ? whole.value : photo
}

export async function closedPixels(row: PixelsRow, key: CryptoKey): Promise<PixelsRow> {
  if (!('bytes' in row)) return row
  const { bytes, ...about } = row
  return { ...about, closed: await close(key, row.sha256, new Uint8Array(bytes)) }
}

/** The bytes of the picture, or undefined when they are closed and no key opens them. */
export async function pixelsOf(
  row: PixelsRow,
  key: CryptoKey | undefined,
): Promise<ArrayBuffer | undefined> {
  if ('bytes' in row) return row.bytes
  return key && open(key, row.sha256, row.closed)
}

async function close(
  key: CryptoKey,
  name: string,
  bytes: Uint8Array<ArrayBuffer>,
): Promise<Closed> {
  const iv = crypto.getRandomValues(new Uint8Array(NONCE_BYTES))
  const closed = await crypto.subtle.encrypt(how(iv, name), key, bytes)
  return { iv: iv.buffer, bytes: closed }
}
async function open(
  key: CryptoKey,
  name: string,
  { iv, bytes }: Closed,
): Promise<ArrayBuffer | undefined> {
  try {
    return await crypto.subtle.decrypt(how(new Uint8Array(iv), name), key, bytes)
  } catch {
    // Another key, or altered: GCM does not say which, and must not.
    return undefined
  }
}
const how = (iv: Uint8Array<ArrayBuffer>, name: string) => ({
  name: 'AES-GCM',
  iv,
  additionalData: new TextEncoder().encode(name),
})

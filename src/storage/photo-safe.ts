/**
 * Photos of the store, in the open or closed with a passphrase. Closing and opening is done outside
 * the transactions (one does not wait for a cipher), so a photo is written only if it still is what
 * was read; else it is read again. Photos are closed and opened one by one, each for good before the
 * next: what breaks in between loses nothing, and the rest follows when the photos are opened next.
 */
import { closedPhoto, closedPixels, hasOpen, openedPhoto, pixelsOf } from './closed-photo.ts'
import type { Tables } from './db.ts'
import { failed, kept, type Kept } from './failure.ts'
import type { PhotoHere } from './load.ts'
import { packedPhoto } from './packed-photo.ts'
import {
  keyOf,
  lockIn,
  lockOfRow,
  newLock,
  PHOTO_LOCK,
  relocked,
  type PhotoLock,
} from './photo-lock.ts'
import { letGo } from './photos.ts'
import { parsePhotoRow, parsePixelsRow, type PixelsRow, type RoundRow } from './rows.ts'
import { sameData } from './same.ts'
import type { KeptPhoto } from './schema/photo.ts'
import type { Store } from './store.ts'
import { unfitFor } from './unfit.ts'
import { CHANGED_ELSEWHERE, LOCKED } from './storage.words.ts'

/** open: no passphrase is set; unlocked: it was typed in this window. */
export type PhotosAre = 'open' | 'unlocked' | 'locked'
/** Told after each photo: how many of how many. */
export type Told = (done: number, all: number) => void

/** What is kept in the transaction of a photo, or refused before it writes anything: both or neither. */
export type Beside = (db: Tables) => Promise<Kept<unknown>>

/** Another window may change a photo between reading and writing, hardly three times in a row. */
const TRIES = 5

interface Found {
  readonly lock: PhotoLock | undefined
  readonly photo: KeptPhoto | undefined
  readonly pixels: PixelsRow | undefined
}

export class PhotoSafe {
  readonly #store: Pick<Store, 'keep' | 'inTurn'>
  /** The key, and the lock it was opened from: locked since, it counts no more. */
  #opened: { readonly key: CryptoKey; readonly turned: number } | undefined

  constructor(store: Pick<Store, 'keep' | 'inTurn'>) {
    this.#store = store
  }

  #keyFor(lock: PhotoLock | undefined): CryptoKey | undefined {
    return lock && this.#opened?.turned === lock.turned ? this.#opened.key : undefined
  }
  are(lock: PhotoLock | undefined): PhotosAre {
    if (!lock) return 'open'
    return this.#keyFor(lock) ? 'unlocked' : 'locked'
  }

  /** Photos as they can be shown now: what is closed and stays so lacks what was read from it. */
  async shown(
    photos: readonly PhotoHere[],
    lock: PhotoLock | undefined,
  ): Promise<readonly PhotoHere[]> {
    const key = this.#keyFor(lock)
    if (!key) return photos
    return Promise.all(
      photos.map(async ({ here, ...photo }) => ({ ...(await openedPhoto(photo, key)), here })),
    )
  }

  /**
   * Changes one photo, or adds it; gives it as it is shown.
   */
  async change(
    sha256: string,
    change: (before: KeptPhoto | undefined) => Kept<KeptPhoto>,
    pixels?: PixelsRow,
    beside?: Beside,
  ): Promise<Kept<KeptPhoto>> {
    for (let tries = 0; tries < TRIES; tries++) {
      const found = await this.#found(sha256)
      if (!found.ok) return found
      const { lock, photo } = found.value
      const key = this.#keyFor(lock)
      if (lock && !key) return failed(LOCKED)
      const next = change(photo && key ? await openedPhoto(photo, key) : photo)
      if (!next.ok) return next
      const unfit = unfitFor(parsePhotoRow(next.value))
      if (unfit) return unfit
      const put = await this.#put(
        found.value,
        next.value,
        pixels ?? found.value.pixels,
        key,
        beside,
      )
      if (!put.ok) return put
      if (put.value) return next
    }
    return failed(CHANGED_ELSEWHERE)
  }

  /** Undefined when it was let go, is not in this browser, or is locked. */
  async read(sha256: string): Promise<Kept<Blob | undefined>> {
    const found = await this.#found(sha256)
    if (!found.ok) return found
    const { pixels, lock } = found.value
    const bytes = pixels && (await pixelsOf(pixels, this.#keyFor(lock)))
    return kept(bytes && new Blob([bytes], { type: pixels.type }))
  }

  /** Sets a passphrase where there is none, and closes every photo. */
  async set(passphrase: string, told?: Told): Promise<Kept<undefined>> {
    const made = await newLock(passphrase)
    if (!made.ok) return made
    const { lock, key } = made.value
    const put = await this.#store.keep(async (db) => {
      if (await lockIn(db)) return failed(CHANGED_ELSEWHERE)
      return kept(await putLock(db, lock))
    })
    if (!put.ok) return put
    this.#opened = { key, turned: lock.turned }
    return this.#turnAll(told)
  }

  /** Opens the photos in this window, and goes on with what was broken off. */
  async unlock(passphrase: string, told?: Told): Promise<Kept<undefined>> {
    const lock = await this.#lock()
    if (!lock.ok) return lock
    if (!lock.value) return kept(undefined)
    const key = await keyOf(lock.value, passphrase)
    if (!key.ok) return key
    this.#opened = { key: key.value, turned: lock.value.turned }
    return this.#turnAll(told)
  }

  /** In every window at once. */
  async lockNow(): Promise<Kept<undefined>> {
    this.#opened = undefined
    return this.#store.keep(async (db) => {
      const lock = await lockIn(db)
      return kept(lock && (await putLock(db, { ...lock, turned: lock.turned + 1 })))
    })
  }

  async changePassphrase(was: string, now: string): Promise<Kept<undefined>> {
    return this.#relock((lock) => relocked(lock, was, now))
  }

  /** Every photo lies in the open again; the passphrase is asked for once more. */
  async takeOff(passphrase: string, told?: Told): Promise<Kept<undefined>> {
    const put = await this.#relock(async (lock) => {
      const key = await keyOf(lock, passphrase)
      if (!key.ok) return key
      this.#opened = { key: key.value, turned: lock.turned }
      return kept({ ...lock, way: 'opening' })
    })
    return put.ok ? this.#turnAll(told) : put
  }

  /** The passphrase is forgotten: every closed photo goes, the numbers stay; gives changed rounds. */
  letLockedGo(on: string): Promise<Kept<readonly RoundRow[]>> {
    this.#opened = undefined
    return this.#store.keep(async (db) => {
      const changed: RoundRow[] = []
      for (const stored of await db.photos.toArray()) {
        const photo = parsePhotoRow(stored)
        if (!photo.ok) continue
        const { closed, ...open } = photo.value
        const pixels = parsePixelsRow(await db.pixels.get(open.sha256))
        if (pixels.ok && 'closed' in pixels.value)
          changed.push(...(await letGo(db, open.sha256, on)))
        const now = parsePhotoRow(await db.photos.get(open.sha256))
        if (closed && now.ok) await db.photos.put(packedPhoto({ ...now.value, closed: undefined }))
      }
      await db.settings.delete(PHOTO_LOCK)
      return kept(changed)
    })
  }

  /** After a file was read back: what came in the open is closed like the rest. */
  settle(): Promise<Kept<undefined>> {
    return this.#opened ? this.#turnAll() : Promise.resolve(kept(undefined))
  }
  async locked(): Promise<boolean> {
    const lock = await this.#lock()
    return lock.ok && this.are(lock.value) === 'locked'
  }
  /** For a backup: the pixels of each row that can be opened, by name. */
  async bytesOf(rows: readonly PixelsRow[], lock: PhotoLock | undefined) {
    const key = this.#keyFor(lock)
    const bytes = new Map<string, ArrayBuffer>()
    for (const row of rows) {
      const own = await pixelsOf(row, key)
      if (own) bytes.set(row.sha256, own)
    }
    return bytes
  }

  #lock(): Promise<Kept<PhotoLock | undefined>> {
    return this.#store.inTurn(async (db) => kept(await lockIn(db)))
  }
  /** Another lock in place of the one that was read, if it still is that one. */
  async #relock(make: (lock: PhotoLock) => Promise<Kept<PhotoLock>>): Promise<Kept<undefined>> {
    const lock = await this.#lock()
    if (!lock.ok) return lock
    if (!lock.value) return failed(CHANGED_ELSEWHERE)
    const made = await make(lock.value)
    if (!made.ok) return made
    return this.#store.keep(async (db) =>
      sameData(await lockIn(db), lock.value)
        ? kept(await putLock(db, made.value))
        : failed(CHANGED_ELSEWHERE),
    )
  }

  /** Every photo the way the lock goes; once all lie in the open, the lock is gone. */
  async #turnAll(told?: Told): Promise<Kept<undefined>> {
    const names = await this.#store.inTurn(async (db) =>
      kept(await db.photos.toCollection().primaryKeys()),
    )
    if (!names.ok) return names
    for (const [i, sha256] of names.value.entries()) {
      const turned = await this.#turn(sha256)
      if (!turned.ok) return turned
      told?.(i + 1, names.value.length)
    }
    return this.#store.keep(async (db) => {
      const lock = await lockIn(db)
      if (lock?.way === 'opening') await db.settings.delete(PHOTO_LOCK)
      return kept(undefined)
    })
  }
  async #turn(sha256: string): Promise<Kept<undefined>> {
    for (let tries = 0; tries < TRIES; tries++) {
      const found = await this.#found(sha256)
      if (!found.ok) return found
      const { lock, photo, pixels } = found.value
      const key = this.#keyFor(lock)
      if (!lock || !photo) return kept(undefined)
      if (!key) return failed(CHANGED_ELSEWHERE)
      const lies = lock.way === 'closing' ? liesClosed(photo, pixels) : liesOpen(photo, pixels)
      if (lies) return kept(undefined)
      const open = await openedPhoto(photo, key)
      // What this key does not open is left as it is: nothing is written over.
      if (open.closed) return kept(undefined)
      const put = await this.#put(found.value, open, pixels, key)
      if (!put.ok) return put
      if (put.value) return kept(undefined)
    }
    return failed(CHANGED_ELSEWHERE)
  }

  #found(sha256: string): Promise<Kept<Found>> {
    return this.#store.inTurn(async (db) => {
      const [photo, pixels] = [await db.photos.get(sha256), await db.pixels.get(sha256)]
      return kept(foundOf(photo, pixels, await db.settings.get(PHOTO_LOCK)))
    })
  }
  /** Writes the photo as the lock wants it; false when it is no longer what was found. */
  async #put(
    found: Found,
    photo: KeptPhoto,
    pixels: PixelsRow | undefined,
    key: CryptoKey | undefined,
    beside?: Beside,
  ): Promise<Kept<boolean>> {
    const closes = found.lock?.way === 'closing' ? key : undefined
    const row = closes ? await closedPhoto(photo, closes) : photo
    const own = pixels && (await asKept(pixels, closes, key))
    return this.#store.keep(async (db) => {
      const { sha256 } = photo
      const [was, lay] = [await db.photos.get(sha256), await db.pixels.get(sha256)]
      if (!sameAs(foundOf(was, lay, await db.settings.get(PHOTO_LOCK)), found)) return kept(false)
      const both = await beside?.(db)
      if (both && !both.ok) return both
      await db.photos.put(packedPhoto(row))
      if (own) await db.pixels.put(own)
      return kept(true)
    })
  }
}

async function asKept(
  pixels: PixelsRow,
  closes: CryptoKey | undefined,
  key: CryptoKey | undefined,
): Promise<PixelsRow> {
  if (closes) return closedPixels(pixels, closes)
  const bytes = await pixelsOf(pixels, key)
  return bytes ? { v: 1, sha256: pixels.sha256, type: pixels.type, bytes } : pixels
}

const liesClosed = (photo: KeptPhoto, pixels: PixelsRow | undefined): boolean =>
  !hasOpen(photo) && !(pixels && 'bytes' in pixels)
const liesOpen = (photo: KeptPhoto, pixels: PixelsRow | undefined): boolean =>
  !photo.closed && !(pixels && 'closed' in pixels)

/** From rows as they came. */
function foundOf(photoRow: unknown, pixelsRow: unknown, settingRow: unknown): Found {
  const photo = parsePhotoRow(photoRow)
  const pixels = parsePixelsRow(pixelsRow)
  return {
    lock: lockOfRow(settingRow),
    photo: photo.ok ? photo.value : undefined,
    pixels: pixels.ok ? pixels.value : undefined,
  }
}

/** Closed things are known by their nonces, open pixels by their name. */
const sameAs = (a: Found, b: Found): boolean => sameData(marks(a), marks(b))
const marks = ({ lock, photo, pixels }: Found) => ({
  lock,
  photo: photo && { ...photo, closed: nonceOf(photo.closed?.iv) },
  pixels: pixels && ('closed' in pixels ? nonceOf(pixels.closed.iv) : 'open'),
})
const nonceOf = (iv: ArrayBuffer | undefined) => iv && [...new Uint8Array(iv)]

async function putLock(db: Tables, value: PhotoLock): Promise<undefined> {
  await db.settings.put({ v: 1, key: PHOTO_LOCK, value })
  return undefined
}

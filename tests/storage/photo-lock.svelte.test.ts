/**
 * Photos closed with a passphrase, on the IndexedDB and WebCrypto of a real browser. What lies on
 * the disk is read behind the program's back, and opened by code of this file from the standards:
 * RFC 8018 (PBKDF2), NIST SP 800-38D (AES-GCM), iterations of the OWASP Password Storage Cheat Sheet.
 */
import { afterEach, expect, test } from 'vitest'
import { readBackup, writeBackup } from '../../src/storage/backup.ts'
import type { Kept } from '../../src/storage/failure.ts'
import { restore } from '../../src/storage/restore.ts'
import { openStore, type Store } from '../../src/storage/store.ts'
import { FIRST, GARMENT, phonePhoto, READING, withRef } from './invented.ts'
import { LOCKED, WRONG_PASSPHRASE } from '../../src/storage/storage.words.ts'

const NAME = 'tapetrue-lock-test'
const TODAY = '2026-11-25'
const WORDS = 'calico thimble lantern gate'
const OTHERS = 'bodkin harbour seven plums'
const ABOUT = { view: 'front', garmentId: 'g1', roundId: 'r1', takenOn: TODAY } as const

const stores: Store[] = []
afterEach(async () => {
  for (const store of stores.splice(0)) store.close()
  await new Promise((done) => (indexedDB.deleteDatabase(NAME).onsuccess = done))
})

async function opened(): Promise<Store> {
  const result = await openStore({ name: NAME, today: () => TODAY })
  if (!result.ok) throw new Error(result.sentence)
  stores.push(result.store)
  return result.store
}
function value<T>(outcome: Kept<T>): T {
  if (!outcome.ok) throw new Error(outcome.sentence)
  return outcome.value
}
async function withPhotos(count: number): Promise<Store> {
  const store = await opened()
  value(await store.saveGarment(GARMENT))
  for (let k = 1; k <= count; k++)
    value(await store.savePhoto(phonePhoto(k), { ...ABOUT, reading: READING }))
  return store
}
const loaded = async (store: Store) => ({
  ...value(await store.load()),
  ...value(await store.keptPhotos('all')),
})
const standing = async (store: Store) => store.safe.are((await loaded(store)).photoLock)
const bytesOf = async (store: Store, sha256: string) =>
  (await value(await store.readPhoto(sha256))?.arrayBuffer())?.byteLength

interface Row {
  readonly sha256: string
  readonly reading?: unknown
  readonly bytes?: ArrayBuffer
  readonly closed?: { readonly iv: ArrayBuffer; readonly bytes: ArrayBuffer }
}
/** Rows of a table as they lie on the disk. */
async function rows<T = Row>(table: string): Promise<readonly T[]> {
  const db = await new Promise<IDBDatabase>((done) => {
    const asked = indexedDB.open(NAME)
    asked.onsuccess = () => done(asked.result)
  })
  const all = await new Promise<T[]>((done) => {
    const asked = db.transaction(table).objectStore(table).getAll()
    asked.onsuccess = () => done(asked.result as T[])
  })
  db.close()
  return all
}
const openRows = async () => ({
  photos: (await rows('photos')).filter((row) => row.reading !== undefined).length,
  pixels: (await rows('pixels')).filter((row) => row.bytes !== undefined).length,
})

const from64 = (text: string) => Uint8Array.from(atob(text), (letter) => letter.charCodeAt(0))
const utf8 = (text: string) => new TextEncoder().encode(text)

test('what lies on the disk is closed as the head of the lock says, and by nothing of ours opened', async () => {
  const store = await withPhotos(1)
  const [before] = await rows('pixels')
  value(await store.safe.set(WORDS))
  expect(await openRows()).toEqual({ photos: 0, pixels: 0 })
  const [setting] = await rows<{ key: string; value: { key: string } }>('settings')
  const { data, ...head } = JSON.parse(setting?.value.key ?? '') as Record<string, never> & {
    data: string
    key: { iterations: number; salt: string; hash: string }
    cipher: { iv: string; length: number }
  }
  expect(head.key).toMatchObject({ hash: 'SHA-256', iterations: 600_000 })
  expect(head.cipher.length).toBe(256)
  const { deriveKey, importKey, decrypt } = {
    deriveKey: crypto.subtle.deriveKey.bind(crypto.subtle),
    importKey: crypto.subtle.importKey.bind(crypto.subtle),
    decrypt: crypto.subtle.decrypt.bind(crypto.subtle),
  }
  const outer = await deriveKey(
    { name: 'PBKDF2', hash: 'SHA-256', iterations: 600_000, salt: from64(head.key.salt) },
    await importKey('raw', utf8(WORDS), 'PBKDF2', false, ['deriveKey']),
    { name: 'AES-GCM', length: 256 },
    false,
    ['decrypt'],
  )
  const how = {
    name: 'AES-GCM',
    iv: from64(head.cipher.iv),
    additionalData: utf8(JSON.stringify(head)),
  }
  const inner = new TextDecoder().decode(await decrypt(how, outer, from64(data)))
  const key = await importKey('raw', from64(inner), 'AES-GCM', false, ['decrypt'])
  const [pixels] = await rows('pixels')
  if (!pixels?.closed || !before?.bytes) throw new Error('no pixels')
  const { iv, bytes } = pixels.closed
  const open = { name: 'AES-GCM', iv, additionalData: utf8(pixels.sha256) }
  expect(new Uint8Array(await decrypt(open, key, bytes))).toEqual(new Uint8Array(before.bytes))
  expect(iv.byteLength).toBe(12)
})

test('opened anew it is locked; the wrong passphrase says so, the right one shows all as it was', async () => {
  const first = await withPhotos(2)
  const before = (await loaded(first)).photos
  const [one] = before
  if (!one) throw new Error('no photo')
  const size = await bytesOf(first, one.sha256)
  value(await first.safe.set(WORDS))
  expect((await loaded(first)).photos).toEqual(before)

  const store = await opened()
  expect(await standing(store)).toBe('locked')
  const [locked] = (await loaded(store)).photos
  expect(locked).toMatchObject({ sha256: one.sha256, view: 'front', here: true })
  expect(locked?.reading).toBeUndefined()
  expect(await bytesOf(store, one.sha256)).toBeUndefined()
  expect(await store.savePhoto(phonePhoto(9), ABOUT)).toEqual({ ok: false, sentence: LOCKED })
  expect(await store.noteRead(one.sha256, { reading: READING })).toMatchObject({ ok: false })
  expect(await store.safe.unlock('calico thimble lantern gates')).toEqual({
    ok: false,
    sentence: WRONG_PASSPHRASE,
  })
  value(await store.safe.unlock(WORDS))
  expect((await loaded(store)).photos).toEqual(before)
  expect(await bytesOf(store, one.sha256)).toBe(size)

  // What is kept from now on is closed as well.
  value(await store.savePhoto(phonePhoto(9), { ...ABOUT, reading: READING }))
  value(await store.noteRead(one.sha256, { muslin: { lines: [] } }))
  expect(await openRows()).toEqual({ photos: 0, pixels: 0 })
  expect((await loaded(store)).photos.find((p) => p.sha256 === one.sha256)).toMatchObject({
    reading: READING,
    muslin: { lines: [] },
  })
})

test('too short a passphrase sets nothing', async () => {
  const store = await withPhotos(1)
  expect(await store.safe.set('thimble')).toMatchObject({ ok: false })
  expect(await standing(store)).toBe('open')
  expect(await openRows()).toEqual({ photos: 1, pixels: 1 })
})

test.each([1, 3])(
  'the page dies after %i of 5 photos: nothing is lost, the rest follows',
  async (after) => {
    const store = await withPhotos(5)
    const before = (await loaded(store)).photos
    await store.safe.set(WORDS, (done) => {
      if (done === after) store.close()
    })
    const left = await openRows()
    expect(left).toEqual({ photos: 5 - after, pixels: 5 - after })
    const again = await opened()
    value(await again.safe.unlock(WORDS))
    expect(await openRows()).toEqual({ photos: 0, pixels: 0 })
    expect((await loaded(again)).photos).toEqual(before)
    for (const { sha256 } of before) expect(await bytesOf(again, sha256)).toBeGreaterThan(0)

    // The same on the way back: taking it off dies, the next unlocking goes on with it.
    await again.safe.takeOff(WORDS, (done) => {
      if (done === after) again.close()
    })
    expect(await openRows()).toEqual({ photos: after, pixels: after })
    const last = await opened()
    value(await last.safe.unlock(WORDS))
    expect(await standing(last)).toBe('open')
    expect(await openRows()).toEqual({ photos: 5, pixels: 5 })
    expect((await loaded(last)).photos).toEqual(before)
  },
)

test('another passphrase: no photo is touched, the old one opens nothing more', async () => {
  const store = await withPhotos(2)
  value(await store.safe.set(WORDS))
  const nonces = async () =>
    (await rows('pixels')).map((r) => [...new Uint8Array(r.closed?.iv ?? [])])
  const before = await nonces()
  expect(await store.safe.changePassphrase(OTHERS, WORDS)).toMatchObject({ ok: false })
  value(await store.safe.changePassphrase(WORDS, OTHERS))
  expect(await nonces()).toEqual(before)
  const again = await opened()
  expect(await again.safe.unlock(WORDS)).toEqual({ ok: false, sentence: WRONG_PASSPHRASE })
  value(await again.safe.unlock(OTHERS))
  expect((await loaded(again)).photos[0]?.reading).toEqual(READING)
})

test('closed pixels of one photo under the name of another do not open', async () => {
  const store = await withPhotos(2)
  value(await store.safe.set(WORDS))
  const [a, b] = await rows('pixels')
  if (!a?.closed || !b) throw new Error('no pixels')
  const db = await new Promise<IDBDatabase>((done) => {
    const asked = indexedDB.open(NAME)
    asked.onsuccess = () => done(asked.result)
  })
  const all = db.transaction('pixels', 'readwrite')
  all.objectStore('pixels').put({ ...b, closed: a.closed })
  await new Promise((done) => (all.oncomplete = done))
  db.close()
  expect(await bytesOf(store, b.sha256)).toBeUndefined()
  expect(await bytesOf(store, a.sha256)).toBeGreaterThan(0)
})

test('forgotten: the photos go, numbers and rounds stay, and a new passphrase can be set', async () => {
  const store = await withPhotos(1)
  const [photo] = (await loaded(store)).photos
  const round = withRef(FIRST(), photo?.sha256 ?? '')
  value(await store.saveRound(round))
  value(await store.safe.set(WORDS))
  const again = await opened()
  await again.load()
  const [changed] = value(await again.letLockedGo(TODAY))
  expect(changed).toMatchObject({ id: round.id, body: round.body, printed: round.printed })
  expect(changed?.photos[0]?.removedOn).toBe(TODAY)
  expect(await rows('pixels')).toEqual([])
  const all = await loaded(again)
  expect(all.photos).toMatchObject([{ removedOn: TODAY, here: false }])
  expect(all.aside).toEqual([])
  expect(await standing(again)).toBe('open')
  // The round may still be written by the window that let the photo go.
  value(await again.saveRound({ ...(changed ?? round), notes: 'sewn' }))
  value(await again.safe.set(OTHERS))
})

test('two windows: what one closes the other may not write beside; locked in one is locked in both', async () => {
  const [left, right] = [await withPhotos(1), await opened()]
  await right.load()
  value(await left.safe.set(WORDS))
  expect(await right.savePhoto(phonePhoto(7), ABOUT)).toEqual({ ok: false, sentence: LOCKED })
  expect(await right.safe.set(OTHERS)).toMatchObject({ ok: false })
  value(await right.safe.unlock(WORDS))
  const kept = await Promise.all([
    left.savePhoto(phonePhoto(7), { ...ABOUT, reading: READING }),
    right.savePhoto(phonePhoto(8), { ...ABOUT, reading: READING }),
  ])
  expect(kept.map(({ ok }) => ok)).toEqual([true, true])
  expect(await openRows()).toEqual({ photos: 0, pixels: 0 })
  value(await left.safe.lockNow())
  expect([await standing(left), await standing(right)]).toEqual(['locked', 'locked'])
  const [photo] = await rows('photos')
  expect(await bytesOf(right, photo?.sha256 ?? '')).toBeUndefined()
  value(await right.safe.unlock(WORDS))
  expect([await standing(left), await standing(right)]).toEqual(['locked', 'unlocked'])
})

test('a backup holds the photos opened and never the lock; locked it says so', async () => {
  const store = await withPhotos(1)
  value(await store.safe.set(WORDS))
  const locked = await opened()
  await locked.load()
  expect(await writeBackup(locked, { on: TODAY, photos: true })).toEqual({
    ok: false,
    sentence: LOCKED,
  })
  const bare = await value(await writeBackup(locked, { on: TODAY, photos: false })).text()
  expect(bare).not.toMatch(/photoLock|closed/)
  expect(await readBackup(bare)).toMatchObject({ ok: true, content: { aside: [] } })

  const whole = await readBackup(
    await value(await writeBackup(store, { on: TODAY, photos: true })).text(),
  )
  if (!whole.ok) throw new Error(whole.sentence)
  expect(whole.content.settings).toEqual({})
  expect(whole.content.photos[0]?.photo.reading).toEqual(READING)
  expect(whole.content.photos[0]?.pixels?.length).toBeGreaterThan(0)

  // Read back where photos are locked it is refused; unlocked, what it brings is closed at once.
  value(await store.safe.lockNow())
  const other = { ...whole.content.photos[0]!, photo: { ...whole.content.photos[0]!.photo } }
  const content = {
    ...whole.content,
    photos: [{ ...other, photo: { ...other.photo, sha256: 'b'.repeat(64) } }],
  }
  expect(await restore(locked, content)).toMatchObject({ ok: false })
  value(await locked.safe.unlock(WORDS))
  expect(value(await restore(locked, content))).toMatchObject({ photos: 1 })
  expect(await openRows()).toEqual({ photos: 0, pixels: 0 })
  expect(await rows('pixels')).toHaveLength(2)
})

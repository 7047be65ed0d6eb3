/** The store on the IndexedDB of a real browser: kept, closed, opened again, read back. */
import { afterEach, expect, test, vi } from 'vitest'
import { readBackup, writeBackup } from '../../src/storage/backup.ts'
import { openStore, type Store } from '../../src/storage/store.ts'
import { bookOf, MIDDLE } from '../bodies.ts'
import { FIRST, GARMENT, phonePhoto, READING, SECOND, withRef } from './invented.ts'

const NAME = 'tapetrue-test'
const TODAY = '2026-11-25'
const forgotten = async (): Promise<void> => {
  vi.restoreAllMocks()
  await new Promise((done) => (indexedDB.deleteDatabase(NAME).onsuccess = done))
}
afterEach(forgotten)

async function opened(): Promise<Store> {
  const result = await openStore({ name: NAME, today: () => TODAY })
  if (!result.ok) throw new Error(result.sentence)
  return result.store
}

test('book, garment, rounds and photo are there after the page was closed', async () => {
  const store = await opened()
  expect((await store.saveBook(bookOf(MIDDLE))).ok).toBe(true)
  expect((await store.saveGarment(GARMENT)).ok).toBe(true)
  const about = { view: 'front', garmentId: 'g1', roundId: 'r1', takenOn: TODAY } as const
  const photo = await store.savePhoto(phonePhoto(), { ...about, reading: READING })
  if (!photo.ok) throw new Error(photo.sentence)
  const first = withRef(FIRST(), photo.value.sha256)
  expect((await store.saveRound(first)).ok).toBe(true)
  expect((await store.saveRound(SECOND())).ok).toBe(true)
  store.close()

  const again = await opened()
  const all = await again.load()
  if (!all.ok) throw new Error(all.sentence)
  expect(all.value.book).toEqual(bookOf(MIDDLE))
  expect(all.value.garments).toEqual([GARMENT])
  expect(all.value.rounds).toEqual([first, SECOND()])
  const found = await again.keptPhotos({ garment: 'g1' })
  expect(found.ok && found.value.photos).toEqual([
    { v: 1, sha256: photo.value.sha256, ...about, reading: READING, here: true },
  ])
  const pixels = await again.readPhoto(photo.value.sha256)
  expect(pixels.ok && (await pixels.value?.text())).not.toMatch(/GPS/)
  const room = await again.room()
  expect(room?.quotaBytes).toBeGreaterThan(0)

  const backup = await writeBackup(again, { on: TODAY, photos: true })
  if (!backup.ok) throw new Error(backup.sentence)
  const read = await readBackup(await backup.value.text())
  expect(read).toMatchObject({ ok: true, content: { rounds: [first, SECOND()], aside: [] } })
  again.close()
})

test('two windows of one browser both keep their readings', async () => {
  const [left, right] = [await opened(), await opened()]
  await left.saveBook(bookOf({ bustGirth: 940 }))
  await right.saveBook(bookOf({ waistGirth: 780 }))
  const all = await left.load()
  expect(all.ok && all.value.book).toEqual(bookOf({ bustGirth: 940, waistGirth: 780 }))
  left.close()
  right.close()
})

/** The page dies at the write with this number, counted from now: its transaction and all after it come to nothing. */
function diesAtWrite(last: number): void {
  let writes = 0
  for (const way of ['put', 'delete'] as const) {
    const real: (...args: never[]) => IDBRequest = IDBObjectStore.prototype[way]
    vi.spyOn(IDBObjectStore.prototype, way).mockImplementation(function (
      this: IDBObjectStore,
      ...args: unknown[]
    ) {
      const request = Reflect.apply(real, this, args) as IDBRequest
      if (++writes >= last) this.transaction.abort()
      return request
    })
  }
}

test('killed at any write while a photo gives way to its covered one: one of them is there and shown, never both', async () => {
  let done = false
  for (let at = 1; !done; at++) {
    const store = await opened()
    await store.saveGarment(GARMENT)
    const about = { view: 'front', garmentId: 'g1', roundId: 'r1', takenOn: TODAY } as const
    const photo = await store.savePhoto(phonePhoto(), about)
    if (!photo.ok) throw new Error(photo.sentence)
    const { sha256 } = photo.value
    await store.saveRound(withRef(FIRST(), sha256))
    diesAtWrite(at)
    // A page that died hears no answer.
    done = await store.exchangePhoto(sha256, phonePhoto(8), { reading: READING }, TODAY).then(
      ({ ok }) => ok,
      () => false,
    )
    vi.restoreAllMocks()
    store.close()

    const again = await opened()
    const [all, kept] = [await again.load(), await again.keptPhotos('all')]
    if (!all.ok || !kept.ok) throw new Error('not opened again')
    const here = kept.value.photos.filter((p) => p.here).map((p) => p.sha256)
    const shown = all.value.rounds.flatMap(({ photos }) => photos).filter((p) => !p.removedOn)
    expect(here, `killed at write ${at}`).toEqual(shown.map((p) => p.sha256))
    expect(here).toHaveLength(1)
    expect(here.includes(sha256)).toBe(!done)
    again.close()
    await forgotten()
  }
})

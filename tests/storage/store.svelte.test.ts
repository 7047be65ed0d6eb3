/** The store on the IndexedDB of a real browser: kept, closed, opened again, read back. */
import { afterEach, expect, test } from 'vitest'
import { readBackup, writeBackup } from '../../src/storage/backup.ts'
import { openStore, type Store } from '../../src/storage/store.ts'
import { bookOf, MIDDLE } from '../bodies.ts'
import { FIRST, GARMENT, phonePhoto, READING, SECOND, withRef } from './invented.ts'

const NAME = 'tapetrue-test'
const TODAY = '2026-11-25'
afterEach(() => indexedDB.deleteDatabase(NAME))

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

/** Rows that cannot be read: put aside, shown, never written over, and put back when they can be. */
import { describe, expect, test } from 'vitest'
import { readBackup, writeBackup } from '../../src/storage/backup.ts'
import { bookOf, MIDDLE } from '../bodies.ts'
import { FIRST, GARMENT, phonePhoto, READING, SECOND } from './invented.ts'
import { device, loaded, opened, raw, TODAY, value } from './opened.ts'

type Plain = Record<string, unknown>
/** A spoilt copy of a stored row. */
async function spoil(
  on: IDBFactory,
  table: string,
  key: string,
  change: (row: Plain) => unknown,
): Promise<unknown> {
  const row: unknown = await raw(on, table, 'readonly', (rows) => rows.get(key))
  const spoilt = change(JSON.parse(JSON.stringify(row)) as Plain)
  await raw(on, table, 'readwrite', (rows) => rows.put(spoilt))
  return spoilt
}

describe('a row that cannot be read', () => {
  test('a round with a number its tape readings do not give is put aside, the other stays', async () => {
    const on = device()
    const first = await opened(on)
    value(await first.saveGarment(GARMENT))
    value(await first.saveRound(FIRST()))
    value(await first.saveRound(SECOND()))
    first.close()
    const spoilt = await spoil(on, 'rounds', 'r1', (row) => {
      const round = row['round'] as { body: { values: Plain } }
      round.body.values['bustGirth'] = 900
      return row
    })
    const store = await opened(on)
    const all = await loaded(store)
    expect(all.rounds.map(({ id }) => id)).toEqual(['r2'])
    expect(all.aside).toEqual([
      {
        v: 1,
        id: 1,
        table: 'rounds',
        key: 'r1',
        reason: expect.stringContaining('bustGirth') as string,
        asideOn: TODAY,
        row: spoilt,
      },
    ])
    // Loading again neither doubles nor loses it.
    expect((await loaded(store)).aside).toHaveLength(1)
  })

  test('one spoilt measurement does not take the tape book with it', async () => {
    const on = device()
    const first = await opened(on)
    value(await first.saveBook(bookOf(MIDDLE)))
    first.close()
    await spoil(on, 'book', 'book', (row) => {
      const book = row['book'] as Plain
      return { ...row, book: { ...book, waistGirth: { tape: [{ value: 'wide' }] } } }
    })
    const { waistGirth: _lost, ...rest } = MIDDLE
    const store = await opened(on)
    const all = await loaded(store)
    expect(all.book).toEqual(bookOf(rest))
    expect(all.aside.map(({ table, key }) => [table, key])).toEqual([['book', 'waistGirth']])
    value(await store.saveBook(bookOf(MIDDLE)))
    expect((await loaded(store)).book).toEqual(bookOf(MIDDLE))
  })

  test('a book that is no record at all is put aside before a new one is written', async () => {
    const on = device()
    const store = await opened(on)
    await raw(on, 'book', 'readwrite', (rows) => rows.put({ id: 'book', v: 1, book: 'torn' }))
    value(await store.saveBook(bookOf({ bustGirth: 940 })))
    const all = await loaded(store)
    expect(all.book).toEqual(bookOf({ bustGirth: 940 }))
    expect(all.aside[0]?.row).toEqual({ id: 'book', v: 1, book: 'torn' })
  })

  test('points that cannot be read leave the photo itself in place', async () => {
    const on = device()
    const store = await opened(on)
    const { sha256 } = value(
      await store.savePhoto(phonePhoto(), {
        view: 'front',
        garmentId: null,
        roundId: null,
        takenOn: TODAY,
        reading: READING,
      }),
    )
    await spoil(on, 'photos', sha256, (row) => ({ ...row, reading: { view: 'top' } }))
    const all = await loaded(store)
    expect(all.photos).toEqual([
      {
        v: 1,
        sha256,
        view: 'front',
        garmentId: null,
        roundId: null,
        takenOn: TODAY,
        here: true,
      },
    ])
    expect(all.aside).toHaveLength(1)
    expect(value(await store.readPhoto(sha256))?.size).toBeGreaterThan(0)
  })

  test('a photo that cannot be read at all is put aside when it is asked for, once', async () => {
    const on = device()
    const store = await opened(on)
    const about = { view: 'front', garmentId: 'g1', roundId: 'r1', takenOn: TODAY } as const
    const { sha256 } = value(await store.savePhoto(phonePhoto(), about))
    const other = value(await store.savePhoto(phonePhoto(8), about)).sha256
    const spoilt = await spoil(on, 'photos', sha256, (row) => ({ ...row, view: 'from the moon' }))
    // Opening her work reads no photo.
    expect(value(await store.load()).aside).toEqual([])
    const asked = value(await store.keptPhotos({ named: [sha256, other] }))
    expect(asked.photos.map((photo) => photo.sha256)).toEqual([other])
    expect(asked.aside.map(({ table, key, row }) => [table, key, row])).toEqual([
      ['photos', sha256, spoilt],
    ])
    expect(value(await store.keptPhotos('all')).aside).toHaveLength(1)
    expect(value(await store.load()).aside).toHaveLength(1)
  })
  test('a backup holds a spoilt photo that no screen has asked for yet', async () => {
    const on = device()
    const store = await opened(on)
    const about = { view: 'front', garmentId: 'g1', roundId: 'r1', takenOn: TODAY } as const
    const { sha256 } = value(await store.savePhoto(phonePhoto(), about))
    const spoilt = await spoil(on, 'photos', sha256, (row) => ({ ...row, view: 'from the moon' }))
    const file = value(await writeBackup(store, { on: TODAY, photos: false }))
    const read = await readBackup(await file.text())
    expect(read).toMatchObject({ ok: true, content: { photos: [], aside: [{ row: spoilt }] } })
  })

  test('a round written over a spoilt one keeps the spoilt one aside', async () => {
    const on = device()
    const store = await opened(on)
    await raw(on, 'rounds', 'readwrite', (rows) => rows.put({ id: 'r1', v: 1, round: 7 }))
    value(await store.saveRound(FIRST()))
    const all = await loaded(store)
    expect(all.rounds).toEqual([FIRST()])
    expect(all.aside.map(({ row }) => row)).toEqual([{ id: 'r1', v: 1, round: 7 }])
  })

  test('what can be read again is put back', async () => {
    const on = device()
    const store = await opened(on)
    value(await store.saveGarment(GARMENT))
    const row: unknown = await raw(on, 'garments', 'readonly', (rows) => rows.get('g1'))
    await raw(on, 'garments', 'readwrite', (rows) => rows.delete('g1'))
    await raw(on, 'aside', 'readwrite', (rows) =>
      rows.put({
        v: 1,
        table: 'garments',
        key: 'g1',
        reason: 'a later field',
        asideOn: TODAY,
        row,
      }),
    )
    const all = await loaded(store)
    expect(all.garments).toEqual([GARMENT])
    expect(all.aside).toEqual([])
  })
})

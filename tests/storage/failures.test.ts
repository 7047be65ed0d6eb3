/**
 * What a browser may refuse, said as it says it: the error names are those of the IndexedDB
 * standard (W3C Indexed Database API 3.0, section 3.1) and of the Storage standard's quota.
 */
import { IDBFactory, IDBKeyRange } from 'fake-indexeddb'
import { afterEach, describe, expect, test, vi } from 'vitest'
import { openStore } from '../../src/storage/store.ts'
import { bookOf, MIDDLE } from '../bodies.ts'
import { device, loaded, opened, value } from './opened.ts'
import { BLOCKED, DENIED, FULL, NEWER, OVERTAKEN } from '../../src/storage/storage.words.ts'

afterEach(() => vi.restoreAllMocks())

/** Another program version on the same device; the native version is what the browser counts, without one the present. */
function openNative(on: IDBFactory, version?: number): Promise<IDBDatabase> {
  return new Promise((resolve, reject) => {
    const request = on.open('tapetrue', version)
    request.onsuccess = () => resolve(request.result)
    request.onerror = () => reject(new Error(request.error?.message))
  })
}

describe('storage that fails', () => {
  test('a full device: a sentence, and what was kept before is still there', async () => {
    const on = device()
    const store = await opened(on)
    value(await store.saveBook(bookOf({ bustGirth: 940 })))
    vi.spyOn(await rowsPrototype(on), 'put').mockImplementation(() => {
      throw new DOMException('no room', 'QuotaExceededError')
    })
    expect(await store.saveBook(bookOf(MIDDLE))).toEqual({ ok: false, sentence: FULL })
    vi.restoreAllMocks()
    expect((await loaded(store)).book).toEqual(bookOf({ bustGirth: 940 }))
    // And the same window can go on once there is room.
    value(await store.saveBook(bookOf(MIDDLE)))
  })

  test('storage denied: a sentence instead of a store', async () => {
    const denied = device()
    vi.spyOn(denied, 'open').mockImplementation(() => {
      throw new DOMException('denied', 'SecurityError')
    })
    expect(await openStore({ dexie: { indexedDB: denied, IDBKeyRange } })).toEqual({
      ok: false,
      sentence: DENIED,
    })
  })

  test('a newer version takes over: this window says so and keeps nothing half', async () => {
    const on = device()
    const overtaken = vi.fn()
    const store = await opened(on, { onOvertaken: overtaken })
    value(await store.saveBook(bookOf({ bustGirth: 940 })))
    const newer = await openNative(on, 990)
    expect(overtaken).toHaveBeenCalledOnce()
    expect(await store.saveBook(bookOf(MIDDLE))).toEqual({ ok: false, sentence: OVERTAKEN })
    newer.close()
  })

  test('rows of a newer version are left alone', async () => {
    const on = device()
    const store = await opened(on)
    value(await store.saveBook(bookOf(MIDDLE)))
    store.close()
    ;(await openNative(on, 990)).close()
    expect(await openStore({ dexie: { indexedDB: on, IDBKeyRange } })).toEqual({
      ok: false,
      sentence: NEWER,
    })
  })

  test('an older version that will not close: a sentence, nothing waits for ever', async () => {
    const on = device()
    // Opened by hand at native version 1 and deaf to the request to close.
    const stubborn = await openNative(on, 1)
    expect(await openStore({ dexie: { indexedDB: on, IDBKeyRange } })).toEqual({
      ok: false,
      sentence: BLOCKED,
    })
    stubborn.close()
  })

  test('an error of our own is thrown, not said', async () => {
    const store = await opened(device())
    await expect(store.inTurn(() => Promise.reject(new TypeError('ours')))).rejects.toThrow('ours')
    await expect(store.saveSetting('f', () => 0)).rejects.toThrow(/clone/i)
  })
})

/** The prototype whose `put` the store ends up calling. */
async function rowsPrototype(on: IDBFactory): Promise<IDBObjectStore> {
  const db = await openNative(on)
  const rows = db.transaction('book').objectStore('book')
  db.close()
  return Object.getPrototypeOf(rows) as IDBObjectStore
}

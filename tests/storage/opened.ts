/** A store on an IndexedDB of its own, so that no test meets the rows of another. */
import { IDBFactory, IDBKeyRange } from 'fake-indexeddb'
import { expect } from 'vitest'
import { openStore, type Store, type StoreOptions } from '../../src/storage/store.ts'
import type { Kept } from '../../src/storage/failure.ts'
import type { Loaded, LoadedPhotos } from '../../src/storage/load.ts'

export const device = (): IDBFactory => new IDBFactory()
export const TODAY = '2026-11-25'

export async function opened(on: IDBFactory, options: StoreOptions = {}): Promise<Store> {
  const result = await openStore({
    today: () => TODAY,
    dexie: { indexedDB: on, IDBKeyRange },
    ...options,
  })
  if (!result.ok) throw new Error(result.sentence)
  return result.store
}

/** The value, or a failed test that says the sentence. */
export function value<T>(outcome: Kept<T>): T {
  expect(outcome).toMatchObject({ ok: true })
  if (!outcome.ok) throw new Error(outcome.sentence)
  return outcome.value
}

/** Everything: what lies open at once, and after it the photos, which may put a row aside. */
export const loaded = async (store: Store): Promise<Loaded & LoadedPhotos> => ({
  ...value(await store.load()),
  ...value(await store.keptPhotos('all')),
})

/** Reads or writes rows behind the program's back. */
export async function raw<T>(
  on: IDBFactory,
  table: string,
  mode: 'readonly' | 'readwrite',
  act: (store: IDBObjectStore) => IDBRequest<T>,
): Promise<T> {
  const db = await settled(on.open('tapetrue'))
  const result = await settled(act(db.transaction(table, mode).objectStore(table)))
  db.close()
  return result
}

function settled<T>(request: IDBRequest<T>): Promise<T> {
  return new Promise((resolve, reject) => {
    request.onsuccess = () => resolve(request.result)
    request.onerror = () => reject(new Error(request.error?.message ?? 'no reason given'))
  })
}

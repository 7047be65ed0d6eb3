/** A session on the browser's own database, emptied first, with invented numbers and one garment. */
import type { Book } from '../../../src/measurements/book.ts'
import { openStore, type Store } from '../../../src/storage/store.ts'
import { Session } from '../../../src/ui/session.svelte.ts'
import { INVENTED_ON } from '../../bodies.ts'

let opened: Store | undefined

/** @param now her clock; without one it stands still */
export async function seeded(
  book: Book,
  now = () => new Date(`${INVENTED_ON}T10:00:00Z`),
): Promise<{ session: Session; garment: string }> {
  opened?.close()
  await new Promise<void>((done, failed) => {
    const gone = indexedDB.deleteDatabase('tapetrue')
    gone.onsuccess = () => done()
    gone.onerror = () => failed(new Error('the database of the test before is still open'))
  })
  const result = await openStore({ today: () => INVENTED_ON })
  if (!result.ok) throw new Error(result.sentence)
  const { store } = result
  opened = store
  await store.saveBook(book)
  let count = 0
  const session = new Session(store, {
    now,
    newId: () => `id-${(count += 1)}`,
  })
  await session.open()
  const garment = await session.hang('blouse', 'Invented blouse')
  if (garment === undefined) throw new Error(session.problem)
  return { session, garment }
}

/** A second window of the same browser on the same work. */
export async function anotherWindow(): Promise<Session> {
  const result = await openStore()
  if (!result.ok) throw new Error(result.sentence)
  const session = new Session(result.store, {
    now: () => new Date(`${INVENTED_ON}T11:00:00Z`),
    newId: () => crypto.randomUUID(),
  })
  await session.open()
  return session
}

/**
 * Out of the store, parsed: her work at once, photos when they are asked for, since their outlines
 * are most of what lies there. A record that cannot be read is moved to the table `aside` with its
 * reason, so that it is shown, goes into a backup, and is not written over. One that a later version
 * of the program can read again is put back.
 */
import type { Table } from 'dexie'
import type { Book } from '../measurements/book.ts'
import { parseBook, isRecord } from '../measurements/stored.ts'
import type { Round } from '../rounds/round.ts'
import type { Tables } from './db.ts'
import { lockOf, PHOTO_LOCK, type PhotoLock } from './photo-lock.ts'
import {
  BOOK_KEY,
  parseAsideRow,
  parseGarmentRow,
  parsePhotoRow,
  parseRoundRow,
  parseSettingRow,
  type AsideRow,
} from './rows.ts'
import type { HungGarment } from './schema/garment.ts'
import type { Parsed } from './schema/parsed.ts'
import type { KeptPhoto } from './schema/photo.ts'
import { uniteBooks } from './unite.ts'
import { SCHEMA_WORDS } from './schema/schema.words.ts'

/** A photo and whether its pixels lie in this browser. */
export type PhotoHere = KeptPhoto & { readonly here: boolean }

/** All of them, or those of one garment (null: of the body) together with those of these names. */
export type WhichPhotos =
  'all' | { readonly garment?: string | null; readonly named?: readonly string[] }

/** What goes with a garment: one of its rounds may show a photo chosen first for another, or for the tape book. */
export const photosWith = (garment: string, rounds: readonly Round[]): WhichPhotos => ({
  garment,
  named: rounds
    .filter((round) => round.garmentId === garment)
    .flatMap(({ photos }) => photos.map(({ sha256 }) => sha256)),
})

export interface Loaded {
  readonly book: Book
  /** In the order of the rail; those taken off are among them. */
  readonly garments: readonly HungGarment[]
  /** By garment, then by number. */
  readonly rounds: readonly Round[]
  readonly settings: Readonly<Record<string, unknown>>
  /** The lock of the photos, where she set a passphrase. */
  readonly photoLock: PhotoLock | undefined
  /** Records that could not be read: show them, and say that a backup holds them too. */
  readonly aside: readonly AsideRow[]
  /** How often each round was kept, by its id. */
  readonly savedTimes: Readonly<Record<string, number>>
}

const PARSERS = {
  garments: parseGarmentRow,
  rounds: parseRoundRow,
  photos: parsePhotoRow,
  settings: parseSettingRow,
} as const
type Readable = keyof typeof PARSERS
const isReadable = (table: string): table is Readable => Object.hasOwn(PARSERS, table)

/** What was found of the photos asked for, and what lies aside now that they were read. */
export interface LoadedPhotos {
  readonly photos: readonly PhotoHere[]
  readonly aside: readonly AsideRow[]
}

/** Reads all but the photos within a transaction that may write to every table. */
export async function loadAll(db: Tables, today: string): Promise<Loaded> {
  await putBack(db)
  const book = await readBook(db, today)
  const garments = await readRows(db, 'garments', parseGarmentRow, today)
  const rows = await readRows(db, 'rounds', parseRoundRow, today)
  const settings = await readRows(db, 'settings', parseSettingRow, today)
  const aside = readable(await db.aside.toArray())
  const { [PHOTO_LOCK]: lock, ...own } = Object.fromEntries(
    settings.map(({ key, value }) => [key, value]),
  )
  return {
    book,
    garments: [...garments].sort((a, b) => a.order - b.order),
    rounds: rows
      .map(({ round }) => round)
      .sort((a, b) => a.garmentId.localeCompare(b.garmentId) || a.number - b.number),
    settings: own,
    photoLock: lockOf(lock),
    aside,
    savedTimes: Object.fromEntries(rows.map(({ id, savedTimes }) => [id, savedTimes])),
  }
}

/** Reads photos within a transaction that may write to every table. */
export async function loadPhotos(
  db: Tables,
  which: WhichPhotos,
  today: string,
): Promise<LoadedPhotos> {
  const { garment, named = [] } = which === 'all' ? {} : which
  const own = garment === undefined ? [] : await namesOf(db, garment)
  const only = which === 'all' ? undefined : [...new Set([...own, ...named])]
  const rows = await readRows(db, 'photos', parsePhotoRow, today, only)
  const pixels = new Set(await db.pixels.toCollection().primaryKeys())
  const photos = rows.map((photo) => ({ ...photo, here: pixels.has(photo.sha256) }))
  return { photos, aside: readable(await db.aside.toArray()) }
}

async function namesOf(db: Tables, garment: string | null): Promise<readonly string[]> {
  if (garment !== null) return db.photos.where('garmentId').equals(garment).primaryKeys()
  const ofGarments = new Set(await db.photos.orderBy('garmentId').primaryKeys())
  const all = await db.photos.toCollection().primaryKeys()
  return all.filter((name) => !ofGarments.has(name))
}

const readable = (rows: readonly unknown[]): readonly AsideRow[] =>
  rows.flatMap((row) => {
    const read = parseAsideRow(row)
    return read.ok ? [read.value] : []
  })

/** The stored book; an entry that cannot be read is put aside alone, the others stay. */
export async function readBook(db: Tables, today: string): Promise<Book> {
  const row = await db.book.get(BOOK_KEY)
  if (row === undefined) return {}
  if (!isRecord(row) || row['v'] !== 1 || !isRecord(row['book'])) {
    await putAside(db, 'book', BOOK_KEY, SCHEMA_WORDS.bookNoRecord, row, today)
    await db.book.delete(BOOK_KEY)
    return {}
  }
  let book: Book = {}
  let spoilt = false
  for (const [id, entry] of Object.entries(row['book'])) {
    const read = parseBook({ [id]: entry })
    if (read.ok) book = { ...book, ...read.value }
    else {
      spoilt = true
      await putAside(db, 'book', id, read.reason, entry, today)
    }
  }
  if (spoilt) await db.book.put({ v: 1, id: BOOK_KEY, book })
  return book
}

/** @param only the keys of the rows that are asked for; those that are not there are left out */
async function readRows<T>(
  db: Tables,
  name: Readable,
  parse: (row: unknown) => Parsed<T>,
  today: string,
  only?: readonly string[],
): Promise<readonly T[]> {
  const table: Table<unknown, string> = db.table(name)
  const keys = only ?? (await table.toCollection().primaryKeys())
  const rows = only ? await table.bulkGet([...only]) : await table.toArray()
  const good: T[] = []
  for (const [i, row] of rows.entries()) {
    if (row === undefined) continue
    const read = parse(row)
    if (read.ok) {
      good.push(read.value)
      continue
    }
    const key = keys[i]
    if (key === undefined) throw new Error(`load: row ${i} of ${name} has no key`)
    const rescued = name === 'photos' ? withoutReading(row) : undefined
    await putAside(db, name, key, read.reason, row, today)
    const again = rescued && parse(rescued)
    if (again?.ok) {
      good.push(again.value)
      await table.put(rescued)
    } else await table.delete(key)
  }
  return good
}

/** The points of a photo can be set again; that it was taken, and its pixels, must not go with them. */
function withoutReading(row: unknown): object | undefined {
  if (!isRecord(row) || row['reading'] === undefined) return undefined
  const { reading: _reading, ...rest } = row
  return rest
}

export async function putAside(
  db: Tables,
  table: string,
  key: string,
  reason: string,
  row: unknown,
  asideOn: string,
): Promise<void> {
  await db.aside.add({ v: 1, table, key, reason, asideOn, row })
}

async function putBack(db: Tables): Promise<void> {
  for (const stored of await db.aside.toArray()) {
    const read = parseAsideRow(stored)
    if (!read.ok || read.value.id === undefined) continue
    const { id, table, key, row } = read.value
    if (table === 'book') {
      const entry = parseBook(key === BOOK_KEY && isRecord(row) ? row['book'] : { [key]: row })
      if (!entry.ok) continue
      const present = parseBook(await bookNow(db))
      if (!present.ok) continue
      await db.book.put({ v: 1, id: BOOK_KEY, book: uniteBooks(present.value, entry.value) })
    } else if (isReadable(table)) {
      const taken: unknown = await db.table(table).get(key)
      if (taken !== undefined || !PARSERS[table](row).ok) continue
      await db.table(table).put(row)
    } else continue
    await db.aside.delete(id)
  }
}

async function bookNow(db: Tables): Promise<unknown> {
  const row = await db.book.get(BOOK_KEY)
  return isRecord(row) ? row['book'] : {}
}

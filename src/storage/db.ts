/**
 * The database of this page: one, on this device, opened by whichever version of the program is
 * newest. Tables hold `unknown` on the way out, so that nothing is used before it is parsed.
 */
import Dexie, { type DexieOptions, type Table, type Transaction } from 'dexie'
import { failed, failureOf, type Failure } from './failure.ts'
import { V1 } from './migrations/v1.ts'
import { V2 } from './migrations/v2.ts'
import { V3 } from './migrations/v3.ts'
import { V4 } from './migrations/v4.ts'
import { V5 } from './migrations/v5.ts'
import { V6 } from './migrations/v6.ts'
import { V7 } from './migrations/v7.ts'
import { V8 } from './migrations/v8.ts'
import { V9 } from './migrations/v9.ts'
import { V10 } from './migrations/v10.ts'
import type { PackedPhoto } from './packed-photo.ts'
import type { AsideRow, BookRow, PixelsRow, RoundRow, SettingRow } from './rows.ts'
import type { HungGarment } from './schema/garment.ts'
import { BLOCKED, NEWER, NOT_OPENED, UNSURE } from './storage.words.ts'

export const DATABASE = 'tapetrue'
/** One entry a version, oldest first; a version once released is never changed. */
const MIGRATIONS = [V1, V2, V3, V4, V5, V6, V7, V8, V9, V10] as const
/** Dexie multiplies its version numbers by ten for the browser (from memory, and tested). */
const NATIVE_FACTOR = 10

/** What goes in is typed; what comes out is somebody else's word. */
type Rows<In> = Table<unknown, string, In>

export class Database extends Dexie {
  declare readonly book: Rows<BookRow>
  declare readonly garments: Rows<HungGarment>
  declare readonly rounds: Rows<RoundRow>
  declare readonly photos: Rows<PackedPhoto>
  declare readonly pixels: Rows<PixelsRow>
  declare readonly settings: Rows<SettingRow>
  declare readonly aside: Table<unknown, number, AsideRow>

  constructor(name: string, options: DexieOptions = {}) {
    // Strict: the browser reports a change as kept only when it is on the disk.
    super(name, { chromeTransactionDurability: 'strict', cache: 'disabled', ...options })
    for (const { version, stores } of MIGRATIONS) this.version(version).stores({ ...stores })
  }
}

export type Tables = Pick<
  Database,
  'book' | 'garments' | 'rounds' | 'photos' | 'pixels' | 'settings' | 'aside' | 'table'
>

/**
 * The tables bound to one transaction. Those of the database find it by themselves, but not
 * from calls within calls: what is written there is then kept alone, whatever becomes of the rest.
 */
export const tablesOf = (of: Transaction): Tables => ({
  book: of.table('book') as Tables['book'],
  garments: of.table('garments') as Tables['garments'],
  rounds: of.table('rounds') as Tables['rounds'],
  photos: of.table('photos') as Tables['photos'],
  pixels: of.table('pixels') as Tables['pixels'],
  settings: of.table('settings') as Tables['settings'],
  aside: of.table('aside') as Tables['aside'],
  table: (name: string) => of.table(name),
})

/** Deletes a whole database; waits until every window that has it open has let it go. */
export async function removeDatabase(name: string): Promise<void> {
  await Dexie.delete(name)
}

export interface Opening {
  readonly name?: string
  /** Called when a newer version in another window takes the database over. */
  readonly onOvertaken?: () => void
  /** For tests: another IndexedDB than the browser's own. */
  readonly dexie?: DexieOptions
}

/** Opens the database, bringing older rows up to date; a newer one is left as it is. */
export async function openDatabase(
  opening: Opening,
): Promise<{ readonly ok: true; readonly db: Database } | Failure> {
  const db = new Database(opening.name ?? DATABASE, opening.dexie)
  db.on('versionchange', () => {
    db.close()
    opening.onOvertaken?.()
    // Dexie's own answer would open the newer database again at the next change.
    return false
  })
  const blocked = new Promise<'blocked'>((resolve) => {
    db.on('blocked', () => resolve('blocked'))
  })
  const ready = db.open()
  // When it stays blocked the database is closed, and its opening fails later, unheard.
  ready.catch(() => undefined)
  try {
    if ((await Promise.race([ready, blocked])) === 'blocked') {
      db.close()
      return failed(BLOCKED)
    }
  } catch (error) {
    const failure = failureOf(error)
    // Nothing was being changed yet: of a last change there is nothing to say.
    return failure.sentence === UNSURE ? failed(NOT_OPENED) : failure
  }
  // Dexie opens a newer database too; writing old rows into it would spoil it.
  if (db.backendDB().version > MIGRATIONS.length * NATIVE_FACTOR) {
    db.close()
    return failed(NEWER)
  }
  return { ok: true, db }
}

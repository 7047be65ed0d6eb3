/**
 * Her work on this device. Every promise resolves only after the change is committed, so what
 * the screen says is kept is kept. What the browser refuses comes back as `{ok: false,
 * sentence}`; what would break a rule of ours (a printed round that changes) is thrown.
 *
 * Writes wait for one another, so two quick changes of one round cannot pass each other.
 */
import type { MuslinSight } from '../capture/muslin-sight.ts'
import type { ViewReading } from '../capture/reading.ts'
import type { Book } from '../measurements/book.ts'
import { parseBook } from '../measurements/stored.ts'
import type { Round } from '../rounds/round.ts'
import { openDatabase, tablesOf, type Database, type Opening, type Tables } from './db.ts'
import { failed, failureOf, kept, type Failure, type Kept } from './failure.ts'
import { printedFieldChanged } from './keep-rounds.ts'
import {
  loadAll,
  loadPhotos,
  putAside,
  readBook,
  type Loaded,
  type LoadedPhotos,
  type WhichPhotos,
} from './load.ts'
import { chosenAgain, letGo, preparePhoto, type AboutPhoto, type PreparedPhoto } from './photos.ts'
import { lockIn } from './photo-lock.ts'
import { PhotoSafe, type Beside } from './photo-safe.ts'
import { BOOK_KEY, parseGarmentRow, parseRoundRow, type RoundRow } from './rows.ts'
import type { HungGarment } from './schema/garment.ts'
import { parsed } from './schema/parsed.ts'
import type { KeptPhoto } from './schema/photo.ts'
import { RoundSchema } from './schema/round.ts'
import { mergedGarment } from './merge-garment.ts'
import { unfitFor } from './unfit.ts'
import { uniteBooks } from './unite.ts'
import { otherWindows, type Windows } from './windows.ts'
import { CHANGED_ELSEWHERE, STORE_WORDS } from './storage.words.ts'

export interface StoreOptions extends Opening {
  /** The date of today, ISO; for records that are put aside. */
  readonly today?: () => string
}

export interface Room {
  readonly usedBytes: number
  readonly quotaBytes: number
}

export async function openStore(
  options: StoreOptions = {},
): Promise<{ readonly ok: true; readonly store: Store } | Failure> {
  const opened = await openDatabase(options)
  return opened.ok ? { ok: true, store: new Store(opened.db, options.today ?? isoToday) } : opened
}

export class Store {
  readonly safe = new PhotoSafe(this)
  readonly #db: Database
  readonly #today: () => string
  /** How often each round was kept when this window last saw it. */
  #seen = new Map<string, number>()
  /** The tape book as this window last saw it. */
  #book: Book | undefined
  /** Each garment as this window last saw it. */
  #hung = new Map<string, HungGarment>()
  #windows: Windows | undefined
  #last: Promise<unknown> = Promise.resolve()

  constructor(db: Database, today: () => string) {
    this.#db = db
    this.#today = today
  }

  load(): Promise<Kept<Loaded>> {
    return this.inTurn(async (db) => {
      const loaded = await loadAll(db, this.#today())
      this.#seen = new Map(Object.entries(loaded.savedTimes))
      this.#book = loaded.book
      this.#hung = new Map(loaded.garments.map((garment) => [garment.id, garment]))
      return kept(loaded)
    })
  }

  /** Photos without their pixels, as they can be shown now; what is not kept here is left out. */
  async keptPhotos(which: WhichPhotos): Promise<Kept<LoadedPhotos>> {
    const outcome = await this.inTurn(async (db) => {
      const lock = await lockIn(db)
      const loaded = await loadPhotos(db, which, this.#today())
      return kept({ ...loaded, lock })
    })
    if (!outcome.ok) return outcome
    const { photos, lock, aside } = outcome.value
    return kept({ photos: await this.safe.shown(photos, lock), aside })
  }

  /** Keeps the book together with what another window wrote meanwhile; gives the united one. */
  saveBook(book: Book): Promise<Kept<Book>> {
    const unfit = unfitFor(parseBook(book))
    if (unfit) return Promise.resolve(unfit)
    return this.keep(async (db) => {
      const united = uniteBooks(book, await readBook(db, this.#today()), this.#book)
      await db.book.put({ v: 1, id: BOOK_KEY, book: united })
      return kept(united)
    }).then((outcome) => {
      if (outcome.ok) this.#book = outcome.value
      return outcome
    })
  }

  /**
   * To take a garment off the rail keep it with `takenOffOn`; nothing is deleted. What another
   * window changed of it meanwhile stays, and is in the garment that is given back.
   */
  saveGarment(garment: HungGarment): Promise<Kept<HungGarment>> {
    const unfit = unfitFor(parseGarmentRow(garment))
    if (unfit) return Promise.resolve(unfit)
    return this.keep(async (db) => {
      const row = parseGarmentRow(await db.garments.get(garment.id))
      const seen = this.#hung.get(garment.id)
      const next = row.ok && seen ? mergedGarment(seen, garment, row.value) : garment
      if (!next) return failed(CHANGED_ELSEWHERE)
      await db.garments.put(next)
      return kept(next)
    }).then((outcome) => {
      if (outcome.ok) this.#hung.set(garment.id, outcome.value)
      return outcome
    })
  }

  /**
   * Keeps a round. A printed one may gain what was seen, photos and notes; a change of its
   * numbers, choices, corrections or pages is thrown as our own mistake.
   */
  async saveRound(round: Round): Promise<Kept<Round>> {
    const unfit = unfitFor(parsed(RoundSchema, round))
    if (unfit) return unfit
    const saved = await this.keep(async (db) => {
      const row: unknown = await db.rounds.get(round.id)
      const stored = row === undefined ? undefined : parseRoundRow(row)
      if (stored && !stored.ok)
        await putAside(db, 'rounds', round.id, stored.reason, row, this.#today())
      const before = stored?.ok ? stored.value : undefined
      const beside = before
        ? []
        : await db.rounds.where('garmentId').equals(round.garmentId).toArray()
      const next = this.#nextRow(round, before, beside)
      if (next.ok) await db.rounds.put(next.value)
      return next
    })
    return this.#keptAs(saved)
  }
  /** The row of a round as it may be kept over `before`, among the rows of its garment. */
  #nextRow(round: Round, before: RoundRow | undefined, beside: readonly unknown[]): Kept<RoundRow> {
    if (before) {
      if (before.savedTimes !== this.#seen.get(round.id)) return failed(CHANGED_ELSEWHERE)
      const changed = printedFieldChanged(before.round, round)
      if (changed !== undefined)
        throw new Error(`saveRound: round ${round.number} is printed; its ${changed} cannot change`)
    } else if (numberTaken(beside, round)) return failed(CHANGED_ELSEWHERE)
    const savedTimes = (before?.savedTimes ?? 0) + 1
    return kept({ v: 1, id: round.id, garmentId: round.garmentId, savedTimes, round })
  }
  #keptAs(saved: Kept<RoundRow>): Kept<Round> {
    if (!saved.ok) return saved
    const { id, savedTimes, round } = saved.value
    this.#seen.set(id, savedTimes)
    return kept(round)
  }

  /** Keeps a photo without its metadata and gives its row, under its SHA-256. JPEG only; see jpeg.ts. */
  async savePhoto(photo: Blob, about: AboutPhoto): Promise<Kept<KeptPhoto>> {
    return this.#savePhoto(await preparePhoto(photo, about))
  }
  /**
   * A photo and the round that shows it, in one: whatever breaks off, no photo stays behind that
   * nothing shows. `shows` makes that round from the name of the photo.
   */
  async savePhotoOf(
    photo: Blob,
    about: AboutPhoto,
    shows: (sha256: string) => Round,
  ): Promise<Kept<{ readonly photo: KeptPhoto; readonly round: Round }>> {
    const prepared = await preparePhoto(photo, about)
    const round = shows(prepared.row.sha256)
    const unfit = unfitFor(parsed(RoundSchema, round))
    if (unfit) return unfit
    let row: Kept<RoundRow> = failed(CHANGED_ELSEWHERE)
    const saved = await this.#savePhoto(prepared, async (db) => {
      const others = await db.rounds.where('garmentId').equals(round.garmentId).toArray()
      const before = others.map(parseRoundRow).find((r) => r.ok && r.value.id === round.id)
      row = this.#nextRow(round, before?.ok ? before.value : undefined, others)
      if (row.ok) await db.rounds.put(row.value)
      return row
    })
    if (!saved.ok) return saved
    const shown = this.#keptAs(row)
    return shown.ok ? kept({ photo: saved.value, round: shown.value }) : shown
  }
  #savePhoto({ row, pixels }: PreparedPhoto, beside?: Beside): Promise<Kept<KeptPhoto>> {
    const change = (before: KeptPhoto | undefined) => kept(before ? chosenAgain(before, row) : row)
    return this.safe.change(row.sha256, change, pixels, beside)
  }

  /** What was read from a photo that is kept; what is not given stays as it was. */
  noteRead(
    sha256: string,
    read: { readonly reading?: ViewReading; readonly muslin?: MuslinSight },
  ): Promise<Kept<KeptPhoto>> {
    return this.safe.change(sha256, (before) =>
      before ? kept({ ...before, ...read }) : failed(STORE_WORDS.noPhoto),
    )
  }

  /** The pixels, or undefined when they were let go, are not in this browser, or are locked. */
  readPhoto(sha256: string): Promise<Kept<Blob | undefined>> {
    return this.safe.read(sha256)
  }

  /**
   * Another picture in the place of one that is kept, such as the same with the head covered, with
   * what was read; the old pixels are deleted. All in one: whatever breaks off, one of the two is
   * there and shown, never both, never neither. Gives the rounds that show it.
   */
  async exchangePhoto(
    sha256: string,
    jpeg: Blob,
    read: Pick<AboutPhoto, 'reading' | 'muslin'>,
    on: string,
  ): Promise<Kept<readonly Round[]>> {
    const found = await this.keptPhotos({ named: [sha256] })
    if (!found.ok) return found
    const [before] = found.value.photos
    if (!before?.here) return failed(STORE_WORDS.noPhoto)
    const { view, garmentId, roundId, takenOn } = before
    const about = { view, garmentId, roundId, takenOn, ...read }
    const prepared = await preparePhoto(jpeg, about)
    const by = prepared.row.sha256
    let changed: Kept<readonly RoundRow[]> = kept([])
    const saved = await this.#savePhoto(prepared, async (db) => {
      if (by === sha256) return changed
      // Another window may have let it go since.
      if (!(await db.pixels.where('sha256').equals(sha256).count()))
        return failed(STORE_WORDS.noPhoto)
      changed = kept(await letGo(db, sha256, on, by))
      return changed
    })
    return this.#changedBy(saved.ok ? changed : saved)
  }

  /** Keeps the numbers, lets the photo go: pixels deleted, every mention of it marked. */
  async letPhotoGo(sha256: string, on: string): Promise<Kept<readonly Round[]>> {
    return this.#changedBy(await this.keep(async (db) => kept(await letGo(db, sha256, on))))
  }
  /** The passphrase is forgotten: the same for every closed photo, and the lock is gone. */
  async letLockedGo(on: string): Promise<Kept<readonly Round[]>> {
    return this.#changedBy(await this.safe.letLockedGo(on))
  }
  /** A round that another window has changed meanwhile stays one this window has not seen. */
  #changedBy(outcome: Kept<readonly RoundRow[]>): Kept<readonly Round[]> {
    if (!outcome.ok) return outcome
    for (const { id, savedTimes } of outcome.value)
      if (this.#seen.get(id) === savedTimes - 1) this.#seen.set(id, savedTimes)
    return kept(outcome.value.map(({ round }) => round))
  }

  /** One thing of hers that is no work, such as paper and allowances; plain data. */
  saveSetting(key: string, value: unknown): Promise<Kept<undefined>> {
    return this.keep(async (db) => {
      await db.settings.put({ v: 1, key, value })
      return kept(undefined)
    })
  }

  /** How much room the work takes and may take; undefined where the browser does not say. */
  async room(): Promise<Room | undefined> {
    const { usage, quota } = (await storageManager()?.estimate?.()) ?? {}
    return usage === undefined || quota === undefined
      ? undefined
      : { usedBytes: usage, quotaBytes: quota }
  }

  /** Whether the browser has promised not to clear the work when room gets short. */
  async promised(): Promise<boolean> {
    return (await storageManager()?.persisted?.()) ?? false
  }
  /** Asks it to promise; false when it will not. */
  async persist(): Promise<boolean> {
    return (await storageManager()?.persist?.()) ?? false
  }

  /** Calls `heard` whenever another window of this browser has kept something. */
  watch(heard: () => void): void {
    this.#windows?.close()
    this.#windows = otherWindows(this.#db.name, heard)
  }

  close(): void {
    this.#windows?.close()
    this.#windows = undefined
    this.#db.close()
  }

  /** The same as `inTurn`, and other windows are told once it is kept. */
  async keep<T>(work: (db: Tables) => Promise<Kept<T>>): Promise<Kept<T>> {
    const outcome = await this.inTurn(work)
    if (outcome.ok) this.#windows?.tell()
    return outcome
  }

  /** One transaction over all tables, after every earlier one: all of it is kept, or nothing. */
  inTurn<T>(work: (db: Tables) => Promise<Kept<T>>): Promise<Kept<T>> {
    const db = this.#db
    const run = async (): Promise<Kept<T>> => {
      try {
        return await db.transaction('rw', db.tables, (of) => work(tablesOf(of)))
      } catch (error) {
        return failureOf(error)
      }
    }
    const turn = this.#last.then(run, run)
    this.#last = turn.catch(() => undefined)
    return turn
  }
}

/** Another window has begun a round of this garment under the same number. */
const numberTaken = (beside: readonly unknown[], { id, number }: Round): boolean =>
  beside.some((row) => {
    const read = parseRoundRow(row)
    return read.ok && read.value.id !== id && read.value.round.number === number
  })

const storageManager = (): Partial<StorageManager> | undefined =>
  typeof navigator === 'undefined' ? undefined : navigator.storage

const isoToday = (): string => new Date().toISOString().slice(0, 10)

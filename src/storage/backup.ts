/**
 * A backup is one JSON file that she keeps where she likes: everything in the store, a version,
 * and the SHA-256 of its contents, so that a cut off or altered file is known before any of it
 * is used. Reading one changes nothing; `restore.ts` does that.
 */
import * as v from 'valibot'
import type { Book } from '../measurements/book.ts'
import { isRecord } from '../measurements/stored.ts'
import type { Round } from '../rounds/round.ts'
import { fromBase64, sha256Of, toBase64 } from './bytes.ts'
import { failed, kept, type Failure, type Kept } from './failure.ts'
import { loadAll, loadPhotos, photosWith, type Loaded } from './load.ts'
import { parseAsideRow, parsePixelsRow, type AsideRow } from './rows.ts'
import { HungGarmentSchema, type HungGarment } from './schema/garment.ts'
import { DateSchema, ShaSchema } from './schema/length.ts'
import { BookSchema } from './schema/measured.ts'
import { parsed } from './schema/parsed.ts'
import { KeptPhotoSchema, type KeptPhoto } from './schema/photo.ts'
import { RoundSchema } from './schema/round.ts'
import type { Store } from './store.ts'
import { BACKUP_WORDS, LOCKED } from './storage.words.ts'

export const BACKUP_FORMAT = 'tapetrue-backup'
/**
 * 2: garments carry how they are cut. 3: garments carry cloth, what is sewn and the corrections they
 * began with, photos of a muslin what they show.
 * 4: garments carry her own lengths. Older files are read as they are.
 */
export const BACKUP_VERSION = 4
const READ_VERSIONS = [1, 2, 3, BACKUP_VERSION] as const

export interface BackedUpPhoto {
  readonly photo: KeptPhoto
  readonly pixels?: Uint8Array<ArrayBuffer>
}
export interface BackupContent {
  readonly on: string
  /** SHA-256 of the contents; a copy made by restoring is named after it. */
  readonly sha256: string
  readonly book: Book
  readonly garments: readonly HungGarment[]
  readonly rounds: readonly Round[]
  readonly photos: readonly BackedUpPhoto[]
  readonly settings: Readonly<Record<string, unknown>>
  /** Records that could not be read, here or when the backup was written. */
  readonly aside: readonly AsideRow[]
}
export type BackupRead = { readonly ok: true; readonly content: BackupContent } | Failure

/**
 * The backup as a file.
 * @param on ISO date written into it; @param photos whether the pixels go in too;
 * @param garment only this one with its rounds and photos, and the tape book it is drawn from
 */
export function writeBackup(
  store: Store,
  { on, photos, garment }: { on: string; photos: boolean; garment?: string | undefined },
): Promise<Kept<Blob>> {
  return store
    .inTurn(async (db) => {
      const { savedTimes: _times, photoLock: lock, ...all } = await loadAll(db, on)
      const own = garment === undefined ? all : onlyOf(all, garment)
      const which = garment === undefined ? 'all' : photosWith(garment, all.rounds)
      // After all else: a row that cannot be read is put aside, and goes with what lies there.
      const { photos: found, aside } = await loadPhotos(db, which, on)
      const work = { ...own, aside: garment === undefined ? aside : [] }
      const pixels = photos ? (await db.pixels.toArray()).map(parsePixelsRow) : []
      const rows = pixels.flatMap((p) => (p.ok ? [p.value] : []))
      return kept({ work, found, lock, rows })
    })
    .then(async (outcome) => {
      if (!outcome.ok) return outcome
      const { work, found, lock, rows } = outcome.value
      const { safe } = store
      if (photos && safe.are(lock) === 'locked') return failed(LOCKED)
      const bytes = await safe.bytesOf(rows, lock)
      const shown = await safe.shown(found, lock)
      const payload = {
        ...work,
        photos: shown.map(({ here: _here, closed: _closed, ...photo }) => {
          const buffer = bytes.get(photo.sha256)
          return { photo, ...(buffer && { pixels: toBase64(new Uint8Array(buffer)) }) }
        }),
        aside: work.aside.map(({ id: _id, ...row }) => row),
      }
      const sha256 = await markOf(payload)
      const file = { format: BACKUP_FORMAT, v: BACKUP_VERSION, on, sha256, payload }
      return kept(new Blob([JSON.stringify(file)], { type: 'application/json' }))
    })
}

type Work = Omit<Loaded, 'savedTimes' | 'photoLock'>
function onlyOf(all: Work, garment: string): Work {
  return {
    ...all,
    garments: all.garments.filter(({ id }) => id === garment),
    rounds: all.rounds.filter(({ garmentId }) => garmentId === garment),
  }
}

/** What a backup file holds, or one sentence why it cannot be used. */
export async function readBackup(text: string): Promise<BackupRead> {
  let file: unknown
  try {
    file = JSON.parse(text)
  } catch {
    return {
      ok: false,
      sentence: text.includes(BACKUP_FORMAT) ? BACKUP_WORDS.cutOff : BACKUP_WORDS.notOurs,
    }
  }
  if (!isRecord(file) || file['format'] !== BACKUP_FORMAT)
    return { ok: false, sentence: BACKUP_WORDS.notOurs }
  const version = file['v']
  if (typeof version === 'number' && version > BACKUP_VERSION)
    return { ok: false, sentence: BACKUP_WORDS.fromLater }
  const head = parsed(HeadSchema, file)
  if (!head.ok) return { ok: false, sentence: BACKUP_WORDS.cutOff }
  const { on, sha256, payload } = head.value
  // Of the file itself: a parser may give the keys in another order.
  if ((await markOf(file['payload'])) !== sha256)
    return { ok: false, sentence: BACKUP_WORDS.altered }
  const photos = await readPhotos(payload.photos)
  if (!photos) return { ok: false, sentence: BACKUP_WORDS.altered }
  const aside: AsideRow[] = [...payload.aside].flatMap((row) => {
    const read = parseAsideRow(row)
    return read.ok ? [read.value] : [asideRow('aside', row, read.reason, on)]
  })
  const each = <T>(table: string, rows: readonly unknown[], schema: v.GenericSchema<unknown, T>) =>
    rows.flatMap((row) => {
      const read = parsed(schema, row)
      if (read.ok) return [read.value]
      aside.push(asideRow(table, row, read.reason, on))
      return []
    })
  const content = {
    book: bookOf(payload.book, (id, entry, reason) =>
      aside.push({ v: 1, table: 'book', key: id, reason, asideOn: on, row: entry }),
    ),
    garments: each('garments', payload.garments, HungGarmentSchema),
    rounds: each('rounds', payload.rounds, RoundSchema),
    photos: photos.flatMap(({ photo, pixels }) =>
      each('photos', [photo], KeptPhotoSchema).map((p) => ({
        photo: p,
        ...(pixels && { pixels }),
      })),
    ),
    settings: payload.settings,
  }
  return { ok: true, content: { on, sha256, ...content, aside } }
}

const HeadSchema = v.object({
  v: v.picklist(READ_VERSIONS),
  on: DateSchema,
  sha256: ShaSchema,
  payload: v.looseObject({
    book: v.record(v.string(), v.unknown()),
    garments: v.array(v.unknown()),
    rounds: v.array(v.unknown()),
    photos: v.array(
      v.strictObject({
        photo: v.looseObject({ sha256: ShaSchema }),
        pixels: v.exactOptional(v.string()),
      }),
    ),
    settings: v.record(v.string(), v.unknown()),
    aside: v.array(v.unknown()),
  }),
})
type PhotosInFile = v.InferOutput<typeof HeadSchema>['payload']['photos']

/** The pixels of each photo, held to the photo's own mark; undefined when one is not its own. */
async function readPhotos(photos: PhotosInFile) {
  const read: { readonly photo: unknown; readonly pixels?: Uint8Array<ArrayBuffer> }[] = []
  for (const { photo, pixels } of photos) {
    const bytes = pixels === undefined ? undefined : fromBase64(pixels)
    const own = pixels === undefined || (bytes && (await sha256Of(bytes)) === photo.sha256)
    if (!own) return undefined
    read.push({ photo, ...(bytes && { pixels: bytes }) })
  }
  return read
}

function bookOf(
  entries: Readonly<Record<string, unknown>>,
  spoilt: (id: string, entry: unknown, reason: string) => void,
): Book {
  return Object.entries(entries).reduce<Book>((book, [id, entry]) => {
    const read = parsed(BookSchema, { [id]: entry })
    if (read.ok) return { ...book, ...read.value }
    spoilt(id, entry, read.reason)
    return book
  }, {})
}

/**
 * The contents as text. JSON keeps the order of keys and the digits of numbers (ECMA-262, 25.5),
 * so the same contents give the same mark also after the file was laid out in lines.
 */
const markOf = (payload: unknown): Promise<string> =>
  sha256Of(new TextEncoder().encode(JSON.stringify(payload)))

function asideRow(table: string, row: unknown, reason: string, asideOn: string): AsideRow {
  const key = isRecord(row) ? (row['id'] ?? row['sha256'] ?? row['key']) : undefined
  return { v: 1, table, key: typeof key === 'string' ? key : '', reason, asideOn, row }
}

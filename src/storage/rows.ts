/**
 * Rows as they lie in the store. Every row has `v`; every row is parsed when it is read. What
 * fails is put aside with its reason and shown, never dropped: see load.ts.
 */
import * as v from 'valibot'
import type { Book } from '../measurements/book.ts'
import type { Round } from '../rounds/round.ts'
import { ClosedSchema, isBuffer, type Closed } from './schema/closed.ts'
import { HungGarmentSchema } from './schema/garment.ts'
import { CountSchema, DateSchema, IdSchema, ShaSchema } from './schema/length.ts'
import { parsed, type Parsed } from './schema/parsed.ts'
import { KeptPhotoSchema } from './schema/photo.ts'
import { RoundSchema } from './schema/round.ts'
import { SCHEMA_WORDS } from './schema/schema.words.ts'

/** The one book of the one body. */
export const BOOK_KEY = 'book'
export interface BookRow {
  readonly v: 1
  readonly id: typeof BOOK_KEY
  readonly book: Book
}

export interface RoundRow {
  readonly v: 1
  readonly id: string
  readonly garmentId: string
  /** How often it was kept; two windows that change the same round are told apart by it. */
  readonly savedTimes: number
  readonly round: Round
}

/** The pixels of a photo, in a table of their own so that a list of photos stays light. */
interface OpenPixels {
  readonly v: 1
  readonly sha256: string
  readonly type: string
  readonly bytes: ArrayBuffer
}
/** As they are, or closed with a passphrase: see photo-lock.ts. */
export type PixelsRow = OpenPixels | (Omit<OpenPixels, 'bytes'> & { readonly closed: Closed })

export interface SettingRow {
  readonly v: 1
  readonly key: string
  /** Plain data; whoever wrote it parses it again. */
  readonly value: unknown
}

/** A record that could not be read, with the reason, exactly as it was found. */
export interface AsideRow {
  readonly id?: number
  readonly v: 1
  readonly table: string
  readonly key: string
  readonly reason: string
  readonly asideOn: string
  readonly row: unknown
}

const RoundRowSchema = v.pipe(
  v.strictObject({
    v: v.literal(1),
    id: IdSchema,
    garmentId: IdSchema,
    savedTimes: CountSchema,
    round: RoundSchema,
  }),
  v.check(
    ({ id, garmentId, round }) => round.id === id && round.garmentId === garmentId,
    SCHEMA_WORDS.notItsRow,
  ),
)
const SettingRowSchema = v.strictObject({ v: v.literal(1), key: IdSchema, value: v.unknown() })
const AboutPixels = { v: v.literal(1), sha256: ShaSchema, type: v.string() }
const PixelsRowSchema = v.union([
  v.strictObject({
    ...AboutPixels,
    bytes: v.custom<ArrayBuffer>(isBuffer, SCHEMA_WORDS.lostPixels),
  }),
  v.strictObject({ ...AboutPixels, closed: ClosedSchema }),
])
const AsideRowSchema = v.strictObject({
  id: v.exactOptional(v.number()),
  v: v.literal(1),
  table: v.string(),
  key: v.string(),
  reason: v.string(),
  asideOn: DateSchema,
  row: v.unknown(),
})

export const parseGarmentRow = (row: unknown) => parsed(HungGarmentSchema, row)
export const parseRoundRow = (row: unknown): Parsed<RoundRow> => parsed(RoundRowSchema, row)
export const parsePhotoRow = (row: unknown) => parsed(KeptPhotoSchema, row)
export const parsePixelsRow = (row: unknown): Parsed<PixelsRow> => parsed(PixelsRowSchema, row)
export const parseSettingRow = (row: unknown): Parsed<SettingRow> => parsed(SettingRowSchema, row)
export const parseAsideRow = (row: unknown): Parsed<AsideRow> => parsed(AsideRowSchema, row)

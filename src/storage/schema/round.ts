/** A round with everything it was made from: what she saw, its photos, and what was printed. */
import * as v from 'valibot'
import { GARMENTS, isGarmentId } from '../../draft/garments.ts'
import type { GarmentId } from '../../draft/draft.ts'
import { FIRST_THING_IDS, LINE_IDS } from '../../rounds/first-things.ts'
import { FREEDOMS, MOVEMENTS, VERDICTS, PAPER_HOWS } from '../../rounds/worn.ts'
import { ZONES } from '../../rounds/zones.ts'
import { ChoicesSchema } from './choices.ts'
import { CorrectionsSchema, PinnedSchema, ComplaintIdSchema } from './correction.ts'
import {
  CountSchema,
  DateSchema,
  IdSchema,
  MmSchema,
  NameSchema,
  ShaSchema,
  TextSchema,
} from './length.ts'
import { ConfirmedSchema } from './measured.ts'
import { shown } from './parsed.ts'
import { PHOTO_VIEWS } from './photo.ts'
import { SCHEMA_WORDS } from './schema.words.ts'

export const GarmentIdSchema = v.custom<GarmentId>(
  (name) => typeof name === 'string' && isGarmentId(name),
  (issue) => SCHEMA_WORDS.noGarment(shown(issue.input), Object.keys(GARMENTS)),
)

export const SeenSchema = v.strictObject({
  complaint: ComplaintIdSchema,
  answer: NameSchema,
  pinned: v.exactOptional(PinnedSchema),
  on: DateSchema,
})

export const PhotoRefSchema = v.strictObject({
  view: v.picklist(PHOTO_VIEWS),
  sha256: ShaSchema,
  zone: v.exactOptional(v.picklist(ZONES)),
  addedOn: v.exactOptional(DateSchema),
  removedOn: v.exactOptional(DateSchema),
})

const PlacesSchema = v.record(v.string(), v.pipe(v.strictTuple([MmSchema, MmSchema]), v.readonly()))

export const NumberRecordSchema = v.strictObject({
  lengths: v.record(v.string(), MmSchema),
  points: PlacesSchema,
  tips: v.exactOptional(PlacesSchema),
})

/** A list that rounds kept before version 3 lack: then nothing had been said yet. */
const list = <T>(schema: v.GenericSchema<unknown, T>) =>
  v.optional(v.pipe(v.array(schema), v.readonly()), [])

const WORN = {
  zoneNotes: list(v.strictObject({ zone: v.picklist(ZONES), text: TextSchema, on: DateSchema })),
  movements: list(
    v.strictObject({
      movement: v.picklist(MOVEMENTS),
      freedom: v.picklist(FREEDOMS),
      rose: v.exactOptional(MmSchema),
      on: DateSchema,
    }),
  ),
  verdicts: list(v.strictObject({ verdict: v.picklist(VERDICTS), on: DateSchema })),
  paperWork: list(
    v.strictObject({
      how: v.picklist(PAPER_HOWS),
      on: DateSchema,
      about: v.exactOptional(NameSchema),
    }),
  ),
  cloths: list(v.strictObject({ text: TextSchema, on: DateSchema })),
  // Since version 5.
  firstThings: list(
    v.strictObject({ thing: v.picklist(FIRST_THING_IDS), done: v.boolean(), on: DateSchema }),
  ),
  lines: list(v.strictObject({ line: v.picklist(LINE_IDS), reading: NameSchema, on: DateSchema })),
}

const PrintedSchema = v.strictObject({
  on: DateSchema,
  record: NumberRecordSchema,
  words: v.exactOptional(v.pipe(v.array(TextSchema), v.readonly())),
})

export const RoundSchema = v.strictObject({
  v: v.literal(1),
  id: IdSchema,
  garmentId: IdSchema,
  garment: GarmentIdSchema,
  number: CountSchema,
  from: v.exactOptional(IdSchema),
  body: ConfirmedSchema,
  choices: ChoicesSchema,
  corrections: CorrectionsSchema,
  seen: v.pipe(v.array(SeenSchema), v.readonly()),
  photos: v.pipe(v.array(PhotoRefSchema), v.readonly()),
  notes: TextSchema,
  startedOn: DateSchema,
  printed: v.exactOptional(PrintedSchema),
  ...WORN,
})

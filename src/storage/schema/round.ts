/** A round with everything it was made from: what she saw, its photos, and what was printed. */
import * as v from 'valibot'
import { GARMENTS, isGarmentId } from '../../draft/garments.ts'
import type { GarmentId } from '../../draft/draft.ts'
import { VIEWS } from '../../capture/reading.ts'
import { ChoicesSchema } from './choices.ts'
import { ComplaintIdSchema, CorrectionsSchema, PinnedSchema } from './correction.ts'
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

export const GarmentIdSchema = v.custom<GarmentId>(
  (name) => typeof name === 'string' && isGarmentId(name),
  (issue) =>
    `${shown(issue.input)} is no garment that can be drafted. Use ${Object.keys(GARMENTS).join(', ')}.`,
)

export const SeenSchema = v.strictObject({
  complaint: ComplaintIdSchema,
  answer: NameSchema,
  pinned: v.exactOptional(PinnedSchema),
  on: DateSchema,
})

export const PhotoRefSchema = v.strictObject({
  view: v.picklist(VIEWS),
  sha256: ShaSchema,
  removedOn: v.exactOptional(DateSchema),
})

export const NumberRecordSchema = v.strictObject({
  lengths: v.record(v.string(), MmSchema),
  points: v.record(v.string(), v.pipe(v.strictTuple([MmSchema, MmSchema]), v.readonly())),
})

export const RoundSchema = v.strictObject({
  v: v.literal(1),
  id: IdSchema,
  garmentId: IdSchema,
  garment: GarmentIdSchema,
  number: CountSchema,
  body: ConfirmedSchema,
  choices: ChoicesSchema,
  corrections: CorrectionsSchema,
  seen: v.pipe(v.array(SeenSchema), v.readonly()),
  photos: v.pipe(v.array(PhotoRefSchema), v.readonly()),
  notes: TextSchema,
  startedOn: DateSchema,
  printed: v.exactOptional(v.strictObject({ on: DateSchema, record: NumberRecordSchema })),
})

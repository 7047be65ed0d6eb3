/** Each parser gives exactly the type of the domain: a field added there must be parsed here. */
import { describe, expectTypeOf, it } from 'vitest'
import type * as v from 'valibot'
import type { ViewReading } from '../../../src/capture/reading.ts'
import type { Choices } from '../../../src/draft/choices.ts'
import type { Correction } from '../../../src/fitting/correction.ts'
import type { Pinned } from '../../../src/fitting/pinned.ts'
import type { Book } from '../../../src/measurements/book.ts'
import type { Confirmed } from '../../../src/measurements/confirmed.ts'
import type { PhotoRef, Round, Seen } from '../../../src/rounds/round.ts'
import type { ChoicesSchema } from '../../../src/storage/schema/choices.ts'
import type { CorrectionsSchema, PinnedSchema } from '../../../src/storage/schema/correction.ts'
import type { HungGarment, HungGarmentSchema } from '../../../src/storage/schema/garment.ts'
import type { BookSchema, ConfirmedSchema } from '../../../src/storage/schema/measured.ts'
import type {
  KeptPhoto,
  KeptPhotoSchema,
  ViewReadingSchema,
} from '../../../src/storage/schema/photo.ts'
import type { PhotoRefSchema, RoundSchema, SeenSchema } from '../../../src/storage/schema/round.ts'

/** Readonly of every depth, so that only names, options and values are compared. */
type Same<A, B> = [A] extends [B] ? ([B] extends [A] ? true : false) : false

describe('what a parser gives is what the domain knows', () => {
  it('has the same fields and the same values, both ways', () => {
    expectTypeOf<Same<v.InferOutput<typeof BookSchema>, Book>>().toEqualTypeOf<true>()
    expectTypeOf<Same<v.InferOutput<typeof ConfirmedSchema>, Confirmed>>().toEqualTypeOf<true>()
    expectTypeOf<Same<v.InferOutput<typeof ChoicesSchema>, Choices>>().toEqualTypeOf<true>()
    expectTypeOf<Same<v.InferOutput<typeof PinnedSchema>, Pinned>>().toEqualTypeOf<true>()
    expectTypeOf<
      Same<v.InferOutput<typeof CorrectionsSchema>, readonly Correction[]>
    >().toEqualTypeOf<true>()
    expectTypeOf<Same<v.InferOutput<typeof SeenSchema>, Seen>>().toEqualTypeOf<true>()
    expectTypeOf<Same<v.InferOutput<typeof PhotoRefSchema>, PhotoRef>>().toEqualTypeOf<true>()
    expectTypeOf<Same<v.InferOutput<typeof RoundSchema>, Round>>().toEqualTypeOf<true>()
    expectTypeOf<Same<v.InferOutput<typeof HungGarmentSchema>, HungGarment>>().toEqualTypeOf<true>()
    expectTypeOf<Same<v.InferOutput<typeof KeptPhotoSchema>, KeptPhoto>>().toEqualTypeOf<true>()
    expectTypeOf<Same<v.InferOutput<typeof ViewReadingSchema>, ViewReading>>().toEqualTypeOf<true>()
  })
})

/**
 * Layouts as they lie in a garment's row. One that this program cannot read is left out and made
 * anew; the garment stays.
 */
import * as v from 'valibot'
import { CLOTH_WIDTHS, MOST_WIDTHS } from '../../layout/cloth-wishes.ts'
import type { KeptLayout } from '../../layout/kept.ts'
import { MANNERS } from '../../layout/lay.ts'
import { parsed } from './parsed.ts'
import { DateSchema, FiniteSchema, MmSchema } from './length.ts'

const MannerSchema = v.picklist(MANNERS)
const IndexSchema = v.pipe(v.number(), v.integer(), v.minValue(0), v.maxValue(999))
const PlacedSchema = v.pipe(
  v.strictTuple([IndexSchema, IndexSchema, FiniteSchema, FiniteSchema]),
  v.readonly(),
)
const KeptLayoutSchema = v.strictObject({
  width: v.pipe(MmSchema, v.minValue(CLOTH_WIDTHS.min), v.maxValue(CLOTH_WIDTHS.max)),
  mark: v.pipe(v.string(), v.regex(/^[0-9a-f]{32}$/)),
  on: DateSchema,
  tries: v.pipe(v.number(), v.integer(), v.minValue(0)),
  manner: MannerSchema,
  length: MmSchema,
  sections: v.pipe(
    v.array(
      v.strictObject({ length: MmSchema, placed: v.pipe(v.array(PlacedSchema), v.readonly()) }),
    ),
    v.readonly(),
  ),
  tried: v.pipe(v.record(MannerSchema, MmSchema), v.readonly()),
})

export const LaidSchema = v.pipe(
  v.unknown(),
  v.transform((stored): readonly KeptLayout[] =>
    (Array.isArray(stored) ? stored : []).slice(0, MOST_WIDTHS).flatMap((row: unknown) => {
      const read = parsed(KeptLayoutSchema, row)
      return read.ok ? [read.value] : []
    }),
  ),
)

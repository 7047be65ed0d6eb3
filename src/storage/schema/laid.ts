/**
 * Layouts as they lie in a garment's row. One that this program cannot read is left out and made
 * anew; the garment stays.
 */
import * as v from 'valibot'
import type { PieceId } from '../../draft/piece.ts'
import { PIECE_WORDS } from '../../draft/piece.words.ts'
import { CLOTH_WIDTHS, MOST_WIDTHS } from '../../layout/cloth-wishes.ts'
import type { KeptLayout } from '../../layout/kept.ts'
import { MANNERS } from '../../layout/lay.ts'
import { parsed } from './parsed.ts'
import { DateSchema, FiniteSchema, FURTHEST, MmSchema } from './length.ts'

/** A cutting line of a picture has some forty corners; a file with more was made by another hand. */
const MOST_NUMBERS = 2000
const MannerSchema = v.picklist(MANNERS)
const IndexSchema = v.pipe(v.number(), v.integer(), v.minValue(0), v.maxValue(999))
const PlacedSchema = v.pipe(
  v.strictTuple([IndexSchema, IndexSchema, FiniteSchema, FiniteSchema]),
  v.readonly(),
)
const LineSchema = v.pipe(
  v.array(v.pipe(v.number(), v.integer(), v.minValue(-FURTHEST), v.maxValue(FURTHEST))),
  v.minLength(6),
  v.maxLength(MOST_NUMBERS),
  v.check((flat) => flat.length % 2 === 0),
  v.readonly(),
)
const PictureSchema = v.strictObject({
  layers: v.picklist(['single', 'foldedAlong', 'foldedAcross', 'partlyFolded']),
  start: MmSchema,
  length: MmSchema,
  width: MmSchema,
  double: v.exactOptional(MmSchema),
  selvedge: MmSchema,
  border: v.exactOptional(MmSchema),
  pieces: v.pipe(
    v.array(
      v.strictObject({
        id: v.custom<PieceId>((id) => typeof id === 'string' && Object.hasOwn(PIECE_WORDS, id)),
        kind: v.picklist(['onFold', 'pair', 'single', 'bias']),
        whole: v.boolean(),
        onFold: v.boolean(),
        across: v.boolean(),
        cut: LineSchema,
      }),
    ),
    v.readonly(),
  ),
})
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
  drawn: v.exactOptional(v.pipe(v.array(PictureSchema), v.readonly())),
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

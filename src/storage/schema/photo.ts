/** A kept photo without its pixels: what it shows, what it belongs to, what was read from it. */
import * as v from 'valibot'
import { FOLD_PLACES } from '../../capture/folds/fold-places.ts'
import { MUSLIN_LINES } from '../../capture/muslin-lines.ts'
import type { MuslinSight } from '../../capture/muslin-sight.ts'
import {
  POINT_NAMES,
  VIEWS,
  type OutlineRow,
  type View,
  type ViewReading,
} from '../../capture/reading.ts'
import { isRecord } from '../../measurements/stored.ts'
import { outlineRows } from '../packed-photo.ts'
import { ClosedSchema, type Closed } from './closed.ts'
import { DateSchema, FiniteSchema, IdSchema, MmSchema, ShaSchema, TextSchema } from './length.ts'
import { SCHEMA_WORDS } from './schema.words.ts'

/** A close-up belongs to a muslin and is not measured. */
export type PhotoView = View | 'closeUp'
export const PHOTO_VIEWS = [...VIEWS, 'closeUp'] as const

export interface KeptPhoto {
  readonly v: 1
  readonly sha256: string
  readonly view: PhotoView
  /** null: a measuring photo, which belongs to the body and not to a garment. */
  readonly garmentId: string | null
  readonly roundId: string | null
  readonly takenOn: string
  readonly reading?: ViewReading
  /** What a photo of a muslin shows of its cloth: folds, drawn lines, places she marked. */
  readonly muslin?: MuslinSight
  /** Reading and muslin, closed with a passphrase: then both are not here. */
  readonly closed?: Closed | undefined
  /** The pixels were let go on this day; the numbers stay. */
  readonly removedOn?: string
}

const PointSchema = v.strictObject({ x: FiniteSchema, y: FiniteSchema })
const RefusedSchema = v.strictObject({ ok: v.literal(false), reason: TextSchema })

const JointsSchema = v.record(v.string(), v.strictObject({ at: PointSchema, score: FiniteSchema }))
const PersonSchema = v.variant('ok', [
  v.strictObject({ ok: v.literal(true), score: FiniteSchema, joints: JointsSchema }),
  RefusedSchema,
])

const CornersSchema = v.pipe(
  v.strictTuple([PointSchema, PointSchema, PointSchema, PointSchema]),
  v.readonly(),
)
/** Three by three, row by row. */
const HomographySchema = v.pipe(v.array(FiniteSchema), v.length(9), v.readonly())
const CardSchema = v.variant('ok', [
  v.strictObject({
    ok: v.literal(true),
    card: v.strictObject({
      kind: v.picklist(['sheet', 'id1']),
      corners: CornersSchema,
      widthMm: MmSchema,
      heightMm: MmSchema,
      homography: HomographySchema,
      mmPerPx: FiniteSchema,
      residualPx: FiniteSchema,
      doubt: v.exactOptional(FiniteSchema),
    }),
  }),
  RefusedSchema,
])

const PlacedSchema = v.strictObject({
  at: PointSchema,
  sdPx: FiniteSchema,
  from: TextSchema,
  by: v.picklist(['camera', 'lent', 'guess', 'hand', 'dot']),
})

const ReachSchema = v.strictObject({ mm: FiniteSchema, sd: FiniteSchema })
const ReliefSchema = v.strictObject({
  bustEdge: ReachSchema,
  waistEdge: ReachSchema,
  hipEdge: ReachSchema,
  apexes: ReachSchema,
  shoulders: ReachSchema,
  nape: ReachSchema,
  waistFront: ReachSchema,
  waistBack: ReachSchema,
})

/** A thousand rows a photo and hundreds of photos: looked at by hand, ten times as fast as by schema. */
const OutlineSchema = v.pipe(
  v.unknown(),
  v.rawTransform<unknown, readonly OutlineRow[]>(({ dataset, addIssue, NEVER }) => {
    const rows = isOutline(dataset.value) ? dataset.value : outlineRows(dataset.value)
    if (rows) return rows
    addIssue({ message: SCHEMA_WORDS.outline })
    return NEVER
  }),
)
const isOutline = (value: unknown): value is readonly OutlineRow[] =>
  Array.isArray(value) && value.every(isOutlineRow)
const isOutlineRow = (row: unknown): boolean =>
  isRecord(row) &&
  Object.keys(row).length === 3 &&
  Number.isFinite(row['y']) &&
  Number.isFinite(row['left']) &&
  Number.isFinite(row['right'])

export const ViewReadingSchema = v.strictObject({
  view: v.picklist(VIEWS),
  size: v.strictObject({ width: FiniteSchema, height: FiniteSchema }),
  person: PersonSchema,
  card: CardSchema,
  points: v.record(v.picklist(POINT_NAMES), PlacedSchema),
  missing: v.record(v.picklist(POINT_NAMES), TextSchema),
  outline: OutlineSchema,
  facing: v.picklist([-1, 1]),
  focalPx: v.exactOptional(FiniteSchema),
  trunkFrom: v.exactOptional(FiniteSchema),
  relief: v.exactOptional(ReliefSchema),
  cardBefore: v.exactOptional(ReachSchema),
  tie: v.exactOptional(
    v.strictObject({ factor: FiniteSchema, sdShare: FiniteSchema, y: FiniteSchema }),
  ),
  apexSpots: v.exactOptional(
    v.pipe(v.array(v.strictObject({ at: PointSchema, score: FiniteSchema })), v.readonly()),
  ),
  crown: v.exactOptional(FiniteSchema),
})

const PlacesSchema = v.pipe(v.array(v.picklist(FOLD_PLACES)), v.readonly())
const FoldsSchema = v.variant('ok', [
  v.strictObject({
    ok: v.literal(true),
    folds: v.pipe(
      v.array(
        v.strictObject({
          line: v.pipe(v.array(PointSchema), v.readonly()),
          angle: FiniteSchema,
          lengthMm: FiniteSchema,
          places: PlacesSchema,
        }),
      ),
      v.readonly(),
    ),
    places: PlacesSchema,
  }),
  RefusedSchema,
])
export const MuslinSightSchema = v.strictObject({
  folds: v.exactOptional(FoldsSchema),
  lines: v.pipe(
    v.array(
      v.strictObject({
        name: v.picklist(MUSLIN_LINES),
        from: PointSchema,
        to: PointSchema,
        by: v.picklist(['camera', 'hand']),
      }),
    ),
    v.readonly(),
  ),
  marks: v.exactOptional(v.pipe(v.strictTuple([PointSchema, PointSchema]), v.readonly())),
})

export const KeptPhotoSchema = v.strictObject({
  v: v.literal(1),
  sha256: ShaSchema,
  view: v.picklist(PHOTO_VIEWS),
  garmentId: v.nullable(IdSchema),
  roundId: v.nullable(IdSchema),
  takenOn: DateSchema,
  reading: v.exactOptional(ViewReadingSchema),
  muslin: v.exactOptional(MuslinSightSchema),
  closed: v.optional(ClosedSchema),
  removedOn: v.exactOptional(DateSchema),
})

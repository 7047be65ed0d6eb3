/** Corrections, each kind, as they are stored; the list may not use an id twice. */
import * as v from 'valibot'
import { CHOICE_IDS } from '../../draft/choices.ts'
import { COMPLAINT_IDS } from '../../fitting/complaints/complaint.ts'
import { CountSchema, IdSchema, MmSchema, NameSchema } from './length.ts'
import { OperationSchema } from './operation.ts'
import { shown } from './parsed.ts'
import { PICKS, SCHEMA_WORDS } from './schema.words.ts'

/** The names a record may use; the compiler holds them to the types of the draft. */
export const PIECE_IDS = ['back', 'front'] as const
export const EDGE_NAMES = [
  'centre',
  'neck',
  'overarm',
  'shoulder',
  'sleeveEdge',
  'armhole',
  'side',
  'hem',
] as const
export const HOW_READ = ['foldToPin', 'wholeFold', 'seamToPin', 'levelError', 'slitOpen'] as const

const oneOf = (what: string, names: readonly string[]) => (issue: v.BaseIssue<unknown>) =>
  SCHEMA_WORDS.noneOf(shown(issue.input), what, names)

export const PieceIdSchema = v.picklist(PIECE_IDS, oneOf(PICKS.piece, PIECE_IDS))
export const EdgeNameSchema = v.picklist(EDGE_NAMES, oneOf(PICKS.edge, EDGE_NAMES))
export const ChoiceIdSchema = v.picklist(CHOICE_IDS, oneOf(PICKS.choice, CHOICE_IDS))
export const ComplaintIdSchema = v.picklist(COMPLAINT_IDS, oneOf(PICKS.complaint, COMPLAINT_IDS))

/** A share: more than nothing, at most all. */
const ShareSchema = v.pipe(
  v.number(),
  v.gtValue(0, SCHEMA_WORDS.shareTooSmall),
  v.maxValue(1, SCHEMA_WORDS.shareTooLarge),
)
/** Counted from the underarm, 0 to 1. */
const whereOnEdge = (issue: v.BaseIssue<unknown>): string =>
  SCHEMA_WORDS.noPlaceFromUnderarm(shown(issue.input))
export const AlongSchema = v.pipe(
  v.number(whereOnEdge),
  v.minValue(0, whereOnEdge),
  v.maxValue(1, whereOnEdge),
)
/** A wedge takes cloth out; a width of nothing or less is none. Wider than 1 m is a mistake. */
const wedgeWidth = (issue: v.BaseIssue<unknown>): string => SCHEMA_WORDS.noWedge(shown(issue.input))
export const WidthSchema = v.pipe(
  v.number(wedgeWidth),
  v.gtValue(0, wedgeWidth),
  v.maxValue(1000, wedgeWidth),
)

export const PinnedSchema = v.strictObject({
  how: v.picklist(HOW_READ, oneOf(PICKS.reading, HOW_READ)),
  read: MmSchema,
  share: ShareSchema,
})

export const BecauseSchema = v.strictObject({
  complaint: ComplaintIdSchema,
  cause: NameSchema,
  pinned: PinnedSchema,
  watch: MmSchema,
  round: CountSchema,
})

const base = { v: v.literal(1), id: IdSchema }

/** One side of the body only; without it both. */
const SideSchema = v.exactOptional(
  v.picklist(['left', 'right'], oneOf(PICKS.side, ['left', 'right'])),
)

export const TurnChoiceSchema = v.strictObject({
  ...base,
  kind: v.literal('turn-choice'),
  choice: ChoiceIdSchema,
  by: MmSchema,
  side: SideSchema,
  because: BecauseSchema,
})
export const CloseWedgeSchema = v.strictObject({
  ...base,
  kind: v.literal('close-wedge'),
  piece: PieceIdSchema,
  edge: EdgeNameSchema,
  along: AlongSchema,
  width: v.pipe(WidthSchema, MmSchema),
  because: BecauseSchema,
})
export const OperateSchema = v.strictObject({
  ...base,
  kind: v.literal('operate'),
  operation: OperationSchema,
  side: SideSchema,
  because: BecauseSchema,
})
export const WithdrawSchema = v.strictObject({
  ...base,
  kind: v.literal('withdraw'),
  correction: IdSchema,
  round: CountSchema,
})

export const CorrectionSchema = v.variant(
  'kind',
  [TurnChoiceSchema, CloseWedgeSchema, OperateSchema, WithdrawSchema],
  (issue) => SCHEMA_WORDS.noCorrection(shown(issue.input)),
)

export const CorrectionsSchema = v.pipe(
  v.array(CorrectionSchema, SCHEMA_WORDS.noList),
  v.check((list) => new Set(list.map(({ id }) => id)).size === list.length, SCHEMA_WORDS.sameId),
  v.readonly(),
)

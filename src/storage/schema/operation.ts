/** Operations on the halves as they are stored. */
import * as v from 'valibot'
import { MmSchema } from './length.ts'
import { shown } from './parsed.ts'
import { PICKS, SCHEMA_WORDS } from './schema.words.ts'

const oneOf = (what: string, names: readonly string[]) => (issue: v.BaseIssue<unknown>) =>
  SCHEMA_WORDS.noneOf(shown(issue.input), what, names)
const pick = <const T extends readonly string[]>(what: string, names: T) =>
  v.picklist(names, oneOf(what, names))

const HALVES = ['back', 'front'] as const
const DARTS = ['waistDart', 'waistDart2', 'bustDart', 'bustDart2', 'shoulderDart'] as const
const along = (issue: v.BaseIssue<unknown>): string => SCHEMA_WORDS.noPlace(shown(issue.input))

const piece = pick(PICKS.piece, HALVES)
const dart = pick(PICKS.dart, DARTS)

export const OperationSchema = v.variant(
  'op',
  [
    v.strictObject({
      op: v.literal('ROT'),
      piece,
      edge: pick(PICKS.edge, ['neck', 'armhole', 'sleeveEdge']),
      along: v.pipe(v.number(along), v.minValue(0, along), v.maxValue(1, along)),
      width: MmSchema,
      into: dart,
    }),
    v.strictObject({
      op: v.literal('WEDGE'),
      piece,
      level: pick(PICKS.level, ['chest', 'blade', 'nape', 'waist', 'belowWaist']),
      by: MmSchema,
    }),
    v.strictObject({ op: v.literal('STRIP'), piece, by: MmSchema }),
    v.strictObject({ op: v.literal('DROP'), by: MmSchema }),
    v.strictObject({ op: v.literal('BUST'), by: MmSchema }),
    v.strictObject({
      op: v.literal('MOVE'),
      piece: pick(PICKS.piece, ['back', 'front', 'both']),
      point: pick(PICKS.point, ['shoulderTip', 'sideNeck', 'neckAtCentre', 'underarm']),
      out: MmSchema,
      down: MmSchema,
      carries: v.exactOptional(v.literal(true)),
    }),
    v.strictObject({ op: v.literal('SWAP'), by: MmSchema }),
    v.strictObject({ op: v.literal('GROUP'), piece, dart, out: MmSchema, down: MmSchema }),
    v.strictObject({ op: v.literal('DARTLEN'), piece, dart, by: MmSchema }),
    v.strictObject({ op: v.literal('DARTSHAPE'), piece, dart, by: MmSchema }),
    v.strictObject({ op: v.literal('SPLIT'), width: MmSchema }),
  ],
  (issue) => SCHEMA_WORDS.noOperation(shown(issue.input)),
)

/** Operations on the halves as they are stored. */
import * as v from 'valibot'
import { MmSchema } from './length.ts'
import { shown } from './parsed.ts'

const oneOf = (what: string, names: readonly string[]) => (issue: v.BaseIssue<unknown>) =>
  `${shown(issue.input)} is no ${what}. Use one of ${names.join(', ')}.`
const pick = <const T extends readonly string[]>(what: string, names: T) =>
  v.picklist(names, oneOf(what, names))

const HALVES = ['back', 'front'] as const
const DARTS = ['waistDart', 'waistDart2', 'bustDart', 'bustDart2', 'shoulderDart'] as const
const along = (issue: v.BaseIssue<unknown>): string =>
  `${shown(issue.input)} is no place on an edge; it goes from 0 to 1.`

const piece = pick('piece', HALVES)
const dart = pick('dart', DARTS)

export const OperationSchema = v.variant(
  'op',
  [
    v.strictObject({
      op: v.literal('ROT'),
      piece,
      edge: pick('edge', ['neck', 'armhole', 'sleeveEdge']),
      along: v.pipe(v.number(along), v.minValue(0, along), v.maxValue(1, along)),
      width: MmSchema,
      into: dart,
    }),
    v.strictObject({
      op: v.literal('WEDGE'),
      piece,
      level: pick('level', ['chest', 'blade', 'nape', 'waist', 'belowWaist']),
      by: MmSchema,
    }),
    v.strictObject({ op: v.literal('STRIP'), piece, by: MmSchema }),
    v.strictObject({ op: v.literal('DROP'), by: MmSchema }),
    v.strictObject({ op: v.literal('BUST'), by: MmSchema }),
    v.strictObject({
      op: v.literal('MOVE'),
      piece: pick('piece', ['back', 'front', 'both']),
      point: pick('point', ['shoulderTip', 'sideNeck', 'neckAtCentre', 'underarm']),
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
  (issue) => `${shown(issue.input)} is no operation.`,
)

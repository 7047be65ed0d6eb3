/** What the draft command writes as numbers: lengths, points, and what the proof or a refusal says. */
import * as v from 'valibot'
import type { Why } from '../../fitting/refusal.ts'

/** Complete by construction: a reason of refusal that is not listed does not compile. */
const REFUSALS: Readonly<Record<Why['id'], true>> = {
  choiceOutOfRange: true,
  noDart: true,
  noEdge: true,
  wedgeTooWide: true,
  wedgeMissesEdge: true,
  edgeSlants: true,
  dartTooWide: true,
  cannotDraw: true,
  noPlace: true,
  noTip: true,
  noSideDart: true,
  dartTooSmall: true,
  sideTooShort: true,
  nothingToWithdraw: true,
}
const FindingNumbersSchema = v.strictObject({
  id: v.pipe(
    v.string(),
    v.regex(new RegExp(`^(?:refused:(?:${Object.keys(REFUSALS).join('|')})|[a-zA-Z]+)$`)),
    v.description('a finding of the proof, or refused: and why a correction was not made'),
  ),
  severity: v.picklist(['stop', 'muslin', 'note']),
  place: v.pipe(
    v.string(),
    v.description('an edge as front.sleeveEdge, a choice, or the id of a correction'),
  ),
  /** mm; null where the reason has no number. */
  value: v.nullable(v.number()),
  limit: v.nullable(v.number()),
})

const numbered = <T extends v.GenericSchema>(value: T) => v.record(v.string(), value)

export const DraftNumbersSchema = v.strictObject({
  points: v.pipe(
    numbered(v.strictTuple([v.number(), v.number()])),
    v.description('piece.P: mm to the right of the fold and down from the nape level'),
  ),
  lengths: v.pipe(numbered(v.number()), v.description('piece.edge and piece.waistDart, mm')),
  findings: v.array(FindingNumbersSchema),
})

export type FindingNumbers = v.InferOutput<typeof FindingNumbersSchema>
export type DraftNumbers = v.InferOutput<typeof DraftNumbersSchema>

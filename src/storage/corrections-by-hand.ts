/** Corrections written by hand in a file of numbers, filled up to what is recorded. */
import type { ComplaintId } from '../fitting/complaints/complaint.ts'
import type { Because, Correction } from '../fitting/correction.ts'
import type { Operation } from '../fitting/ops/operation.ts'
import { operationSaid } from '../fitting/ops/said.ts'
import { mm, type Mm } from '../units/length.ts'
import { CorrectionsSchema } from './schema/correction.ts'
import type { CorrectionInput } from './schema/draft-input.ts'
import { parsed, type Parsed } from './schema/parsed.ts'

/** Where the numbers of a file come from, in the words of a record and of the log. */
export const GIVEN_BY_FILE = 'given on the command line'

/** The list with ids c1, c2, … and reasons where they were left out. */
export function numberedCorrections(
  given: readonly CorrectionInput[],
): Parsed<readonly Correction[]> {
  const taken = new Set(given.flatMap(({ id }) => (id === undefined ? [] : [id])))
  let count = 0
  const nextId = (): string => {
    do count += 1
    while (taken.has(`c${count}`))
    return `c${count}`
  }
  const list: unknown[] = []
  for (const [i, entry] of given.entries()) {
    const id = entry.id ?? nextId()
    if (entry.kind === 'withdraw') list.push({ round: 1, ...entry, v: 1, id })
    else {
      const because = entry.because ?? becauseOf(entry)
      if (!because)
        return {
          ok: false,
          reason: `corrections.${i}: no complaint leads to a wedge there. Give its because, or a piece and edge that a complaint names.`,
        }
      list.push({ ...entry, v: 1, id, because })
    }
  }
  const read = parsed(CorrectionsSchema, list)
  return read.ok ? read : { ok: false, reason: `corrections.${read.reason}` }
}

type Changing = Exclude<CorrectionInput, { kind: 'withdraw' }>

/**
 * A correction by hand has no muslin behind it, but a record wants its reason. A wedge at the sleeve
 * edge gets the complaint that led to it, whose name its step says; a turned choice gets the first
 * of the two that were turned by hand first, because nothing of a draft reads it.
 */
function becauseOf(entry: Changing): Because | undefined {
  if (entry.kind === 'operate') return ofOperation(entry.operation)
  if (entry.kind === 'turn-choice')
    return given(entry.choice === 'lengthAdded' ? 'W1' : 'B8', mm(entry.by))
  return entry.piece === 'front' && entry.edge === 'sleeveEdge'
    ? given('B8', mm(entry.width))
    : undefined
}
const given = (complaint: ComplaintId, read: Mm): Because => ({
  complaint,
  cause: GIVEN_BY_FILE,
  pinned: { how: 'wholeFold', read, share: 1 },
  watch: mm(0),
  round: 1,
})

/** An operation by hand gets the complaint that most often leads to it. */
const USUAL: Readonly<Record<Operation['op'], ComplaintId>> = {
  ROT: 'B8',
  WEDGE: 'K2',
  STRIP: 'K1',
  DROP: 'B2',
  BUST: 'B1',
  MOVE: 'SH1',
  SWAP: 'SH5',
  GROUP: 'B5',
  DARTLEN: 'B4',
  DARTSHAPE: 'K6',
  SPLIT: 'B7',
}
const ofOperation = (op: Operation): Because => given(USUAL[op.op], operationSaid(op).amount)

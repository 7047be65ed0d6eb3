/**
 * A number that the muslin proves wrong goes back to the book: what to tape again, and what it
 * would have to be off by. A proposal drives nothing until the tape confirms it.
 */
import type { MeasurementId } from '../../measurements/catalogue.ts'
import type { NewDoubt } from '../../measurements/book.ts'
import { mm } from '../../units/length.ts'
import type { ComplaintId } from '../complaints/complaint.ts'
import type { Decision } from './decide.ts'

export type TapeProposal = NewDoubt & { readonly complaint: ComplaintId }

/** Measurements a change of length or place rests on, and which way: 1 more, −1 less, ±2 twice. */
const PROVED: Partial<Record<ComplaintId, readonly (readonly [MeasurementId, number])[]>> = {
  W1: [
    ['napeToWaist', 1],
    ['waistToBustLevel', 1],
  ],
  W2: [
    ['napeToWaist', -1],
    ['waistToBustLevel', -1],
  ],
  B2: [['sideNeckOverApexToWaist', 1]],
  B14: [['sideNeckOverApexToWaist', -1]],
  B5: [['waistToBustLevel', -1]],
  B6: [['apexSpacing', 2]],
  K1: [['acrossBack', 2]],
  A4: [['acrossBack', -2]],
  B11: [['acrossChest', 2]],
  B10: [['acrossChest', -2]],
}
const AGAINST: readonly string[] = ['in', 'up', 'narrower', 'back']

export function proposalsFrom(decision: Decision, on: string): readonly TapeProposal[] {
  const proved = decision.changes.flatMap((j) => {
    const [first] = j.edits
    const flip = j.leads === 'B5' || j.leads === 'B6' ? AGAINST.includes(first?.way ?? '') : false
    return (PROVED[j.leads] ?? []).map(([measurement, times]) => ({
      measurement,
      by: mm((first?.raw ?? 0) * times * (flip ? -1 : 1)),
      complaint: j.id,
      on,
    }))
  })
  const doubted = decision.asks.flatMap(({ complaint, tape }) =>
    (tape ?? []).map((measurement) => ({ measurement, complaint, on })),
  )
  return [...proved, ...doubted]
}

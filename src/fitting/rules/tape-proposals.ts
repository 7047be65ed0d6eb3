/**
 * A number that the muslin proves wrong goes back to the book: what to tape again, and what it
 * would have to be off by. A proposal drives nothing until the tape confirms it.
 */
import type { MeasurementId } from '../../measurements/catalogue.ts'
import type { NewDoubt } from '../../measurements/book.ts'
import { mm } from '../../units/length.ts'
import type { ComplaintId, Way } from '../complaints/complaint.ts'
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

/**
 * What the tape has brought to the draft since the muslin was cut, on the half piece and the way the
 * work goes, mm: the pin was read before it and has that much less to say.
 */
export function broughtByTape(
  leads: ComplaintId,
  way: Way | undefined,
  moved: Readonly<Partial<Record<MeasurementId, number>>> = {},
): number {
  const flip = flips(leads, way) ? -1 : 1
  const parts = (PROVED[leads] ?? []).map(([id, times]) => ((moved[id] ?? 0) / times) * flip)
  return parts.length === 0 ? 0 : Math.max(0, Math.min(...parts))
}
const flips = (leads: ComplaintId, way: Way | undefined): boolean =>
  (leads === 'B5' || leads === 'B6') && AGAINST.includes(way ?? '')

export function proposalsFrom(decision: Decision, on: string): readonly TapeProposal[] {
  const proved = decision.changes.flatMap((j) => {
    const [first] = j.edits
    const flip = flips(j.leads, first?.way)
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

/**
 * What the most of a round left over is looked for on the next muslin. It was read once already, so
 * a second reading that agrees makes the two one amount, their mean, and that may be cut where a
 * first reading so small would not be: paper is kept true to 1.6 mm (a sewing magazine). Readings
 * agree as left and right do. Common practice, no source, for the rest.
 */
import { mm, type Mm } from '../../units/length.ts'
import { complaintOf } from '../complaints/catalogue.ts'
import { causeId, COMPLAINT_IDS, type ComplaintId, type Work } from '../complaints/complaint.ts'
import { keptCause } from '../complaints/kept-causes.ts'
import { inForce, type Correction } from '../correction.ts'
import { shareOfRead, type AmountRules, type Pin } from '../half-amount.ts'
import { halfOf } from './pins.ts'
import { readFor } from './edit-amounts.ts'
import { followed } from './followed.ts'

export interface Watched {
  readonly complaint: ComplaintId
  /** Number of the cause that was settled. */
  readonly cause: number
  /** Left over on the half piece, mm. */
  readonly left: Mm
  readonly side?: 'left' | 'right'
}

/** Paper is not cut truer than this, mm. */
const TRUE_TO = 1.6
/** Less than this is no more than the rounding of a print, mm. */
const LEFT_LEAST = 0.5

/** What the muslin before this one left over. */
export function watchedFrom(corrections: readonly Correction[], round: number): readonly Watched[] {
  const before = inForce(corrections).flatMap((c) =>
    c.kind !== 'withdraw' && c.because.round < round ? [c] : [],
  )
  const last = Math.max(...before.map((c) => c.because.round))
  const list = before.flatMap((c): Watched[] => {
    const { complaint, watch } = c.because
    const cause = keptCause(c.because)
    const found = complaintOf(complaint).causes.find((x) => {
      const end = followed(complaint, x).chain.at(-1)
      return end && causeId(end.of, end.number) === cause
    })
    if (c.because.round !== last || watch < LEFT_LEAST || !found) return []
    const side = c.kind === 'operate' ? c.side : undefined
    return [{ complaint, cause: found.number, left: watch, ...(side ? { side } : {}) }]
  })
  return COMPLAINT_IDS.flatMap((id) => {
    const own = list.filter(({ complaint }) => complaint === id)
    return own.filter((w, i) => own.findIndex(({ side }) => side === w.side) === i)
  })
}

/** The mean of what was left and what is read now; undefined where the two do not agree. */
export function remainderOf(
  { left }: Watched,
  pins: readonly Pin[],
  work: Work,
  rules: AmountRules,
): Mm | undefined {
  const [pin] = pins
  if (!pin || pins.some((p) => p.value <= 0)) return undefined
  const read =
    Math.abs(halfOf(pins, work.readAs)) * shareOfRead(readFor(work, pin.how), work.moves, rules)
  const both = (read + left) / 2
  return Math.abs(read - left) <= rules.sameSides && both >= TRUE_TO ? mm(both) : undefined
}

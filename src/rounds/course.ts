/**
 * The course of a garment over its rounds: by how much each zone was corrected after each muslin,
 * what was still complained of, and the zones that go up and down instead of settling, with the
 * causes that were not tried yet. A correction is read only by its complaint and its one amount.
 */
import { complaintOf } from '../fitting/complaints/catalogue.ts'
import { causeId, type ComplaintId } from '../fitting/complaints/complaint.ts'
import { keptCause } from '../fitting/complaints/kept-causes.ts'
import type { Correction } from '../fitting/correction.ts'
import { mm, type Mm } from '../units/length.ts'
import { NOTHING_TO_CHANGE, type Round } from './round.ts'
import { ZONES, zoneOfComplaint, type Zone } from './zones.ts'

export interface CourseStep {
  readonly round: number
  /** Sum of what was decided for this round, let out positive, taken in negative, by zone. */
  readonly corrected: Readonly<Partial<Record<Zone, Mm>>>
  /** Complaints of this muslin that ask for something. */
  readonly open: readonly ComplaintId[]
}

type Decided = Exclude<Correction, { kind: 'withdraw' }>

/** Let out is positive, taken in negative, whatever the kind of correction. */
function amountOf(c: Decided): number {
  if (c.kind === 'turn-choice') return c.by
  if (c.kind === 'close-wedge') return -c.width
  const op = c.operation
  return 'by' in op ? op.by : 'width' in op ? -op.width : op.out + op.down
}

const zoneOf = (c: Decided): Zone => zoneOfComplaint(c.because.complaint)

/** Answers that leave nothing to do. */
const SETTLED = [NOTHING_TO_CHANGE]

export function courseOf(line: readonly Round[]): readonly CourseStep[] {
  return line.map((round, k) => {
    const before = new Set((line[k - 1]?.corrections ?? []).map((c) => c.id))
    const fresh = round.corrections.filter((c) => !before.has(c.id))
    const corrected: Partial<Record<Zone, Mm>> = {}
    const add = (c: Decided, sign: 1 | -1): void => {
      corrected[zoneOf(c)] = mm((corrected[zoneOf(c)] ?? 0) + sign * amountOf(c))
    }
    for (const c of fresh) {
      if (c.kind !== 'withdraw') add(c, 1)
      else {
        const back = round.corrections.find((other) => other.id === c.correction)
        if (back && back.kind !== 'withdraw') add(back, -1)
      }
    }
    const open = round.seen.filter((s) => !SETTLED.includes(s.answer)).map((s) => s.complaint)
    return { round: round.number, corrected, open: [...new Set(open)] }
  })
}

export interface Swing {
  readonly zone: Zone
  /** The rounds it went up and down in. */
  readonly rounds: readonly number[]
  /** Causes of its complaints that no correction was made for yet. */
  readonly causes: readonly { readonly complaint: ComplaintId; readonly cause: string }[]
}

/** So many turns of direction in a row are no settling. */
const TURNS = 3

/** Zones whose last three corrections go one way, the other, and the first again. */
export function swings(line: readonly Round[]): readonly Swing[] {
  const steps = courseOf(line)
  return ZONES.flatMap((zone): Swing[] => {
    const moves = steps.filter((s) => (s.corrected[zone] ?? 0) !== 0).slice(-TURNS)
    const signs = moves.map((s) => Math.sign(s.corrected[zone] ?? 0))
    const turning = signs.every((sign, k) => k === 0 || sign === -(signs[k - 1] ?? 0))
    if (moves.length < TURNS || !turning) return []
    return [{ zone, rounds: moves.map((s) => s.round), causes: untried(line, zone) }]
  })
}

function untried(line: readonly Round[], zone: Zone): Swing['causes'] {
  const made = (line.at(-1)?.corrections ?? []).flatMap((c) =>
    c.kind === 'withdraw' ? [] : [c.because],
  )
  const tried = new Set(made.map(keptCause))
  const said = [...line.flatMap((r) => r.seen), ...made].map((s) => s.complaint)
  return [...new Set(said)]
    .filter((id) => zoneOfComplaint(id) === zone)
    .flatMap((complaint) =>
      complaintOf(complaint).causes.flatMap(({ number, name }) =>
        tried.has(causeId(complaint, number)) ? [] : [{ complaint, cause: name }],
      ),
    )
}

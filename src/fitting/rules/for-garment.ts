/**
 * The same work on another garment: a sleeve cut in one has an overarm and a sleeve edge where a
 * bodice has a shoulder and an armhole, and takes a turn up in its waist dart. Common practice.
 */
import type { GarmentId } from '../../draft/draft.ts'
import type { Angle, Edit, PinPlace, Target, Work } from '../complaints/complaint.ts'
import type { MeasurementId } from '../../measurements/catalogue.ts'
import type { Reaches } from '../reaches.ts'

export interface GarmentFacts {
  readonly garment: GarmentId | undefined
  readonly reaches: Reaches
  /** Darts the draft has; undefined while only lengths are known. */
  readonly darts: readonly string[] | undefined
  /** Darts that can take no more of a turn. */
  readonly full?: readonly string[]
  /** Numbers that are known by tape; what rests on them stays where it is. */
  readonly taped?: readonly MeasurementId[]
}

export const cutInOne = ({ garment }: Pick<GarmentFacts, 'garment'>): boolean =>
  garment === 'blouse'
const sleeved = ({ garment }: GarmentFacts): boolean =>
  garment === undefined || garment === 'sleeve'

/** The work on this garment; no edits are left where it has no meaning there. */
export function workFor(work: Work, facts: GarmentFacts, where: PinPlace | undefined): Work {
  const lone = work.edits.every((e) => e.target.startsWith('sleeve.'))
  const edits = work.edits.filter(
    (e) =>
      (lone || sleeved(facts) || !e.target.startsWith('sleeve.')) &&
      !(e.point === 'underarm' && underarmHeld(work, facts)),
  )
  return { ...work, edits: edits.flatMap((e) => editFor(e, facts, where)) }
}

/** A slope takes the underarm along, unless the level of the armpit was taped: that stands. */
export const underarmHeld = (work: Work, { taped }: GarmentFacts): boolean =>
  (taped?.includes('napeToArmpitLevel') ?? false) &&
  work.edits.some(({ op, point }) => op === 'MOVE' && point === 'shoulderTip')

function editFor(e: Edit, facts: GarmentFacts, where: PinPlace | undefined): readonly Edit[] {
  const { garment } = facts
  if (e.target.startsWith('sleeve.') && garment !== undefined && garment !== 'sleeve') return []
  if (DRAPED_ONLY.includes(e.op) && garment !== undefined && !cutInOne(facts)) return []
  const named = facts.darts === undefined ? where : undefined
  const swung = cutInOne(facts) ? onCutInOne(e) : e
  if (!swung) return []
  const target = targetFor(swung.target, facts, named)
  const angle = swung.angle && angleFor(swung.angle, facts)
  return [{ ...swung, target, ...(angle ? { angle } : {}) }]
}
const DRAPED_ONLY: readonly string[] = ['ANGLE', 'SWEEP', 'UNDERARM']

/** No shoulder tip: the overarm swings about the side neck, the underarm is a point of the side. */
function onCutInOne(e: Edit): Edit | undefined {
  const half = e.target.startsWith('front.') ? 'front' : 'back'
  if (e.point === 'shoulderTip' && e.op === 'EDGE') return undefined
  if (e.point === 'shoulderTip' && e.op === 'MOVE')
    return {
      op: 'ANGLE',
      target: `${half}.overarm`,
      way: e.way,
      angle: { kind: 'swing', radius: 'overarm' },
    }
  if (e.point === 'underarm' && e.op === 'MOVE')
    return { ...e, op: 'UNDERARM', target: `${half}.side` }
  return e
}

function targetFor(target: Target, facts: GarmentFacts, where: PinPlace | undefined): Target {
  if (!cutInOne(facts)) return target
  switch (target) {
    case 'front.armhole':
      return where === 'armhole' ? target : 'front.sleeveEdge'
    case 'back.armhole':
      return where === 'armhole' ? target : 'back.sleeveEdge'
    case 'front.shoulder':
      return where === 'shoulder' ? target : 'front.overarm'
    case 'back.shoulder':
      return where === 'shoulder' ? target : 'back.overarm'
    default:
      return target
  }
}

/**
 * The dart that takes a turn up: on a cut-in-one front the waist dart, else the one named, which is
 * drawn where the draft lacks it; the other where that one is full. Of lengths alone, the one
 * whose leg is known.
 */
function angleFor(angle: Angle, facts: GarmentFacts): Angle {
  if (angle.kind !== 'turn' || !angle.opens) return angle
  const { target, reach } = angle.opens
  const other = OTHER[target]
  if (!other) return angle
  const swap = { ...angle, opens: other }
  const { darts, full = [], reaches } = facts
  if (full.includes(target) !== full.includes(other.target))
    return full.includes(target) ? swap : angle
  const inOne = cutInOne(facts) && target === 'front.bustDart'
  if (inOne && (darts?.includes(other.target) ?? true)) return swap
  if (darts === undefined)
    return reaches[reach] === undefined && reaches[other.reach] !== undefined ? swap : angle
  // A waist dart that is not there would have to be cut up from the hem: the other one is there.
  const has = (t: Target): boolean => darts.includes(t)
  return target.endsWith('waistDart') && !has(target) && has(other.target) ? swap : angle
}
const OTHER: Partial<Record<Target, NonNullable<Extract<Angle, { kind: 'turn' }>['opens']>>> = {
  'front.bustDart': { target: 'front.waistDart', reach: 'apexToWaist' },
  'front.waistDart': { target: 'front.bustDart', reach: 'apexToSide' },
  'back.shoulderDart': { target: 'back.waistDart', reach: 'bladeToWaist' },
}

/**
 * All estimates from the readings of up to three photographs. Pure, so that numbers follow when she
 * drags a point. A photograph that is missing or refused takes only its own measures with it.
 */
import {
  ESTIMATE_IDS,
  type EstimateId,
  type EstimateOutcome,
  type EstimateOutcomes,
} from '../measurements/estimate.ts'
import { tied } from './body-height.ts'
import { apexSpacing } from './estimates/apex-spacing.ts'
import { breadth } from './estimates/breadth.ts'
import { depth } from './estimates/depth.ts'
import { girth } from './estimates/girth.ts'
import { acrossBack, besideExpected, knownOf, napeToArmpitLevel } from './estimates/expected.ts'
import { besideHeight } from './estimates/height-alone.ts'
import { napeToWaist } from './estimates/nape-to-waist.ts'
import { noCard } from './estimates/scene.ts'
import { sideNeckOverApexToWaist } from './estimates/over-apex-to-waist.ts'
import { shoulderDrop } from './estimates/shoulder-drop.ts'
import { shoulderLength, shoulderLengthOf } from './estimates/shoulder-length.ts'
import { sideNeckToApex } from './estimates/side-neck-to-apex.ts'
import { waistToBustLevel } from './estimates/waist-to-bust-level.ts'
import { waistToHip } from './estimates/waist-to-hip.ts'
import { shareLevels } from './levels.ts'
import { VIEWS, type Readings } from './reading.ts'
import { withRelief } from './relief-shared.ts'

export function estimatesFrom(readings: Readings): EstimateOutcomes {
  // Without any card the first thing to mend is the card, whichever photos are there.
  const people = VIEWS.flatMap((view) => readings[view] ?? []).filter(({ person }) => person.ok)
  const [first] = people
  if (first && people.every(({ card }) => !card.ok)) return allRefused(noCard(first))
  const shared = sharedReadings(readings)
  const bustBreadth = breadth(shared, 'bust')
  const waistBreadth = breadth(shared, 'waist')
  const hipBreadth = breadth(shared, 'hip')
  const bustDepth = depth(shared, 'bust')
  const waistDepth = depth(shared, 'waist')
  const hipDepth = depth(shared, 'hip')
  const girths = {
    bust: girth('bust', bustBreadth, bustDepth),
    waist: girth('waist', waistBreadth, waistDepth),
    hip: girth('hip', hipBreadth, hipDepth),
  }
  const known = knownOf(shared, girths)
  const back = napeToWaist(shared)
  const outcomes: EstimateOutcomes = {
    napeToWaist: back,
    waistToBustLevel: waistToBustLevel(shared),
    apexSpacing: apexSpacing(shared),
    sideNeckToApex: sideNeckToApex(shared),
    sideNeckOverApexToWaist: sideNeckOverApexToWaist(shared),
    shoulderLength: shoulderLength(shared),
    shoulderLengthLeft: shoulderLengthOf(shared, 'Left'),
    shoulderLengthRight: shoulderLengthOf(shared, 'Right'),
    shoulderSlopeLeft: shoulderDrop(shared, 'Left'),
    shoulderSlopeRight: shoulderDrop(shared, 'Right'),
    acrossBack: acrossBack(shared, known),
    napeToArmpitLevel: napeToArmpitLevel(back, known),
    waistToHip: waistToHip(shared, waistBreadth, hipBreadth),
    bustBreadth,
    waistBreadth,
    hipBreadth,
    bustDepth,
    waistDepth,
    hipDepth,
    bustGirth: girths.bust,
    waistGirth: girths.waist,
    hipGirth: girths.hip,
  }
  const said = ESTIMATE_IDS.map((id) => {
    const outcome = besideHeight(id, outcomes[id])
    return [id, besideExpected(id, outcome, known, shared)] as const
  })
  return Object.fromEntries(said) as Record<EstimateId, EstimateOutcome>
}

/** The readings with all they lend each other: levels, relief, scale. */
export const sharedReadings = (readings: Readings): Readings =>
  tied(withRelief(tied(withRelief(shareLevels(readings)))))

function allRefused(reason: string): EstimateOutcomes {
  const refusal: EstimateOutcome = { ok: false, reason }
  const pairs = ESTIMATE_IDS.map((id) => [id, refusal] as const)
  return Object.fromEntries(pairs) as Record<EstimateId, EstimateOutcome>
}

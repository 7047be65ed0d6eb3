/**
 * The photos beside what two surveys of women lead one to expect of her: a length the photos show is
 * drawn a little towards that, and a length they do not show is only that, and says so.
 */
import type { Estimate, EstimateId, EstimateOutcome } from '../../measurements/estimate.ts'
import { expectedOf, type Expected, type Known } from '../../measurements/tape-expected.ts'
import { mm } from '../../units/length.ts'
import { middle } from '../outline.ts'
import { markedByHer, VIEWS, type PointName, type Readings, type ViewReading } from '../reading.ts'
import { behindIn, scaleAt } from '../scale.ts'
import { basisOfAll, noteBasis, type NoteId } from '../seen.ts'
import { NO_NUMBER_WORDS } from '../seen.words.ts'
import { NINE_IN_TEN } from './scene.ts'

/** What an estimate is called in the tape model. */
export const MODEL_NAMES: Readonly<Partial<Record<EstimateId, string>>> = {
  napeToWaist: 'nape-to-waist',
  apexSpacing: 'bust-point-distance',
  sideNeckToApex: 'neck-side-to-bust-point',
  shoulderLength: 'shoulder-length',
  shoulderLengthLeft: 'shoulder-length',
  shoulderLengthRight: 'shoulder-length',
  acrossBack: 'across-back',
  napeToArmpitLevel: 'scye-depth',
  bustGirth: 'bust',
  waistGirth: 'waist',
  hipGirth: 'hip',
}
/**
 * Women of another survey lay up to 1.26 times as far from what the model expected, and their mean up to
 * 1.35 of its standard deviations off (ANSUR 1988 against ANSUR II, own comparison): 1.26 and
 * 1.35 / sqrt 3 together.
 */
const OTHER_WOMEN = 1.48
/** The shoulder's drop is not in the model: 38.7 mm, 1st to 99th percentile 18.7 to 59.2, 7th Korean body survey, 2015. */
const DROP: Expected = { mean: 38.7, sd: (59.2 - 18.7) / (2 * 2.326) }

/** Crown to ankle joints, front and back; below the joint and under the hair: 16 rendered bodies, two sets. */
const STATURE = { front: 86, back: 64, sd: 20 } as const
/** Shoulder points of the photos against the survey's acromion to acromion: same bone, other hands. mm. */
const BONE_SD = 15

/** What the photos know of her that the model can lean on. */
export function knownOf(
  readings: Readings,
  girths: Readonly<Record<'bust' | 'waist' | 'hip', EstimateOutcome>>,
): readonly Known[] {
  const stature = meanOf(readings, (reading) => {
    const ankle = reading.person.ok && middle(reading.person.joints, 'ankle')
    const scale = scaleAt(reading, 0, 0)
    if (!ankle || !scale || reading.crown === undefined) return undefined
    return (
      (ankle.y - reading.crown) * scale.mmPerPx +
      STATURE[reading.view === 'back' ? 'back' : 'front']
    )
  })
  const around = Object.entries(girths).flatMap(([name, outcome]) =>
    outcome.ok
      ? [{ name, value: outcome.estimate.value, sd: outcome.estimate.pm90 / NINE_IN_TEN }]
      : [],
  )
  return stature === undefined
    ? around
    : [{ name: 'stature', value: stature, sd: STATURE.sd }, ...around]
}

/** Straight from shoulder point to shoulder point, as far as front and back show it. */
function shoulders(readings: Readings): Known | undefined {
  const value = meanOf(readings, (reading) => {
    const { shoulderLeft, shoulderRight } = reading.points
    const { mm: behind, sd } = behindIn(reading, 'shoulders')
    const scale = scaleAt(reading, behind, sd)
    if (!shoulderLeft || !shoulderRight || !scale) return undefined
    return Math.abs(shoulderLeft.at.x - shoulderRight.at.x) * scale.mmPerPx
  })
  return value === undefined ? undefined : { name: 'biacromial', value, sd: BONE_SD }
}

function meanOf(
  readings: Readings,
  of: (reading: ViewReading) => number | undefined,
): number | undefined {
  const values = [readings.front, readings.back].flatMap(
    (reading) => (reading && of(reading)) ?? [],
  )
  return values.length > 0 ? values.reduce((sum, v) => sum + v, 0) / values.length : undefined
}

/** A length of the photos drawn towards what is expected of it, by how sure each is. */
export function drawnTowards(outcome: EstimateOutcome, expected: Expected): EstimateOutcome {
  if (!outcome.ok) return outcome
  const { value, pm90, basis } = outcome.estimate
  const [seen, usual] = [1 / (pm90 / NINE_IN_TEN) ** 2, 1 / expected.sd ** 2]
  const mean = (value * seen + expected.mean * usual) / (seen + usual)
  const estimate: Estimate = {
    value: mm(mean),
    pm90: mm(NINE_IN_TEN / Math.sqrt(seen + usual)),
    basis: usual > seen ? basisOfAll(basis, noteBasis('surveysAlone')) : basis,
  }
  return { ok: true, estimate }
}

/** Where she marked one of these herself, her mark stands and nothing is drawn towards a survey. */
const MARKS: Readonly<Partial<Record<EstimateId, readonly PointName[]>>> = {
  napeToWaist: ['nape'],
  apexSpacing: ['apexLeft', 'apexRight'],
  sideNeckToApex: ['sideNeckLeft', 'sideNeckRight', 'apexLeft', 'apexRight', 'bustLevel'],
  shoulderLength: ['shoulderLeft', 'shoulderRight'],
  shoulderLengthLeft: ['sideNeckLeft', 'shoulderLeft'],
  shoulderLengthRight: ['sideNeckRight', 'shoulderRight'],
  shoulderSlopeLeft: ['sideNeckLeft', 'shoulderLeft'],
  shoulderSlopeRight: ['sideNeckRight', 'shoulderRight'],
}

export function besideExpected(
  id: EstimateId,
  outcome: EstimateOutcome,
  known: readonly Known[],
  readings: Readings,
): EstimateOutcome {
  const marked = (MARKS[id] ?? []).some((name) =>
    VIEWS.some((view) => markedByHer(readings[view]?.points[name])),
  )
  if (marked) return outcome
  if (id === 'shoulderSlopeLeft' || id === 'shoulderSlopeRight')
    return drawnTowards(outcome, wider(DROP))
  const name = MODEL_NAMES[id]
  if (name === undefined || known.some((one) => one.name === name)) return outcome
  return drawnTowards(outcome, wider(expectedOf(name, known)))
}

/** Across the back between the arm creases, which no photo shows: from shoulders and girths. */
export function acrossBack(readings: Readings, known: readonly Known[]): EstimateOutcome {
  const bones = shoulders(readings)
  if (!bones) return { ok: false, reason: NO_NUMBER_WORDS.noShoulders }
  return fromExpected(expectedOf('across-back', [...known, bones]), 'fromShoulders')
}

/** Nape down to the level of the armpits, which the hanging arms hide. */
export function napeToArmpitLevel(
  napeToWaist: EstimateOutcome,
  known: readonly Known[],
): EstimateOutcome {
  if (known.length === 0) return { ok: false, reason: NO_NUMBER_WORDS.noHeightNoGirth }
  const back: readonly Known[] = napeToWaist.ok
    ? [
        {
          name: 'nape-to-waist',
          value: napeToWaist.estimate.value,
          sd: napeToWaist.estimate.pm90 / NINE_IN_TEN,
        },
      ]
    : []
  return fromExpected(expectedOf('scye-depth', [...known, ...back]), 'fromHeight')
}

const wider = ({ mean, sd }: Expected): Expected => ({ mean, sd: OTHER_WOMEN * sd })

const fromExpected = ({ mean, sd }: Expected, note: NoteId): EstimateOutcome => ({
  ok: true,
  estimate: { value: mm(mean), pm90: mm(NINE_IN_TEN * sd), basis: noteBasis(note) },
})

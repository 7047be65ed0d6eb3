/**
 * How often each garment comes out sound and wearable on the bodies of surveys, drafted with its
 * standard choices, and how often it stays sound when choices are drawn from their whole ranges.
 *
 *   npm run bench:draft -- [--quick] [--garment ID] [--bodies] [--lower-waist]
 *
 * --quick takes every twentieth body. --bodies prints the numbers of the bodies too. --lower-waist
 * drafts the women of 1988 once more with the waist tied lower.
 * RESULT {GARMENT: {surveys, ansur2, drawn}} with {n, sound, refused, wearable, reasons} each:
 * `surveys` ANSUR 1988 and the larger bodies drawn from the tape model, `ansur2` ANSUR II, `drawn`
 * the pooled tape model with drawn choices, where `wearable` is not judged.
 */
import type { GarmentId } from '../../src/draft/draft.ts'
import { GARMENTS, isGarmentId } from '../../src/draft/garments.ts'
import type { MeasurementId } from '../../src/measurements/catalogue.ts'
import { ANSUR_1988, women1988 } from './bodies/ansur-1988.ts'
import { ANSUR_II, womenII } from './bodies/ansur-2.ts'
import { drawnBodies, pooledBodies } from './bodies/drawn-bodies.ts'
import { choiceDrawer } from './bodies/drawn-choices.ts'
import { lowered } from './bodies/lower-waist.ts'
import { describe, type BodySet } from './bodies/numbers.ts'
import { readSurvey, surveyPath, type Survey } from './bodies/survey-file.ts'
import { tally, told, verdictOn } from './bodies/tally.ts'

const LARGER = 500
const DRAWN = 10_000
const SEED = 20261125
/** Every so manieth body with --quick. */
const QUICK = 20

const asked = (flag: string): boolean => process.argv.includes(flag)
const thinned = (set: BodySet): BodySet =>
  asked('--quick') ? { ...set, bodies: set.bodies.filter((_, i) => i % QUICK === 0) } : set

function garmentsAsked(): readonly GarmentId[] {
  const named = process.argv[process.argv.indexOf('--garment') + 1]
  const all = Object.keys(GARMENTS).filter(isGarmentId)
  return asked('--garment') ? all.filter((id) => id === named) : all
}

function run(of1988: Survey, ofII: Survey): void {
  const [women, larger, apart, pooled] = [
    women1988(of1988),
    drawnBodies(of1988, LARGER, SEED),
    womenII(ofII, of1988, SEED),
    pooledBodies(of1988, DRAWN, SEED),
  ].map(thinned) as [BodySet, BodySet, BodySet, BodySet]
  const beside = asked('--lower-waist') ? [thinned(lowered(women1988(of1988), of1988))] : []
  if (asked('--bodies'))
    for (const set of [women, larger, apart, pooled, ...beside])
      console.log(`${describe(set).join('\n')}\n`)
  const result: Record<string, object> = {}
  for (const garment of garmentsAsked()) {
    const verdicts = (set: BodySet) => set.bodies.map((b) => verdictOn(garment, b))
    const both = [...verdicts(women), ...verdicts(larger)]
    console.log(told(`${garment}, ${women.name} and ${larger.name}`, both))
    const third = verdicts(apart)
    console.log(told(`${garment}, apart, ${apart.name}`, third))
    for (const set of beside) console.log(told(`${garment}, ${set.name}`, verdicts(set)))
    const choices = choiceDrawer(garment, SEED)
    const fourth = pooled.bodies.map((b) => verdictOn(garment, b, choices()))
    console.log(told(`${garment}, ${pooled.name}, choices drawn`, fourth, false))
    result[garment] = {
      surveys: tally(both),
      ansur2: tally(third),
      drawn: tally(fourth, false),
    }
  }
  const derived = derivations([women, larger, apart, pooled])
  for (const [id, how] of Object.entries(derived)) console.log(`derived ${id}: ${how}`)
  console.log(`RESULT ${JSON.stringify({ ...result, derived })}`)
}

/** How each measurement that was not taped came about, set by set where the sets differ. */
function derivations(sets: readonly BodySet[]): Record<string, string> {
  const how = (id: MeasurementId): string => {
    const ways = new Map<string, string[]>()
    for (const { name, derived } of sets) {
      const way = derived[id] ?? 'taped'
      ways.set(way, [...(ways.get(way) ?? []), name])
    }
    if (ways.size === 1) return [...ways.keys()].join('')
    return [...ways].map(([way, names]) => `${names.join(', ')}: ${way}`).join('; ')
  }
  const read = garmentsAsked().flatMap((id) => [...GARMENTS[id].needs, ...GARMENTS[id].uses])
  const ids = new Set(read.filter((id) => sets.some(({ derived }) => id in derived)))
  return Object.fromEntries([...ids].map((id) => [id, how(id)]))
}

const [of1988, ofII] = [readSurvey(ANSUR_1988, '\t'), readSurvey(ANSUR_II, ',')]
const absent = [...(of1988 ? [] : [ANSUR_1988]), ...(ofII ? [] : [ANSUR_II])].map(surveyPath)
if (of1988 && ofII) run(of1988, ofII)
else console.log(`Nothing was drafted: ${absent.join(' and ')} must lie beside the repository.`)

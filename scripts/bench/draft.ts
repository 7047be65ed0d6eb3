/**
 * How often the blouse, drafted with the standard choices, comes out sound and wearable on the
 * bodies of surveys. Run: npm run bench:draft; `-- --bodies` prints the numbers of the bodies
 * too, `-- --lower-waist` drafts the women of 1988 once more with the waist tied lower.
 * RESULT {blouse: {n, sound, wearable, reasons}, ansur2: the same, derived: {id: how}}: ANSUR 1988
 * and the larger bodies drawn from the tape model together, ANSUR II apart.
 */
import { GARMENTS } from '../../src/draft/garments.ts'
import type { MeasurementId } from '../../src/measurements/catalogue.ts'
import { ANSUR_1988, women1988 } from './bodies/ansur-1988.ts'
import { ANSUR_II, womenII } from './bodies/ansur-2.ts'
import { drawnBodies } from './bodies/drawn-bodies.ts'
import { lowered } from './bodies/lower-waist.ts'
import { describe, type BodySet } from './bodies/numbers.ts'
import { readSurvey, surveyPath, type Survey } from './bodies/survey-file.ts'
import { tally, told, verdictOn } from './bodies/tally.ts'

const LARGER = 500
const SEED = 20261125

const asked = (flag: string): boolean => process.argv.includes(flag)

function run(of1988: Survey, ofII: Survey): void {
  const women = women1988(of1988)
  const larger = drawnBodies(of1988, LARGER, SEED)
  const apart = womenII(ofII, of1988, SEED)
  const beside = asked('--lower-waist') ? [lowered(women, of1988)] : []
  if (asked('--bodies'))
    for (const set of [women, larger, apart, ...beside])
      console.log(`${describe(set).join('\n')}\n`)
  const verdicts = (set: BodySet) => set.bodies.map(verdictOn)
  const [first, second, third] = [verdicts(women), verdicts(larger), verdicts(apart)]
  const [blouse, ansur2] = [tally([...first, ...second]), tally(third)]
  console.log(told(women.name, first))
  console.log(told(larger.name, second))
  console.log(told('both together', [...first, ...second]))
  console.log(told(`apart, ${apart.name}`, third))
  for (const set of beside) console.log(told(`beside, ${set.name}`, verdicts(set)))
  const derived = derivations([women, larger, apart])
  for (const [id, how] of Object.entries(derived)) console.log(`derived ${id}: ${how}`)
  console.log(`RESULT ${JSON.stringify({ blouse, ansur2, derived })}`)
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
  const read = [...GARMENTS.blouse.needs, ...GARMENTS.blouse.uses]
  const ids = new Set(read.filter((id) => sets.some(({ derived }) => id in derived)))
  return Object.fromEntries([...ids].map((id) => [id, how(id)]))
}

const [of1988, ofII] = [readSurvey(ANSUR_1988, '\t'), readSurvey(ANSUR_II, ',')]
const absent = [...(of1988 ? [] : [ANSUR_1988]), ...(ofII ? [] : [ANSUR_II])].map(surveyPath)
if (of1988 && ofII) run(of1988, ofII)
else console.log(`Nothing was drafted: ${absent.join(' and ')} must lie beside the repository.`)

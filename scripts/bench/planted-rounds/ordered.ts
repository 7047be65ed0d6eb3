/** What the planted benches read from the command line, and the cases that were ordered. */
import { ANSUR_1988 } from '../bodies/ansur-1988.ts'
import { readSurvey, surveyPath } from '../bodies/survey-file.ts'
import { casesOf, type Cases } from '../planted/cases.ts'
import { KINDS } from '../planted/kinds.ts'

const BODIES = 50
const SEED = 20261125

const after = (flag: string): string | undefined => {
  const at = process.argv.indexOf(flag)
  return at < 0 ? undefined : process.argv[at + 1]
}

/** The cases of `--kinds a,b --bodies N --seed S`, or the sentence that says why there are none. */
export function ordered(): Cases | string {
  const asked = after('--kinds')?.split(',')
  const kinds = KINDS.filter(({ id }) => asked?.includes(id) ?? true)
  const unknown = (asked ?? []).filter((id) => !KINDS.some((k) => k.id === id))
  if (unknown.length > 0)
    return `No such kind: ${unknown.join(', ')}. There are ${KINDS.map(({ id }) => id).join(', ')}.`
  const [count, seed] = [Number(after('--bodies') ?? BODIES), Number(after('--seed') ?? SEED)]
  if (!(Number.isInteger(count) && count > 0)) return '--bodies wants a whole number.'
  if (!(Number.isInteger(seed) && seed > 0)) return '--seed wants a whole number above 0.'
  const survey = readSurvey(ANSUR_1988, '\t')
  if (!survey) return `Nothing was sewn: ${surveyPath(ANSUR_1988)} must lie beside the repository.`
  return casesOf(survey, kinds, count, seed)
}

export const listed = process.argv.includes('--list')

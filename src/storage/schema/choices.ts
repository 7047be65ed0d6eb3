/**
 * The choices of a draft. A name the construction does not know is refused, a name that is
 * missing takes its standard, and every value lies within its range.
 */
import * as v from 'valibot'
import { CHOICE_IDS, CHOICES, standardChoices, type Choices } from '../../draft/choices.ts'
import { mm } from '../../units/length.ts'
import { shown } from './parsed.ts'

const entries = Object.fromEntries(
  CHOICE_IDS.map((id) => {
    const { label, min, max, default: standard } = CHOICES[id]
    const why = (issue: v.BaseIssue<unknown>): string =>
      `${label} would be ${shown(issue.input)}; it goes from ${min} to ${max} mm.`
    const range = v.pipe(
      v.number(why),
      v.minValue(min, why),
      v.maxValue(max, why),
      v.description(`${label}, mm; ${standard} when left out`),
    )
    return [id, v.exactOptional(range)]
  }),
)

/** As it stands in a file: any of the choices, in millimetres. */
export const GivenChoicesSchema = v.strictObject(entries, (issue) =>
  issue.expected === 'never'
    ? `There is no choice "${issue.path?.at(-1)?.key ?? ''}". The choices are ${CHOICE_IDS.join(', ')}.`
    : `${shown(issue.input)} is not a set of choices.`,
)

export const ChoicesSchema = v.pipe(
  GivenChoicesSchema,
  v.transform((given) => filled(given)),
)

/** The standard of every choice that is not given. */
export function filled(given: Readonly<Record<string, number | undefined>>): Choices {
  return CHOICE_IDS.reduce<Choices>((all, id) => {
    const value = given[id]
    return value === undefined ? all : { ...all, [id]: mm(value) }
  }, standardChoices())
}

/**
 * The choices of a draft. A name the construction does not know is refused, a name that is
 * missing takes its standard, and every value lies within its range.
 */
import * as v from 'valibot'
import { CHOICE_IDS, CHOICES, standardChoices, type Choices } from '../../draft/choices.ts'
import { isOptionWord, OPTION_IDS, OPTIONS, type OptionId } from '../../draft/options.ts'
import { mm } from '../../units/length.ts'
import { shown } from './parsed.ts'
import { SCHEMA_WORDS } from './schema.words.ts'

const amounts = Object.fromEntries(
  CHOICE_IDS.map((id) => {
    const { label, min, max, default: standard } = CHOICES[id]
    const why = (issue: v.BaseIssue<unknown>): string =>
      SCHEMA_WORDS.choiceOutside(label, shown(issue.input), min, max)
    const range = v.pipe(
      v.number(why),
      v.minValue(min, why),
      v.maxValue(max, why),
      v.description(SCHEMA_WORDS.amountLeftOut(label, standard)),
    )
    return [id, v.exactOptional(range)]
  }),
)

const words = Object.fromEntries(
  OPTION_IDS.map((id) => {
    const { label, words: said, default: standard } = OPTIONS[id]
    const known = Object.keys(said)
    const word = v.picklist(known, (issue) =>
      SCHEMA_WORDS.wordUnknown(label, shown(issue.input), known),
    )
    return [id, v.exactOptional(v.pipe(word, v.description(SCHEMA_WORDS.leftOut(label, standard))))]
  }),
)
const entries = { ...amounts, ...words }

/** As it stands in a file: any of the choices, amounts in millimetres, options as words. */
export const GivenChoicesSchema = v.strictObject(entries, (issue) =>
  issue.expected === 'never'
    ? SCHEMA_WORDS.noChoice(`${issue.path?.at(-1)?.key ?? ''}`, [...CHOICE_IDS, ...OPTION_IDS])
    : SCHEMA_WORDS.noChoices(shown(issue.input)),
)

export const ChoicesSchema = v.pipe(
  GivenChoicesSchema,
  v.transform((given) => filled(given)),
)

/** Every choice that is not given as it stands in `standard`. */
export function filled(
  given: Readonly<Record<string, number | string | undefined>>,
  standard: Choices = standardChoices(),
): Choices {
  const amounts = CHOICE_IDS.reduce<Choices>((all, id) => {
    const value = given[id]
    return typeof value === 'number' ? { ...all, [id]: mm(value) } : all
  }, standard)
  return OPTION_IDS.reduce<Choices>((all, id) => withWord(all, id, given[id]), amounts)
}
const withWord = (all: Choices, id: OptionId, word: unknown): Choices =>
  isOptionWord(id, word) ? { ...all, [id]: word } : all

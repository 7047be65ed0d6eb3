/**
 * What a hearing is weighed by: single concepts, their families, pairs of them, places with the
 * relation they stand in, bare stems, and every word as it stands with its neighbour: "on me" and
 * "off me" differ in a small word only. Names are short: the committed weights are keyed by them.
 */
import { familiesOf } from './families.ts'
import { isContent, type Heard, type Hearing, type Word } from './hear.ts'
import { kindOf, type ConceptId } from './lexicon.ts'

/** A feature and how much of it there is. */
export type Features = ReadonlyMap<string, number>

/** Say nothing by themselves and would only widen the table. */
const DULL: ReadonlySet<ConceptId> = new Set(['garment', 'cloth', 'fine', 'want', 'soft'])
/** Pairs, families and bare stems count less than concepts: they are many. By cross-validation. */
const PAIR = 0.7
const FAMILY_PAIR = 0.7
const STEM = 0.6
const WORD = 0.7
const NEIGHBOURS = 0.7
/** The place she names first is most often the one she means. */
const FIRST = 0.6

export function featuresOf(hearing: Hearing): Features {
  const found = tellingFeatures(hearing)
  addWords(found, hearing.words)
  return found
}
/** Without the words as they stand: whether anything was said that could be a complaint. */
export function tellingFeatures({ words, heard }: Hearing): Map<string, number> {
  const found = new Map<string, number>()
  const telling = heard.filter((h) => !DULL.has(h.concept))
  for (const h of telling) for (const name of ownNames(h)) found.set(name, 1)
  const paired = telling.filter((h) => kindOf(h.concept) !== 'relation' && h.by !== 'than')
  const first = paired.find((h) => kindOf(h.concept) === 'place' && h.first >= 0)
  if (first) found.set(`1${first.concept}`, FIRST)
  addPairs(found, [...new Set(paired.map(nameOf))], PAIR)
  const families = [...new Set(paired.flatMap((h) => (h.denied ? [] : familiesOf(h.concept))))]
  for (const family of families) found.set(family, 1)
  addPairs(found, families, FAMILY_PAIR)
  for (const word of words) if (isContent(word)) found.set(`~${word.stem}`, STEM)
  return found
}
/** The features one heard concept brings by itself. */
export const featuresOfOne = (h: Heard): readonly string[] => [
  ...ownNames(h),
  ...(h.denied ? [] : familiesOf(h.concept)),
]
/** What comes after "than" is only what she compares with. */
const ownNames = (h: Heard): readonly string[] => [
  ...(h.by === 'than' ? [] : [nameOf(h)]),
  ...(h.by ? [`${h.by}>${h.concept}`] : []),
]
const nameOf = (h: Heard): string => (h.denied ? `!${h.concept}` : h.concept)

/** Marks either end of what she said. */
const END = '|'
function addWords(found: Map<string, number>, words: readonly Word[]): void {
  const said = words.map(({ word }) => word)
  for (const word of said) found.set(`=${word}`, WORD)
  const between = [END, ...said, END]
  between.slice(1).forEach((word, i) => found.set(`${between[i] ?? END}_${word}`, NEIGHBOURS))
}

function addPairs(found: Map<string, number>, names: readonly string[], much: number): void {
  const sorted = [...names].sort()
  sorted.forEach((a, i) => {
    for (const b of sorted.slice(i + 1)) found.set(`${a}&${b}`, much)
  })
}

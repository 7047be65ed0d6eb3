/**
 * The lexicon as a tree of stems: every way of saying a concept is a path through it. Small words
 * are left out of the paths unless they make the difference ("my bottom" is not "the bottom").
 */
import type { Concept, ConceptKind } from './concept.ts'
import { FIGURES } from './lexicon/figures.ts'
import { PLACES } from './lexicon/places.ts'
import { SIGNS } from './lexicon/signs.ts'
import { DIRECTIONS, MOVEMENTS, RELATIONS, SIDES } from './lexicon/ways.ts'
import { stem } from './stem.ts'
import { tokensOf } from './tokens.ts'

const ALL = {
  ...PLACES,
  ...SIGNS,
  ...DIRECTIONS,
  ...SIDES,
  ...MOVEMENTS,
  ...FIGURES,
  ...RELATIONS,
} as const
export type ConceptId = keyof typeof ALL
export const CONCEPTS: Readonly<Record<ConceptId, Concept>> = ALL
export const CONCEPT_IDS = Object.keys(ALL) as readonly ConceptId[]
export const isConceptId = (text: string): text is ConceptId => text in ALL
export const kindOf = (id: ConceptId): ConceptKind => CONCEPTS[id].kind

export interface Branch {
  readonly next: Map<string, Branch>
  /** What a phrase that ends here means. */
  readonly means: ConceptId[]
}

/** Never part of a path: they may stand anywhere between the words of a phrase. */
const NOT_IN_PATHS = new Set('a an the of is are at your be it and'.split(' '))

const branch = (): Branch => ({ next: new Map(), means: [] })

function grown(): Branch {
  const root = branch()
  for (const id of CONCEPT_IDS)
    for (const phrase of CONCEPTS[id].words.split(',')) {
      let here = root
      for (const { word } of tokensOf(phrase)) {
        if (NOT_IN_PATHS.has(word)) continue
        const key = stem(word)
        const next = here.next.get(key) ?? branch()
        here.next.set(key, next)
        here = next
      }
      if (here !== root && !here.means.includes(id)) here.means.push(id)
    }
  return root
}
export const PHRASES: Branch = grown()

/** Every single word of the lexicon, as it is spelt there. */
export const LEXICON_WORDS: ReadonlySet<string> = new Set(
  CONCEPT_IDS.flatMap((id) => tokensOf(CONCEPTS[id].words).map((t) => t.word)),
)
export const LEXICON_STEMS: ReadonlySet<string> = new Set([...LEXICON_WORDS].map(stem))

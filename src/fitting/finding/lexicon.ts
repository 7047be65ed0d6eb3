/**
 * The lexicon as a tree of stems: every way of saying a concept is a path through it. Small words
 * are left out of the paths unless they make the difference ("my bottom" is not "the bottom").
 */
import type { ConceptKind, Saying } from './concept.ts'
import { FIGURES } from './lexicon/figures.words.ts'
import { PARTS, PLACES } from './lexicon/places.words.ts'
import { SIGNS } from './lexicon/signs.words.ts'
import { DIRECTIONS, MOVEMENTS, RELATIONS, SIDES } from './lexicon/ways.words.ts'
import { NOT_IN_PATHS } from './plain.words.ts'
import { stem } from './stem.ts'
import { tokensOf } from './tokens.ts'

const BY_KIND = {
  place: PLACES,
  part: PARTS,
  sign: SIGNS,
  direction: DIRECTIONS,
  side: SIDES,
  movement: MOVEMENTS,
  figure: FIGURES,
  relation: RELATIONS,
} as const
const ALL = {
  ...PLACES,
  ...PARTS,
  ...SIGNS,
  ...DIRECTIONS,
  ...SIDES,
  ...MOVEMENTS,
  ...FIGURES,
  ...RELATIONS,
} as const
export type ConceptId = keyof typeof ALL
export const CONCEPTS: Readonly<Record<ConceptId, Saying>> = ALL
export const CONCEPT_IDS = Object.keys(ALL) as readonly ConceptId[]
export const isConceptId = (text: string): text is ConceptId => text in ALL

const KIND_OF: Readonly<Record<string, ConceptKind>> = Object.fromEntries(
  (Object.keys(BY_KIND) as readonly ConceptKind[]).flatMap((kind) =>
    Object.keys(BY_KIND[kind]).map((id) => [id, kind] as const),
  ),
)
export const kindOf = (id: ConceptId): ConceptKind => KIND_OF[id] as ConceptKind

export interface Branch {
  readonly next: Map<string, Branch>
  /** What a phrase that ends here means. */
  readonly means: ConceptId[]
}

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

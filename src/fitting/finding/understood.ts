/**
 * What was understood, word by word, in an order she can check: the place, the sign, the
 * direction, the side, the movement. Each is a gap she can fill with another word of its kind.
 */
import type { ConceptKind } from './concept.ts'
import type { Hearing } from './hear.ts'
import { CONCEPT_IDS, CONCEPTS, kindOf, type ConceptId } from './lexicon.ts'

export interface Understood {
  readonly kind: ConceptKind
  readonly concept: ConceptId
  /** How it is said back to her. */
  readonly said: string
  /** The letters of the phrase that said it; equal when she pointed at it. */
  readonly from: number
  readonly to: number
  /** "not loose": heard, and denied. */
  readonly denied: boolean
}

const ORDER: readonly ConceptKind[] = [
  'place',
  'part',
  'sign',
  'direction',
  'side',
  'movement',
  'figure',
]

export function understoodIn({ words, heard }: Hearing, phrase: string): readonly Understood[] {
  const finest = heard.filter(
    (h) =>
      kindOf(h.concept) !== 'relation' &&
      !heard.some(
        (o) =>
          o !== h &&
          o.joined &&
          h.first >= o.first &&
          h.last <= o.last &&
          !h.joined &&
          kindOf(h.concept) === 'place',
      ),
  )
  return finest
    .map((h) => ({
      kind: kindOf(h.concept),
      concept: h.concept,
      said: CONCEPTS[h.concept].said,
      from: words[h.first]?.from ?? phrase.length,
      to: words[h.last]?.to ?? phrase.length,
      denied: h.denied,
    }))
    .filter((u, i, all) => all.findIndex((o) => o.concept === u.concept) === i)
    .sort((a, b) => ORDER.indexOf(a.kind) - ORDER.indexOf(b.kind) || a.from - b.from)
}

/** What a gap of this kind may be filled with. */
export const wordsOfKind = (kind: ConceptKind): readonly { concept: ConceptId; said: string }[] =>
  CONCEPT_IDS.filter((id) => kindOf(id) === kind).map((concept) => ({
    concept,
    said: CONCEPTS[concept].said,
  }))

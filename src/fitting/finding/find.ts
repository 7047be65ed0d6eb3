/**
 * From her own words to complaints, best first: what was heard, which complaint it speaks for
 * and why, two complaints in one sentence taken apart. Pure, offline. What she points at and the
 * words she corrects come in beside the phrase.
 */
import type { ComplaintId } from '../complaints/complaint.ts'
import { featuresOf, featuresOfOne, tellingFeatures } from './features.ts'
import { hearWords, isContent, wordsOf, type Heard, type Hearing, type Word } from './hear.ts'
import { CONCEPTS, kindOf, type ConceptId } from './lexicon.ts'
import { clausesOf } from './apart.ts'
import { BECAUSE_WORDS } from './find.words.ts'
import { pullsOf, pullOf, ranked, type Share } from './rank.ts'
import { understoodIn, type Understood } from './understood.ts'

/** Which kind of sleeve the garment has; decides between look-alikes of the two sleeves. */
export type SleeveKind = 'cutIn' | 'setIn' | 'none'

/** One word she put right: what was said at these letters means another concept, or nothing. */
export interface PutRight {
  readonly from: number
  readonly to: number
  readonly concept: ConceptId | undefined
}
export interface FindContext {
  readonly sleeve?: SleeveKind
  /** What she pointed at or turned the dial to, beside the words. */
  readonly pointed?: readonly ConceptId[]
  readonly putRight?: readonly PutRight[]
}
export interface Answer {
  readonly id: ComplaintId
  /** 0 to 1; how much of the whole speaks for it. For ranking, never shown as a percentage. */
  readonly score: number
  /** One sentence: which of her words led here. Empty when only the ranking of others did. */
  readonly because: string
}
export interface Part {
  readonly text: string
  readonly understood: readonly Understood[]
  readonly ranked: readonly Answer[]
}
export interface Found {
  /** Over the whole sentence; the best of each part comes before the second best of any. */
  readonly ranked: readonly Answer[]
  readonly understood: readonly Understood[]
  /** One for each complaint in the sentence. */
  readonly parts: readonly Part[]
  /** Words that were not understood, as she typed them. */
  readonly unknown: readonly string[]
}

/** Answers given; nobody reads further. */
const MOST_ANSWERS = 10
/** What speaks against a complaint of a sleeve the garment does not have. Judgement. */
const OTHER_SLEEVE = -4
/** A clause is a complaint of its own when this much of the whole speaks for one. */
const CLAUSE_SURE = 0.5

export function find(phrase: string, context: FindContext = {}): Found {
  const words = wordsOf(phrase)
  const pointed = (context.pointed ?? []).map(pointedAt)
  const hearingOf = (some: readonly Word[]): Hearing => ({
    words: some,
    heard: [...hearWords(some, context.putRight ?? []), ...pointed],
  })
  const bias = biasOf(context.sleeve)
  const whole = hearingOf(words)
  const features = featuresOf(whole)
  const understood = understoodIn(whole, phrase)
  const unknown = [
    ...new Set(
      words
        .filter((w) => isContent(w) && !whole.heard.some((h) => covers(h, words.indexOf(w))))
        .map((w) => phrase.slice(w.from, w.to)),
    ),
  ]
  if (pullsOf(tellingFeatures(whole)).every((pull) => pull === 0))
    return { ranked: [], understood, parts: [], unknown }

  const parts = partsOf(clausesOf(words), hearingOf, bias)
  const shares =
    parts.length > 1
      ? together(
          ranked(features, bias),
          parts.map((p) => p.shares),
        )
      : ranked(features, bias)
  const answersOf = (hearing: Hearing, list: readonly Share[]): readonly Answer[] =>
    list
      .slice(0, MOST_ANSWERS)
      .map(({ id, share }) => ({ id, score: share, because: becauseOf(hearing, phrase, id) }))
  const all = answersOf(whole, shares)
  return {
    ranked: all,
    understood,
    unknown,
    parts:
      parts.length > 1
        ? parts.map(({ hearing, shares: own }) => ({
            text: textOf(hearing.words, phrase),
            understood: understoodIn(hearing, phrase),
            ranked: answersOf(hearing, own),
          }))
        : [{ text: phrase.trim(), understood, ranked: all }],
  }
}

interface Clause {
  readonly hearing: Hearing
  readonly shares: readonly Share[]
}

/** Clauses that carry a complaint each; one that carries none joins the one before it. */
function partsOf(
  clauses: readonly (readonly Word[])[],
  hearingOf: (words: readonly Word[]) => Hearing,
  bias: (id: ComplaintId) => number,
): readonly Clause[] {
  const read = (words: readonly Word[]): Clause => {
    const hearing = hearingOf(words)
    return { hearing, shares: ranked(featuresOf(hearing), bias) }
  }
  let parts: Clause[] = []
  for (const words of clauses) {
    const clause = read(words)
    const before = parts.at(-1)
    if (!before) parts = [clause]
    else if (isComplaint(clause) && isComplaint(before) && topOf(clause) !== topOf(before))
      parts = [...parts, clause]
    else parts = [...parts.slice(0, -1), read([...before.hearing.words, ...words])]
  }
  return parts
}
const topOf = (clause: Clause): ComplaintId | undefined => clause.shares[0]?.id
function isComplaint({ hearing, shares }: Clause): boolean {
  const kinds = new Set(hearing.heard.map((h) => kindOf(h.concept)))
  const whole =
    kinds.has('figure') ||
    ((kinds.has('place') || kinds.has('part')) && (kinds.has('sign') || kinds.has('movement')))
  return whole && (shares[0]?.share ?? 0) >= CLAUSE_SURE
}

/** The best of each part first, in the order said; then all others by their best share. */
function together(whole: readonly Share[], parts: readonly (readonly Share[])[]): readonly Share[] {
  const best = new Map<ComplaintId, number>(whole.map((s) => [s.id, s.share / 2]))
  for (const part of parts)
    for (const { id, share } of part) best.set(id, Math.max(best.get(id) ?? 0, share))
  return [...best].map(([id, share]) => ({ id, share })).sort((a, b) => b.share - a.share)
}

const pointedAt = (concept: ConceptId): Heard => ({
  concept,
  first: -1,
  last: -1,
  denied: false,
  by: undefined,
  joined: false,
})
function biasOf(sleeve: SleeveKind | undefined): (id: ComplaintId) => number {
  if (sleeve === undefined) return () => 0
  const absent = { cutIn: ['L'], setIn: ['D'], none: ['L', 'D'] }[sleeve]
  return (id) => (absent.includes(id[0] ?? '') ? OTHER_SLEEVE : 0)
}
const covers = (h: Heard, at: number): boolean => at >= h.first && at <= h.last

const textOf = (words: readonly Word[], phrase: string): string =>
  phrase.slice(words[0]?.from ?? 0, words.at(-1)?.to ?? 0).trim()

/** A word is named as a reason when it speaks at least this much for the complaint. */
const TELLING = 0.3
const MOST_REASONS = 3

function becauseOf(hearing: Hearing, phrase: string, id: ComplaintId): string {
  const reasons = hearing.heard
    .map((h) => ({ h, pull: Math.max(...featuresOfOne(h).map((name) => pullOf(name, id))) }))
    .filter(({ h, pull }) => pull >= TELLING && kindOf(h.concept) !== 'relation')
    .sort((a, b) => b.pull - a.pull)
  const said: string[] = []
  const taken: Heard[] = []
  for (const { h } of reasons) {
    if (taken.some((t) => h.first >= 0 && h.first <= t.last && h.last >= t.first)) continue
    taken.push(h)
    said.push(
      h.first < 0
        ? CONCEPTS[h.concept].said
        : BECAUSE_WORDS.quoted(textOf(hearing.words.slice(h.first, h.last + 1), phrase)),
    )
    if (said.length === MOST_REASONS) break
  }
  return said.length === 0 ? '' : BECAUSE_WORDS.because(said)
}

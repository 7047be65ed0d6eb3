/**
 * What is heard in a stretch of words: concepts with the words that said them, joined into finer
 * places where two belong together, turned over where she denies or wishes them.
 */
import { takenApart } from './compounds.ts'
import { CONTRASTS, DENIALS, ENOUGH, NOT } from './hear.words.ts'
import { kindOf, PHRASES, type Branch, type ConceptId } from './lexicon.ts'
import { PLAIN_WORDS, SMALL_WORDS } from './plain.words.ts'
import { reunited } from './reunited.ts'
import { mended } from './spelling.ts'
import { stem } from './stem.ts'
import { tokensOf } from './tokens.ts'

export interface Heard {
  readonly concept: ConceptId
  /** Places among the words: [first, last]. */
  readonly first: number
  readonly last: number
  /** "no", "not", "without" stood before it and it has no opposite. */
  readonly denied: boolean
  /** The relation word before it: above the bust, from the neck. */
  readonly by: ConceptId | undefined
  /** Made of two concepts heard close together. */
  readonly joined: boolean
}
export interface Word {
  readonly word: string
  readonly stem: string
  readonly from: number
  readonly to: number
  readonly afterStop: boolean
  readonly small: boolean
}
export interface Hearing {
  readonly words: readonly Word[]
  readonly heard: readonly Heard[]
}

/** A denial or a wish reaches this many words on. */
const REACH = 4

export function wordsOf(typed: string): readonly Word[] {
  const tokens = tokensOf(typed).flatMap((token) =>
    takenApart(token.word).map((word, i) => ({
      ...token,
      word: mended(word),
      afterStop: token.afterStop && i === 0,
    })),
  )
  return reunited(tokens).map((token) => ({
    ...token,
    stem: stem(token.word),
    small: SMALL_WORDS.has(token.word),
  }))
}

export function hear(typed: string): Hearing {
  const words = wordsOf(typed)
  return { words, heard: hearWords(words) }
}

/** @param putRight stretches of letters she said mean another concept, or nothing */
export function hearWords(
  words: readonly Word[],
  putRight: readonly { from: number; to: number; concept: ConceptId | undefined }[] = [],
): readonly Heard[] {
  const found = corrected(phrasesIn(words), words, putRight)
  const turned = found.map((each) => turnedOver(each, found, words))
  const kept = turned.filter((each) => !isFine(each, turned, words) && !isLeftOut(each, words))
  return [...kept, ...joinedIn(kept, words)].map((each) => ({
    ...each,
    by: relationOf(each, kept),
  }))
}

function corrected(
  found: readonly Found[],
  words: readonly Word[],
  putRight: Parameters<typeof hearWords>[1],
): readonly Found[] {
  return (putRight ?? []).reduce<readonly Found[]>((all, { from, to, concept }) => {
    const first = words.findIndex((w) => w.to > from && w.from < to)
    const last = words.findLastIndex((w) => w.to > from && w.from < to)
    if (first < 0) return all
    const others = all.filter((f) => f.last < first || f.first > last)
    return concept
      ? [...others, { concept, first, last, denied: false, joined: false }].sort(
          (a, b) => a.first - b.first,
        )
      : others
  }, found)
}

interface Found {
  readonly concept: ConceptId
  readonly first: number
  readonly last: number
  readonly denied: boolean
  readonly joined: boolean
}

/** Longest phrase first, from left to right; small words may stand between. */
function phrasesIn(words: readonly Word[]): readonly Found[] {
  const found: Found[] = []
  let at = 0
  while (at < words.length) {
    const match = longest(PHRASES, words, at, at)
    if (!match) {
      at += 1
      continue
    }
    for (const concept of match.means)
      found.push({ concept, first: at, last: match.last, denied: false, joined: false })
    at = match.last + 1
  }
  return found
}

interface Match {
  readonly means: readonly ConceptId[]
  readonly last: number
  readonly steps: number
}
function longest(
  here: Branch,
  words: readonly Word[],
  start: number,
  at: number,
  steps = 0,
): Match | undefined {
  const own: Match | undefined =
    here.means.length > 0 && steps > 0 ? { means: here.means, last: at - 1, steps } : undefined
  const word = words[at]
  if (!word || (at > start && word.afterStop)) return own
  const next = here.next.get(word.stem)
  const onward = next && longest(next, words, start, at + 1, steps + 1)
  const skipping =
    word.small && at > start && !next
      ? trimmed(longest(here, words, start, at + 1, steps), steps)
      : undefined
  return [onward, skipping, own].reduce((best, m) =>
    m && (!best || m.steps > best.steps) ? m : best,
  )
}
/** A match that took no further step after the skipped word is none. */
const trimmed = (match: Match | undefined, steps: number): Match | undefined =>
  match && match.steps > steps ? match : undefined

/** What the opposite of a sign is, for "not tight enough" and "needs to be lower". */
const OPPOSITE: Readonly<Partial<Record<ConceptId, ConceptId>>> = {
  tight: 'loose',
  loose: 'tight',
  pinch: 'loose',
  long: 'short',
  short: 'long',
  wide: 'narrow',
  narrow: 'wide',
  high: 'low',
  low: 'high',
  rise: 'low',
  sag: 'high',
  big: 'small',
  small: 'big',
  forward: 'backward',
  backward: 'forward',
}
function turnedOver(each: Found, all: readonly Found[], words: readonly Word[]): Found {
  const before = (test: (at: number) => boolean): boolean => {
    for (let at = each.first - 1; at >= Math.max(0, each.first - REACH); at -= 1) {
      if (test(at)) return true
      if (words[at + 1]?.afterStop) return false
    }
    return false
  }
  const covered = (at: number) => all.some((f) => f !== each && at >= f.first && at <= f.last)
  const wished = before((at) => all.some((f) => f.concept === 'want' && f.first === at))
  const denied = before((at) => DENIALS.has(words[at]?.word ?? '') && !covered(at))
  const enough = ENOUGH.has(words[each.last + 1]?.word ?? '')
  const opposite = OPPOSITE[each.concept]
  if (opposite && wished !== (denied && enough)) return { ...each, concept: opposite }
  return denied && kindOf(each.concept) === 'sign' ? { ...each, denied: true } : each
}

/** "The bust is fine, but …": what she calls right is no complaint. */
function isFine(each: Found, all: readonly Found[], words: readonly Word[]): boolean {
  const kind = kindOf(each.concept)
  if (kind !== 'place') return false
  const fine = all.find(
    (f) => f.concept === 'fine' && f.first > each.last && f.first - each.last <= REACH && !f.denied,
  )
  if (!fine) return false
  for (let at = each.last + 1; at <= fine.first; at += 1) if (words[at]?.afterStop) return false
  if (DENIALS.has(words[fine.first - 1]?.word ?? '')) return false
  return !all.some(
    (f) => kindOf(f.concept) === 'sign' && f.first > each.last && f.last < fine.first,
  )
}

/** "…, but not at the back": a place she names only to leave it out. */
function isLeftOut(each: Found, words: readonly Word[]): boolean {
  if (kindOf(each.concept) !== 'place') return false
  let at = each.first - 1
  while (at > 0 && words[at]?.small && !DENIALS.has(words[at]?.word ?? '')) at -= 1
  if (!NOT.has(words[at]?.word ?? '')) return false
  return words[at]?.afterStop === true || CONTRASTS.has(words[at - 1]?.word ?? '')
}

/** Two concepts close together that make a finer one. */
const JOINS: readonly (readonly [ConceptId, ConceptId, ConceptId])[] = [
  ['back', 'neck', 'nape'],
  ['back', 'collar', 'nape'],
  ['front', 'neck', 'frontNeck'],
  ['front', 'armhole', 'frontArmhole'],
  ['back', 'armhole', 'backArmhole'],
  ['front', 'waist', 'frontWaist'],
  ['back', 'waist', 'backWaist'],
  ['lowerBack', 'waist', 'backWaist'],
  ['front', 'hem', 'frontHem'],
  ['back', 'hem', 'backHem'],
  ['above', 'back', 'upperBack'],
  ['above', 'chest', 'upperChest'],
  ['above', 'bust', 'upperChest'],
  ['below', 'bust', 'underBust'],
  ['below', 'chest', 'underBust'],
  ['below', 'arm', 'underarm'],
  ['below', 'collarbone', 'upperChest'],
  ['shoulder', 'seam', 'shoulderSeam'],
  ['shoulder', 'tip', 'shoulderTip'],
  ['shoulder', 'bone', 'shoulderTip'],
  ['side', 'seam', 'sideSeam'],
  ['sleeve', 'seam', 'sleeveSeam'],
  ['sleeve', 'hem', 'sleeveHem'],
  ['sleeve', 'edge', 'sleeveHem'],
  ['dart', 'tip', 'dartTip'],
  ['bustDart', 'tip', 'dartTip'],
  ['centre', 'back', 'back'],
  ['neck', 'shoulder', 'neckSide'],
]
/** At most this many words may stand between the two, small words not counted. */
const NEAR = 2

function joinedIn(all: readonly Found[], words: readonly Word[]): readonly Found[] {
  const joined: Found[] = []
  for (const [one, other, makes] of JOINS)
    for (const a of all)
      if (a.concept === one)
        for (const b of all)
          if (
            b.concept === other &&
            areNear(a, b, words) &&
            !joined.some((j) => j.concept === makes)
          )
            joined.push({
              concept: makes,
              first: Math.min(a.first, b.first),
              last: Math.max(a.last, b.last),
              denied: false,
              joined: true,
            })
  return joined
}
function areNear(a: Found, b: Found, words: readonly Word[]): boolean {
  const [left, right] = a.first < b.first ? [a, b] : [b, a]
  let between = 0
  for (let at = left.last + 1; at <= right.first; at += 1) {
    const word = words[at]
    if (word?.afterStop) return false
    if (at < right.first && word && !word.small) between += 1
  }
  return between <= NEAR
}

function relationOf(each: Found, all: readonly Found[]): ConceptId | undefined {
  if (kindOf(each.concept) !== 'place') return undefined
  return all.find(
    (f) => kindOf(f.concept) === 'relation' && f.last < each.first && each.first - f.last <= 3,
  )?.concept
}

/** Words that carry meaning but are in no phrase of the lexicon. */
export const isContent = (word: Word): boolean =>
  !word.small && word.word !== '#' && !DENIALS.has(word.word) && !PLAIN_WORDS.has(word.word)

/**
 * A word that is no word we know is read as the nearest word of the lexicon: one slip in a short
 * word, two in a long one. A slip is a letter too many, too few, wrong, or two changed over.
 */
import { LEXICON_STEMS, LEXICON_WORDS } from './lexicon.ts'
import { PLAIN_WORDS, SMALL_WORDS } from './plain.words.ts'
import { stem } from './stem.ts'

/** Shorter words have too many neighbours. */
const SHORTEST_MENDED = 4
/** From this length on two slips are forgiven. */
const TWO_SLIPS_FROM = 7

const PLAIN_STEMS = new Set([...PLAIN_WORDS, ...SMALL_WORDS].map(stem))
export const isKnown = (word: string): boolean =>
  LEXICON_STEMS.has(stem(word)) || PLAIN_STEMS.has(stem(word)) || SMALL_WORDS.has(word)

/** As it is spelt there, or in another form. */
export const isOfLexicon = (word: string): boolean =>
  LEXICON_WORDS.has(word) || LEXICON_STEMS.has(stem(word))

/** The word itself when it is known or nothing lies near. */
export function mended(word: string): string {
  if (word.length < SHORTEST_MENDED || isKnown(word)) return word
  const allowed = word.length >= TWO_SLIPS_FROM ? 2 : 1
  let best = word
  let least = allowed + 1
  for (const candidate of LEXICON_WORDS) {
    if (candidate.length < SHORTEST_MENDED) continue
    if (Math.abs(candidate.length - word.length) > allowed) continue
    const slips = slipsBetween(word, candidate, allowed) + (candidate[0] === word[0] ? 0 : 0.5)
    if (slips < least) {
      least = slips
      best = candidate
    }
  }
  return best
}

/** Edit distance with neighbours changed over counted once (optimal string alignment). */
export function slipsBetween(a: string, b: string, atMost: number): number {
  let before: number[] = []
  let row = Array.from({ length: b.length + 1 }, (_, j) => j)
  for (let i = 1; i <= a.length; i += 1) {
    const now = [i]
    for (let j = 1; j <= b.length; j += 1) {
      const same = a[i - 1] === b[j - 1]
      let least = Math.min(
        (row[j] ?? 0) + 1,
        (now[j - 1] ?? 0) + 1,
        (row[j - 1] ?? 0) + (same ? 0 : 1),
      )
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1])
        least = Math.min(least, (before[j - 2] ?? 0) + 1)
      now.push(least)
    }
    if (Math.min(...now) > atMost) return atMost + 1
    before = row
    row = now
  }
  return row[b.length] ?? 0
}

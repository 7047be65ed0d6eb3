/**
 * A long word made of words of the lexicon, taken apart: the sleeve hem is a sleeve and a hem in
 * any language that writes it as one word.
 */
import { JOINTS } from './compounds.words.ts'
import { SMALL_WORDS } from './plain.words.ts'
import { isKnown, isOfLexicon } from './spelling.ts'

/** A part shorter than this is more likely an ending. */
const SHORTEST_PART = 3
/** A shorter word is no compound of ours. */
const SHORTEST_WHOLE = 7

/** The parts from left to right; the word alone where it is known or cannot be taken apart. */
export function takenApart(word: string): readonly string[] {
  if (JOINTS.length === 0 || word.length < SHORTEST_WHOLE || isKnown(word)) return [word]
  return partsOf(word) ?? [word]
}

const isPart = (part: string): boolean => !SMALL_WORDS.has(part) && isOfLexicon(part)

/** The longest first part that leaves a rest which can be taken apart too. */
function partsOf(word: string): readonly string[] | undefined {
  for (let end = word.length - SHORTEST_PART; end >= SHORTEST_PART; end -= 1) {
    const part = word.slice(0, end)
    if (!isPart(part)) continue
    for (const joint of JOINTS) {
      if (!word.startsWith(joint, end)) continue
      const rest = word.slice(end + joint.length)
      if (rest.length < SHORTEST_PART) continue
      if (isPart(rest)) return [part, rest]
      const further = partsOf(rest)
      if (further) return [part, ...further]
    }
  }
  return undefined
}

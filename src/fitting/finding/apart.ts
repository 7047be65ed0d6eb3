/**
 * A sentence taken apart where she joins things: at full stops, commas, "and", "but", "also".
 * Whether a clause is a complaint of its own is decided by what is heard in it, not here.
 */
import { JOINING, JOINING_PHRASES } from './apart.words.ts'
import type { Word } from './hear.ts'

export function clausesOf(words: readonly Word[]): readonly (readonly Word[])[] {
  const clauses: Word[][] = [[]]
  let at = 0
  while (at < words.length) {
    const joined = joinerAt(words, at)
    const word = words[at]
    if (joined > 0) {
      clauses.push([])
      at += joined
      continue
    }
    if (word) {
      if (word.afterStop) clauses.push([])
      clauses.at(-1)?.push(word)
    }
    at += 1
  }
  return clauses.filter((clause) => clause.length > 0)
}
function joinerAt(words: readonly Word[], at: number): number {
  const phrase = JOINING_PHRASES.find((p) => p.every((word, i) => words[at + i]?.word === word))
  if (phrase) return phrase.length
  return JOINING.has(words[at]?.word ?? '') ? 1 : 0
}

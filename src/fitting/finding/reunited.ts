/**
 * A verb and the particle that stands far behind it, as one word again: where the lexicon knows
 * them together, "steht … ab" is heard as "absteht", at the place of the verb.
 */
import { DENIALS } from './hear.words.ts'
import { GOES_ON, PARTICLES, TWOFOLD } from './particles.words.ts'
import { isOfLexicon } from './spelling.ts'
import type { Token } from './tokens.ts'

/** A shorter word is an article, a pronoun or the like. */
const SHORTEST_VERB = 4
const IS_PARTICLE: ReadonlySet<string> = new Set(PARTICLES)

export function reunited(tokens: readonly Token[]): readonly Token[] {
  const found = [...tokens]
  for (let at = 1; at < found.length; at += 1) {
    const particle = found[at]
    if (!particle || !IS_PARTICLE.has(particle.word) || particle.afterStop) continue
    if (TWOFOLD.has(particle.word) && !endsThere(found[at + 1])) continue
    const verbAt = verbBefore(found, at, particle.word)
    const verb = found[verbAt]
    if (!verb) continue
    const whole = { ...verb, word: particle.word + verb.word }
    // "liegt … nicht an" denies the whole, so the denial goes before it.
    const denial = found[at - 1]
    const denied = denial !== undefined && DENIALS.has(denial.word)
    const between = found.slice(verbAt + 1, denied ? at - 1 : at)
    const both = denied
      ? [
          { ...verb, word: denial.word },
          { ...whole, afterStop: false },
        ]
      : [whole]
    found.splice(verbAt, at + 1 - verbAt, ...both, ...between)
    at -= 1
  }
  return found
}
const endsThere = (next: Token | undefined): boolean =>
  next === undefined || next.afterStop || GOES_ON.has(next.word)

/** The nearest word before it, in the same clause, that the lexicon knows with this particle. */
function verbBefore(tokens: readonly Token[], particleAt: number, particle: string): number {
  for (let at = particleAt - 1; at >= 0; at -= 1) {
    const token = tokens[at]
    if (!token) return -1
    if (token.word.length >= SHORTEST_VERB && isOfLexicon(particle + token.word)) return at
    if (token.afterStop) return -1
  }
  return -1
}

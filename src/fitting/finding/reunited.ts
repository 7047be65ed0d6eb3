/**
 * A verb and the particle that stands far behind it, as one word again: where the lexicon knows
 * them together, "steht … ab" is heard as "absteht", at the place of the verb.
 */
import { GOES_ON, PARTICLES, TWOFOLD } from './particles.words.ts'
import { isOfLexicon } from './spelling.ts'
import type { Token } from './tokens.ts'

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
    found[verbAt] = { ...verb, word: particle.word + verb.word }
    found.splice(at, 1)
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
    if (isOfLexicon(particle + token.word)) return at
    if (token.afterStop) return -1
  }
  return -1
}

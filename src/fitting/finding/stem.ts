/**
 * One word for all its forms: gapes, gaping, gaped and gape are one, so are wrinkle and wrinkled.
 * Light and rough on purpose: the same cut is made on the lexicon and on what she types, so it
 * need not be a word, only the same for both.
 */
import { INFIXES, PARTICLES } from './particles.words.ts'
import { DOUBLED, IRREGULAR, isNoSuffix, SUFFIXES } from './stem.words.ts'

/** A stem shorter than this says nothing any more. */
const SHORTEST = 3

export function stem(word: string): string {
  if (IRREGULAR.has(word)) return simpleStem(word)
  const particle = PARTICLES.find((p) => word.startsWith(p) && word.length - p.length > SHORTEST)
  if (particle === undefined) return simpleStem(word)
  const rest = word.slice(particle.length)
  const infix = INFIXES.find((i) => rest.startsWith(i) && rest.length - i.length > SHORTEST)
  return particle + simpleStem(infix === undefined ? rest : rest.slice(infix.length))
}
function simpleStem(word: string): string {
  const known = IRREGULAR.get(word)
  if (known !== undefined) return IRREGULAR.get(known) === known ? known : cutDown(known)
  return cutDown(word)
}
function cutDown(word: string): string {
  let cut = word
  // Twice, so that "wrinkles" and "wrinkly" both come down to "wrinkl".
  for (let round = 0; round < 2; round += 1) {
    const suffix = SUFFIXES.find(
      (s) => cut.endsWith(s) && cut.length - s.length >= SHORTEST && !isNoSuffix(cut, s),
    )
    if (suffix === undefined) break
    cut = undoubled(cut.slice(0, -suffix.length))
  }
  return cut
}
const undoubled = (cut: string): string =>
  DOUBLED.test(cut) && cut.length > SHORTEST ? cut.slice(0, -1) : cut

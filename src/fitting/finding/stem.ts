/**
 * One word for all its forms: gapes, gaping, gaped and gape are one, so are wrinkle and wrinkled.
 * Light and rough on purpose: the same cut is made on the lexicon and on what she types, so it
 * need not be a word, only the same for both.
 */
import { INFIXES, PARTICLES } from './particles.words.ts'
import { BEFORE, CUTS, DOUBLED, IRREGULAR, isNoSuffix, SHORTEST, SUFFIXES } from './stem.words.ts'

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
  return cutDown(word.replace(BEFORE, ''))
}
function cutDown(word: string): string {
  let cut = word
  for (let round = 0; round < CUTS; round += 1) {
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

/**
 * Weights as letters, to be small: a complaint is one letter by its place in the head of the
 * table, its weight in tenths another. Letters that a template string would read are left out.
 */
const LETTERS =
  'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789!#%&()*+,-./:;<=>?@[]^_{|}~'
/** The letter of weight nothing. */
const MIDDLE = Math.floor(LETTERS.length / 2)

/** Whole tenths, as far as the letters reach either way. */
export const tenthsOf = (weight: number): number =>
  Math.max(-MIDDLE, Math.min(MIDDLE, Math.round(weight * 10)))

/** @param tenths by the place of the complaint; nothing is left out */
export const toldWeights = (tenths: readonly number[]): string =>
  tenths
    .map((much, at) => (much === 0 ? '' : `${LETTERS.charAt(at)}${LETTERS.charAt(much + MIDDLE)}`))
    .join('')

/** @throws when a letter is none of ours */
export function readWeights(told: string): readonly (readonly [at: number, tenths: number])[] {
  const found: (readonly [number, number])[] = []
  for (let i = 0; i < told.length; i += 2) {
    const [at, much] = [LETTERS.indexOf(told.charAt(i)), LETTERS.indexOf(told.charAt(i + 1))]
    if (at < 0 || much < 0) throw new Error(`weights: “${told.slice(i, i + 2)}” is no weight`)
    found.push([at, much - MIDDLE])
  }
  return found
}

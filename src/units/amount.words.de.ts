/** As German drafting books have it: „1/4 Brustumfang + 2,2 cm“. */
import type { AMOUNT_WORDS as English } from './amount.words.ts'

export const AMOUNT_WORDS: typeof English = {
  inFull: (words, number) => `${words} = ${number}`,
  partOfNamed: (divisor, name) => `1/${divisor} ${name}`,
  partOf: (divisor, whole) => `1/${divisor} von ${whole}`,
}

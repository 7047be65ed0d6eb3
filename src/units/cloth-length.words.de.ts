import type { CLOTH_LENGTH_WORDS as English } from './cloth-length.words.ts'

const HOW = 'Schreib 2,30 m, 230 cm oder 2 1/2 yd.'

export const CLOTH_LENGTH_WORDS: typeof English = {
  how: HOW,
  noLength: (typed) => `${typed} ist keine Stofflänge bis 10 m. ${HOW}`,
}

import type { NUMBER_WORDS as English } from './number.words.ts'

export const NUMBER_WORDS: typeof English = {
  decimalMark: ',',
  thousandsMark: '.',
  locale: 'de-DE',
}

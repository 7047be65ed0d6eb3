import type { FORMAT_WORDS as English } from './format.words.ts'

export const FORMAT_WORDS: typeof English = {
  inches: 'Zoll',
  same: 'gleich',
  /** No line ends between them: DIN 5008, from memory. */
  gap: '\u00a0',
}

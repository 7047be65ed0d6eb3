import type { FORMAT_WORDS as English } from './format.words.ts'

export const FORMAT_WORDS: typeof English = {
  same: 'gleich',
}

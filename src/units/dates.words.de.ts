import type { DATE_WORDS as English } from './dates.words.ts'

/** "25.11.2026"; what is no such date stays as it stands. */
export const DATE_WORDS: typeof English = {
  day: (iso) => iso.replace(/^(\d{4})-(\d{2})-(\d{2})$/, '$3.$2.$1'),
}

import type { DATE_WORDS as English } from './dates.words.ts'

/** "25.11.2026"; what is no such date stays as it stands. */
const day = (iso: string): string => iso.replace(/^(\d{4})-(\d{2})-(\d{2})$/, '$3.$2.$1')

export const DATE_WORDS: typeof English = { day, short: day }

import type { MUSLIN_LINE_WORDS as English } from './muslin-lines.words.ts'

/** All of them feminine: die Brustlinie. */
export const MUSLIN_LINE_WORDS: typeof English = {
  bustLine: 'Brustlinie',
  waistLine: 'Taillenlinie',
  hipLine: 'Hüftlinie',
  centre: 'Mittellinie',
}

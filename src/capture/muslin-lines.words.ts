/** The lines she draws on a muslin. */
import type { MuslinLineName } from './muslin-lines.ts'

export const MUSLIN_LINE_WORDS: Readonly<Record<MuslinLineName, string>> = {
  bustLine: 'bust line',
  waistLine: 'waist line',
  hipLine: 'hip line',
  centre: 'centre line',
}

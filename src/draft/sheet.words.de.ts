import type { SHEET_WORDS as English } from './sheet.words.ts'

export const SHEET_WORDS: typeof English = {
  distance: (from, to) => `Strecke ${from}–${to}`,
  legsEqual: 'die Schenkel paarweise gleich lang',
}

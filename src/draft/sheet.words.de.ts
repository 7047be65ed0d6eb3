import type { SHEET_WORDS as English } from './sheet.words.ts'

export const SHEET_WORDS: typeof English = {
  distance: (from, to) => `Strecke ${from}–${to}`,
  point: (name) => name.replace(/^apex$/, 'BP'),
  legsEqual: 'die Schenkel paarweise gleich lang',
}

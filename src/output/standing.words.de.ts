import type {
  NO_SHEETS as NoSheets,
  NOT_CONFIRMED as NotConfirmed,
  NOT_FOR_CUTTING as NotForCutting,
  STANDING_WORDS as Standing,
} from './standing.words.ts'

export const NOT_CONFIRMED: typeof NotConfirmed = 'nicht mit dem Maßband bestätigt'
export const NOT_FOR_CUTTING: typeof NotForCutting = 'nicht zum Zuschneiden'

export const STANDING_WORDS: typeof Standing = {
  looking: `zum Ansehen, ${NOT_FOR_CUTTING}`,
  notConfirmed: `nicht bestätigt, ${NOT_FOR_CUTTING}`,
  confirmed: 'mit dem Maßband bestätigt',
  confirmedFor: {
    muslin: 'mit dem Maßband bestätigt, für das Probeteil',
    cloth: 'mit dem Maßband bestätigt, für den Stoff',
  },
  notYetForCloth:
    'mit dem Maßband bestätigt, für ein Probeteil und noch nicht für den Stoff: siehe „Vor dem Zuschneiden“',
  invented: (standing) => `${standing} · erfundene Zahlen`,
}

export const NO_SHEETS: typeof NoSheets = {
  notConfirmed: `Diese Zahlen sind ${NOT_CONFIRMED}, deshalb gibt es keine Blätter zum Zuschneiden. Miss nach, was fehlt, jedes zweimal, und drucke noch einmal.`,
  unsewable: (findings) => `${findings} Es gibt keine Blätter zum Zuschneiden.`,
  notForCloth: (findings) => `Für ein Probeteil, noch nicht für den Stoff. ${findings}`,
}

import { capital } from '../units/capital.ts'
import { MEASURES } from './names.words.de.ts'
import type { STORED_WORDS as English } from './stored.words.ts'

export const STORED_WORDS: typeof English = {
  notConfirmed: 'In diesem Eintrag stehen keine bestätigten Maße.',
  lostReadings: 'Den bestätigten Maßen fehlen ihre Ablesungen.',
  noReading: 'Die bestätigten Maße enthalten keine Ablesung.',
  disagree: (id) =>
    `${capital(MEASURES[id].der)}: die gespeicherten Ablesungen passen nicht zusammen. Miss noch einmal.`,
  otherNumber: (name) =>
    `„${name}“ ist nicht die Zahl, die ihre Ablesungen ergeben. Miss noch einmal.`,
  notInCatalogue: (name) => `„${name}“ steht nicht im Verzeichnis der Maße.`,
  bookNoRecord: 'Das gespeicherte Maßbuch ist nicht lesbar.',
  noRecord: (id) => `${id} ist kein lesbarer Eintrag.`,
  noReadings: (id) => `Zu ${id} fehlt die Liste der Ablesungen.`,
  notReading: (id, shown) => `${id}: ${shown} ist keine Ablesung.`,
  notEstimate: (id, shown) => `${id}: ${shown} ist keine Schätzung.`,
  notDoubts: (id, shown) => `${id}: ${shown} ist keine Liste von Zweifeln.`,
}

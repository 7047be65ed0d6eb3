import { capital } from '../units/capital.ts'
import type { BOOK_WORDS as English } from './book.words.ts'
import { MEASURES } from './names.words.de.ts'

export const BOOK_WORDS: typeof English = {
  oneReading: (id) =>
    `Für ${MEASURES[id].den} gibt es erst eine Ablesung. Miss ${MEASURES[id].it} ein zweites Mal.`,
  tooFarApart: (id) =>
    `Die Ablesungen ${MEASURES[id].des} liegen zu weit auseinander. Miss noch einmal; die zwei, die einander am nächsten liegen, gelten.`,
  guess: (id) =>
    `${capital(MEASURES[id].der)} ist noch eine Schätzung vom Foto. Miss ${MEASURES[id].it} mit dem Maßband.`,
  untaped: (id) => `${capital(MEASURES[id].der)} ist noch nicht gemessen.`,
  agreed: (id) => `${capital(MEASURES[id].der)} ist bestätigt.`,
}

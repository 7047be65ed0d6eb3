import { capital } from '../units/capital.ts'
import type { BOOK_WORDS as English } from './book.words.ts'
import { accusative, genitive, itself, nominative } from './names.words.de.ts'

export const BOOK_WORDS: typeof English = {
  oneReading: (id) =>
    `Für ${accusative(id)} gibt es eine Ablesung. Miss ${itself(id)} ein zweites Mal.`,
  tooFarApart: (id) =>
    `Die Ablesungen ${genitive(id)} liegen zu weit auseinander. Miss noch einmal; die zwei nächsten bleiben.`,
  guess: (id) =>
    `${capital(nominative(id))} ist noch eine Schätzung vom Foto. Miss ${itself(id)} mit dem Maßband.`,
  untaped: (id) => `${capital(nominative(id))} ist noch nicht gemessen.`,
  agreed: (id) => `${capital(nominative(id))} ist bestätigt.`,
}

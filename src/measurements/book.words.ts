/** What is still to be done before a draft may use a measurement. */
import { MEASURE_NAMES } from './names.words.ts'
import type { MeasurementId } from './catalogue.ts'

const label = (id: MeasurementId): string => MEASURE_NAMES[id].label

export const BOOK_WORDS = {
  oneReading: (id: MeasurementId) => `${label(id)} has one reading. Tape it a second time.`,
  tooFarApart: (id: MeasurementId) =>
    `The readings of ${MEASURE_NAMES[id].spoken} are too far apart. Tape it once more; the two nearest are kept.`,
  guess: (id: MeasurementId) => `${label(id)} is still a guess from the photo. Tape it.`,
  untaped: (id: MeasurementId) => `${label(id)} is not taped yet.`,
  agreed: (id: MeasurementId) => `${label(id)} is agreed.`,
}

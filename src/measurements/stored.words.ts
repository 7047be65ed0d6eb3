/** Why stored measurements are refused. `shown` is the stored value as it was written. */
import type { MeasurementId } from './catalogue.ts'
import { MEASURE_NAMES } from './names.words.ts'

export const STORED_WORDS = {
  notConfirmed: 'This record does not hold confirmed measurements.',
  lostReadings: 'The confirmed measurements have lost their tape readings.',
  noReading: 'The confirmed measurements hold no tape reading.',
  disagree: (id: MeasurementId) =>
    `${MEASURE_NAMES[id].label}: the stored readings do not agree. Tape it again.`,
  otherNumber: (name: string) =>
    `"${name}" is not the number its tape readings give. Tape it again.`,
  notInCatalogue: (name: string) => `"${name}" is not in the catalogue.`,
  bookNoRecord: 'The stored tape book is not a record.',
  noRecord: (id: MeasurementId) => `${id} is not a record.`,
  noReadings: (id: MeasurementId) => `${id} has no list of readings.`,
  notReading: (id: MeasurementId, shown: string) => `${id}: ${shown} is not a tape reading.`,
  notEstimate: (id: MeasurementId, shown: string) => `${id}: ${shown} is no estimate.`,
  notDoubts: (id: MeasurementId, shown: string) => `${id}: ${shown} is no list of doubts.`,
}

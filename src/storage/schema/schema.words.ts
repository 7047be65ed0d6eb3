/**
 * Why a record cannot be read or kept. She sees one of these sentences where a row was put aside;
 * names of fields and of words in a file stay as they are in the file.
 */
export const SCHEMA_WORDS = {
  /** `what` of `THINGS`. */
  isNot: (shown: string, what: string) => `${shown} is not ${what}.`,
  idTooLong: 'An id is longer than any of ours.',
  nameTooLong: (letters: number) => `A name is longer than ${letters} letters.`,
  textTooLong: (letters: number) => `A text is longer than ${letters} letters.`,
  lostBytes: 'What was closed has lost its bytes.',
  lostPixels: 'The photo has lost its pixels.',
  notItsRow: 'The round does not belong to its row.',
  bookNoRecord: 'The stored tape book is not a record.',
  outline: 'An outline is not rows of three numbers.',
  noGarment: (shown: string, names: readonly string[]) =>
    `${shown} is no garment that can be drafted. Use ${names.join(', ')}.`,
  /** `what` of `PICKS`. */
  noneOf: (shown: string, what: string, names: readonly string[]) =>
    `${shown} is no ${what}. Use one of ${names.join(', ')}.`,
  shareTooSmall: 'The part to apply must be more than 0.',
  shareTooLarge: 'The part to apply must be at most 1.',
  noPlaceFromUnderarm: (shown: string) =>
    `${shown} is no place on an edge; it goes from 0 at the underarm to 1.`,
  noPlace: (shown: string) => `${shown} is no place on an edge; it goes from 0 to 1.`,
  noWedge: (shown: string) => `${shown} is no width of a wedge, mm.`,
  noCorrection: (shown: string) => `${shown} is no kind of correction.`,
  noOperation: (shown: string) => `${shown} is no operation.`,
  noList: 'The corrections are no list.',
  sameId: 'Two corrections have the same id.',
  choiceOutside: (label: string, shown: string, min: number, max: number) =>
    `${label} would be ${shown}; it goes from ${min} to ${max} mm.`,
  wordUnknown: (label: string, shown: string, known: readonly string[]) =>
    `${label} would be ${shown}; it is one of ${known.join(', ')}.`,
  noChoice: (name: string, names: readonly string[]) =>
    `There is no choice "${name}". The choices are ${names.join(', ')}.`,
  noChoices: (shown: string) => `${shown} is not a set of choices.`,
  /** In the description of a file for the command. */
  leftOut: (label: string, standard: number | string) => `${label}; ${standard} when left out`,
  amountLeftOut: (label: string, standard: number | string) =>
    `${label}, mm; ${standard} when left out`,
}

export const THINGS = {
  millimetres: 'a number of millimetres',
  length: 'a length of this work',
  number: 'a number',
  finite: 'a finite number',
  date: 'a date',
  isoDate: 'a date such as 2026-11-25',
  id: 'an id',
  name: 'a name',
  text: 'a text',
  fileMark: 'a file mark',
  whole: 'a whole number',
  counted: 'a whole number from 1',
}

export const PICKS = {
  piece: 'piece',
  edge: 'edge',
  choice: 'choice',
  complaint: 'complaint',
  reading: 'way of reading',
  side: 'side',
  dart: 'dart',
  level: 'level',
  point: 'point',
}

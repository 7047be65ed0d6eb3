import type {
  PICKS as EnglishPicks,
  SCHEMA_WORDS as EnglishSchema,
  THINGS as EnglishThings,
} from './schema.words.ts'

export const SCHEMA_WORDS: typeof EnglishSchema = {
  isNot: (shown, what) => `${shown} ist ${what}.`,
  idTooLong: 'Eine Kennung ist länger als jede von unseren.',
  nameTooLong: (letters) => `Ein Name ist länger als ${letters} Buchstaben.`,
  textTooLong: (letters) => `Ein Text ist länger als ${letters} Buchstaben.`,
  lostBytes: 'Etwas Verschlossenes hat seinen Inhalt verloren.',
  lostPixels: 'Das Foto hat seine Bildpunkte verloren.',
  notItsRow: 'Die Runde gehört nicht zu ihrer Zeile.',
  bookNoRecord: 'Das gespeicherte Maßbuch ist kein Eintrag.',
  outline: 'Ein Umriss besteht nicht aus Reihen von drei Zahlen.',
  noGarment: (shown, names) =>
    `${shown} ist kein Stück, das gezeichnet werden kann. Möglich sind: ${names.join(', ')}.`,
  noneOf: (shown, what, names) => `${shown} ist ${what}. Möglich sind: ${names.join(', ')}.`,
  shareTooSmall: 'Der Anteil, der geändert wird, ist größer als 0.',
  shareTooLarge: 'Der Anteil, der geändert wird, ist höchstens 1.',
  noPlaceFromUnderarm: (shown) =>
    `${shown} ist keine Stelle auf einer Kante; sie geht von 0 an der Achsel bis 1.`,
  noPlace: (shown) => `${shown} ist keine Stelle auf einer Kante; sie geht von 0 bis 1.`,
  noWedge: (shown) => `${shown} ist keine Breite eines Keils, mm.`,
  noCorrection: (shown) => `${shown} ist keine Art von Änderung.`,
  noOperation: (shown) => `${shown} ist kein Eingriff am Schnitt.`,
  noList: 'Die Änderungen sind keine Liste.',
  sameId: 'Zwei Änderungen haben dieselbe Kennung.',
  choiceOutside: (label, shown, min, max) =>
    `${label} wäre ${shown}; möglich sind ${min} bis ${max} mm.`,
  wordUnknown: (label, shown, known) =>
    `${label} wäre ${shown}; möglich sind: ${known.join(', ')}.`,
  noChoice: (name, names) => `Eine Wahl „${name}“ gibt es nicht. Es gibt: ${names.join(', ')}.`,
  noChoices: (shown) => `${shown} ist keine Auswahl.`,
  leftOut: (label, standard) => `${label}; ${standard}, wenn nichts dasteht`,
  amountLeftOut: (label, standard) => `${label}, mm; ${standard}, wenn nichts dasteht`,
}

export const THINGS: typeof EnglishThings = {
  millimetres: 'keine Zahl in Millimetern',
  length: 'keine Länge dieser Arbeit',
  number: 'keine Zahl',
  finite: 'keine endliche Zahl',
  date: 'kein Datum',
  isoDate: 'kein Datum wie 2026-11-25',
  id: 'keine Kennung',
  name: 'kein Name',
  text: 'kein Text',
  fileMark: 'kein Dateizeichen',
  whole: 'keine ganze Zahl',
  counted: 'keine ganze Zahl ab 1',
}

export const PICKS: typeof EnglishPicks = {
  piece: 'kein Schnittteil',
  edge: 'keine Kante',
  choice: 'keine Wahl',
  complaint: 'keine Beobachtung',
  reading: 'keine Art des Ablesens',
  side: 'keine Seite',
  dart: 'kein Abnäher',
  level: 'keine Höhe',
  point: 'kein Punkt',
}

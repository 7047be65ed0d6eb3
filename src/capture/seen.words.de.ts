import type {
  BASIS_WORDS as EnglishBasis,
  FROM_WORDS as EnglishFrom,
  NO_NUMBER_WORDS as EnglishNoNumber,
  NOTE_WORDS as EnglishNote,
  PHOTO_NAMES as EnglishPhotos,
  RUN_WORDS as EnglishRun,
  SCALE_WORDS as EnglishScale,
} from './seen.words.ts'

/** Names without an article, so that they stand in a line of facts in one form. */
export const FROM_WORDS: typeof EnglishFrom = {
  ownMark: 'deine eigene Marke',
  elastic: 'Gummiband in der Taille',
  narrowest: 'schmalste Stelle deines Umrisses',
  startHere: 'üblicher Platz für den Anfang: zieh ihn zurecht',
  waistInFront: 'Taille vom Foto von vorn',
  waistInSide: 'Taille vom Foto von der Seite',
  waistInBack: 'Taille vom Foto von hinten',
  levelInSide: 'Höhe vom Foto von der Seite',
  dotNape: 'Klebepunkt am Nackenpunkt',
  dotWaist: 'Klebepunkt in der Taille',
  dotApex: 'Klebepunkt am Brustpunkt',
  dotSideNeck: 'Klebepunkt am Halspunkt',
  dotShoulder: 'Klebepunkt am Schulterpunkt',
  dotHip: 'Klebepunkt an der Hüfte',
  dotsAtApexes: 'Klebepunkte an den Brustpunkten',
  levelOfDots: 'Höhe der Klebepunkte',
  light: 'Licht auf dem Stoff',
  shouldersAndOutline: 'Schultern und Umriss',
  usualForBreadth: 'üblicher Platz bei dieser Breite: zieh ihn zurecht',
  neckBreadth: 'Breite des Halses',
  shoulderJoints: 'Schultergelenke',
  usualBesideSide: 'übliche Höhe; das Foto von der Seite zeigt sie besser',
  napeInOutline: 'Nacken im Umriss',
  besideNape: 'neben dem Nackenpunkt',
  usualLevel: 'übliche Höhe: zieh sie zurecht',
  foremost: 'vorderste Stelle des Umrisses',
  backAtBust: 'Rückenlinie auf Brusthöhe',
  hindmost: 'hinterste Stelle des Umrisses',
  aboveHand: 'vordere Linie über der Hand',
}

export const PHOTO_NAMES: typeof EnglishPhotos = {
  front: 'Foto von vorn',
  side: 'Foto von der Seite',
  back: 'Foto von hinten',
}

export const SCALE_WORDS: typeof EnglishScale = {
  sheetHung: 'Bogen in der Taille',
  sheetHeld: 'Bogen in der Hand',
  cardHung: 'Karte in der Taille',
  cardHeld: 'Karte in der Hand',
}

const quoted = (name: string): string => `„${name}“`

export const RUN_WORDS: typeof EnglishRun = {
  alongBack: (a) => `an der Rückenlinie entlang bis ${quoted(a)}`,
  straightDown: (a) => `gerade hinunter bis ${quoted(a)}`,
  apexesTo: (a) => `Brustpunkte bis ${quoted(a)}`,
  outlineAt: (a) => `Umriss bei ${quoted(a)}`,
  at: (a) => a,
  between: (a, b) => `von ${quoted(a)} bis ${quoted(b)}`,
}

export const NOTE_WORDS: typeof EnglishNote = {
  thenDown: 'dann hinunter bis zur Taille',
  girthOfProportions:
    'Breite und Tiefe der Fotos, Verhältnisse von 2.208 Frauen; eine Prüfung, kein Maß',
  heightAlone: 'deine Körpergröße allein würde ebenso viel sagen',
  surveysAlone: 'zwei Reihenmessungen von Frauen allein würden ebenso viel sagen',
  fromShoulders:
    'Schulterknochen und Umfänge der Fotos, Verhältnisse aus zwei Reihenmessungen; die Armansätze sind nicht zu sehen',
  fromHeight:
    'Größe und Umfänge der Fotos, Verhältnisse aus zwei Reihenmessungen; die hängenden Arme verdecken die Höhe',
}

export const BASIS_WORDS: typeof EnglishBasis = {
  way: (photo, scale, run) => `${photo}, ${scale}, ${run}`,
  all: (parts) => parts.join('; '),
}

const noCard =
  (which: string) =>
  (why: string): string =>
    `Auf dem Foto ${which} ist keine Karte zum Messen. ${why}`

export const NO_NUMBER_WORDS: typeof EnglishNoNumber = {
  noPhoto: {
    front: 'Es gibt kein Foto von vorn.',
    side: 'Es gibt kein Foto von der Seite.',
    back: 'Es gibt kein Foto von hinten.',
  },
  notShown: {
    front: 'Das Foto von vorn zeigt es nicht.',
    side: 'Das Foto von der Seite zeigt es nicht.',
    back: 'Das Foto von hinten zeigt es nicht.',
  },
  noCard: {
    front: noCard('von vorn'),
    side: noCard('von der Seite'),
    back: noCard('von hinten'),
  },
  noShoulders: 'Weder das Foto von vorn noch das von hinten zeigt die Schultern.',
  noHeightNoGirth:
    'Die Fotos zeigen weder deine Größe noch einen Umfang, an dem es zu messen wäre.',
}

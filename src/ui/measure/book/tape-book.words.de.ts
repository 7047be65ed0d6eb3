import { DATE_WORDS } from '../../../units/dates.words.de.ts'
import { undListed } from '../../../units/german-noun.ts'
import type {
  BOOK_ROW_WORDS as EnglishRow,
  BOOK_TABLE_WORDS as EnglishTable,
  DIFFERS_WORDS as EnglishDiffers,
  DOUBT_WORDS as EnglishDoubt,
  GROUP_WORDS as EnglishGroups,
  MEASURE_SHEET_WORDS as EnglishSheet,
  TAPE_BOOK_WORDS as English,
} from './tape-book.words.ts'

export const TAPE_BOOK_WORDS: typeof English = {
  title: 'Maßbuch',
  about: (agreed, needed) =>
    `Die Kamera schlägt vor. Dein Maßband entscheidet. ${agreed} von ${needed} nötigen Zahlen ${agreed === 1 ? 'ist' : 'sind'} bestätigt.`,
  cameraAndTape: 'Kamera und Maßband',
  which: 'Welche Zahlen',
  foot: 'Kreideband: was die Kamera meint, in 9 von 10 Fällen. Senkrechte Striche: dein Maßband. Ein Schnitt entsteht immer nur aus den Strichen.',
}

export const GROUP_WORDS: typeof EnglishGroups = {
  needed: 'Nötig',
  neededAbout: (garments) =>
    garments.length === 0
      ? 'Ohne diese gibt es keinen Schnitt.'
      : `Ohne diese gibt es keinen Schnitt für: ${undListed(garments)}.`,
  truer: 'Genauer',
  truerAbout: 'Fehlen diese, steht ein übliches Maß dafür, und die Prüfung sagt es.',
  others: 'Alle anderen',
  othersAbout: 'Für spätere Stücke, und als Prüfung für den Rest.',
}

export const BOOK_TABLE_WORDS: typeof EnglishTable = {
  measurement: 'Maß',
  camera: 'Kamera sagt',
  ruler: 'Auf einem Lineal',
  tape: (reading) => `Band ${reading}`,
  standing: 'Stand',
}

export const BOOK_ROW_WORDS: typeof EnglishRow = {
  moves: (what) => `verändert ${what}`,
  field: (label, reading) => `${label}, Band ${reading}`,
  notTaped: 'fehlt',
  onceMore: 'noch einmal',
  thirdReading: 'dritte Ablesung',
  agreed: 'bestätigt',
  photoDiffers: 'Foto weicht ab',
  muslinDoubts: 'Probeteil zweifelt',
  camera: 'Kamera',
  unseen: 'nicht gesehen',
}

export const MEASURE_SHEET_WORDS: typeof EnglishSheet = {
  fromTo: (from, to) => `Anfang: ${from}. Ende: ${to}.`,
  alone: 'Allein.',
  camera: (value, pm) => `Kamera ${value} ±${pm}.`,
  basis: (basis) => `${basis}.`,
  tapeIsRight: (on) => `Am ${DATE_WORDS.day(on)} hast du gesagt: Das Maßband hat recht.`,
  tapeDecides: 'Das Maßband entscheidet.',
  unusual: 'Ungewöhnlich zusammen.',
  notYet: 'Noch nicht im Schnitt',
  goesIn: 'Geht in den Schnitt',
  on: (day) => DATE_WORDS.day(day),
  takeBack: 'Zurücknehmen',
  takeBackThat: (reading, value) => `Band ${reading}, ${value}, zurücknehmen`,
  tolerance: (value, source) =>
    `Zwei Ablesungen passen zusammen, wenn sie höchstens ${value} auseinanderliegen (${source}).`,
  iso: (clause) => `${clause}.`,
  drawn: {
    front: (label) => `Figur von vorn mit dem Maßband: ${label}`,
    side: (label) => `Figur von der Seite mit dem Maßband: ${label}`,
    back: (label) => `Figur von hinten mit dem Maßband: ${label}`,
    flat: (label) => `Flach gelegtes Stück mit dem Maßband: ${label}`,
  },
}

export const DOUBT_WORDS: typeof EnglishDoubt = {
  lead: 'Das Probeteil zweifelt daran.',
  inDoubt: (on, name) => doubt(on, name, 'stellt es in Frage'),
  more: (on, name, by) => doubt(on, name, `spricht für ${by} mehr`),
  less: (on, name, by) => doubt(on, name, `spricht für ${by} weniger`),
}
const doubt = (on: string, name: string, says: string): string =>
  `„${name}“ vom ${DATE_WORDS.day(on)} ${says}. Miss noch einmal. Gibt das Maßband dem recht, nimm die Änderung zurück, die dafür stand: Der Schnitt folgt der Zahl.`

export const DIFFERS_WORDS: typeof EnglishDiffers = {
  lead: (apart) => `Maßband und Foto liegen ${apart} auseinander.`,
  says: (taped, photo, pm) =>
    `Das Maßband sagt ${taped}; das Foto sagt ${photo} ±${pm}. Das ist mehr als das Doppelte seines ±, also stimmt eines nicht.`,
  notHere: 'Das Foto ist nicht mehr auf diesem Gerät.',
  which: 'Was stimmt?',
  look: (from, to) =>
    `Sieh nach, wo die Linie beginnt und endet. Am Anfang soll ${from} sein, am Ende ${to}.`,
  notSure:
    'Bist du nicht sicher, miss neu; ein Maßband, das rutscht oder schräg liegt, liegt schnell einen Fingerbreit daneben.',
  right: 'Maßband stimmt',
  anew: 'Neu messen',
  anewLong: 'Neu messen: Die Ablesungen werden zurückgenommen und bleiben markiert im Buch',
  withLine: {
    front: 'Das Foto von vorn mit der Linie, an der die Länge gelesen wurde',
    side: 'Das Foto von der Seite mit der Linie, an der die Länge gelesen wurde',
    back: 'Das Foto von hinten mit der Linie, an der die Länge gelesen wurde',
  },
  photo: {
    front: 'Foto von vorn:',
    side: 'Foto von der Seite:',
    back: 'Foto von hinten:',
  },
}

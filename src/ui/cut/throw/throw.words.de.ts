import type { THROW_WORDS as English } from './throw.words.ts'

export const THROW_WORDS: typeof English = {
  title: 'Teile projizieren',
  absent: 'Dieses Stück hängt nicht an der Stange.',
  notTaped: 'Projiziert wird aus Zahlen, die das Maßband zweimal gegeben hat.',
  nothing: 'Nichts zu projizieren.',
  back: 'Zurück zum Zuschnitt',
  ask: (round) =>
    `Was projiziert ist, lässt sich schneiden, also kommt Runde ${round} auf Papier: Von da an bleibt sie, wie sie ist, und Änderungen kommen in Runde ${round + 1}.`,
  crosses: 'Drei Kreuze: 1 und 2 oben, 3 unter 1',
  zoomed: 'Die Seite wurde vergrößert oder verkleinert.',
  zoomedSo: 'Miss die Kreuze noch einmal.',
  how: 'Stell den Beamer im rechten Winkel zum Tisch und verdunkle den Raum. Leg dann das Maßband von Kreuz zu Kreuz, wo das Licht hinfällt.',
  from1to2: 'Von 1 bis 2',
  from1to3: 'Von 1 bis 3',
  ifYouLike: 'wenn du magst',
  misread: ({ by, off, line }) =>
    `${by}, hier falsch abgelesen, macht ${off} auf einer Linie von ${line}.`,
  notYet: 'Noch nicht.',
  measureAgain: 'Miss noch einmal.',
  typeFirst: 'Tipp erst die Länge ein.',
  fill: 'Ganzer Bildschirm',
  thrown: (piece) => `${piece}, in Originalgröße projiziert`,
  field: (piece, words) => `${piece}: ${words}`,
  nextField: (field) => `Nächstes Feld, ${field}`,
  nextPiece: (piece) => `Als Nächstes: ${piece}`,
  ground: { dark: 'Hell auf dunkel', light: 'Dunkel auf hell' },
  lines: { fine: 'Linien: fein', middle: 'Linien: mittel', heavy: 'Linien: kräftig' },
  anew: 'Neu messen',
}

import { EDGES } from '../draft/piece.words.de.ts'
import type {
  COVER_WORDS as Cover,
  FILE_WORDS as File,
  HALF_SIZE_LINES as HalfSize,
  LINE_WORDS as Lines,
  MARK_WORDS as Marks,
  PAPER_WORDS as Paper,
  SMALL_DRAWING as Small,
  STEPS_WORDS as Steps,
  TILE_WORDS as Tile,
} from './sheet.words.ts'
import { NOT_CONFIRMED } from './standing.words.de.ts'

const SIDE = { left: 'links', right: 'rechts' }

export const COVER_WORDS: typeof Cover = {
  round: (round) => `Runde ${round}`,
  twoSquares: 'Miss beide Quadrate, bevor du schneidest.',
  side100: '100 mm, jede Seite',
  side4: '4 in, jede Seite',
  how: [
    'Drucke mit 100 %, nie an die Seite angepasst.',
    'Jedes Blatt: Schneide es an der linken und der oberen dünnen Linie ab, leg es auf die Linien der Blätter davor, Kreuze und Zahlen aufeinander, und kleb es fest.',
    'Schneide dann die Teile auf der lang gestrichelten Linie aus. Durchgezogene Linien werden genäht.',
    'Eine Seite, die um einen Bleistiftstrich oder mehr abweicht: Diese Blätter stimmen nicht. Aus beiden Längen wird eine Datei, die aus diesem Drucker stimmt.',
  ],
  file: 'Diese Datei',
  pieces: 'Teile',
  allowances: 'Zugaben außerhalb der Nahtlinie',
  before: 'Vor dem Zuschneiden',
  care: 'Vorsicht',
  rest: 'Der Rest steht bei den Schritten.',
  piece: (name, cutting) => `${name}. ${cutting}.`,
  map: (sheets, paper) =>
    `${sheets} ${sheets === 1 ? 'Blatt' : 'Blätter'} ${paper}, wie sie zusammenliegen`,
}

export const PAPER_WORDS: typeof Paper = {
  roll: (width) => `Rolle, ${width} breit`,
  across: (paper) => `${paper} quer`,
  noNumber: 'keine Zahl',
  noRoll: (said, least, most) =>
    `Die Rolle wäre ${said} breit; Rollen gibt es von ${least} bis ${most}. Frag im Laden und tipp die Breite noch einmal ein.`,
}

export const TILE_WORDS: typeof Tile = {
  round: (round) => `Runde ${round}`,
  place: (row, column, columns) => `Reihe ${row}, Spalte ${column} von ${columns}`,
  half: 'halbe Größe, nicht für das Stück',
  lies: (piece, { grainUp, fold }) =>
    `${piece}: Fadenlauf ${grainUp ? 'längs' : 'quer'}${fold ? ', im Stoffbruch' : ''}`,
}

export const MARK_WORDS: typeof Marks = {
  grain: 'Fadenlauf',
  onFold: 'im Stoffbruch',
  plumb: 'Lot',
  point: (name) =>
    name.replace(/^apex(Left|Right)?$/, (_, side: string | undefined) =>
      side === undefined ? 'Brustpunkt' : `Brustpunkt ${side === 'Left' ? 'links' : 'rechts'}`,
    ),
  edge: (edge, side, cutHere) =>
    `${EDGES[edge].bare}${side ? `, ${SIDE[side]}` : ''}${cutHere ? ', hier schneiden' : ''}`,
  round: (round, stuff) =>
    stuff === undefined
      ? `Runde ${round}`
      : `Runde ${round}, ${stuff === 'muslin' ? 'Probeteil' : 'Stoff'}`,
  svgTitle: (piece, round, preview) =>
    [
      piece,
      ...(round === undefined ? [] : [`Runde ${round}`]),
      ...(preview ? [NOT_CONFIRMED] : []),
    ].join(', '),
  dxfTitle: (garment, round) =>
    [
      ...(garment ? [garment] : []),
      ...(round === undefined ? [] : [`Runde ${round}`]),
      'Einheit mm',
    ].join(', '),
}

export const STEPS_WORDS: typeof Steps = {
  page: (foot, page, pages) => `${foot} · ${page} von ${pages}`,
  round: (round) => `Runde ${round}.`,
  invented: 'Erfundene Zahlen: Niemand wurde gemessen.',
  preview: `Diese Zahlen sind ${NOT_CONFIRMED}. Schneide nicht danach zu.`,
  unit: { cm: 'Alle Längen in Zentimetern.', inch: 'Alle Längen in Zoll (in).' },
  numbers: 'Maße',
  choices: 'Wahl',
  beyond: 'Außerhalb der Nahtlinie',
  finished: 'Wie die Kanten verarbeitet werden',
  fromCamera: (measured) => `${measured}, von der Kamera, miss nach`,
  severity: {
    stop: 'Noch nicht für den Stoff',
    muslin: 'Erst ein Probeteil',
    note: 'Gut zu wissen',
  },
  found: 'Was die Prüfung ergab',
}

export const SMALL_DRAWING: typeof Small = {
  scale: (small, square) =>
    `Gezeichnet im Maßstab 1 : ${small}. Ein Kästchen ist ${square} am Teil.`,
}

export const LINE_WORDS: typeof Lines = {
  seam: 'Nahtlinie',
  cutting: 'Schneidelinie',
  fold: 'Stoffbruch',
  grain: 'Fadenlauf',
  dart: 'Abnäher, genäht',
  dartMiddle: 'Mitte eines Abnähers',
  inner: 'innen markiert',
  level: 'Höhe am Körper',
  plumb: 'Lot',
  notch: 'Passzeichen, Markenende',
  clip: 'Einschnitt',
  stayStitch: 'Stütznaht',
}
export const HALF_SIZE_LINES: typeof HalfSize = 'Die Linien der Blätter in halber Größe:'

export const FILE_WORDS: typeof File = {
  language: 'de',
  layers: {
    cutting: 'Schneidelinien',
    seam: 'Nahtlinien',
    inner: 'Abnäher und Höhen',
    words: 'Wörter und Fadenlauf',
    furniture: 'Blattnamen, Klebelinien und Maßstrecken',
  },
}

import type {
  CLOTH_LEAF as Leaf,
  HAVE_WORDS as Have,
  LAYOUT_WORDS as Layout,
  LISTS_WORDS as Lists,
  WIDTHS_WORDS as Widths,
  WISHES_WORDS as Wishes,
} from './cloth-leaf.words.ts'

export const CLOTH_LEAF: typeof Leaf = {
  title: 'Stoff',
  nothing: 'Es lässt sich nichts auflegen.',
  noPages: 'Keine Seiten.',
  noLayoutYet: 'Es gibt noch keinen Auflageplan zum Drucken.',
  savePlan: 'Auflageplan speichern (PDF)',
  planSaved: 'Der Auflageplan ist gespeichert.',
  saved: (name, parts) => `Gespeichert als ${name}. ${parts.join('; ')}.`,
  part: (words, from, to) =>
    from === to ? `${words}, Seite ${from}` : `${words}, Seiten ${from} bis ${to}`,
  ask: (round) =>
    `Mit der Datei kommt Runde ${round} auf Papier: Von da an bleibt sie, wie sie ist.`,
  run: 'Alles in einem Druck',
  runHow:
    'Eine Liste der Seiten, die Teile in Originalgröße mit den Verarbeitungen für Stoff, die Schritte, dieser Auflageplan mit seinen Listen und der Nähplan.',
  saveAll: 'Alles speichern (PDF)',
}

export const WISHES_WORDS: typeof Wishes = {
  title: 'Der Stoff',
  kind: 'Art',
  another: 'Weitere Breite',
  enough: (widths) => `Es stehen schon ${widths} Breiten nebeneinander. Lass erst eine weg.`,
  leaveOut: (width) => `${width} weglassen`,
  lies: 'Er liegt',
  shortest: 'wie es am kürzesten wird',
  oneWay: 'Strich, Schimmer oder ein Druck mit Oben und Unten',
  oneWayMeans: 'Alle Teile liegen in einer Richtung.',
  repeat: 'Streifen, Karos oder ein Rapport',
  repeatAlong: 'Rapport längs',
  repeatAcross: 'Rapport quer',
  none: 'keiner',
  matchedAt: 'Treffen sich an',
  border: 'Bordüre an einer Webkante',
  borderHow:
    'Die Säume liegen darauf, deshalb liegt jedes Teil quer zum Stoff, einlagig. Der Rapport längs ist der des Motivs.',
  borderDepth: 'Tiefe der Bordüre',
  borderHem: 'Fertiger Saum von der Webkante',
  shrinkage: 'Einlaufen',
  shrinkAlong: 'Längs',
  shrinkAcross: 'Quer',
  shrinkHow:
    'Nicht bekannt: Schneide ein Quadrat, miss es, wasch und trockne es wie später das Stück, miss noch einmal.',
  squareBefore: 'Quadrat vorher',
  alongAfter: 'Längs, nachher',
  acrossAfter: 'Quer, nachher',
  rest: 'Webkante, Reserve, Preis',
  selvedge: 'Webkante, ungenutzt',
  spare: 'Reserve',
  spareUnit: (least) => `%, mindestens ${least}`,
  price: 'Preis',
  priceUnit: { metre: 'je Meter', yard: 'je Yard' },
  soldBy: 'Verkauft nach',
  sold: { metre: 'Metern', yard: 'Yards' },
  outside: (label, min, max, example) =>
    `${label}: von ${min} bis ${max}. Schreib eine Zahl, etwa ${example}.`,
}

export const LAYOUT_WORDS: typeof Layout = {
  title: 'Auflageplan',
  width: 'Stoffbreite',
  looking: 'Ein kürzerer Auflageplan wird gesucht.',
  lookingLonger: 'Ein kürzerer Auflageplan wird länger gesucht.',
  stopped: 'Angehalten. Der beste Auflageplan bleibt.',
  stoppedEmpty: 'Angehalten, bevor ein Auflageplan gefunden war.',
  again: 'Teile auflegen',
  found: 'Das ist der kürzeste Auflageplan, der gefunden wurde.',
  kept: (date) => `Das ist der Auflageplan vom ${date}.`,
  stale: (date) => `Der Auflageplan vom ${date} gilt nicht mehr.`,
  staleWhy: (length, manner, drawn) =>
    `Er war für andere Teile oder einen anderen Stoff: ${length}, ${manner}. Der hier unten ist neu gemacht aus dem, was jetzt gilt${drawn ? '; danach ist gestrichelt gezeichnet, wie er damals lag' : ''}.`,
  then: (date) => `So lag er am ${date}`,
  thenDrawing: (pieces) =>
    `Der frühere Auflageplan, ${pieces.length} Teile: ${pieces.join(', ')}. Nach ihm wird nichts zugeschnitten.`,
  buy: (amount) => `Kaufe ${amount}`,
  lies: ({ price, pieces, manner, length, width }) =>
    `${price === undefined ? '' : `, ${price}`}. ${pieces === 1 ? 'Das Teil liegt' : 'Die Teile liegen'} auf ${length} von ${width} breitem Stoff, ${manner}.`,
  drawing: (pieces) =>
    `Auflageplan, ${pieces.length} Teile: ${pieces.join(', ')}. Jeder Platz steht in der Liste.`,
  none: 'Kein Auflageplan.',
  noneWhy: 'Er ließ sich hier nicht machen. Wähl eine andere Breite oder leg den Stoff anders.',
  doNotLie: 'Die Teile haben auf diesem Stoff keinen Platz.',
  laying: 'Die Teile werden aufgelegt.',
  search: 'Suche auf dieser Breite',
  stop: 'Hier anhalten',
  longer: 'Eine Minute länger suchen',
  others: 'Andere Arten, ihn zu legen',
  other: (length, more) => `${length}, ${more} mehr.`,
  from: (section, start) => `${section}${start === undefined ? '' : `, ab ${start}`}.`,
  bothSelvedges: (border) =>
    `Beide langen Kanten sind Webkanten.${border ? ' Die Bordüre endet an der gepunkteten Linie.' : ''}`,
  fold: (standing, upper) =>
    `${standing ? 'Stoffbruch links' : 'Stoffbruch unten'}, ${upper === undefined ? 'gegenüber beide Webkanten' : `obere Lage ${upper} breit, gepunktet`}.`,
  foldAcross: (standing) => `Der Bruch liegt ${standing ? 'unten' : 'rechts'}.`,
}

export const WIDTHS_WORDS: typeof Widths = {
  title: 'Breiten nebeneinander',
  unit: { cm: 'alles in cm', inch: 'alles in Zoll' },
  caption: 'Was auf jeder Breite zu kaufen ist',
  width: 'Breite',
  lies: 'Liegt',
  used: 'Länge',
  metres: 'Meter',
  yards: 'Yards',
  price: 'Preis',
  laying: 'wird aufgelegt',
  notLaid: 'nicht aufgelegt',
}

export const HAVE_WORDS: typeof Have = {
  title: 'Stoff, den du hast',
  have: 'Ich habe',
  example: { cm: '2,30\u00a0m', inch: '2 1/2 yd' },
  width: 'bei einer Breite von',
  of: (length, width) => `${length} bei ${width} Breite`,
  fits: 'Reicht er?',
  trying: 'Die Auflagepläne werden durchprobiert.',
  tried: 'Wege, die schon probiert sind',
  sayHowMuch: 'Sag, wie viel du hast.',
  stop: 'Anhalten',
  notTried: 'Nicht probiert.',
  notTriedWhy: 'Die Auflagepläne ließen sich hier nicht machen. Frag noch einmal.',
  itFits: (cloth) => `Er reicht: ${cloth}.`,
  over: (manner, left) =>
    `Der Stoff liegt ${manner}; nach dem Waschen und Begradigen bleiben ${left} übrig.`,
  doesNot: (cloth) => `Er reicht nicht: ${cloth}.`,
  missing: (length, manner) => `Es fehlen ${length}, ${manner}.`,
  tooWide: 'Ein Teil ist breiter als der Stoff.',
  ways: 'Was reichen würde, jedes für sich',
  pairs: 'Für sich reicht nichts; zwei zusammen würden reichen',
  then: (manner, length) => `Dann reichen ${length}, ${manner}.`,
  noWay: (by) =>
    `Weder Belege quer, gestückelt oder aus anderem Stoff noch eine Naht in der hinteren Mitte noch ein um ${by} kürzeres Stück würden reichen, auch nicht zwei davon zusammen.`,
  shorter: {
    sleeveLength: (by) => ({
      words: `Mach den Ärmel um ${by} kürzer.`,
      clause: `mach den Ärmel um ${by} kürzer`,
    }),
    lengthBelowWaist: (by) => ({
      words: `Mach das Stück um ${by} kürzer.`,
      clause: `mach das Stück um ${by} kürzer`,
    }),
    both: (by) => ({
      words: `Mach Ärmel und Stück um je ${by} kürzer.`,
      clause: `mach Ärmel und Stück um je ${by} kürzer`,
    }),
  },
}

export const LISTS_WORDS: typeof Lists = {
  cutList: 'Zuschneideliste',
  pieces: (count) => `${count} ${count === 1 ? 'Teil' : 'Teile'}`,
  piece: 'Teil',
  fromCloth: 'Aus dem Stoff',
  interfaced: (cut, interfacing) => `${cut}; ${interfacing} aus Einlage`,
  marks: 'Markierungen',
  inside: 'Innerhalb der Schneidelinie',
  noMarks: 'Nur die Passzeichen.',
  besides: 'Außer dem Stoff',
  strips: 'Die Streifen liegen im Auflageplan, du brauchst also keinen Schrägstreifen zu kaufen.',
  amount: 'Wie die Menge zustande kommt',
  onWidth: (width) => `auf ${width}`,
  toBuy: 'zu kaufen',
}

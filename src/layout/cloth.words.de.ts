import { capital } from '../units/capital.ts'
import type { PieceId } from '../draft/piece.ts'
import { DARTS, EDGES, PIECES } from '../draft/piece.words.de.ts'
import { undListed } from '../units/german-noun.ts'
import type {
  AMOUNT_WORDS as Amount,
  CLOTH_PLAN as ClothPlan,
  LAY_WORDS as Lay,
  MANNER_WORDS as Manners,
  MARKING_WORDS as Marking,
  MATCH_AT_WORDS as MatchAt,
  MISSED_WORDS as Missed,
  STRIPE_WORDS as Stripes,
  NOTION_WORDS as Notions,
  PAIR_WORDS as Pair,
  PLACE_WORDS as Places,
  RUN_WORDS as Run,
  SECTION_WORDS as Sections,
  WAY_OUT_WORDS as WayOut,
} from './cloth.words.ts'

const The = ({ id }: { readonly id: PieceId }): string => capital(PIECES[id].der)

export const MANNER_WORDS: typeof Manners = {
  lengthwise: 'längs gefaltet',
  single: 'einlagig',
  crosswise: 'quer gefaltet',
  partly: 'teils längs gefaltet',
}

export const LAY_WORDS: typeof Lay = {
  aboveBorder: (piece) =>
    `${The(piece)} ist länger als der Stoff über der Bordüre. Nimm einen breiteren Stoff oder lass den Saum näher an der Webkante liegen.`,
  wider: (piece) =>
    `${The(piece)} ist breiter als der Stoff. Nimm einen breiteren Stoff oder gib dem Teil eine Naht.`,
  widerSo: (piece, manner) =>
    `${The(piece)} ist breiter als der Stoff, wenn er ${MANNER_WORDS[manner]} liegt. Leg den Stoff anders.`,
  repeat: (piece) =>
    `${The(piece)} ist zu breit: Das Teil lässt sich nicht quer schieben, bis die Mitte auf den Rapport trifft. Nimm einen breiteren Stoff, leg ihn anders oder passe den Rapport nur längs an.`,
  crosswiseOneWay:
    'Quer gefaltet läuft die obere Lage andersherum. Leg diesen Stoff einlagig oder längs gefaltet.',
  nothingTwice: 'Nichts wird zweimal geschnitten, also bringt ein Querbruch nichts.',
  nothingOnFold: 'Kein Teil liegt im Stoffbruch, also wird der Stoff nicht gefaltet.',
  allOnFold: 'Jedes Teil liegt im Stoffbruch, also wird der Stoff ganz gefaltet.',
  foldTakesAll: 'Der Bruch braucht die ganze Breite. Falte den Stoff längs.',
  bordered: 'An einer Webkante läuft eine Bordüre, deshalb liegt dieser Stoff einlagig.',
  noHem: 'Kein Teil endet in einem Saum, also liegt nichts auf der Bordüre.',
  hemOverSelvedge:
    'Der umgeschlagene Saum würde über die Webkante reichen. Lass den fertigen Saum weiter innen liegen oder wähl einen schmaleren.',
}

export const SECTION_WORDS: typeof Sections = {
  single: 'Einlagig, rechte Seite oben',
  foldedAlong: 'Längs gefaltet, rechts auf rechts, Webkante auf Webkante',
  foldedAcross: 'Quer gefaltet, rechts auf rechts, Schnittkante auf Schnittkante',
  partlyFolded: 'Nur so weit längs gefaltet, wie die halben Teile es brauchen',
}

const HOW_CUT = {
  onFold: 'Mitte im Stoffbruch, durch beide Lagen schneiden',
  opened: 'aufgeklappt, einmal schneiden',
  bothLayers: 'durch beide Lagen schneiden',
  once: 'einmal schneiden',
}
const WAY = {
  toBorder: 'unteres Ende zur Bordüre',
  away: 'oberes Ende vom Anfang weg',
  towards: 'oberes Ende zum Anfang',
}
const FROM = { fold: 'vom Stoffbruch', selvedge: 'von der Webkante' }

export const PLACE_WORDS: typeof Places = {
  section: (layers, from, to, { double, border }) =>
    [
      `${SECTION_WORDS[layers]}: von ${from} bis ${to} am Stoff entlang.`,
      ...(double === undefined ? [] : [`Doppelt bis ${double} vom Bruch.`]),
      ...(border === undefined
        ? []
        : [
            `Die Bordüre liegt an der Webkante, von der aus gemessen wird, ${border} tief; die Fadenlaufpfeile laufen quer zum Stoff.`,
          ]),
    ].join(' '),
  piece: (p) => {
    const how = [
      HOW_CUT[p.cut],
      ...(p.over ? ['gewendet'] : []),
      ...(p.aslant ? ['schräg, der Fadenlaufpfeil am Stoff entlang'] : []),
      ...(p.way ? [WAY[p.way]] : []),
    ].join(', ')
    const across = p.across ? `${p.across.by} ${FROM[p.across.from]}, ` : ''
    return `${p.number} ${p.words}: ${how}; ${across}beginnt ${p.begins} von der Schnittkante.`
  },
  figure: (across, both) =>
    `${across}. ${both ? 'Webkante auf beiden Seiten' : 'Stoffbruch links'}`,
}

export const MATCH_AT_WORDS: typeof MatchAt = {
  waist: 'Taille an der Seite',
  underarm: 'Achsel an der Seite',
  hem: 'Saum an der Seite',
}
const AT = { waist: 'in der Taille', underarm: 'an der Achsel', hem: 'am Saum' }
const level = ({ at, skirt }: { readonly at: keyof typeof AT; readonly skirt: boolean }): string =>
  `${AT[at]}${skirt ? ' des Rocks' : ''}`

export const MISSED_WORDS: typeof Missed = {
  meet: (levels) =>
    `An der Seite treffen sich die Streifen von Rücken- und Vorderteil ${undListed(levels.map(level))}.`,
  miss: (levels) => `Sie verfehlen sich ${undListed(levels.map((l) => `${level(l)} um ${l.by}`))}.`,
  choose:
    'Ein Abnäher in der Seite nimmt Streifen weg: Darüber und darunter können sie sich nicht beide treffen. Lass sie sich treffen, wo man es am meisten sieht; die Achsel verdeckt der Arm.',
}

export const STRIPE_WORDS: typeof Stripes = {
  begin: (at, sleeve) =>
    `Beginne in der Mitte eines Streifens: Rücken- und Vorderteil liegen dann ${AT[at]} auch in der Mitte eines Streifens${sleeve ? ', und die Achsel des Ärmels liegt auf dem Streifen der Achsel, an die er genäht wird' : ''}.`,
  beginMotif: 'Beginne in der Mitte eines Motivs: Dann liegt die Mitte jedes Teils auch in einem.',
  foldOn:
    'Falte in der Mitte eines Streifens: Mitten am Stoffbruch liegen darauf, die anderen auf einem anderen.',
  fromSelvedge: (selvedge) =>
    `Quer ist die Mitte eines Streifens ${selvedge} von der Webkante gerechnet. Liegt deine anderswo, gib ihren Abstand als nicht genutzte Webkante an.`,
  pin: 'Steck Streifen auf Streifen durch beide Lagen, bevor du schneidest.',
}

export const CLOTH_PLAN: typeof ClothPlan = {
  title: 'Auflageplan',
  on: (width, manner, length, oneWay) =>
    `Auf ${width} breitem Stoff, ${MANNER_WORDS[manner]}: Die Teile liegen auf ${length}.${oneWay ? ' Alle in einer Richtung.' : ''}`,
  where: 'Wo jedes Teil liegt',
  nearest: 'Gemessen bis zur nächstgelegenen Stelle jeder Schneidelinie.',
  nearestAlong:
    'Gemessen bis zur nächstgelegenen Stelle jeder Schneidelinie. Der Fadenlaufpfeil jedes Teils läuft am Stoff entlang.',
  repeat: (along, across) =>
    `Rapport ${[
      ...(along === undefined ? [] : [`${along} längs`]),
      ...(across === undefined ? [] : [`${across} quer`]),
    ].join(' und ')}.`,
  toBuy: (amount) => `Zu kaufen: ${amount}`,
  item: (words, length) => `${words}: ${length}`,
  otherWidths: 'Auf anderen Breiten:',
  otherWidth: (width, metres, yards) => `${width}: ${metres} oder ${yards}`,
  cutList: 'Zuschneideliste',
  row: (piece, cut, interfacing) =>
    `${piece}: ${cut}${interfacing > 0 ? `; ${interfacing} aus Einlage` : ''}.`,
  marks: 'Markierungen innerhalb der Schneidelinie',
  marksOf: (piece, marks) => `${piece}: ${marks.join('; ')}.`,
  besides: 'Außer dem Stoff',
}

export const AMOUNT_WORDS: typeof Amount = {
  layout: 'Auflageplan',
  shrinkage: 'Einlaufen',
  repeat: 'ein Rapport mehr, weil der Ballen irgendwo anfangen kann',
  straightening: 'Begradigen der Enden',
  spare: 'Zugabe zur Sicherheit',
  upTo: { metre: 'bis zu den nächsten 0,1 m', yard: 'bis zum nächsten ⅛ yd' },
}

export const MARKING_WORDS: typeof Marking = {
  diamond: (dart) => `${DARTS[dart].bare}: beide Spitzen und zu beiden Seiten die breiteste Stelle`,
  edgeDart: (dart, edge) =>
    `${DARTS[dart].bare}: die Spitze, und knips seine Schenkel ${EDGES[edge].am} ein`,
  apex: 'Brustpunkt',
  centre: 'Mitte im Stoffbruch: beide Enden einknipsen',
}

export const NOTION_WORDS: typeof Notions = {
  zip: (count, opening, sold) =>
    `${count} ${count === 1 ? 'Reißverschluss' : 'Reißverschlüsse'}: Die Öffnung ist ${opening} lang, frag nach ${sold}.`,
  biasStrip: (length, square) =>
    `Schrägstreifen, gekauft oder aus dem Stoff: ${length}, oder ein Quadrat von ${square}, rundherum zu einem einzigen Streifen geschnitten.`,
  buttons: (count) =>
    `${count} ${count === 1 ? 'Knopf' : 'Knöpfe'}, nicht breiter als der Übertritt.`,
  loopButton: (count) =>
    count === 1
      ? `${count} kleiner Knopf und eine Fadenschlinge.`
      : `${count} kleine Knöpfe und Fadenschlingen.`,
  cuffButtons: (count) => `${count} Knöpfe für die Manschetten, nicht breiter als ihr Übertritt.`,
  thread: (length, reels, reel) =>
    `Nähgarn: etwa ${length}, ${reels} ${reels === 1 ? 'Rolle' : 'Rollen'} zu ${reel}.`,
  interfacing: (width, amount, length, of) =>
    `Einlage, ${width} breit: ${amount} für die ${INTERFACED[of]}, die auf ${length} liegen.`,
}

const INTERFACED = {
  facings: 'Belege',
  cuffs: 'Manschetten',
  both: 'Belege und Manschetten',
}

export const WAY_OUT_WORDS: typeof WayOut = {
  crosswiseFacings: {
    words: 'Leg die Belege quer; sie dehnen sich dort ein wenig anders.',
    clause: 'leg die Belege quer',
  },
  pieced: (lengths, facings) => {
    const join = `setz jeden Schrägstreifen aus ${lengths === 2 ? 'zwei' : 'drei'} Stücken zusammen`
    return {
      words: [
        ...(lengths === 0 ? [] : [`${capital(join)}, die Nähte fadengerade.`]),
        ...(facings ? ['Gib den Belegen eine Naht in der Mitte.'] : []),
      ].join(' '),
      clause: [
        ...(lengths === 0 ? [] : [join]),
        ...(facings ? ['gib den Belegen eine Naht in der Mitte'] : []),
      ].join(', '),
    }
  },
  otherClothFacings: {
    words: 'Schneide Belege und Streifen aus einem anderen leichten Stoff.',
    clause: 'schneide Belege und Streifen aus einem anderen leichten Stoff',
  },
  centreBackSeam: {
    words: 'Gib dem Rücken eine Naht in der Mitte.',
    clause: 'gib dem Rücken eine Naht in der Mitte',
  },
}
export const PAIR_WORDS: typeof Pair = {
  both: (one, other) => `${capital(one)} und ${other}.`,
}

export const RUN_WORDS: typeof Run = {
  round: (round) => `Runde ${round}`,
  sewing: 'Nähplan',
  noLayout: 'Kein Auflageplan wurde gefunden, also gibt es nichts zu drucken.',
  cutting: 'Auflageplan, Zuschneideliste, Markierungen, Einkauf',
  pieces: 'Teile in Originalgröße: Miss erst beide Quadrate',
  steps: 'Schritte des Schnitts, Kanten und ihre Verarbeitung',
  list: 'Diese Liste',
  how: 'Drucke mit 100 %, nie an die Seite angepasst. Schneide nichts, bevor beide Quadrate gemessen sind.',
  pages: 'Seiten dieser Datei',
  part: (from, to, words) =>
    `${from === to ? `Seite ${from}` : `Seiten ${from} bis ${to}`}: ${words}.`,
  notLaid: (piece, reason) => `${piece}: ${reason}`,
}

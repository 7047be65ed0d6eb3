/** Names of pieces, edges and darts; their cases besides, for whole sentences in other files. */
import { capital } from '../units/capital.ts'
import { germanNoun, type Form, type Gender, type GermanNoun } from '../units/german-noun.ts'
import {
  forEverySide,
  type AnyDart,
  type CutOut,
  type EdgeName,
  type LevelName,
  type PairedId,
  type PieceId,
  type Side,
} from './piece.ts'
import type * as English from './piece.words.ts'

const seam = (name: string, adjectives: readonly string[] = []): GermanNoun =>
  germanNoun('f', `${name}naht`, { plural: `${name}nähte`, adjectives })

/** `${EDGES[edge].den}`: "den Saum", "die Seitennaht", "das Armloch". */
export const EDGES: Readonly<Record<EdgeName, GermanNoun>> = {
  centre: germanNoun('f', 'Mitte', { plural: 'Mitten' }),
  neck: germanNoun('m', 'Halsausschnitt', {
    genitive: 'Halsausschnitts',
    plural: 'Halsausschnitte',
  }),
  overarm: seam('Oberarm'),
  shoulder: seam('Schulter'),
  sleeveEdge: germanNoun('f', 'Ärmelkante', { plural: 'Ärmelkanten' }),
  armhole: germanNoun('n', 'Armloch', { genitive: 'Armlochs', plural: 'Armlöcher' }),
  side: seam('Seiten'),
  hem: germanNoun('m', 'Saum', { genitive: 'Saums', plural: 'Säume' }),
  waist: seam('Taillen'),
  styleSeam: seam('Teilungs'),
  cap: germanNoun('f', 'Armkugel', { plural: 'Armkugeln' }),
  frontSeam: seam('Ärmel', ['vorder']),
  backSeam: seam('Ärmel', ['hinter']),
  sleeveEnd: germanNoun('n', 'Ärmelende', { genitive: 'Ärmelendes', plural: 'Ärmelenden' }),
  outer: germanNoun('f', 'Kante', { plural: 'Kanten', adjectives: ['frei'] }),
  sewnOn: germanNoun('f', 'Ansatzkante', { plural: 'Ansatzkanten' }),
  start: germanNoun('f', 'Schmalkante', { plural: 'Schmalkanten' }),
  end: germanNoun('f', 'Schmalkante', { plural: 'Schmalkanten', adjectives: ['ander'] }),
}

const dart = (name: string, ...adjectives: readonly string[]): GermanNoun =>
  germanNoun('m', name, { genitive: `${name}s`, adjectives })

export const DARTS: Readonly<Record<AnyDart, GermanNoun>> = {
  waistDart: dart('Taillenabnäher'),
  waistDart2: dart('Taillenabnäher', 'zweit'),
  bustDart: dart('Brustabnäher'),
  bustDart2: dart('Brustabnäher', 'zweit'),
  shoulderDart: dart('Schulterabnäher'),
}

interface Named extends Form {
  readonly gender: Gender
  readonly noun: string
}
const part = (noun: string, ...adjectives: readonly string[]): Named => ({
  gender: 'n',
  noun,
  genitive: `${noun}s`,
  plural: `${noun}e`,
  adjectives,
})
const facing = (noun: string, ...adjectives: readonly string[]): Named => ({
  gender: 'm',
  noun,
  genitive: `${noun}s`,
  plural: `${noun}e`,
  adjectives,
})
const strip = (after: string): Named => ({
  gender: 'm',
  noun: 'Schrägstreifen',
  genitive: 'Schrägstreifens',
  after,
})
const NAMED: Readonly<Record<PairedId, Named>> = {
  back: part('Rückenteil'),
  front: part('Vorderteil'),
  sleeve: { gender: 'm', noun: 'Ärmel', genitive: 'Ärmels' },
  cuff: { gender: 'f', noun: 'Manschette', plural: 'Manschetten' },
  backNeckFacing: facing('Halsbeleg', 'hinter'),
  frontNeckFacing: facing('Halsbeleg', 'vorder'),
  neckStrip: strip('des Halsausschnitts'),
  armholeStrip: strip('des Armlochs'),
  slitFacing: facing('Schlitzbeleg'),
  sleeveBinding: {
    gender: 'm',
    noun: 'Einfassstreifen',
    genitive: 'Einfassstreifens',
    after: 'des Ärmelschlitzes',
  },
  keyholeFacing: facing('Tropfenbeleg'),
  buttonFacing: facing('Beleg', 'vorder'),
  sideFront: part('Vorderteil', 'seitlich'),
  skirtBack: part('Rockteil', 'hinter'),
  skirtFront: part('Rockteil', 'vorder'),
  skirtButtonFacing: facing('Rockbeleg', 'vorder'),
  backWaistFacing: facing('Taillenbeleg', 'hinter'),
  frontWaistFacing: facing('Taillenbeleg', 'vorder'),
}
const SIDE_STEM: Readonly<Record<Side, string>> = { left: 'link', right: 'recht' }

const everyCase = <K extends string>(
  named: Readonly<Record<K, Named>>,
): Readonly<Record<K, GermanNoun>> =>
  Object.fromEntries(
    Object.entries<Named>(named).map(([id, { gender, noun, ...form }]) => [
      id,
      germanNoun(gender, noun, form),
    ]),
  ) as Record<K, GermanNoun>

/** Lines squared out across a piece: all of them are feminine. */
const level = (noun: string): GermanNoun => germanNoun('f', noun, { plural: `${noun}n` })
export const LEVELS: Readonly<Record<LevelName, GermanNoun>> = {
  waistLine: level('Taillenlinie'),
  bustLine: level('Brustlinie'),
  hipLine: level('Hüftlinie'),
  underarmLine: level('Achsellinie'),
  widthOfTheSleeve: level('Ärmelweite'),
}

/** `${PIECES[piece].des}`: "des linken Rückenteils". */
export const PIECES: Readonly<Record<PieceId, GermanNoun>> = everyCase(
  forEverySide(NAMED, (what, side) => ({
    ...what,
    adjectives: [SIDE_STEM[side], ...(what.adjectives ?? [])],
  })),
)

const bare = <K extends string>(
  nouns: Readonly<Record<K, GermanNoun>>,
): Readonly<Record<K, string>> =>
  Object.fromEntries(
    Object.entries<GermanNoun>(nouns).map(([id, noun]) => [id, noun.bare]),
  ) as Record<K, string>

export const EDGE_WORDS: typeof English.EDGE_WORDS = bare(EDGES)
export const PIECE_WORDS: typeof English.PIECE_WORDS = bare(PIECES)
export const DART_WORDS: typeof English.DART_WORDS = bare(DARTS)
const END_SAID = { upper: 'obere Spitze', lower: 'untere Spitze' }
export const dartTipSaid: typeof English.dartTipSaid = (dart, end) =>
  `${end ? END_SAID[end] : 'Spitze'} ${DARTS[dart].des}`
export const dartWidthSaid: typeof English.dartWidthSaid = (dart) => `${DARTS[dart].bare}, Inhalt`
const SIDE_SAID: Readonly<Record<Side, string>> = { left: 'links', right: 'rechts' }
export const ofSideSaid: typeof English.ofSideSaid = (words, side) => `${words}, ${SIDE_SAID[side]}`
export const placeSaid: typeof English.placeSaid = (piece, part) => `${PIECES[piece].bare}, ${part}`
export const LEVEL_WORDS: typeof English.LEVEL_WORDS = bare(LEVELS)

export const pieceTitle: typeof English.pieceTitle = (id) =>
  id === 'sleeve' ? 'Ärmel, ganz' : capital(PIECES[id].bare)
export const halfTitle: typeof English.halfTitle = (id) => `${capital(PIECES[id].bare)}, halb`
export const sideTitle: typeof English.sideTitle = (id, side) =>
  `${pieceTitle(id)}, ${SIDE_SAID[side]}`
export const inOneTitle: typeof English.inOneTitle = (id) =>
  `${pieceTitle(id)}, links und rechts in einem`
export const WITHIN_STYLE_SEAM: typeof English.WITHIN_STYLE_SEAM = {
  half: 'Mittleres Vorderteil, halb',
  left: 'Mittleres Vorderteil, links',
  right: 'Mittleres Vorderteil, rechts',
  inOne: 'Mittleres Vorderteil, links und rechts in einem',
}

export const cuttingSaid: typeof English.cuttingSaid = ({ count, how }) =>
  `${count}× zuschneiden${CUT_HOW[how]}`
const CUT_HOW: Readonly<Record<CutOut['how'], string>> = {
  single: '',
  onFold: ', im Stoffbruch',
  turnedOver: ', gegengleich',
  trueBias: ', im schrägen Fadenlauf',
  whole: ', ganz, rechte Seite oben',
}

/** What pieces, their edges and their darts are called. */
import { capital } from '../units/capital.ts'
import {
  forEverySide,
  type AnyDart,
  type CutOut,
  type EdgeName,
  type HalfId,
  type LevelName,
  type PairedId,
  type PieceId,
  type Side,
  type SkirtId,
} from './piece.ts'

export const EDGE_WORDS: Readonly<Record<EdgeName, string>> = {
  centre: 'centre',
  neck: 'neck edge',
  overarm: 'overarm seam',
  shoulder: 'shoulder seam',
  sleeveEdge: 'sleeve edge',
  armhole: 'armhole',
  side: 'side seam',
  hem: 'hem',
  waist: 'waist seam',
  styleSeam: 'style seam',
  cap: 'sleeve cap',
  frontSeam: 'front sleeve seam',
  backSeam: 'back sleeve seam',
  sleeveEnd: 'sleeve end',
  outer: 'free edge',
  sewnOn: 'edge that is sewn on',
  start: 'short end',
  end: 'other short end',
}

const PAIRED_WORDS: Readonly<Record<PairedId, string>> = {
  back: 'back',
  front: 'front',
  sleeve: 'sleeve',
  cuff: 'cuff',
  backNeckFacing: 'back neck facing',
  frontNeckFacing: 'front neck facing',
  neckStrip: 'bias strip of the neck',
  armholeStrip: 'bias strip of the armhole',
  slitFacing: 'facing of the slit',
  sleeveBinding: 'binding of the sleeve slit',
  keyholeFacing: 'facing of the keyhole',
  buttonFacing: 'front facing',
  sideFront: 'side front',
  skirtBack: 'skirt back',
  skirtFront: 'skirt front',
  skirtButtonFacing: 'skirt front facing',
  backWaistFacing: 'back waist facing',
  frontWaistFacing: 'front waist facing',
}

export const PIECE_WORDS: Readonly<Record<PieceId, string>> = forEverySide(
  PAIRED_WORDS,
  (words, side) => `${side} ${words}`,
)

export const DART_WORDS: Readonly<Record<AnyDart, string>> = {
  waistDart: 'waist dart',
  waistDart2: 'second waist dart',
  bustDart: 'side bust dart',
  bustDart2: 'second bust dart',
  shoulderDart: 'shoulder dart',
}

export const dartTipSaid = (dart: AnyDart, end?: 'upper' | 'lower'): string =>
  `${end ? `${end} tip` : 'tip'} of the ${DART_WORDS[dart]}`
export const dartWidthSaid = (dart: AnyDart): string => `${DART_WORDS[dart]}, width`
/** "side seam, left": of one side, as worn. */
export const ofSideSaid = (words: string, side: Side): string => `${words}, ${side}`
/** "back, sleeve edge": where to look. */
export const placeSaid = (piece: PieceId, part: string): string => `${PIECE_WORDS[piece]}, ${part}`

export const LEVEL_WORDS: Readonly<Record<LevelName, string>> = {
  waistLine: 'waist line',
  bustLine: 'bust line',
  hipLine: 'hip line',
  underarmLine: 'underarm line',
  widthOfTheSleeve: 'width of the sleeve',
}

/** Names as they stand on the paper. */
export const pieceTitle = (id: PairedId): string =>
  id === 'sleeve' ? 'Sleeve, whole' : capital(PAIRED_WORDS[id])
export const halfTitle = (id: HalfId | SkirtId): string => `${capital(PAIRED_WORDS[id])}, half`
export const sideTitle = (id: PairedId, side: Side): string => `${pieceTitle(id)}, ${side}`
export const inOneTitle = (id: PairedId): string => `${pieceTitle(id)}, left and right in one`
/** The front between both style seams. */
export const WITHIN_STYLE_SEAM = {
  half: 'Centre front, half',
  left: 'Centre front, left',
  right: 'Centre front, right',
  inOne: 'Centre front, left and right in one',
}

export const cuttingSaid = ({ count, how }: CutOut): string => `Cut ${count}${CUT_HOW[how]}`
const CUT_HOW: Readonly<Record<CutOut['how'], string>> = {
  single: '',
  onFold: ' on the fold',
  turnedOver: ', one turned over',
  trueBias: ' on the true bias',
  whole: ', whole, right side up',
}

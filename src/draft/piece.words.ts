/** What pieces, their edges and their darts are called. */
import { forEverySide, type AnyDart, type EdgeName, type PairedId, type PieceId } from './piece.ts'

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
  outer: 'free edge',
  start: 'short end',
  end: 'other short end',
}

const PAIRED_WORDS: Readonly<Record<PairedId, string>> = {
  back: 'back',
  front: 'front',
  sleeve: 'sleeve',
  backNeckFacing: 'back neck facing',
  frontNeckFacing: 'front neck facing',
  neckStrip: 'bias strip of the neck',
  armholeStrip: 'bias strip of the armhole',
  slitFacing: 'facing of the slit',
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

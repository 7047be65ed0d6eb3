/** A drawn piece: short names, words along its lines. */
import { forEverySide, type PieceId } from '../../../draft/piece.ts'

/** Pieces by the shortest words that tell them apart: on a switch, on a small drawing. */
export const SHORT_NAMES: Readonly<Record<PieceId, string>> = forEverySide(
  {
    back: 'Back',
    front: 'Front',
    sleeve: 'Sleeve',
    cuff: 'Cuff',
    backNeckFacing: 'Back neck',
    frontNeckFacing: 'Front neck',
    neckStrip: 'Neck strip',
    armholeStrip: 'Armhole strip',
    slitFacing: 'Slit facing',
    sleeveBinding: 'Slit binding',
    keyholeFacing: 'Keyhole facing',
    buttonFacing: 'Front facing',
    sideFront: 'Side front',
    skirtBack: 'Skirt back',
    skirtFront: 'Skirt front',
    skirtButtonFacing: 'Skirt facing',
    backWaistFacing: 'Back waist',
    frontWaistFacing: 'Front waist',
  },
  (words, side) => `${words}, ${side}`,
)

export const DRAWN_WORDS = {
  onFold: 'on the fold',
  centreBackSeam: 'centre-back seam',
  /** What a drawing shows where the round before lies under it. */
  withBefore: (piece: string) => `${piece}, the round before in running stitch`,
}

/** Pieces by the shortest words that tell them apart: on a switch, on a small drawing. */
import { forEverySide } from '../../../draft/piece.ts'

export const SHORT_NAMES = forEverySide(
  {
    back: 'Back',
    front: 'Front',
    sleeve: 'Sleeve',
    backNeckFacing: 'Back neck',
    frontNeckFacing: 'Front neck',
    neckStrip: 'Neck strip',
    armholeStrip: 'Armhole strip',
    slitFacing: 'Slit facing',
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

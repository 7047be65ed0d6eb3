import { forEverySide } from '../../../draft/piece.ts'
import type { DRAWN_WORDS as EnglishDrawn, SHORT_NAMES as EnglishShort } from './piece.words.ts'

const SIDES = { left: 'links', right: 'rechts' } as const

export const SHORT_NAMES: typeof EnglishShort = forEverySide(
  {
    back: 'Rücken',
    front: 'Vorn',
    sleeve: 'Ärmel',
    cuff: 'Manschette',
    backNeckFacing: 'Hals hinten',
    frontNeckFacing: 'Hals vorn',
    neckStrip: 'Halsstreifen',
    armholeStrip: 'Armstreifen',
    slitFacing: 'Schlitzbeleg',
    sleeveBinding: 'Schlitzstreifen',
    keyholeFacing: 'Tropfenbeleg',
    buttonFacing: 'Vorderbeleg',
    sideFront: 'Seite vorn',
    skirtBack: 'Rock hinten',
    skirtFront: 'Rock vorn',
    skirtButtonFacing: 'Rockbeleg',
    backWaistFacing: 'Taille hinten',
    frontWaistFacing: 'Taille vorn',
  },
  (words, side) => `${words}, ${SIDES[side]}`,
)

export const DRAWN_WORDS: typeof EnglishDrawn = {
  onFold: 'im Stoffbruch',
  centreBackSeam: 'hintere Mittelnaht',
  withBefore: (piece) => `${piece}, die Runde davor als Heftstich`,
}

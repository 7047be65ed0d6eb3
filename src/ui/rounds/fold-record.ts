/**
 * How often the fold reader is right, as `npm run bench:folds` found it on the half of the test
 * pictures it was not fitted on: 14 rendered muslins, 55 folds, of which 3 pictures without any.
 */
import { CLOTH_WORDS } from './photos.words.ts'

const ON_UNSEEN = { found: 0.927, place: 0.909, falsePerSmooth: 0.333 }

const inHundred = (share: number): number => Math.round(share * 100)
export const READ_RIGHT = CLOTH_WORDS.readRight(
  inHundred(ON_UNSEEN.found),
  inHundred(ON_UNSEEN.place),
  Math.round(1 / ON_UNSEEN.falsePerSmooth),
)

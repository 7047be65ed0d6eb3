/**
 * How often the fold reader is right, as `npm run bench:folds` found it on the half of the test
 * pictures it was not fitted on: 14 rendered muslins, 55 folds, of which 3 pictures without any.
 */
const ON_UNSEEN = { found: 0.927, place: 0.909, falsePerSmooth: 0.333 }

const inHundred = (share: number): number => Math.round(share * 100)
export const READ_RIGHT = `A hint, never a verdict; you say what you see. On rendered test pictures it found ${inHundred(ON_UNSEEN.found)} of 100 folds, named the right place among its first two in ${inHundred(ON_UNSEEN.place)} of 100 muslins, and drew a false line on one smooth muslin in ${Math.round(1 / ON_UNSEEN.falsePerSmooth)}. It was not tried on sewn muslins yet.`

/** The places of folds as the table of complaints words them. */
import type { FoldPlace } from './fold-places.ts'

export const FOLD_WORDS: Readonly<Record<FoldPlace, string>> = {
  betweenApexes: 'level, from bust tip to bust tip',
  apexToSideWaist: 'slanting, from the bust tip down to the side of the waist',
  neckToArmpit: 'slanting, from the neck down to the armpit',
  shoulderTipToCentre: 'fanning, from the tip of the shoulder towards the middle',
  aboveBackWaist: 'level, across the back above the waist',
  besideArmhole: 'upright, beside the armhole',
}

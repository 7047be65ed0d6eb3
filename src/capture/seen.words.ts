/**
 * Where a point of a photo was seen, and what an estimate rests on. Readings and the tape book keep the
 * ids; these are the words for them.
 */

/** Why a point lies where it does. */
export const FROM_WORDS = {
  ownMark: 'your own mark',
  elastic: 'the elastic at your waist',
  narrowest: 'the narrowest level of your outline',
  startHere: 'a usual place to start from: drag it',
  waistInFront: 'the waist seen in the front photo',
  waistInSide: 'the waist seen in the side photo',
  waistInBack: 'the waist seen in the back photo',
  levelInSide: 'the level seen in the side photo',
  dotNape: 'the dot at your nape',
  dotWaist: 'the dot at your waist',
  dotApex: 'the dot at your apex',
  dotSideNeck: 'the dot at your side neck',
  dotShoulder: 'the dot at your shoulder point',
  dotHip: 'the dot at your hip',
  dotsAtApexes: 'the dots at your apexes',
  levelOfDots: 'the level of the dots',
  light: 'the light on the cloth',
  shouldersAndOutline: 'shoulders and outline',
  usualForBreadth: 'a usual place for this breadth: drag it',
  neckBreadth: 'breadth of the neck',
  shoulderJoints: 'shoulder joints',
  usualBesideSide: 'the usual level; the side photo places it better',
  napeInOutline: 'the back of the neck in the outline',
  besideNape: 'beside the nape',
  usualLevel: 'the usual level: drag it',
  foremost: 'the foremost place of the outline',
  backAtBust: 'the back line at bust level',
  hindmost: 'the hindmost place of the outline',
  aboveHand: 'the front line above the hand',
}

/** A photo by its side. */
export const PHOTO_NAMES = { front: 'front photo', side: 'side photo', back: 'back photo' }

/** Which card gave the scale, and where it was. */
export const SCALE_WORDS = {
  sheetHung: 'sheet hung at the waist',
  sheetHeld: 'sheet held in the hand',
  cardHung: 'card hung at the waist',
  cardHeld: 'card held in the hand',
}

/** How a length runs in a photo; `a` and `b` are words of FROM_WORDS. */
export const RUN_WORDS = {
  alongBack: (a: string) => `along the back line to ${a}`,
  straightDown: (a: string) => `straight down to ${a}`,
  apexesTo: (a: string) => `apexes to ${a}`,
  outlineAt: (a: string) => `outline at ${a}`,
  at: (a: string) => a,
  between: (a: string, b: string) => `${a} to ${b}`,
}

/** What an estimate rests on beside the photos, or in their stead. */
export const NOTE_WORDS = {
  thenDown: 'then down to the waist',
  girthOfProportions:
    'breadth and depth of the photos, proportions of 2,208 women; a check, not a measure',
  heightAlone: 'your height alone would say as much',
  surveysAlone: 'two surveys of women alone would say as much',
  fromShoulders:
    'shoulder bones and girths of the photos, proportions of two surveys; the arm creases do not show',
  fromHeight:
    'height and girths of the photos, proportions of two surveys; the hanging arms hide the level',
}

export const BASIS_WORDS = {
  /** One photo's way to the length. */
  way: (photo: string, scale: string, run: string) => `${photo}, ${scale}, ${run}`,
  all: (parts: readonly string[]) => parts.join('; '),
}

/** Why the photos give no number. */
export const NO_NUMBER_WORDS = {
  noPhoto: {
    front: 'There is no front photo.',
    side: 'There is no side photo.',
    back: 'There is no back photo.',
  },
  notShown: {
    front: 'The front photo does not show it.',
    side: 'The side photo does not show it.',
    back: 'The back photo does not show it.',
  },
  noCard: {
    front: (why: string) => `There is no card to measure by in the front photo. ${why}`,
    side: (why: string) => `There is no card to measure by in the side photo. ${why}`,
    back: (why: string) => `There is no card to measure by in the back photo. ${why}`,
  },
  noShoulders: 'Neither the front nor the back photo shows the shoulders.',
  noHeightNoGirth: 'The photos show neither your height nor a girth to judge it by.',
}

/** What each step of a set-in sleeve is for. */
export const SLEEVE_WORDS = {
  topOfCap: 'the top of the cap, at the shoulder seam',
  widerForLowerCap: 'wider, for a lower cap',
  heightOfCap: 'the height of the cap',
  frontOfWidth: 'the front of the width',
  underarmOfFront: 'the underarm of the front',
  underarmOfBack: 'the underarm of the back',
  hemAtMiddle: 'the hem at the middle',
  littleBelowUnderarm: 'a little below the underarm',
  sewnToBackArmhole: 'level at both ends, sewn to the back armhole',
  sewnToFrontArmhole: 'level at both ends, sewn to the front armhole',
  hemAtFrontSeam: 'the hem at the front seam',
  hemAtBackSeam: 'the hem at the back seam',
  sewnToBackSeam: 'sewn to the back seam',
  straight: 'straight',
  sewnToFrontSeam: 'sewn to the front seam',
  marks: {
    K: 'the front notch: from here to the underarm nothing is eased',
    L: 'the back notch',
    S: 'this mark meets the shoulder seam: the sleeve is turned in the armhole, its seam under the arm as well',
  },
}

/** What a proof finds, in words; {value} and {limit} are lengths. */
import type { Side } from './piece.ts'

export const FINDING_WORDS = {
  centresApart:
    'Left and right half differ by {value} where they meet at the centre; they may differ by {limit}. Correct the centre on both sides alike.',
  overarmPair:
    'Overarm seams of back and front differ by {value}; sewn together they may differ by {limit}.',
  sidePair:
    'Side seams of back and front differ by {value}; sewn together they may differ by {limit}.',
  shoulderPair:
    'Shoulder seams of back and front differ by {value}; sewn together they may differ by {limit}.',
  armholeJoin: 'Back and front armhole do not run on in one line here.',
  armholeSmall:
    'The armhole is {value} round; an upper arm and room to move need {limit}. Lower the underarm.',
  capPair: 'The cap is {value} longer than the armhole; {limit} was chosen. Draw the sleeve again.',
  capUnsolved:
    'No cap {limit} wide is as long as these armholes of {value}. Change the room over the upper arm or the underarm.',
  capGathered:
    'The cap has {value} to ease in where {limit} was chosen: gather it lightly over the top, so that it goes over the arm.',
  sleeveWider:
    'The sleeve is {value} wider than {limit} of arm and room, so that its cap does not stand too high.',
  sleeveLonger: 'The sleeve is {value} long: it ends at least {limit} below the underarm.',
  sleeveHemWider:
    'The hem of the sleeve is {value} round and not narrower, so that a hand goes through it.',
  sleeveEndWider:
    'The sleeve end is {value} round and not narrower: a wrist needs {limit}, and a hand goes through it with its slit open.',
  cuffWider:
    'The cuff closes {value} round and not narrower, for wrist and hand; {limit} was to be drawn up.',
  cuffRound:
    'The cuff closes {value} round, from what the sleeve end leaves it: the arm there is not taped. Close a tape to that length and move it where the cuff will lie.',
  cuffPair: 'Sleeve end and cuff differ by {value}; sewn together they may differ by {limit}.',
  slitShorter: 'The slit is {value} long and not {limit}: it ends below the underarm.',
  handPasses:
    'The sleeve end opens to {value} round; a hand needs {limit}. Lengthen the slit or the sleeve.',
  waistPair:
    'Bodice and skirt differ by {value} at the waist seam; sewn together they may differ by {limit}.',
  waistDarts: 'A dart of the skirt misses that of the bodice by {value} at the waist seam.',
  hemNarrow: 'The hem is {value} round; to walk in it needs {limit}, or vents in the side seams.',
  sleevePair: 'The two sleeve seams differ by {value}; sewn together they may differ by {limit}.',
  acrossWide:
    'Half the width across is {value} and reaches past the underarm at {limit}. Tape across back and chest again.',
  acrossBackUnknown:
    'The width across the back is not taped: it follows the size, {value} for half of it.',
  acrossChestUnknown:
    'The width across the chest is not taped: it follows the size, {value} for half of it.',
  dartLegs: 'The legs of a dart differ by {value}; sewn together they may differ by {limit}.',
  neckJoin: 'Back and front neck do not run on in one line at the overarm seam.',
  notSquare: 'This corner is not square where it lies on the fold.',
  sideJoin: 'The side seam is not smooth here.',
  outlineCrosses:
    'The outline of this piece crosses itself. Change the number that was changed last.',
  armOpening:
    'The arm opening is {value} round; your upper arm and room to move need {limit}. Lower the underarm or lengthen the overarm.',
  upperArmUnknown: 'The upper arm is not taped, so the arm opening of {value} cannot be proved.',
  underarmPlace:
    'The underarm lies {value} below the armpit level; nearer than {limit} the sleeve cuts into the arm. Lower the underarm.',
  armpitUnknown:
    'The armpit level is not taped: the underarm stands {value} above the bust line. Sew a muslin with it, not cloth.',
  overarmShort:
    'The taped overarm of {value} is too short for both sleeve edges; the shortest is {limit}. The length found from the underarm is used.',
  overarmRaised:
    'The overarm ends {value} higher than chosen: it would end beside or under the underarm.',
  struckOutside:
    'An arc struck with the taped overarm of {value} meets the side too far from the armpit. The length found from the underarm is used.',
  dartWide: 'A dart is {value} wide; {limit} is the most it holds well.',
  secondDart:
    'One dart would be {value} wide and holds {limit}, so the rest goes to the side and a second dart.',
  waistLooser:
    'Darts here hold {limit}; the waist hangs looser by {value} than was chosen, on each half.',
  underarmDeeper:
    'The underarm is {value} deeper than chosen, so that {limit} of room goes round the arm.',
  centreBackSeam:
    'Side and darts cannot take the waist in alone: a centre-back seam takes {value}.',
  dartOpen:
    'The hem is too near for this dart to close: it runs out open, {value} wide at the hem.',
  dartStays:
    'The bust dart of {value} stays in the side: the piece has no room for it where it was wanted.',
  bustDartHigher:
    'The bust line lies too near the waist for a dart in the side: its mouth is drawn {value} higher. Tape the waist to the bust line again, or add length between them.',
  seamNotHere:
    'The bust dart of {value} stays a dart: a style seam starts from shoulder or armhole.',
  bustDart:
    'The front is longer than the back over the body: a dart of {value} in the side takes what the raise of {limit} does not.',
  headUnknown:
    'The head is not taped, so it is not known whether the neck opening of {value} passes over it.',
  headOpening:
    'The neck opening is {value} round; the head needs {limit}. Widen or deepen the neck, or choose an opening there.',
  gettingInUnknown:
    'It is not known whether the waist of {value} passes over the bust and shoulders: tape the slip-through girth.',
  gettingIn:
    'The sewn waist is {value} round; {limit} must pass through it. Choose an opening that reaches the waist.',
  openingAdded:
    'Sewn shut, {value} would have to pass {limit}. The draft adds an opening; choose another if you like.',
  frontNeckHigh:
    'The front neck edge lies {value} below the nape level, above your front neck point at {limit}. Make the neck deeper.',
  neckBaseUnknown:
    'The neck base is not taped: the side-neck point does not follow the slope of the shoulder.',
  fullerBust:
    'The bust is {value} larger than the high bust. Over {limit} a wider front and a lower dart tip may lie better.',
  balanceUnknown:
    'Front and back lengths over bust and blade are not taped; the front is raised by {value}, the usual amount.',
  straightWaist: 'The waist runs straight here: there is no dart.',
  waistWider:
    'The waist is wider than the bust here: the side runs out to it and there is no dart.',
}

export const findingOnSide = (side: Side, said: string): string => `On the ${side} side: ${said}`

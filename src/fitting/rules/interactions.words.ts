/**
 * How complaints bear on each other, in words: why one comes first, takes the slack of another or
 * pulls against it, and what is said of the two. Complaints stand as their ids.
 */
import type { ComplaintId } from '../complaints/complaint.ts'
import type { Kind } from '../complaints/heads.ts'

const KINDS: Readonly<Record<Kind, string>> = {
  length: 'length or balance',
  shape: 'shoulder or bust',
  girth: 'girth or sleeve',
}

export const INTERACTION_WORDS = {
  first: {
    tightBust: 'a tight bust is let out first; the gape that is left is pinned again',
    hip: 'the hip first: a tight hip pushes the same fold up',
    overBlades: 'length over the blades first; neck, seam place and sleeve follow it',
    shoulderSeam: 'the shoulder seam first, the sleeve hangs from it',
    slope: 'the slope carries the underarm with it',
    capWidth: 'width and height of the cap first, its length after',
    balance: 'the balance first, the place of the side seam last',
    frontWidth: 'the width of the front first, then where the bust tip lies',
  },
  sameSlack: {
    levelTuck: 'the level tuck above the bust takes the slack of the neck edge too',
    aboveBust: 'the slack above the bust is taken once',
    slope: 'the slope of the shoulder is behind the slack at the armhole',
    oneShoulder: 'one shoulder is lower: the sides are corrected apart',
    longShoulder: 'the long shoulder is behind the slack beside the armhole',
    wedgeAtArmhole: 'the wedge at the armhole takes the same slack',
    pleat: 'the pleat across the back takes the fold at the neck too',
    foldsAtNeck: 'the slope is behind the folds at the neck',
    waist: 'the waist is taken in once, all round',
    allLoose: 'everything is loose: the whole is taken in once',
    allTight: 'everything is tight: the whole is let out once',
    width: 'the same width is missing: it is added once',
    frontLength: 'the same length is missing in front: it is added once',
    bladeLength: 'the same length is missing over the blades: it is added once',
    tooMuchInFront: 'the same length is too much in front: it is taken once',
    underarm: 'the underarm is raised once',
    frontWidth: 'the width of the front is taken in once',
    lowerCap: 'a lower cap is shorter too',
  },
  evenPart: 'the even part first, a wedge for what is left',
  opposed: {
    reach:
      'the back is let out for reach and taken in for slack; 6 to 13 mm a half stay to reach with',
    waistWidth: 'the waist is too tight and too loose',
    bust: 'the bust is too tight and too big',
    slope: 'the shoulder is drawn too flat and too steep',
    shoulderLength: 'the shoulder is too long and too short',
    shoulderSeam: 'the seam lies too far back and too far forward',
    neck: 'the neck is too tight and too wide',
    waistHeight: 'the waist lies too high and too low',
    underarm: 'the underarm is too high and too low',
    underarmLift: 'the underarm should go down for comfort and up for lift',
    capHeight: 'the cap is too low and too high',
    capEase: 'the cap has too much ease and too little',
    overarm: 'the overarm is too flat and too steep',
    overarmLift: 'a steeper overarm lies closer and lifts less',
    sweep: 'the sweep is too large and too small',
    all: 'everything is too tight and too loose',
    chest: 'the chest is too wide and too narrow',
    sideSeam: 'the side seam swings forward and back',
    backLength: 'the back is too short and too long above the waist',
    underBust: 'the front is too short and too long under the bust',
    aboveBust: 'the front is too long and too short above the bust',
  },
  oneCause:
    'Neck and armhole gape for one reason: the darts hold too little. One turn at each edge, both into the darts; the front is not widened as well.',

  comesFrom: (id: ComplaintId, to: ComplaintId) =>
    `“${id}” comes from “${to}”, which explains both: it is changed once.`,
  chooseOne: (
    [a, b]: readonly [ComplaintId, ComplaintId],
    why: string,
    [first, second]: readonly [number, number],
  ) =>
    `“${a}” and “${b}”: ${why}. “${a}” would change ${first} mm, “${b}” ${second} mm: choose one.`,
  takesItsPart: (id: ComplaintId, why: string, even: ComplaintId, left: number) =>
    `${id}: ${why}. “${even}” takes its part; ${left} mm are left.`,
  /** Above the bust and at the neck, of which the neck keeps it. */
  atTheNeck: (
    [bust, neck]: readonly [ComplaintId, ComplaintId],
    [above, there]: readonly [number, number],
  ) =>
    `“${neck}” and “${bust}” describe one slack; the wedge at the neck made it vanish, so it is taken there (${there} mm) and not above the bust (${above} mm).`,
  notTwice: (
    [keep, drop]: readonly [ComplaintId, ComplaintId],
    why: string,
    [there, here]: readonly [number, number],
  ) =>
    `“${keep}” and “${drop}” describe one slack: ${why}. It is not taken twice (${there} mm there, ${here} mm here).`,
  waitsFor: (id: ComplaintId, first: ComplaintId, why: string) =>
    `“${id}” waits for “${first}”: ${why}.`,
  oneOfAKind: (id: ComplaintId, kind: Kind, first: ComplaintId) =>
    `“${id}” waits: one change of ${KINDS[kind]} a round, and “${first}” comes first.`,
  inTurn: (id: ComplaintId, first: ComplaintId) =>
    `“${id}” is asked about when “${first}” is settled.`,
  onlyLikely: (id: ComplaintId, other: ComplaintId) =>
    `“${id}” is only likely: “${other}” comes first.`,
}

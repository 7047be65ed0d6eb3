/**
 * The choices in words: what each is called, what it does and where its amounts come from. Sources
 * name lengths in millimetres, each with its unit: `lengthsIn` sets them into hers.
 */
const COMMON = 'common practice, no source'

export const CHOICE_WORDS = {
  easeBust: {
    label: 'quarter-bust ease',
    does: 'Room to move at the bust, a quarter of it on each half piece.',
    source: `${COMMON}; 88 mm round the body lies in the blouse bands of the ease tables`,
  },
  easeWaist: {
    label: 'quarter-waist ease',
    does: 'Room at the waist, a quarter of it on each half piece.',
    source: COMMON,
  },
  easeHip: {
    label: 'quarter-hip ease',
    does: 'Room at the hip, a quarter of it on each half piece.',
    source: COMMON,
  },
  easeHighHip: {
    label: 'quarter-high-hip ease',
    does: 'Room at the high hip, a quarter of it on each half piece.',
    source: COMMON,
  },
  frontShare: {
    label: 'front wider than back',
    does: 'Moves the side seam: so much is added to the front quarter and taken from the back.',
    source: COMMON,
  },
  cornerRadius: {
    label: 'rounding of the underarm corner',
    does: 'Radius of the curve between sleeve edge and side; nought leaves a corner.',
    source: COMMON,
  },
  armRoom: {
    label: 'room over the upper arm',
    does: 'The arm opening is at least so much larger than the upper arm.',
    source: '51 mm and more in published sleeve drafts',
  },
  neckHalfWidth: {
    label: 'half neck width',
    does: 'From the centre to the side-neck point.',
    source: COMMON,
  },
  sideNeckRise: {
    label: 'side-neck rise',
    does: 'How far the side-neck point lies above the nape level.',
    source: COMMON,
  },
  frontNeckDrop: {
    label: 'front neck depth',
    does: 'From the nape level down the front fold to the neck edge.',
    source: COMMON,
  },
  frontRaise: {
    label: 'front raise',
    does: 'How much longer the front is over the bust than the back over the blade, while both are not taped.',
    source: COMMON,
  },
  frontShort: {
    label: 'front armhole shorter than back',
    does: 'How much less the front measures from side neck to underarm line; the bust dart is larger by it.',
    source:
      'worked out from two published blocks: 29 mm at a bust of 830 mm, 43 mm at a bust of 880 mm',
  },
  acrossEase: {
    label: 'ease across back and chest',
    does: 'Added to half of each width.',
    source:
      'a British metric block: half the back width and 5 mm; 13 to 25 mm in all, common practice',
  },
  shoulderDart: {
    label: 'back shoulder dart',
    does: 'The back shoulder is so much longer than the front; a dart takes it.',
    source: 'from memory: 12 to 18 mm wide and 60 to 80 mm long',
  },
  underarmDrop: {
    label: 'underarm below the armpit',
    does: 'Deeper hangs wider and lifts less.',
    source: `${COMMON}; cut-in-one armholes are lowered 38 mm or more in the period manuals`,
  },
  overarmDrop: {
    label: 'overarm end below the nape level',
    does: 'Lower lies closer to the arm and lets it lift less.',
    source: COMMON,
  },
  lengthAdded: {
    label: 'length between bust and waist',
    does: 'Added or taken out on back and front alike.',
    source: COMMON,
  },
  lengthBelowWaist: {
    label: 'length below the waist',
    does: 'From the waist line down to the hem.',
    source: COMMON,
  },
  sideIntake: {
    label: 'most taken in at the side waist',
    does: 'The dart takes the rest.',
    source: COMMON,
  },
  centreBackMost: {
    label: 'most taken in at the centre back',
    does: 'Only where side and darts cannot take the waist in alone.',
    source: COMMON,
  },
  frontDartTip: {
    label: 'front dart tip below the apex',
    does: 'A fuller bust wants it lower.',
    source: 'public dressmaking lessons: 13 to 25 mm at the waist dart, 13 to 64 mm seen',
  },
  backDartTip: {
    label: 'back dart tip below the bust line',
    does: 'Nought puts it on the bust line.',
    source: COMMON,
  },
  dartSecondMouth: {
    label: 'width of the second bust dart',
    does: 'So much of the bust dart, measured where it lies in the side, goes to its second place.',
    source: COMMON,
  },
  frontDartLow: {
    label: 'front dart below the waist',
    does: 'Where the front dart closes under the waist.',
    source: 'from memory: 90 to 110 mm',
  },
  backDartLow: {
    label: 'back dart below the waist',
    does: 'Where the back dart closes under the waist.',
    source: 'from memory: 130 to 150 mm',
  },
  sweepBack: {
    label: 'sweep of the back sleeve edge',
    does: 'Turns the overarm about the side neck: its end stands so much higher at the back, and the sleeve edge is about that much wider. Less makes it narrower. Not for a neat cap: cut in one, a wide sleeve falls in folds.',
    source:
      'a cut-in-one sleeve has wide drape and free lift with its overarm 20 to 35° below level, a neat hang and little lift at 40 to 50° (common practice)',
  },
  sweepFront: {
    label: 'sweep of the front sleeve edge',
    does: 'The same in front. Back and front may differ; their overarms stay equally long.',
    source: 'as for the back (common practice)',
  },
  keyholeLength: {
    label: 'length of the keyhole',
    does: 'From the neck edge down the centre front to its foot. Not over a centre-front seam.',
    source: COMMON,
  },
  keyholeWidth: {
    label: 'width of the keyhole',
    does: 'Where it is widest; at nought it lies closed, wider shows more.',
    source: COMMON,
  },
  capEase: {
    label: 'cap ease',
    does: 'How much longer the sleeve cap is than the armhole; eased in over the top, never under the arm.',
    source:
      'shirting and lawn 10 to 20 mm, crêpe and wool 25 to 38 mm; a gathered head takes 60 mm and more (sleeve drafts, sources differ)',
  },
  sleevePitch: {
    label: 'sleeve pitch',
    does: 'The sleeve turned so far forward in the armhole: its top and both notches are marked farther back on the cap by as much. Under nought it turns back.',
    source:
      'a bulletin on fitting: the grain hangs with the arm; a tailoring text raises the front pitch and lowers the hind one for an arm that hangs forward',
  },
  sleeveLength: {
    label: 'sleeve length',
    does: 'From the top of the cap to the hem.',
    source: COMMON,
  },
  sleeveHem: {
    label: 'sleeve hem narrower than the arm width',
    does: 'Taken off in all at the hem; a negative amount flares it.',
    source: COMMON,
  },
  cuffHeight: {
    label: 'cuff height',
    does: 'From the sleeve end to the fold; the sleeve is drawn shorter by it.',
    source: COMMON,
  },
  cuffFullness: {
    label: 'sleeve drawn up into the cuff',
    does: 'How much longer the sleeve end is than the cuff is round the arm. Nought sews it on flat.',
    source: COMMON,
  },
  cuffOverlap: {
    label: 'overlap of a cuff',
    does: 'How far one end of the cuff lies under the other for the button.',
    source: COMMON,
  },
  sleeveSlit: {
    label: 'slit at the sleeve end',
    does: 'From the sleeve end up, on the back half; both its edges open for the hand.',
    source:
      '202 mm round hold 95 of 100 hands of 1,986 women (ANSUR II); length common practice, no source',
  },
  skirtFlare: {
    label: 'flare at each side of a skirt half',
    does: 'How far the hem stands out beyond the hip at each side seam.',
    source: COMMON,
  },
  biasGive: {
    label: 'give of a circle’s waist',
    does: 'Each half of a circle skirt’s waist is cut so much shorter; a bias edge stretches back to the seam.',
    source:
      'public circle-skirt lessons take 6 to 25 mm off in all, or stay the edge and take nothing',
  },
  ventLength: {
    label: 'vent in the side at the hem',
    does: 'The side seam is left open so far up from the hem; nought for none.',
    source:
      'a blouse lesson of 1922 leaves opening vents in the side seams; lengths common practice',
  },
  facingWidth: {
    label: 'width of a facing',
    does: 'From the edge to the free edge of a shaped facing.',
    source: 'public dressmaking lessons: 50 to 64 mm at a neck',
  },
  stripWidth: {
    label: 'width of the bias strip',
    does: 'As it is cut, both turnings counted.',
    source: 'an old school textbook: 25 to 32 mm for a single bias facing',
  },
  buttonOverlap: {
    label: 'overlap of a buttoned front',
    does: 'From the centre front to the folded edge; half a button and a little more.',
    source: COMMON,
  },
}

export const CHOICE_RANGE_WORDS = {
  noNumber: 'no number',
  outside: (label: string, said: string, least: string, most: string): string =>
    `${label} would be ${said}; it goes from ${least} to ${most}.`,
}

/** What she reads of the complaints in neck.ts; causes and tests by their numbers. */
export const NECK_WORDS = {
  N1: {
    said: [
      'the neckline gapes in front',
      'loose neck edge',
      'the V falls open',
      'front neck stands away',
    ],
    where: 'front neck edge, between collarbone and bust',
    sign: 'The edge lifts off and stands in a loose loop, most of it half way between side neck and centre. Nothing pulls.',
    causes: {
      1: 'bust shaping too small: a dart is missing above the bust',
      2: 'hollow under the collarbone',
      3: 'neck cut wide or low and not drawn in',
      4: 'neck edge stretched while sewing',
      5: 'shoulders or neck base too wide',
    },
    advice: {
      4: 'The edge is longer sewn than drafted. Stay-stitch it straight after cutting; leave the draft.',
    },
    tests: {
      1: 'Pin a flat wedge, wide at the neck edge and nothing at the bust tip. Does the gape go, and does nothing else pull?',
      2: 'Does only a level tuck above the bust make it lie flat?',
      3: 'Is the sewn edge more than 3 mm longer than the draft?',
      4: 'Does the neck end of the shoulder seam lie off the neck?',
    },
    trueAfter: [
      'neck curve',
      'facing or strip length',
      'legs of the dart that opens',
      'waist seam',
      'neck square at fold and shoulder',
    ],
    doNot:
      'Do not only shorten the strip. Do not take it in at the centre front of a full-bust draft: that takes bust width.',
  },
  N2: {
    said: ['it chokes', 'pulls at the throat', 'the top button will not close'],
    where: 'front neck',
    sign: 'Strain level or like rays round the neck base; the front cuts in when you sit.',
    causes: {
      1: 'front neck not deep enough',
      2: 'neck too small all round',
      3: 'back neck too shallow, or it slides back',
      4: 'square shoulders push cloth to the neck',
    },
    tests: {
      1: 'Snip the front allowance every 15 mm. Does it ease with the shoulders still lying flat?',
      2: 'Does it ease only when it is snipped all round?',
      3: 'Does the shoulder seam lie behind the top of the shoulder?',
    },
    trueAfter: ['front and back neck as one curve over the shoulder', 'facings'],
    doNot: 'Do not deepen it before slope and balance are right: what is cut off stays off.',
  },
  N3: {
    said: ['gap at the nape', 'back neck gapes', 'the collar stands off'],
    where: 'nape, centre back',
    sign: 'The back edge stands off the neck and may fold upright at the centre; there is no level fold below it.',
    causes: {
      1: 'rounded upper back with too little shaping',
      2: 'back neck cut too wide',
      3: 'back too short above the blades, so it hangs from them',
      4: 'head carried forward',
      5: 'back neck edge stretched',
    },
    advice: { 5: 'Stay-stitch the back neck; leave the draft.' },
    tests: {
      1: 'Pin small tucks either side of the centre back. Does it lie flat, and does the hem stay level?',
      2: 'Is it flat with one pinch at the centre seam, and the centre stays straight?',
      3: 'Does the tuck lift the hem at the centre back, or strain across the blades?',
      4: 'Is the sewn edge more than 3 mm longer than the draft?',
    },
    trueAfter: ['back neck', 'shoulder lengths with ease', 'facing'],
    doNot:
      'Do not slant the centre back by more than 5 mm at the neck. Do not shorten only the facing.',
  },
  N4: {
    said: ['fold under the nape', 'bunching at the back of the neck'],
    where: 'centre back, 20 to 60 mm under the nape',
    sign: 'Short level folds just under the back neck; the shoulder seams may stand up near the neck.',
    causes: {
      1: 'square shoulders: the cloth hangs from the tips',
      2: 'back neck too shallow',
      3: 'back too long above the blades',
    },
    tests: {
      1: 'Let out the shoulder tips. Does the fold go?',
      2: 'Snip the back neck seam by 6 mm. Does the fold go?',
      3: 'Does only a level tuck across the blades take it away?',
    },
    trueAfter: ['back neck curve and facing', 'back neck stays above front neck'],
    doNot: 'Do not take length at the waist for a fold at the neck.',
  },
  N5: {
    said: ['straps show', 'it slips off the shoulders', 'neckline too wide'],
    where: 'both side-neck points',
    sign: 'The neck edge lies outside the neck base, with no slack along it; the seam slips sideways.',
    causes: {
      1: 'side-neck point too far out',
      2: 'shoulder too steep near the neck',
      3: 'narrow shoulders',
    },
    tests: {
      1: 'Mark where the edge should begin and measure along the seam. Is it off standing still?',
      2: 'Does it slide only when you move?',
    },
    trueAfter: ['neck', 'facings', 'shoulder lengths'],
    doNot: 'Do not pull it in at the centres: that tilts the grain.',
  },
  N6: {
    said: ['gap between neck and seam', 'the seam floats near the neck'],
    where: 'neck end of the shoulder seam',
    sign: 'The seam floats above the body near the neck while the tip is taut.',
    causes: { 1: 'square shoulders for this draft', 2: 'shoulder too long, pulling the neck away' },
    tests: {
      1: 'Let out at the tip. Does the neck settle?',
      2: 'Fold the overhang at the tip away. Does the neck settle?',
    },
    trueAfter: [],
    doNot: 'Do not take it in at the neck alone, unless the level lines hang level afterwards.',
  },
  N7: {
    said: [
      'the front chokes and the back drops',
      'shoulder seams creep backwards',
      'shirt slides back',
    ],
    where: 'whole shoulder and neck',
    sign: 'Pressure at the throat, shoulder seams behind the bone, front hem up and back hem down.',
    causes: {
      1: 'front too short over the bust',
      2: 'back too long above the blades',
      3: 'shoulders carried forward',
      4: 'tight hip or back holds the back down',
    },
    tests: {
      1: 'With length added over the bust, is the neck free?',
      2: 'Is there a level roll above the blades?',
      3: 'Is the roll only at the seam?',
    },
    trueAfter: [],
    doNot: 'Do not deepen the front neck first.',
  },
  N8: {
    said: ['back of the neck pushes up', 'front neck too low and loose'],
    where: 'whole shoulder',
    sign: 'The back neck rides high, slack folds lie above the bust, the shoulder seam lies before the bone, the back hem rises.',
    causes: {
      1: 'back too short above the blades',
      2: 'front too long above the bust',
      3: 'shoulder seam should lie farther back',
    },
    tests: {
      1: 'Cut across at the blades. Does the hem drop level?',
      2: 'Does a level tuck across the upper chest cure it?',
    },
    trueAfter: [],
    doNot: 'Do not shorten the front at the waist.',
  },
}

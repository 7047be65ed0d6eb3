/** What she reads of the complaints in back.ts; causes and tests by their numbers. */

export const BACK_WORDS = {
  K1: {
    said: ['I cannot reach forward', 'back splits', 'back too narrow'],
    where: 'across the back at the blades',
    sign: 'Level strain from blade to blade; a sleeve is pulled back.',
    causes: {
      1: 'too narrow across the back',
      2: 'no ease to move',
      3: 'sleeve too narrow or its cap too tight',
      4: 'back too short',
    },
    tests: {
      1: 'Open the back armhole or slit the centre back. Does it gape, standing still?',
      2: 'Does it gape only when she reaches forward?',
      3: 'Does unpicking the sleeve free it?',
    },
    trueAfter: ['shoulder ease', 'armhole', 'back of the cap', 'waist'],
    doNot: 'Do not let out the side seam for it.',
  },
  K2: {
    said: [
      'level fold above the waist at the back',
      'pools in the small of the back',
      'hollow back',
    ],
    where: 'centre back just above the waist, fading before the side',
    sign: 'Level folds, deepest at the centre back and gone at the side seams.',
    causes: {
      1: 'centre back too long',
      2: 'hip too tight, so that the cloth rides up',
      3: 'the whole waist too long: folds go right round',
      4: 'centre back not shaped, waist too loose',
    },
    tests: {
      1: 'Pin a tuck at the centre back to nothing at the side. Does the hem hang level?',
      2: 'Draw the cloth down smooth. Is it tight below the waist?',
      3: 'Do the folds run on into the front?',
    },
    trueAfter: [
      'centre back on its grain',
      'side unchanged',
      'waist dart length',
      'hem at the centre',
    ],
    doNot: 'Do not do it while the hip is tight. Do not take it at the side.',
  },
  K3: {
    said: ['back hem lifts', 'rounded shoulders', 'pulls over the upper back'],
    where: 'blades, back hem',
    sign: 'Back waist and hem rise at the centre; level tension over the blades, the neck may stand off.',
    causes: {
      1: 'rounded upper back needs length over the blades',
      2: 'tight over the seat',
      3: 'back too short',
    },
    tests: {
      1: 'Cut across at the blades. Does it open at the centre and not at the armhole?',
      2: 'Is it tight below the waist?',
      3: 'Does it open as wide at the armhole?',
    },
    trueAfter: ['centre back straight', 'shoulder length', 'neck'],
    doNot: 'Do not only lengthen at the waist.',
  },
  K4: {
    said: ['prominent blades'],
    where: 'blade to side waist or underarm',
    sign: 'Slanting strain from the blade.',
    causes: { 1: 'blade dart too small', 2: 'back too short there' },
    tests: {
      1: 'Release the shoulder dart or mid shoulder. Does it open?',
      2: 'Does a cut across the blade open?',
    },
    trueAfter: ['shoulder'],
    doNot: 'Do not press it flat.',
  },
  K5: {
    said: ['back too long above the waist', 'upright back', 'flat back'],
    where: 'upper and middle back',
    sign: 'Level folds between blades and waist; the grain dips at the centre back.',
    causes: { 1: 'upright posture: back too long', 2: 'back shoulder dart too big' },
    tests: {
      1: 'Pin a level pleat across the back until the folds go. Is the neck still easy?',
      2: 'Does the fold end at the tip of the shoulder dart?',
    },
    trueAfter: ['shoulder', 'neck', 'side equal'],
    doNot: 'Do not take it at the waist. Keep the side seams equal.',
  },
  K6: {
    said: ['upright folds at the back waist'],
    where: 'back waist',
    sign: 'Upright slack at the back of the waist.',
    causes: { 1: 'too little taken in at the back dart', 2: 'centre back not shaped' },
    tests: {
      1: 'Pin upright tucks on the dart lines. Does it lie?',
      2: 'Does a pinch at the centre back do it better?',
    },
    trueAfter: ['waist seam', 'darts below it'],
    doNot: 'Do not fit it too close: 20 to 25 mm of ease stay round the waist.',
  },
  K7: {
    said: ['collar rides back', 'curve at the top of the back'],
    where: 'centre back within 100 mm of the nape',
    sign: 'Tension over the curve at the nape; the neck stands away above or below it.',
    causes: { 1: 'the upper spine curves there' },
    tests: { 1: 'Cut across 40 to 60 mm below the nape. Does it open at the centre?' },
    trueAfter: ['back neck with its dart folded', 'shoulder'],
    doNot: 'Do not only slant the centre back.',
  },
}

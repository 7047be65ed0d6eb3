/** What she reads of the complaints in shoulder.ts; causes and tests by their numbers. */
export const SHOULDER_WORDS = {
  SH1: {
    said: [
      'folds from neck to armpit',
      'loose at the shoulder tip',
      'a wing at the top of the armhole',
    ],
    where: 'shoulder tip to underarm, front and back',
    sign: 'Loose folds run slantwise from the neck point to the underarm; the tip stands off, the underarm feels low.',
    causes: {
      1: 'drafted slope too flat for these shoulders',
      2: 'shoulder too long',
      3: 'shoulder pads are missing',
    },
    advice: { 3: 'Pad it as the garment will be worn, then look again; leave the draft.' },
    tests: {
      1: 'Pin the seam deeper at the tip and to nothing at the neck. Do front and back folds both go?',
      2: 'Does folding back the overhang at the tip take them away?',
    },
    trueAfter: [
      'armhole at the shoulder',
      'side seam length',
      'cap unchanged where the armhole is',
    ],
    doNot:
      'Do not forget the underarm: it drops by as much, or the armhole grows tight. Do not change one side alone unless one shoulder is lower.',
  },
  SH2: {
    said: ['pulls at the shoulder tip', 'a line across the chest', 'seam tight at the arm'],
    where: 'shoulder tip to the centres',
    sign: 'Taut lines from the tip towards both centres, folds across the base of the neck, the armhole strains at the tip.',
    causes: {
      1: 'drafted slope too steep',
      2: 'shoulder too short',
      3: 'back or chest too narrow',
    },
    tests: {
      1: 'Open the shoulder seam from the tip inwards. Do the folds drop, and does the seam gap?',
      2: 'Is there no gap, but does the armhole cut in?',
      3: 'Does an upright slit from mid shoulder to the notch open?',
    },
    trueAfter: ['armhole', 'cap, where the armhole is not raised with it'],
    doNot: 'Do not widen the neck to cure it.',
  },
  SH3: {
    said: ['shoulders too wide', 'sleeve falls down', 'narrow shoulders'],
    where: 'outer shoulder, top of the armhole',
    sign: 'The armhole seam lies past the bone, with upright folds beside it; the sleeve looks too long.',
    causes: { 1: 'shoulder too long', 2: 'neck too wide', 3: 'chest and back too wide altogether' },
    tests: {
      1: 'Lift the arm to find the joint. Does the seam lie past it, with the neck end right?',
      2: 'Is the neck end off the neck?',
      3: 'Do the folds run the whole height of the armhole?',
    },
    trueAfter: ['armhole smooth, square at the tip', 'sleeve cap'],
    doNot: 'Do not pare the armhole below the notch.',
  },
  SH4: {
    said: ['armhole cuts into the shoulder', 'sleeve pulls up', 'broad shoulders'],
    where: 'outer shoulder',
    sign: 'The armhole seam lies inside the bone; cap and shoulder strain, the sleeve rides up.',
    causes: { 1: 'shoulder too short', 2: 'chest or back too narrow', 3: 'sleeve cap too low' },
    tests: {
      1: 'Cut the armhole seam open at the top. Do the edges spread there?',
      2: 'Do they spread mostly at the blade or the chest?',
    },
    trueAfter: ['armhole', 'cap'],
    doNot: 'Do not let out the cap seam alone by more than 5 mm.',
  },
  SH5: {
    said: ['forward shoulders', 'bunches behind the shoulder', 'sleeve pulls to the front'],
    where: 'outer half of the shoulder seam',
    sign: 'The seam lies behind the bone at the tip and right at the neck; a fold in the hollow beside the front armhole.',
    causes: {
      1: 'shoulder joint carried forward',
      2: 'a rounded back pulls the whole seam',
      3: 'seam drawn in the wrong place',
    },
    tests: {
      1: 'Is the neck end right and only the tip behind the bone?',
      2: 'Is the whole seam behind?',
    },
    trueAfter: ['armhole in one line', 'shoulder lengths equal', 'cap notch'],
    doNot: 'Do not change the whole slope for it. Do not move the underarm notches.',
  },
  SH6: {
    said: ['the seam shows from the front'],
    where: 'shoulder seam',
    sign: 'The seam lies before the bone, along all of it or at the tip.',
    causes: {
      1: 'upright posture',
      2: 'moved too far before',
      3: 'back too long above the blades',
    },
    tests: {
      1: 'Is the seam before the bone, measured at neck and tip?',
      2: 'Is there a level fold across the upper back?',
    },
    trueAfter: ['neck curve where its end moved', 'armhole', 'cap notch'],
    doNot: 'Do not move the neck end without drawing both necks again.',
  },
  SH7: {
    said: ['armhole pokes out at the top'],
    where: 'where shoulder and armhole meet',
    sign: 'The armhole has a point or a hollow at the seam.',
    causes: { 1: 'front and back armhole not drawn as one curve' },
    tests: { 1: 'Lay the pieces together at the shoulder. Is there a point or a hollow?' },
    trueAfter: ['armhole', 'cap notch'],
    doNot: 'Do not stretch it into shape.',
  },
  SH8: {
    said: ['folds on one side only', 'uneven shoulders'],
    where: 'one side',
    sign: 'Slanting folds from neck to underarm on one side, the centres lean, the hem dips on that side.',
    causes: {
      1: 'one shoulder is lower than the other',
      2: 'cut or sewn unevenly',
      3: 'hips of different height',
    },
    advice: {
      2: 'The folds go with the garment: sew it anew, both sides alike. Leave the draft.',
      3: 'The shoulders are level. Mark the hem from the floor; leave the shoulder.',
    },
    tests: {
      1: 'Turn the muslin inside out. Do the folds stay on the same side of the body?',
      2: 'Do they go over with the garment?',
    },
    trueAfter: ['both sides', 'neck the same left and right of the centre'],
    doNot: 'Do not take a mean of the two sides. Do not cut it on the fold any more.',
  },
}

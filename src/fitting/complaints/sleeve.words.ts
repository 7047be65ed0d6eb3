/** What she reads of the complaints in sleeve.ts; causes and tests by their numbers. */

export const SLEEVE_WORDS = {
  L1: {
    said: ['sleeve cap too short', 'slanting folds in the sleeve cap'],
    where: 'sleeve cap',
    sign: 'Taut slanting folds from the shoulder tip to the underarm on both sides; the sleeve hem lifts at its middle.',
    causes: { 1: 'cap too low', 2: 'shoulders slope differently', 3: 'armhole too big' },
    tests: {
      1: 'Release the top of the cap. Does it open, with the level line lifted at its middle?',
      2: 'Does a pin at the shoulder tip cure it?',
    },
    trueAfter: ['cap length against armhole and ease'],
    doNot: 'Do not add at the hem.',
  },
  L2: {
    said: ['cap too tall', 'sleeve puffs at the top'],
    where: 'sleeve cap',
    sign: 'A loose level fold or roll at the top.',
    causes: { 1: 'cap too high', 2: 'too much ease in the cap' },
    tests: {
      1: 'Pin a level tuck across the cap. Does it lie?',
      2: 'Is it gathered rather than folded?',
    },
    trueAfter: ['cap length'],
    doNot: 'A lower cap lifts better and hangs worse: look at both.',
  },
  L3: {
    said: ['sleeve grips', 'tight upper arm'],
    where: 'upper arm',
    sign: 'Level strain round the upper arm.',
    causes: { 1: 'too little ease at the upper arm' },
    tests: { 1: 'Open the sleeve seam. Does it spread?' },
    trueAfter: ['cap length: surplus out, or the armhole longer'],
    doNot: 'Do not let out the sleeve seam without the body.',
  },
  L4: {
    said: ['folds in front or at the back of the sleeve', 'sleeve seam spirals'],
    where: 'sleeve',
    sign: 'A slanting fold from the armhole down to the other side of the hem.',
    causes: {
      1: 'cap set for an arm that hangs differently',
      2: 'sleeve cut off the grain',
      3: 'rounded shoulders',
    },
    advice: { 2: 'Cut the sleeve anew on its grain; leave the draft.' },
    tests: {
      1: 'Unpick the cap above the notches and turn it until the grain hangs. Did it move?',
      2: 'Is the marked grain off the thread?',
    },
    trueAfter: ['notches', 'underarm seam'],
    doNot: 'Do not turn only the upper half of an eased cap.',
  },
  L5: {
    said: ['the body rises when I lift the arm', 'I cannot lift my arm'],
    where: 'underarm',
    sign: 'When the arm lifts, side seam and hem rise with it.',
    causes: {
      1: 'armhole too low',
      2: 'cap too high and narrow',
      3: 'back too narrow',
      4: 'sleeve too short under the arm',
    },
    tests: {
      1: 'Pin the armhole up. Is it better?',
      2: 'Is it better with the lower half of the sleeve unpicked?',
    },
    trueAfter: ['armhole', 'cap', 'seams'],
    doNot: 'Do not deepen the armhole: that makes it worse.',
  },
  L6: {
    said: ['too much to ease in', 'gathers at the sleeve cap'],
    where: 'cap seam',
    sign: 'Gathers or puckers along the cap.',
    causes: {
      1: 'more cap ease than the cloth takes',
      2: 'shoulder moved since the sleeve was drawn',
    },
    tests: { 1: 'Measure cap less armhole. Is it more than the cloth takes?' },
    trueAfter: ['cap'],
    doNot: 'Notches are no limit for the ease.',
  },
  L7: {
    said: ['armhole puckers', 'dents at the top of the sleeve'],
    where: 'cap seam',
    sign: 'The armhole gathers and the cap is tense.',
    causes: { 1: 'too little cap ease', 2: 'hollow where shoulder and armhole meet' },
    tests: {
      1: 'Measure cap less armhole. Is it less than the cloth wants?',
      2: 'Is there a hollow at the shoulder end?',
    },
    trueAfter: ['cap'],
    doNot: 'Do not stretch the cap to fit.',
  },
  L8: {
    said: ['too short when bent'],
    where: 'elbow',
    sign: 'Strain at the elbow when the arm bends.',
    causes: { 1: 'no ease or dart at the elbow', 2: 'sleeve too short' },
    tests: {
      1: 'Bend the arm until the fingertips touch the ear. Does it pull at the elbow?',
      2: 'Does the hem ride up past the wrist?',
    },
    trueAfter: ['ease of the underarm seam'],
    doNot: 'Do not widen the hem for it.',
  },
  L9: {
    said: ['sleeve hem rides up inside'],
    where: 'sleeve hem',
    sign: 'The hem of the sleeve is not level.',
    causes: {
      1: 'cap set for an arm that hangs differently',
      2: 'front and back of the cap out of balance',
    },
    tests: { 1: 'Turned in the armhole, does it hang level?', 2: 'Is one half of the cap short?' },
    trueAfter: ['hem'],
    doNot: 'Do not level it at the hem alone.',
  },
}

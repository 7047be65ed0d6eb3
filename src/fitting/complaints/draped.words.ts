/** What she reads of the complaints in draped.ts; causes and tests by their numbers. */

export const DRAPED_WORDS = {
  D1: {
    said: ['cap sleeve sticks out', 'stands up off the shoulder'],
    where: 'outer shoulder, sleeve edge',
    sign: 'The edge stands level, with a hollow between arm and sleeve at the top.',
    causes: { 1: 'overarm drafted too flat', 2: 'cloth too stiff', 3: 'too little sweep' },
    advice: { 2: 'Try a softer cloth, or shape it less; leave the draft.' },
    tests: {
      1: 'Pin a tuck along the overarm, wide at the edge. Does it lie down?',
      2: 'Does it stand out in soft cloth as well?',
    },
    trueAfter: ['overarm smooth from the side neck', 'sleeve edge', 'underarm'],
    doNot: 'Too steep, and the arm cannot lift.',
  },
  D2: {
    said: ['draped sleeve pulls when the arm hangs'],
    where: 'over the shoulder bone',
    sign: 'Taut lines from the bone to the edge, front and back.',
    causes: {
      1: 'overarm too steep or short',
      2: 'square shoulders',
      3: 'shoulder line too short',
    },
    tests: {
      1: 'Slit along the overarm at the bone. Does it open?',
      2: 'Does opening at the bone alone free it?',
    },
    trueAfter: ['overarm'],
    doNot: 'Do not widen the neck for it.',
  },
  D3: {
    said: ['side and hem rise with the arm', 'drags the whole side up'],
    where: 'underarm',
    sign: 'Lifting the arm drags cloth from the hem up the side.',
    causes: { 1: 'overarm too steep', 2: 'underarm too low', 3: 'too narrow' },
    tests: {
      1: 'Lift the arm level. Does opening the overarm seam free it?',
      2: 'Does pinning the underarm up free it?',
      3: 'Does slitting the sleeve edge free it?',
    },
    trueAfter: ['underarm curve', 'side seams equal'],
    doNot: 'Do not lower the underarm to gain lift unless the sleeve is full.',
  },
  D4: {
    said: ['bulky folds under the arm'],
    where: 'underarm',
    sign: 'Soft upright folds from arm to waist.',
    causes: { 1: 'what a drape does', 2: 'underarm too low', 3: 'too much sweep' },
    advice: { 1: 'A draped sleeve folds when the arm hangs. Leave it, unless it is too much.' },
    tests: {
      1: 'Pin the fold at the underarm. Does the arm still lift?',
      2: 'Does taking in the edge make it lie?',
    },
    trueAfter: ['side curve', 'side seams equal'],
    doNot: 'Do not chase every fold.',
  },
  D5: {
    said: ['drape falls forward', 'folds uneven front and back'],
    where: 'sleeve edge',
    sign: 'More folds on one side than on the other.',
    causes: {
      1: 'overarm seam not on top of the arm',
      2: 'front and back cut on another grain',
      3: 'front and back sweep unequal',
    },
    advice: { 2: 'Cut both on the same grain; leave the draft.' },
    tests: {
      1: 'Mark the top of the arm. Does the seam lie before or behind it?',
      2: 'Are the two edges of unequal length?',
    },
    trueAfter: ['overarm', 'sleeve edge'],
    doNot: 'Do not trim the longer side alone.',
  },
  D6: {
    said: ['underwear shows when the arm is lifted'],
    where: 'opening under the arm',
    sign: 'A wide opening under the arm.',
    causes: { 1: 'underarm too low', 2: 'opening too large' },
    tests: {
      1: 'Tape the depth that is wanted. Is the underarm lower?',
      2: 'Is the depth right and the edge too long?',
    },
    trueAfter: ['underarm'],
    doNot: 'Do not make it smaller than the arm needs.',
  },
  D7: {
    said: ['sleeve edge too tight'],
    where: 'sleeve edge',
    sign: 'The edge is tight round the arm.',
    causes: { 1: 'sleeve edge too short' },
    tests: { 1: 'Slit the edge. Does it open?' },
    trueAfter: ['sleeve edge', 'its facing'],
    doNot: 'Do not only stretch the hem.',
  },
  D8: {
    said: ['wavy hem on the bias', 'edge stretches unevenly'],
    where: 'sleeve edge',
    sign: 'The edge is wavy and longer where it lies on the bias.',
    causes: { 1: 'the cloth drops on the bias', 2: 'stretched while hemming' },
    advice: {
      1: 'Let it hang for a day, strike the edge anew at one radius and hem it narrow. It is kept with the cloth, not in the draft.',
      2: 'Stay the edge before it is hemmed; leave the draft.',
    },
    tests: {
      1: 'Hung for a day, does the radius differ from the draft?',
      2: 'Is the radius right and the edge wavy?',
    },
    trueAfter: ['hem'],
    doNot: 'Do not correct the draft for a drop on the bias.',
  },
}

/** What she reads of the complaints in armhole.ts; causes and tests by their numbers. */
const REACH =
  'The fold is the room to reach forward: 6 to 13 mm on each half stay. Leave the draft.'

export const ARMHOLE_WORDS = {
  A1: {
    said: ['cuts under the arm', 'binds at the arm'],
    where: 'underarm',
    sign: 'A line of pressure and creases like rays round the armhole.',
    causes: {
      1: 'underarm too high',
      2: 'front armhole not hollowed enough',
      3: 'back or chest too narrow',
      4: 'shoulder too short',
    },
    tests: {
      1: 'Snip the allowance at the underarm. Is it eased?',
      2: 'Is it eased by snipping at the front notch?',
      3: 'Does an upright slit at the centre back or from mid shoulder free it?',
    },
    trueAfter: ['armhole square to the side, front and back in one curve', 'cap', 'side length'],
    doNot: 'Do not lower it more than it needs: the arm lifts less.',
  },
  A2: {
    said: ['side sags under the arm', 'underwear shows under the arm'],
    where: 'underarm',
    sign: 'Slanting folds under the armhole, the seam sags; with a sleeve the body lifts when the arm is raised.',
    causes: { 1: 'underarm too low', 2: 'shoulders slope more', 3: 'too wide at the side' },
    tests: {
      1: 'Pin the side seam up. Is it cured?',
      2: 'Does a pin at the shoulder tip cure it?',
      3: 'Does a deeper side seam cure it?',
    },
    trueAfter: ['armhole', 'underarm of the cap', 'side'],
    doNot: 'Do not fill in the front alone.',
  },
  A3: {
    said: ['loop at the back of the armhole'],
    where: 'back armhole',
    sign: 'A loose loop along the back armhole.',
    causes: {
      1: 'rounded back or prominent blade without a dart',
      2: 'drafted for a sleeve and worn without',
      3: 'no dart in the back shoulder',
    },
    never:
      'A gape at the back armhole is not taken in at the side: that takes the width the bust needs. Pin a flat wedge from the armhole to the blade.',
    tests: { 1: 'Pin a flat wedge from the armhole to the blade. Is it cured?' },
    trueAfter: ['armhole', 'shoulder: as long as the front and its ease', 'back of the cap'],
    doNot: 'Do not take it at the side.',
  },
  A4: {
    said: ['back too wide'],
    where: 'back, between blade and armhole',
    sign: 'Upright slack; one such fold is needed to reach forward.',
    causes: { 1: 'too wide across the back', 2: 'shoulder too long' },
    leaves: REACH,
    tests: {
      1: 'Cross the arms in front. Is there still slack?',
      2: 'Does the shoulder seam lie past the bone?',
      3: 'Does the fold vanish when the arms are crossed?',
    },
    trueAfter: ['armhole', 'back of the cap'],
    doNot: 'Do not take all of it: keep 6 to 13 mm on each half to reach with.',
  },
  A5: {
    said: ['bunches at the front of the armpit', 'scratches in front of the arm'],
    where: 'front armhole curve',
    sign: 'A soft slanting crease in the hollow of the front armhole, with a sleeve.',
    causes: { 1: 'front armhole not hollowed', 2: 'front of the cap too full' },
    tests: {
      1: 'Mark the crease of the arm on the muslin. Does cloth lie beyond it?',
      2: 'Is the crease in the sleeve and not in the body?',
    },
    trueAfter: ['armhole and front of the cap by as much'],
    doNot: 'Do not hollow the back.',
  },
}

/** Complaints at the armhole. On a sleeve cut in one they belong to the sleeve edge and the underarm. */
import type { ComplaintBody } from './complaint.ts'
import { causes, edit, letOut, place, see, takeIn, tests, turned } from './work.ts'

const under = { point: 'underarm' } as const

const REACH =
  'The fold is the room to reach forward: 6 to 13 mm on each half stay. Leave the draft.'

export const ARMHOLE: readonly ComplaintBody[] = [
  {
    id: 'A1',
    said: ['cuts under the arm', 'binds at the arm'],
    where: 'underarm',
    sign: 'A line of pressure and creases like rays round the armhole.',
    causes: causes(
      [
        'underarm too high',
        letOut('asRead', 10, [
          edit('MOVE', 'front.armhole', 'down', under),
          edit('MOVE', 'back.armhole', 'down', under),
        ]),
      ],
      [
        'front armhole not hollowed enough',
        letOut('asRead', 6, [edit('EDGE', 'front.armhole', 'in')]),
      ],
      ['back or chest too narrow', see('K1', 1)],
      ['shoulder too short', see('SH4', 1)],
    ),
    tests: tests(
      ['Snip the allowance at the underarm. Is it eased?', [1]],
      ['Is it eased by snipping at the front notch?', [2]],
      ['Does an upright slit at the centre back or from mid shoulder free it?', [3]],
    ),
    usual: [3, 13],
    cap: 10,
    trueAfter: ['armhole square to the side, front and back in one curve', 'cap', 'side length'],
    doNot: 'Do not lower it more than it needs: the arm lifts less.',
    source: ['R1', 'R12', 'CP'],
    evidence: 'partly seen',
  },
  {
    id: 'A2',
    said: ['side sags under the arm', 'underwear shows under the arm'],
    where: 'underarm',
    sign: 'Slanting folds under the armhole, the seam sags; with a sleeve the body lifts when the arm is raised.',
    causes: causes(
      [
        'underarm too low',
        place('asRead', 15, [
          edit('MOVE', 'front.armhole', 'up', under),
          edit('MOVE', 'back.armhole', 'up', under),
        ]),
      ],
      ['shoulders slope more', see('SH1', 1)],
      [
        'too wide at the side',
        takeIn('across', 15, [edit('EDGE', 'front.side', 'in'), edit('EDGE', 'back.side', 'in')]),
      ],
    ),
    tests: tests(
      ['Pin the side seam up. Is it cured?', [1]],
      ['Does a pin at the shoulder tip cure it?', [2]],
      ['Does a deeper side seam cure it?', [3]],
    ),
    usual: [5, 20],
    cap: 15,
    trueAfter: ['armhole', 'underarm of the cap', 'side'],
    doNot: 'Do not fill in the front alone.',
    source: ['R1'],
    evidence: 'operative text',
  },
  {
    id: 'A3',
    said: ['loop at the back of the armhole'],
    where: 'back armhole',
    sign: 'A loose loop along the back armhole.',
    causes: causes(
      [
        'rounded back or prominent blade without a dart',
        takeIn(
          'across',
          10,
          [
            edit('ROT', 'back.armhole', 'in', {
              angle: turned('bladeToArmhole', 'back.shoulderDart', 'bladeToShoulder'),
            }),
          ],
          {
            never: {
              places: ['side', 'seam', 'hem', 'waist', 'bust', 'allRound'],
              why: 'A gape at the back armhole is not taken in at the side: that takes the width the bust needs. Pin a flat wedge from the armhole to the blade.',
            },
          },
        ),
      ],
      [
        'drafted for a sleeve and worn without',
        takeIn('across', 10, [
          edit('ROT', 'back.armhole', 'in', {
            angle: turned('bladeToArmhole', 'back.shoulderDart', 'bladeToShoulder'),
          }),
        ]),
      ],
      [
        'no dart in the back shoulder',
        takeIn('across', 10, [
          edit('ROT', 'back.armhole', 'in', {
            angle: turned('bladeToArmhole', 'back.shoulderDart', 'bladeToShoulder'),
          }),
        ]),
      ],
    ),
    tests: tests(['Pin a flat wedge from the armhole to the blade. Is it cured?', [1, 2, 3]]),
    usual: [3, 10],
    cap: 10,
    trueAfter: ['armhole', 'shoulder: as long as the front and its ease', 'back of the cap'],
    doNot: 'Do not take it at the side.',
    source: ['R24', 'CP'],
    evidence: 'common practice',
  },
  {
    id: 'A4',
    said: ['back too wide'],
    where: 'back, between blade and armhole',
    sign: 'Upright slack; one such fold is needed to reach forward.',
    causes: causes(
      ['too wide across the back', takeIn('across', 10, [edit('EDGE', 'back.armhole', 'in')])],
      ['shoulder too long', see('SH3', 1)],
    ),
    tests: tests(
      ['Cross the arms in front. Is there still slack?', [1], { on: false, why: REACH }],
      ['Does the shoulder seam lie past the bone?', [2]],
      ['Does the fold vanish when the arms are crossed?', [], { on: true, why: REACH }],
    ),
    usual: [3, 10],
    cap: 10,
    trueAfter: ['armhole', 'back of the cap'],
    doNot: 'Do not take all of it: keep 6 to 13 mm on each half to reach with.',
    source: ['R2', 'CP'],
    evidence: 'heading only',
  },
  {
    id: 'A5',
    said: ['bunches at the front of the armpit', 'scratches in front of the arm'],
    where: 'front armhole curve',
    sign: 'A soft slanting crease in the hollow of the front armhole, with a sleeve.',
    causes: causes(
      ['front armhole not hollowed', letOut('asRead', 8, [edit('EDGE', 'front.armhole', 'in')])],
      ['front of the cap too full', takeIn('across', 8, [edit('CAPLEN', 'sleeve.cap', 'in')])],
    ),
    tests: tests(
      ['Mark the crease of the arm on the muslin. Does cloth lie beyond it?', [1]],
      ['Is the crease in the sleeve and not in the body?', [2]],
    ),
    usual: [3, 8],
    cap: 8,
    trueAfter: ['armhole and front of the cap by as much'],
    doNot: 'Do not hollow the back.',
    source: ['CP'],
    evidence: 'common practice',
  },
]

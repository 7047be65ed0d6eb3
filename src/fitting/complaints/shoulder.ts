/**
 * Complaints at the shoulder. A seam over the shoulder is the overarm seam of a sleeve cut in one.
 * A table, one entry a complaint: longer than other files for that reason.
 */
import type { ComplaintBody, Edit } from './complaint.ts'
import { causes, edit, letOut, making, place, see, takeIn, tests } from './work.ts'

const tip = { point: 'shoulderTip' } as const
const under = { point: 'underarm' } as const

/** The tip moves and carries the underarm with it, so that the armhole keeps its size. */
const slope = (way: 'up' | 'down'): readonly Edit[] => [
  edit('MOVE', 'front.shoulder', way, tip),
  edit('MOVE', 'back.shoulder', way, tip),
  edit('MOVE', 'front.armhole', way, under),
  edit('MOVE', 'back.armhole', way, under),
]
const tipAlong = (way: 'in' | 'out'): readonly Edit[] => [
  edit('EDGE', 'front.armhole', way, tip),
  edit('EDGE', 'back.armhole', way, tip),
]

export const SHOULDER: readonly ComplaintBody[] = [
  {
    id: 'SH1',
    said: [
      'folds from neck to armpit',
      'loose at the shoulder tip',
      'a wing at the top of the armhole',
    ],
    where: 'shoulder tip to underarm, front and back',
    sign: 'Loose folds run slantwise from the neck point to the underarm; the tip stands off, the underarm feels low.',
    causes: causes(
      ['drafted slope too flat for these shoulders', takeIn('perPiece', 13, slope('down'))],
      ['shoulder too long', see('SH3', 1)],
      [
        'shoulder pads are missing',
        making('Pad it as the garment will be worn, then look again; leave the draft.'),
      ],
    ),
    tests: tests(
      [
        'Pin the seam deeper at the tip and to nothing at the neck. Do front and back folds both go?',
        [1],
      ],
      ['Does folding back the overhang at the tip take them away?', [2]],
    ),
    usual: [5, 13],
    cap: 13,
    trueAfter: [
      'armhole at the shoulder',
      'side seam length',
      'cap unchanged where the armhole is',
    ],
    doNot:
      'Do not forget the underarm: it drops by as much, or the armhole grows tight. Do not change one side alone unless one shoulder is lower.',
    source: ['R1', 'R3', 'R23'],
    evidence: 'operative text',
  },
  {
    id: 'SH2',
    said: ['pulls at the shoulder tip', 'a line across the chest', 'seam tight at the arm'],
    where: 'shoulder tip to the centres',
    sign: 'Taut lines from the tip towards both centres, folds across the base of the neck, the armhole strains at the tip.',
    causes: causes(
      ['drafted slope too steep', letOut('perPiece', 13, slope('up'))],
      ['shoulder too short', see('SH4', 1)],
      ['back or chest too narrow', see('B11', 1)],
    ),
    tests: tests(
      [
        'Open the shoulder seam from the tip inwards. Do the folds drop, and does the seam gap?',
        [1],
      ],
      ['No gap, but the armhole cuts in?', [2]],
      ['Does an upright slit from mid shoulder to the notch open?', [3]],
    ),
    usual: [5, 13],
    cap: 13,
    trueAfter: ['armhole', 'cap, where the armhole is not raised with it'],
    doNot: 'Do not widen the neck to cure it.',
    source: ['R1', 'R3', 'R13'],
    evidence: 'operative text',
  },
  {
    id: 'SH3',
    said: ['shoulders too wide', 'sleeve falls down', 'narrow shoulders'],
    where: 'outer shoulder, top of the armhole',
    sign: 'The armhole seam lies past the bone, with upright folds beside it; the sleeve looks too long.',
    causes: causes(
      ['shoulder too long', takeIn('asRead', 15, tipAlong('in'), { marked: true })],
      ['neck too wide', see('N5', 1)],
      ['chest and back too wide altogether', see('B10', 1)],
    ),
    tests: tests(
      ['Lift the arm to find the joint. Does the seam lie past it, with the neck end right?', [1]],
      ['Is the neck end off the neck?', [2]],
      ['Do the folds run the whole height of the armhole?', [3]],
    ),
    usual: [6, 19],
    cap: 15,
    trueAfter: ['armhole smooth, square at the tip', 'sleeve cap'],
    doNot: 'Do not pare the armhole below the notch.',
    source: ['R1', 'R3', 'R13', 'PUBLIC'],
    evidence: 'operative text',
  },
  {
    id: 'SH4',
    said: ['armhole cuts into the shoulder', 'sleeve pulls up', 'broad shoulders'],
    where: 'outer shoulder',
    sign: 'The armhole seam lies inside the bone; cap and shoulder strain, the sleeve rides up.',
    causes: causes(
      ['shoulder too short', letOut('asRead', 13, tipAlong('out'))],
      ['chest or back too narrow', see('K1', 1)],
      ['sleeve cap too low', see('L1', 1)],
    ),
    tests: tests(
      ['Cut the armhole seam open at the top. Do the edges spread there?', [1]],
      ['Do they spread mostly at the blade or the chest?', [2]],
    ),
    usual: [6, 16],
    cap: 13,
    trueAfter: ['armhole', 'cap'],
    doNot: 'Do not let out the cap seam alone by more than 5 mm.',
    source: ['R1', 'R3'],
    evidence: 'operative text',
  },
  {
    id: 'SH5',
    said: ['forward shoulders', 'bunches behind the shoulder', 'sleeve pulls to the front'],
    where: 'outer half of the shoulder seam',
    sign: 'The seam lies behind the bone at the tip and right at the neck; a fold in the hollow beside the front armhole.',
    causes: causes(
      [
        'shoulder joint carried forward',
        place('asRead', 13, [
          edit('SWAP', 'front.shoulder', 'in', tip),
          edit('SWAP', 'back.shoulder', 'out', tip),
          edit('PITCH', 'sleeve.cap', 'forward'),
        ]),
      ],
      ['a rounded back pulls the whole seam', see('K3', 1)],
      [
        'seam drawn in the wrong place',
        place('asRead', 13, [
          edit('SWAP', 'front.shoulder', 'in', tip),
          edit('SWAP', 'back.shoulder', 'out', tip),
        ]),
      ],
    ),
    tests: tests(
      ['Is the neck end right and only the tip behind the bone?', [1]],
      ['Is the whole seam behind?', [2]],
    ),
    usual: [6, 13],
    cap: 13,
    trueAfter: ['armhole in one line', 'shoulder lengths equal', 'cap notch'],
    doNot: 'Do not change the whole slope for it. Do not move the underarm notches.',
    source: ['R22', 'R1', 'CP'],
    evidence: 'partly seen',
  },
  {
    id: 'SH6',
    said: ['the seam shows from the front'],
    where: 'shoulder seam',
    sign: 'The seam lies before the bone, along all of it or at the tip.',
    causes: causes(
      [
        'upright posture',
        place('asRead', 13, [
          edit('SWAP', 'front.shoulder', 'out', tip),
          edit('SWAP', 'back.shoulder', 'in', tip),
        ]),
      ],
      [
        'moved too far before',
        place('asRead', 13, [
          edit('SWAP', 'front.shoulder', 'out', tip),
          edit('SWAP', 'back.shoulder', 'in', tip),
        ]),
      ],
      ['back too long above the blades', see('K5', 1)],
    ),
    tests: tests(
      ['Is the seam before the bone, measured at neck and tip?', [1, 2]],
      ['Is there a level fold across the upper back?', [3]],
    ),
    usual: [3, 13],
    cap: 13,
    trueAfter: ['neck curve where its end moved', 'armhole', 'cap notch'],
    doNot: 'Do not move the neck end without drawing both necks again.',
    source: ['R1', 'CP'],
    evidence: 'partly seen',
  },
  {
    id: 'SH7',
    said: ['armhole pokes out at the top'],
    where: 'where shoulder and armhole meet',
    sign: 'The armhole has a point or a hollow at the seam.',
    causes: causes([
      'front and back armhole not drawn as one curve',
      place('asRead', 5, [
        edit('EDGE', 'front.armhole', 'in', tip),
        edit('EDGE', 'back.armhole', 'in', tip),
      ]),
    ]),
    tests: tests(['Lay the pieces together at the shoulder. Is there a point or a hollow?', [1]]),
    usual: [1, 5],
    cap: 5,
    trueAfter: ['armhole', 'cap notch'],
    doNot: 'Do not stretch it into shape.',
    source: ['R14'],
    evidence: 'operative text',
  },
  {
    id: 'SH8',
    said: ['folds on one side only', 'uneven shoulders'],
    where: 'one side',
    sign: 'Slanting folds from neck to underarm on one side, the centres lean, the hem dips on that side.',
    causes: causes(
      ['one shoulder is lower than the other', takeIn('perPiece', 15, slope('down'))],
      [
        'cut or sewn unevenly',
        making('The folds go with the garment: sew it anew, both sides alike. Leave the draft.'),
      ],
      [
        'hips of different height',
        making('The shoulders are level. Mark the hem from the floor; leave the shoulder.'),
      ],
    ),
    tests: tests(
      ['Turn the muslin inside out. Do the folds stay on the same side of the body?', [1]],
      ['Do they go over with the garment?', [2]],
    ),
    usual: [6, 15],
    cap: 15,
    trueAfter: ['both sides', 'neck the same left and right of the centre'],
    doNot: 'Do not take a mean of the two sides. Do not cut it on the fold any more.',
    source: ['R20', 'CP'],
    evidence: 'partly seen',
  },
]

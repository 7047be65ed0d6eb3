/**
 * Complaints at the back.
 * A table, one entry a complaint: longer than other files for that reason.
 */
import type { ComplaintBody, Edit } from './complaint.ts'
import { causes, edit, hinged, letOut, see, takeIn, tests, turned } from './work.ts'

const bladeWedge = (op: 'WEDGE+' | 'WEDGE-'): readonly Edit[] => [
  edit(op, 'back.centre', op === 'WEDGE+' ? 'out' : 'in', { angle: hinged('backWidth') }),
]

export const BACK: readonly ComplaintBody[] = [
  {
    id: 'K1',
    said: ['I cannot reach forward', 'back splits', 'back too narrow'],
    where: 'across the back at the blades',
    sign: 'Level strain from blade to blade; a sleeve is pulled back.',
    causes: causes(
      ['too narrow across the back', letOut('across', 15, [edit('STRIP+', 'back.armhole', 'out')])],
      ['no ease to move', letOut('across', 15, [edit('STRIP+', 'back.armhole', 'out')])],
      ['sleeve too narrow or its cap too tight', see('L3', 1)],
      ['back too short', see('K3', 1)],
    ),
    tests: tests(
      ['Open the back armhole or slit the centre back. Does it gape, standing still?', [1]],
      ['Does it gape only when she reaches forward?', [2]],
      ['Does unpicking the sleeve free it?', [3]],
    ),
    usual: [5, 15],
    cap: 15,
    trueAfter: ['shoulder ease', 'armhole', 'back of the cap', 'waist'],
    doNot: 'Do not let out the side seam for it.',
    source: ['R13', 'R2'],
    evidence: 'operative text',
  },
  {
    id: 'K2',
    said: [
      'level fold above the waist at the back',
      'pools in the small of the back',
      'hollow back',
    ],
    where: 'centre back just above the waist, fading before the side',
    sign: 'Level folds, deepest at the centre back and gone at the side seams.',
    causes: causes(
      [
        'centre back too long',
        takeIn('length', 20, [
          edit('WEDGE-', 'back.centre', 'in', { angle: hinged('backWaistWidth') }),
        ]),
      ],
      ['hip too tight, so that the cloth rides up', see('W9', 1)],
      ['the whole waist too long: folds go right round', see('W2', 1)],
      ['centre back not shaped, waist too loose', see('K6', 1)],
    ),
    tests: tests(
      ['Pin a tuck at the centre back to nothing at the side. Does the hem hang level?', [1]],
      ['Draw the cloth down smooth. Is it tight below the waist?', [2]],
      ['Do the folds run on into the front?', [3]],
    ),
    usual: [6, 25],
    cap: 20,
    trueAfter: [
      'centre back on its grain',
      'side unchanged',
      'waist dart length',
      'hem at the centre',
    ],
    doNot: 'Do not do it while the hip is tight. Do not take it at the side.',
    source: ['R43', 'R20', 'R1'],
    evidence: 'operative text',
  },
  {
    id: 'K3',
    said: ['back hem lifts', 'rounded shoulders', 'pulls over the upper back'],
    where: 'blades, back hem',
    sign: 'Back waist and hem rise at the centre; level tension over the blades, the neck may stand off.',
    causes: causes(
      [
        'rounded upper back needs length over the blades',
        letOut('length', 15, bladeWedge('WEDGE+')),
      ],
      ['tight over the seat', see('W9', 1)],
      ['back too short', letOut('length', 15, bladeWedge('WEDGE+'))],
    ),
    tests: tests(
      ['Cut across at the blades. Does it open at the centre and not at the armhole?', [1]],
      ['Is it tight below the waist?', [2]],
      ['Does it open as wide at the armhole?', [3]],
    ),
    usual: [6, 20],
    cap: 15,
    trueAfter: ['centre back straight', 'shoulder length', 'neck'],
    doNot: 'Do not only lengthen at the waist.',
    source: ['R19', 'R13', 'R2', 'R8'],
    evidence: 'operative text',
  },
  {
    id: 'K4',
    said: ['prominent blades'],
    where: 'blade to side waist or underarm',
    sign: 'Slanting strain from the blade.',
    causes: causes(
      [
        'blade dart too small',
        letOut('across', 8, [
          edit('ROT', 'back.shoulderDart', 'wider', {
            angle: turned('bladeToShoulder', 'back.waistDart', 'bladeToWaist'),
          }),
        ]),
      ],
      ['back too short there', see('K3', 1)],
    ),
    tests: tests(
      ['Release the shoulder dart or mid shoulder. Does it open?', [1]],
      ['Does a cut across the blade open?', [2]],
    ),
    usual: [3, 8],
    cap: 8,
    trueAfter: ['shoulder'],
    doNot: 'Do not press it flat.',
    source: ['R2', 'CP'],
    evidence: 'heading only',
  },
  {
    id: 'K5',
    said: ['back too long above the waist', 'upright back', 'flat back'],
    where: 'upper and middle back',
    sign: 'Level folds between blades and waist; the grain dips at the centre back.',
    causes: causes(
      ['upright posture: back too long', takeIn('length', 13, bladeWedge('WEDGE-'))],
      [
        'back shoulder dart too big',
        takeIn('across', 13, [edit('DARTSHAPE', 'back.shoulderDart', 'narrower')]),
      ],
    ),
    tests: tests(
      ['Pin a level pleat across the back until the folds go. Is the neck still easy?', [1]],
      ['Does the fold end at the tip of the shoulder dart?', [2]],
    ),
    usual: [5, 15],
    cap: 13,
    trueAfter: ['shoulder', 'neck', 'side equal'],
    doNot: 'Do not take it at the waist. Keep the side seams equal.',
    source: ['R21', 'R1'],
    evidence: 'operative text',
  },
  {
    id: 'K6',
    said: ['upright folds at the back waist'],
    where: 'back waist',
    sign: 'Upright slack at the back of the waist.',
    causes: causes(
      [
        'too little taken in at the back dart',
        takeIn('across', 32, [edit('DARTSHAPE', 'back.waistDart', 'wider')]),
      ],
      ['centre back not shaped', takeIn('across', 15, [edit('EDGE', 'back.centre', 'in')])],
    ),
    tests: tests(
      ['Pin upright tucks on the dart lines. Does it lie?', [1]],
      ['Does a pinch at the centre back do it better?', [2]],
    ),
    usual: [5, 20],
    cap: 32,
    trueAfter: ['waist seam', 'darts below it'],
    doNot: 'Do not fit it too close: 20 to 25 mm of ease stay round the waist.',
    source: ['R12', 'R1'],
    evidence: 'partly seen',
  },
  {
    id: 'K7',
    said: ['collar rides back', 'curve at the top of the back'],
    where: 'centre back within 100 mm of the nape',
    sign: 'Tension over the curve at the nape; the neck stands away above or below it.',
    causes: causes([
      'the upper spine curves there',
      letOut('length', 19, [edit('WEDGE+', 'back.centre', 'out', { angle: hinged('backWidth') })]),
    ]),
    tests: tests(['Cut across 40 to 60 mm below the nape. Does it open at the centre?', [1]]),
    usual: [6, 19],
    cap: 19,
    trueAfter: ['back neck with its dart folded', 'shoulder'],
    doNot: 'Do not only slant the centre back.',
    source: ['R20', 'R2'],
    evidence: 'operative text',
  },
]

/**
 * Complaints at waist, side seam, hip and hem.
 * A table, one entry a complaint: longer than other files for that reason.
 */
import type { ComplaintBody, Edit } from './complaint.ts'
import { causes, edit, hinged, job, letOut, making, place, see, takeIn, tests } from './work.ts'

const both = (op: 'PAR+' | 'PAR-'): readonly Edit[] => [
  edit(op, 'front.side', op === 'PAR+' ? 'out' : 'in'),
  edit(op, 'back.side', op === 'PAR+' ? 'out' : 'in'),
]
const sides = (way: 'in' | 'out'): readonly Edit[] => [
  edit('EDGE', 'front.side', way),
  edit('EDGE', 'back.side', way),
]
/** Six parts in ten at the darts, four at the side, each shared by front and back. */
const shared = (way: 'in' | 'out'): readonly Edit[] => {
  const dart = way === 'in' ? 'wider' : 'narrower'
  return [
    edit('DARTSHAPE', 'front.waistDart', dart, { part: 0.3 }),
    edit('DARTSHAPE', 'back.waistDart', dart, { part: 0.3 }),
    edit('EDGE', 'front.side', way, { part: 0.2 }),
    edit('EDGE', 'back.side', way, { part: 0.2 }),
  ]
}
const swap = (front: 'out' | 'in'): readonly Edit[] => [
  edit('SWAP', 'front.side', front),
  edit('SWAP', 'back.side', front === 'out' ? 'in' : 'out'),
]

export const WAIST: readonly ComplaintBody[] = [
  {
    id: 'W1',
    said: ['waistline rides up all round', 'too short in the body'],
    where: 'waist',
    sign: 'The waist line of the muslin lies above the elastic at the waist, all round.',
    causes: causes(
      ['too short all round between bust and waist', letOut('length', 40, both('PAR+'))],
      ['tight hip or waist pushes it up', see('W9', 1)],
      ['tight bust lifts it', see('B1', 2)],
    ),
    tests: tests(
      ['Measure from the drawn line to the elastic at front, side and back. Is it the same?', [1]],
      ['Does opening the side below the waist let it down?', [2]],
      ['Does opening the side at bust level let it down?', [3]],
    ),
    usual: [6, 40],
    cap: 40,
    trueAfter: ['side seams', 'dart lengths'],
    doNot: 'Do not add a wedge before the even part.',
    source: ['R12', 'R13'],
    evidence: 'operative text',
  },
  {
    id: 'W2',
    said: ['waist too low', 'too long in the body'],
    where: 'waist',
    sign: 'Level folds all round, just above the waist.',
    causes: causes(
      ['too long all round between bust and waist', takeIn('length', 20, both('PAR-'))],
      ['too long from neck to armhole as well', takeIn('length', 20, both('PAR-'))],
    ),
    tests: tests(
      ['Pin a level tuck all round 60 mm above the waist. Do the folds go?', [1]],
      ['Are there folds above the armhole line too?', [2]],
    ),
    usual: [6, 40],
    cap: 20,
    trueAfter: ['side', 'darts'],
    doNot: 'Not for a fold at the centre back alone, or at the centre front alone.',
    source: ['R13'],
    evidence: 'operative text',
  },
  {
    id: 'W3',
    said: ['tight at the waist', 'seam rolls up at the waist'],
    where: 'waist',
    sign: 'Level strain at the waist, the darts are strained.',
    causes: causes(
      [
        'too much taken in, or too little ease',
        letOut('half', 20, shared('out'), {
          at: [
            { places: ['side', 'seam'], work: job('out', 'across', 10, sides('out')) },
            {
              places: ['dart', 'cb'],
              work: job('out', 'across', 20, [edit('DARTSHAPE', 'back.waistDart', 'narrower')]),
            },
          ],
        }),
      ],
      ['after a meal, or sitting', making('Try it standing and before a meal; leave the draft.')],
    ),
    tests: tests(
      ['Open the side or back seam at the waist. Does it spread, standing at ease?', [1]],
      ['Does it bind only when she sits?', [2]],
    ),
    usual: [5, 40],
    cap: 20,
    trueAfter: ['waist', 'what hangs from it'],
    doNot: 'Do not let out one seam alone by over 10 mm an edge.',
    source: ['R12'],
    evidence: 'partly seen',
  },
  {
    id: 'W4',
    said: ['upright folds at the waist', 'baggy waist'],
    where: 'waist',
    sign: 'Upright folds spread over the width at the waist.',
    causes: causes([
      'too little taken in',
      takeIn('half', 20, shared('in'), {
        at: [
          { places: ['side', 'seam'], work: job('in', 'across', 20, sides('in')) },
          {
            places: ['dart', 'cf'],
            work: job('in', 'across', 20, [edit('DARTSHAPE', 'front.waistDart', 'wider')]),
          },
          {
            places: ['cb'],
            work: job('in', 'across', 20, [edit('DARTSHAPE', 'back.waistDart', 'wider')]),
          },
        ],
      }),
    ]),
    tests: tests(['Pin at darts and sides. Does it lie?', [1]]),
    usual: [32, 38],
    cap: 20,
    trueAfter: ['waist'],
    doNot: 'Keep 19 to 25 mm of ease round the waist.',
    source: ['R12'],
    evidence: 'partly seen',
  },
  {
    id: 'W5',
    said: ['front waist too low'],
    where: 'centre front at the waist',
    sign: 'The drawn level drops at the centre front.',
    causes: causes(['front too long', see('B14', 1)], ['back too short', see('K3', 1)]),
    tests: tests(
      ['Compare centre front and centre back with the floor. Is only the front low?', [1]],
      ['Is the back high?', [2]],
    ),
    usual: [5, 20],
    cap: 20,
    trueAfter: ['as for the length it leads to'],
    doNot: 'Do not level it at the hem.',
    source: ['R17'],
    evidence: 'partly seen',
  },
  {
    id: 'W6',
    said: ['the side seam leans to the front', 'side seam not plumb at the hem'],
    where: 'side seam',
    sign: 'The seam is not plumb: its lower end hangs forward, or its top is drawn forward.',
    causes: causes(
      ['front tight or short over the bust', see('B2', 1)],
      ['back lifted at the waist', see('K3', 1)],
      ['seam drawn in the wrong place', place('asRead', 20, swap('out'))],
    ),
    tests: tests(
      ['Hang a plumb line from the underarm. Does only the upper part lean forward?', [1]],
      ['Is the back waist lifted?', [2]],
      ['Is it straight and plumb, but too far back?', [3]],
    ),
    usual: [5, 20],
    cap: 20,
    trueAfter: ['side seams equal'],
    doNot: 'Do not move the seam before the balance is right.',
    source: ['R3', 'R1', 'R23'],
    evidence: 'partly seen',
  },
  {
    id: 'W7',
    said: ['the side seam leans to the back'],
    where: 'side seam',
    sign: 'The lower end hangs towards the back.',
    causes: causes(
      ['back tight or short', see('K3', 1)],
      ['front too long', see('B14', 1)],
      ['seam drawn in the wrong place', place('asRead', 20, swap('in'))],
    ),
    tests: tests(
      ['Hang a plumb line from the underarm. Is the back lifted or strained?', [1]],
      ['Is there slack in front?', [2]],
      ['Is it straight and plumb, but too far forward?', [3]],
    ),
    usual: [5, 20],
    cap: 20,
    trueAfter: ['side seams equal'],
    doNot: 'Do not move the seam before the balance is right.',
    source: ['R3', 'CP'],
    evidence: 'common practice',
  },
  {
    id: 'W8',
    said: ['S-shaped side seam'],
    where: 'side seam',
    sign: 'The seam bows forward at the bust, or back at the waist.',
    causes: causes(
      ['bust tight', see('B1', 1)],
      [
        'front and back darts take in unevenly',
        place('asRead', 15, [
          edit('DARTSHAPE', 'front.waistDart', 'narrower'),
          edit('DARTSHAPE', 'back.waistDart', 'wider'),
        ]),
      ],
    ),
    tests: tests(['Is the greatest bow at the bust?', [1]], ['Is it at the waist?', [2]]),
    usual: [5, 15],
    cap: 15,
    trueAfter: ['side'],
    doNot: 'Do not straighten the seam alone.',
    source: ['CP'],
    evidence: 'common practice',
  },
  {
    id: 'W9',
    said: ['hem rides up', 'folds above the hip', 'catches at the hip'],
    where: 'hip',
    sign: 'Level strain at the hip, folds above the waist at the back.',
    causes: causes(
      ['too little width at the hip', letOut('across', 15, sides('out'))],
      ['darts too long below the waist', see('W12', 1)],
    ),
    tests: tests(
      ['Open the side seam from the waist down. Does it spread?', [1]],
      ['Does the strain end at the lower tip of a dart?', [2]],
    ),
    usual: [5, 60],
    cap: 15,
    trueAfter: ['side curve', 'hem'],
    doNot: 'Before a sway back is taken in, not after.',
    source: ['R8', 'R1', 'PUBLIC'],
    evidence: 'partly seen',
  },
  {
    id: 'W10',
    said: ['strain below the waist in front', 'front hem kicks out'],
    where: 'front below the waist',
    sign: 'Strain there, and the hem rises at the centre front.',
    causes: causes([
      'front needs length and width below the waist',
      letOut('length', 20, [
        edit('WEDGE+', 'front.centre', 'out', { angle: hinged('frontWaistWidth') }),
      ]),
    ]),
    tests: tests(['Cut across below the waist. Does it open at the centre front?', [1]]),
    usual: [6, 25],
    cap: 20,
    trueAfter: ['waist', 'hem'],
    doNot: 'Do not only drop the hem at the centre.',
    source: ['R13', 'R2'],
    evidence: 'operative text',
  },
  {
    id: 'W11',
    said: ['hem dips at the sides', 'hem dips at the back'],
    where: 'hem',
    sign: 'The hem is not level with the floor.',
    causes: causes(
      ['one shoulder lower', see('SH8', 1)],
      ['front and back out of balance', see('K3', 1)],
      [
        'the cloth dropped on the bias',
        making('Let it hang for a day and mark the hem from the floor; leave the draft.'),
      ],
    ),
    tests: tests(
      ['Do the level lines above lean to one side?', [1]],
      ['Do they tilt from front to back?', [2]],
      ['Are they level, and only the hem is not?', [3]],
    ),
    usual: undefined,
    cap: undefined,
    trueAfter: ['hem'],
    doNot: 'Never level the hem to hide a fault of balance.',
    source: ['R17', 'CP'],
    evidence: 'partly seen',
  },
  {
    id: 'W12',
    said: ['bubble below the waist'],
    where: 'lower end of a waist dart',
    sign: 'A bulge at the lower tip.',
    causes: causes(
      [
        'dart too long below the waist',
        place('asRead', 20, [edit('DARTLEN', 'front.waistDart', 'up', { point: 'tip' })], {
          at: [
            {
              places: ['cb'],
              work: job('place', 'asRead', 20, [
                edit('DARTLEN', 'back.waistDart', 'up', { point: 'tip' }),
              ]),
            },
          ],
        }),
      ],
      ['too little ease at the hip', see('W9', 1)],
    ),
    tests: tests(
      ['Does the tip lie below the fullest place?', [1]],
      ['Does opening the side at the hip flatten it?', [2]],
    ),
    usual: [10, 40],
    cap: 20,
    trueAfter: ['dart legs'],
    doNot: 'Do not take the waist out for it.',
    source: ['MEM'],
    evidence: 'memory',
  },
]

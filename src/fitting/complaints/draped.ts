/**
 * Complaints of a draped sleeve cut in one with the body: overarm, sleeve edge and underarm.
 * A table, one entry a complaint: longer than other files for that reason.
 */
import type { ComplaintBody, Edit } from './complaint.ts'
import { causes, edit, letOut, making, place, see, takeIn, tests } from './work.ts'

const swing = (way: 'down' | 'up'): readonly Edit[] => [
  edit('ANGLE', 'front.overarm', way, { angle: { kind: 'swing', radius: 'overarm' } }),
  edit('ANGLE', 'back.overarm', way, { angle: { kind: 'swing', radius: 'overarm' } }),
]
const underarm = (way: 'up' | 'down'): readonly Edit[] => [
  edit('UNDERARM', 'front.side', way, { point: 'underarm' }),
  edit('UNDERARM', 'back.side', way, { point: 'underarm' }),
]
const sweep = (way: 'wider' | 'narrower'): readonly Edit[] => [
  edit('SWEEP', 'front.sleeveEdge', way, { angle: { kind: 'sector', radius: 'overarm' } }),
  edit('SWEEP', 'back.sleeveEdge', way, { angle: { kind: 'sector', radius: 'overarm' } }),
]

export const DRAPED: readonly ComplaintBody[] = [
  {
    id: 'D1',
    said: ['cap sleeve sticks out', 'stands up off the shoulder'],
    where: 'outer shoulder, sleeve edge',
    sign: 'The edge stands level, with a hollow between arm and sleeve at the top.',
    causes: causes(
      ['overarm drafted too flat', takeIn('perPiece', 10, swing('down'), { capUnit: 'deg' })],
      ['cloth too stiff', making('Try a softer cloth, or shape it less; leave the draft.')],
      ['too little sweep', letOut('perPiece', 20, sweep('wider'))],
    ),
    tests: tests(
      ['Pin a tuck along the overarm, wide at the edge. Does it lie down?', [1]],
      ['Does it stand out in soft cloth as well?', [3]],
    ),
    usual: [5, 12],
    cap: 10,
    trueAfter: ['overarm smooth from the side neck', 'sleeve edge', 'underarm'],
    doNot: 'Too steep, and the arm cannot lift.',
    source: ['R14', 'CP'],
    evidence: 'partly seen',
  },
  {
    id: 'D2',
    said: ['draped sleeve pulls when the arm hangs'],
    where: 'over the shoulder bone',
    sign: 'Taut lines from the bone to the edge, front and back.',
    causes: causes(
      ['overarm too steep or short', letOut('perPiece', 10, swing('up'), { capUnit: 'deg' })],
      ['square shoulders', see('SH2', 1)],
      ['shoulder line too short', see('SH4', 1)],
    ),
    tests: tests(
      ['Slit along the overarm at the bone. Does it open?', [1]],
      ['Does opening at the bone alone free it?', [2]],
    ),
    usual: [3, 10],
    cap: 10,
    trueAfter: ['overarm'],
    doNot: 'Do not widen the neck for it.',
    source: ['CP'],
    evidence: 'common practice',
  },
  {
    id: 'D3',
    said: ['side and hem rise with the arm', 'drags the whole side up'],
    where: 'underarm',
    sign: 'Lifting the arm drags cloth from the hem up the side.',
    causes: causes(
      ['overarm too steep', place('perPiece', 8, swing('up'), { capUnit: 'deg' })],
      ['underarm too low', place('asRead', 25, underarm('up'))],
      ['too narrow', letOut('perPiece', 20, sweep('wider'))],
    ),
    tests: tests(
      ['Lift the arm level. Does opening the overarm seam free it?', [1]],
      ['Does pinning the underarm up free it?', [2]],
      ['Does slitting the sleeve edge free it?', [3]],
    ),
    usual: [3, 8],
    cap: 8,
    trueAfter: ['underarm curve', 'side seams equal'],
    doNot: 'Do not lower the underarm to gain lift unless the sleeve is full.',
    source: ['R14', 'R16'],
    evidence: 'operative text',
  },
  {
    id: 'D4',
    said: ['bulky folds under the arm'],
    where: 'underarm',
    sign: 'Soft upright folds from arm to waist.',
    causes: causes(
      [
        'what a drape does',
        making('A draped sleeve folds when the arm hangs. Leave it, unless it is too much.'),
      ],
      ['underarm too low', takeIn('asRead', 20, underarm('up'))],
      ['too much sweep', takeIn('perPiece', 20, sweep('narrower'))],
    ),
    tests: tests(
      ['Pin the fold at the underarm. Does the arm still lift?', [2]],
      ['Does taking in the edge make it lie?', [3]],
    ),
    usual: [10, 30],
    cap: 20,
    trueAfter: ['side curve', 'side seams equal'],
    doNot: 'Do not chase every fold.',
    source: ['R14', 'CP'],
    evidence: 'common practice',
  },
  {
    id: 'D5',
    said: ['drape falls forward', 'folds uneven front and back'],
    where: 'sleeve edge',
    sign: 'More folds on one side than on the other.',
    causes: causes(
      [
        'overarm seam not on top of the arm',
        place('asRead', 13, [
          edit('SWAP', 'front.overarm', 'in'),
          edit('SWAP', 'back.overarm', 'out'),
        ]),
      ],
      [
        'front and back cut on another grain',
        making('Cut both on the same grain; leave the draft.'),
      ],
      [
        'front and back sweep unequal',
        place('asRead', 13, [
          edit('SWEEP', 'front.sleeveEdge', 'narrower', {
            angle: { kind: 'sector', radius: 'overarm' },
          }),
          edit('SWEEP', 'back.sleeveEdge', 'wider', {
            angle: { kind: 'sector', radius: 'overarm' },
          }),
        ]),
      ],
    ),
    tests: tests(
      ['Mark the top of the arm. Does the seam lie before or behind it?', [1]],
      ['Are the two edges of unequal length?', [3]],
    ),
    usual: [5, 13],
    cap: 13,
    trueAfter: ['overarm', 'sleeve edge'],
    doNot: 'Do not trim the longer side alone.',
    source: ['CP'],
    evidence: 'common practice',
  },
  {
    id: 'D6',
    said: ['underwear shows when the arm is lifted'],
    where: 'opening under the arm',
    sign: 'A wide opening under the arm.',
    causes: causes(
      ['underarm too low', place('asRead', 20, underarm('up'))],
      ['opening too large', takeIn('perPiece', 20, sweep('narrower'))],
    ),
    tests: tests(
      ['Tape the depth that is wanted. Is the underarm lower?', [1]],
      ['Is the depth right and the edge too long?', [2]],
    ),
    usual: [10, 40],
    cap: 20,
    trueAfter: ['underarm'],
    doNot: 'Do not make it smaller than the arm needs.',
    source: ['CP'],
    evidence: 'common practice',
  },
  {
    id: 'D7',
    said: ['sleeve edge too tight'],
    where: 'sleeve edge',
    sign: 'The edge is tight round the arm.',
    causes: causes(['sleeve edge too short', letOut('perPiece', 20, sweep('wider'))]),
    tests: tests(['Slit the edge. Does it open?', [1]]),
    usual: [10, 60],
    cap: 20,
    trueAfter: ['sleeve edge', 'its facing'],
    doNot: 'Do not only stretch the hem.',
    source: ['CP'],
    evidence: 'common practice',
  },
  {
    id: 'D8',
    said: ['wavy hem on the bias', 'edge stretches unevenly'],
    where: 'sleeve edge',
    sign: 'The edge is wavy and longer where it lies on the bias.',
    causes: causes(
      [
        'the cloth drops on the bias',
        making(
          'Let it hang for a day, strike the edge anew at one radius and hem it narrow. It is kept with the cloth, not in the draft.',
        ),
      ],
      ['stretched while hemming', making('Stay the edge before it is hemmed; leave the draft.')],
    ),
    tests: tests(
      ['Hung for a day, does the radius differ from the draft?', [1]],
      ['Is the radius right and the edge wavy?', [2]],
    ),
    usual: [3, 15],
    cap: 15,
    trueAfter: ['hem'],
    doNot: 'Do not correct the draft for a drop on the bias.',
    source: ['CP'],
    evidence: 'common practice',
  },
]

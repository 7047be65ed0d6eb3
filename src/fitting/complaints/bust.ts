/**
 * Complaints at the bust and on the front above the waist.
 * A table, one entry a complaint: longer than other files for that reason.
 */
import type { Edit, Remedy, Target } from './complaint.ts'
import { BUST_WORDS as W } from './bust.words.ts'
import { edit, hinged, job, letOut, making, place, see, takeIn, turned, zone } from './work.ts'

const fuller: readonly Edit[] = [
  edit('FBA', 'front.bustDart', 'wider', { angle: { kind: 'bust' } }),
]
const smaller: readonly Edit[] = [
  edit('SBA', 'front.bustDart', 'narrower', { angle: { kind: 'bust' } }),
]
const sides = (way: 'in' | 'out'): readonly Edit[] => [
  edit('EDGE', 'front.side', way),
  edit('EDGE', 'back.side', way),
]
const centreWedge = (op: 'WEDGE-' | 'WEDGE+'): readonly Edit[] => [
  edit(op, 'front.centre', op === 'WEDGE-' ? 'in' : 'out', { angle: hinged('chestWidth') }),
]
/** Edge at the shoulder's neck end lifted or let down. */
const neckEnd = (way: 'up' | 'down'): readonly Edit[] => [
  edit('MOVE', 'front.shoulder', way, { point: 'sideNeck' }),
]

const armholeTuck: Remedy = takeIn(
  'across',
  15,
  [
    edit('ROT', 'front.armhole', 'in', {
      angle: turned('apexToArmhole', 'front.bustDart', 'apexToSide'),
    }),
  ],
  { never: { places: ['side', 'seam', 'hem', 'waist', 'bust', 'allRound'], why: W.B8.never } },
)
const dartTip = (target: Target): readonly Edit[] => [
  edit('DARTLEN', target, 'in', { point: 'tip' }),
]

export const BUST = zone(W, {
  B1: {
    causes: {
      1: letOut('onePiece', 20, fuller),
      2: letOut('across', 13, sides('out')),
      3: see('K1', 1),
      4: see('B5', 1),
    },
    tests: { 1: [1], 2: [2], 3: [3], 4: [4] },
    usual: [6, 25],
    cap: 20,
    source: ['R8', 'R13', 'R20', 'R24', 'PUBLIC'],
    evidence: 'partly',
  },
  B2: {
    causes: {
      1: letOut('length', 20, [
        edit('DROP', 'front.centre', 'down'),
        edit('DROP', 'front.bustDart', 'wider'),
      ]),
      2: see('B1', 1),
      3: see('W10', 1),
    },
    tests: { 1: [1], 2: [2] },
    usual: [6, 25],
    cap: 20,
    source: ['R12', 'R21', 'R24', 'PUBLIC'],
    evidence: 'partly',
  },
  B3: {
    causes: {
      1: takeIn('onePiece', 15, smaller, {
        at: [{ places: ['side', 'seam'], work: job('in', 'across', 15, sides('in')) }],
      }),
      2: takeIn('across', 15, sides('in')),
      3: see('B5', 1),
    },
    tests: { 1: [1], 2: [2], 3: [3] },
    usual: [5, 20],
    cap: 15,
    source: ['R2', 'R13', 'CP'],
    evidence: 'heading',
  },
  B4: {
    causes: {
      1: place('asRead', 20, dartTip('front.waistDart'), {
        at: [{ places: ['side'], work: job('place', 'asRead', 20, dartTip('front.bustDart')) }],
      }),
      2: see('B5', 1),
    },
    tests: { 1: [1], 2: [2] },
    usual: [13, 64],
    cap: 20,
    source: ['R24', 'PUBLIC'],
    evidence: 'operative',
  },
  B5: {
    causes: {
      1: place('asRead', 25, [
        edit('GROUP', 'front.bustDart', 'down'),
        edit('MOVE', 'front.waistDart', 'down', { point: 'apex' }),
      ]),
      2: see('SH1', 1),
      3: making(W.B5.advice[3]),
    },
    tests: { 1: [1], 2: [2] },
    usual: [6, 38],
    cap: 25,
    source: ['PUBLIC'],
    evidence: 'operative',
  },
  B6: {
    causes: {
      1: place('onePiece', 20, [
        edit('MOVE', 'front.waistDart', 'out', { point: 'apex' }),
        edit('MOVE', 'front.bustDart', 'out', { point: 'tip' }),
      ]),
      2: see('B1', 1),
    },
    tests: { 1: [1] },
    usual: [3, 20],
    cap: 20,
    source: ['CP'],
    evidence: 'practice',
  },
  B7: {
    causes: {
      1: place('asRead', 20, [
        edit('SPLIT', 'front.waistDart', 'narrower', {
          angle: turned('apexToWaist', 'front.bustDart', 'apexToSide'),
        }),
      ]),
      2: making(W.B7.advice[2]),
      3: making(W.B7.advice[3]),
      4: see('B4', 1),
    },
    tests: { 1: [1], 2: [2, 3] },
    usual: [38, 44],
    cap: 20,
    source: ['PUBLIC', 'CP'],
    evidence: 'partly',
  },
  B8: {
    causes: {
      1: armholeTuck,
      2: armholeTuck,
      3: see('A2', 1),
      4: see('SH1', 1),
      5: making(W.B8.advice[5]),
    },
    tests: { 1: [1, 2], 2: [4], 3: [3], 4: [5] },
    usual: [6, 13],
    cap: 15,
    source: ['R24', 'R22', 'PUBLIC'],
    evidence: 'operative',
  },
  B9: {
    causes: {
      1: takeIn('length', 13, centreWedge('WEDGE-')),
      2: takeIn('length', 13, centreWedge('WEDGE-')),
      3: takeIn('length', 13, neckEnd('down')),
    },
    tests: { 1: [1, 2], 2: [3] },
    usual: [5, 15],
    cap: 13,
    source: ['R1', 'R2', 'R13'],
    evidence: 'partly',
  },
  B10: {
    causes: { 1: takeIn('across', 10, [edit('STRIP-', 'front.armhole', 'in')]), 2: see('SH3', 1) },
    tests: { 1: [1], 2: [2] },
    usual: [3, 10],
    cap: 10,
    source: ['R2', 'CP'],
    evidence: 'heading',
  },
  B11: {
    causes: {
      1: letOut('across', 10, [edit('STRIP+', 'front.armhole', 'out')]),
      2: see('SH2', 1),
      3: see('B1', 1),
    },
    tests: { 1: [1], 2: [2], 3: [3] },
    usual: [3, 10],
    cap: 10,
    source: ['R1', 'CP'],
    evidence: 'practice',
  },
  B12: {
    causes: {
      1: letOut('onePiece', 20, fuller),
      2: making(W.B12.advice[2]),
      3: letOut('across', 13, sides('out')),
    },
    tests: { 1: [1], 2: [2] },
    usual: [5, 30],
    cap: 20,
    source: ['R24', 'PUBLIC'],
    evidence: 'partly',
  },
  B13: {
    causes: {
      1: takeIn('across', 19, [edit('DARTSHAPE', 'front.waistDart', 'wider')]),
      2: takeIn('across', 19, [edit('DARTSHAPE', 'front.waistDart', 'wider')]),
    },
    tests: { 1: [1, 2] },
    usual: [5, 19],
    cap: 19,
    source: ['R24'],
    evidence: 'operative',
  },
  B14: {
    causes: {
      1: takeIn('length', 13, neckEnd('down'), {
        at: [{ places: ['cf'], work: job('in', 'length', 13, centreWedge('WEDGE-')) }],
      }),
      2: see('B5', 1),
      3: see('W2', 1),
    },
    tests: { 1: [1], 2: [3], 3: [2] },
    usual: [5, 15],
    cap: 13,
    source: ['R1'],
    evidence: 'operative',
  },
  B15: {
    causes: {
      1: letOut('length', 13, neckEnd('up'), {
        at: [{ places: ['cf'], work: job('out', 'length', 13, centreWedge('WEDGE+')) }],
      }),
      2: see('SH2', 1),
      3: see('B1', 1),
    },
    tests: { 1: [1], 2: [2] },
    usual: [5, 13],
    cap: 13,
    source: ['R13', 'R17', 'CP'],
    evidence: 'practice',
  },
})

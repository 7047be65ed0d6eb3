/**
 * Complaints at waist, side seam, hip and hem.
 */
import type { Edit } from './complaint.ts'
import { WAIST_WORDS as W } from './waist.words.ts'
import { edit, hinged, job, letOut, making, place, see, takeIn, zone } from './work.ts'

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

export const WAIST = zone(W, {
  W1: {
    causes: { 1: letOut('length', 40, both('PAR+')), 2: see('W9', 1), 3: see('B1', 2) },
    tests: { 1: [1], 2: [2], 3: [3] },
    usual: [6, 40],
    cap: 40,
    source: ['R12', 'R13'],
    evidence: 'operative',
  },
  W2: {
    causes: { 1: takeIn('length', 20, both('PAR-')), 2: takeIn('length', 20, both('PAR-')) },
    tests: { 1: [1], 2: [2] },
    usual: [6, 40],
    cap: 20,
    source: ['R13'],
    evidence: 'operative',
  },
  W3: {
    causes: {
      1: letOut('half', 20, shared('out'), {
        at: [
          { places: ['side', 'seam'], work: job('out', 'across', 10, sides('out')) },
          {
            places: ['dart', 'cb'],
            work: job('out', 'across', 20, [edit('DARTSHAPE', 'back.waistDart', 'narrower')]),
          },
        ],
      }),
      2: making(W.W3.advice[2]),
    },
    tests: { 1: [1], 2: [2] },
    usual: [5, 40],
    cap: 20,
    source: ['R12'],
    evidence: 'partly',
  },
  W4: {
    causes: {
      1: takeIn('half', 20, shared('in'), {
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
    },
    tests: { 1: [1] },
    usual: [32, 38],
    cap: 20,
    source: ['R12'],
    evidence: 'partly',
  },
  W5: {
    causes: { 1: see('B14', 1), 2: see('K3', 1) },
    tests: { 1: [1], 2: [2] },
    usual: [5, 20],
    cap: 20,
    source: ['R17'],
    evidence: 'partly',
  },
  W6: {
    causes: { 1: see('B2', 1), 2: see('K3', 1), 3: place('asRead', 20, swap('out')) },
    tests: { 1: [1], 2: [2], 3: [3] },
    usual: [5, 20],
    cap: 20,
    source: ['R3', 'R1', 'R23'],
    evidence: 'partly',
  },
  W7: {
    causes: { 1: see('K3', 1), 2: see('B14', 1), 3: place('asRead', 20, swap('in')) },
    tests: { 1: [1], 2: [2], 3: [3] },
    usual: [5, 20],
    cap: 20,
    source: ['R3', 'CP'],
    evidence: 'practice',
  },
  W8: {
    causes: {
      1: see('B1', 1),
      2: place('asRead', 15, [
        edit('DARTSHAPE', 'front.waistDart', 'narrower'),
        edit('DARTSHAPE', 'back.waistDart', 'wider'),
      ]),
    },
    tests: { 1: [1], 2: [2] },
    usual: [5, 15],
    cap: 15,
    source: ['CP'],
    evidence: 'practice',
  },
  W9: {
    causes: { 1: letOut('across', 15, sides('out')), 2: see('W12', 1) },
    tests: { 1: [1], 2: [2] },
    usual: [5, 60],
    cap: 15,
    source: ['R8', 'R1', 'PUBLIC'],
    evidence: 'partly',
  },
  W10: {
    causes: {
      1: letOut('length', 20, [
        edit('WEDGE+', 'front.centre', 'out', { angle: hinged('frontWaistWidth') }),
      ]),
    },
    tests: { 1: [1] },
    usual: [6, 25],
    cap: 20,
    source: ['R13', 'R2'],
    evidence: 'operative',
  },
  W11: {
    causes: { 1: see('SH8', 1), 2: see('K3', 1), 3: making(W.W11.advice[3]) },
    tests: { 1: [1], 2: [2], 3: [3] },
    usual: undefined,
    cap: undefined,
    source: ['R17', 'CP'],
    evidence: 'partly',
  },
  W12: {
    causes: {
      1: place('asRead', 20, [edit('DARTLEN', 'front.waistDart', 'up', { point: 'tip' })], {
        at: [
          {
            places: ['cb'],
            work: job('place', 'asRead', 20, [
              edit('DARTLEN', 'back.waistDart', 'up', { point: 'tip' }),
            ]),
          },
        ],
      }),
      2: see('W9', 1),
    },
    tests: { 1: [1], 2: [2] },
    usual: [10, 40],
    cap: 20,
    source: ['MEM'],
    evidence: 'memory',
  },
})

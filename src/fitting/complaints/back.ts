/**
 * Complaints at the back.
 */
import type { Edit } from './complaint.ts'
import { BACK_WORDS as W } from './back.words.ts'
import { edit, hinged, letOut, see, takeIn, turned, zone } from './work.ts'

const bladeWedge = (op: 'WEDGE+' | 'WEDGE-'): readonly Edit[] => [
  edit(op, 'back.centre', op === 'WEDGE+' ? 'out' : 'in', { angle: hinged('backWidth') }),
]

export const BACK = zone(W, {
  K1: {
    causes: {
      1: letOut('across', 15, [edit('STRIP+', 'back.armhole', 'out')]),
      2: letOut('across', 15, [edit('STRIP+', 'back.armhole', 'out')]),
      3: see('L3', 1),
      4: see('K3', 1),
    },
    tests: { 1: [1], 2: [2], 3: [3] },
    usual: [5, 15],
    cap: 15,
    source: ['R13', 'R2'],
    evidence: 'operative',
  },
  K2: {
    causes: {
      1: takeIn('length', 20, [
        edit('WEDGE-', 'back.centre', 'in', { angle: hinged('backWaistWidth') }),
      ]),
      2: see('W9', 1),
      3: see('W2', 1),
      4: see('K6', 1),
    },
    tests: { 1: [1], 2: [2], 3: [3] },
    usual: [6, 25],
    cap: 20,
    source: ['R43', 'R20', 'R1'],
    evidence: 'operative',
  },
  K3: {
    causes: {
      1: letOut('length', 15, bladeWedge('WEDGE+')),
      2: see('W9', 1),
      3: letOut('length', 15, bladeWedge('WEDGE+')),
    },
    tests: { 1: [1], 2: [2], 3: [3] },
    usual: [6, 20],
    cap: 15,
    source: ['R19', 'R13', 'R2', 'R8'],
    evidence: 'operative',
  },
  K4: {
    causes: {
      1: letOut('across', 8, [
        edit('ROT', 'back.shoulderDart', 'wider', {
          angle: turned('bladeToShoulder', 'back.waistDart', 'bladeToWaist'),
        }),
      ]),
      2: see('K3', 1),
    },
    tests: { 1: [1], 2: [2] },
    usual: [3, 8],
    cap: 8,
    source: ['R2', 'CP'],
    evidence: 'heading',
  },
  K5: {
    causes: {
      1: takeIn('length', 13, bladeWedge('WEDGE-')),
      2: takeIn('across', 13, [edit('DARTSHAPE', 'back.shoulderDart', 'narrower')]),
    },
    tests: { 1: [1], 2: [2] },
    usual: [5, 15],
    cap: 13,
    source: ['R21', 'R1'],
    evidence: 'operative',
  },
  K6: {
    causes: {
      1: takeIn('across', 32, [edit('DARTSHAPE', 'back.waistDart', 'wider')]),
      2: takeIn('across', 15, [edit('EDGE', 'back.centre', 'in')]),
    },
    tests: { 1: [1], 2: [2] },
    usual: [5, 20],
    cap: 32,
    source: ['R12', 'R1'],
    evidence: 'partly',
  },
  K7: {
    causes: {
      1: letOut('length', 19, [
        edit('WEDGE+', 'back.centre', 'out', { angle: hinged('backWidth') }),
      ]),
    },
    tests: { 1: [1] },
    usual: [6, 19],
    cap: 19,
    source: ['R20', 'R2'],
    evidence: 'operative',
  },
})

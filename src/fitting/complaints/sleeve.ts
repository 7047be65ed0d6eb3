/**
 * Complaints of a set-in sleeve.
 */
import type { Edit } from './complaint.ts'
import { SLEEVE_WORDS as W } from './sleeve.words.ts'
import { edit, letOut, making, place, see, takeIn, zone } from './work.ts'

const cap = (op: 'CAP+' | 'CAP-'): readonly Edit[] => [
  edit(op, 'sleeve.cap', op === 'CAP+' ? 'out' : 'in'),
]
const pitch: readonly Edit[] = [edit('PITCH', 'sleeve.cap', 'forward')]

export const SLEEVE = zone(W, {
  L1: {
    causes: { 1: letOut('length', 15, cap('CAP+')), 2: see('SH1', 1), 3: see('A2', 1) },
    tests: { 1: [1], 2: [2] },
    usual: [6, 20],
    cap: 15,
    source: ['R22', 'R1'],
    evidence: 'operative',
  },
  L2: {
    causes: { 1: takeIn('length', 13, cap('CAP-')), 2: see('L6', 1) },
    tests: { 1: [1], 2: [2] },
    usual: [3, 13],
    cap: 13,
    source: ['R2', 'CP'],
    evidence: 'heading',
  },
  L3: {
    causes: { 1: letOut('asRead', 20, [edit('BICEPS+', 'sleeve.cap', 'out')]) },
    tests: { 1: [1] },
    usual: [6, 25],
    cap: 20,
    source: ['R22', 'R24', 'R2'],
    evidence: 'operative',
  },
  L4: {
    causes: { 1: place('asRead', 13, pitch), 2: making(W.L4.advice[2]), 3: see('K3', 1) },
    tests: { 1: [1], 2: [2] },
    usual: [5, 15],
    cap: 13,
    source: ['R1', 'R17'],
    evidence: 'operative',
  },
  L5: {
    causes: {
      1: place('asRead', 20, [
        edit('MOVE', 'front.armhole', 'up', { point: 'underarm' }),
        edit('MOVE', 'back.armhole', 'up', { point: 'underarm' }),
      ]),
      2: place('length', 15, cap('CAP-')),
      3: see('K1', 1),
      4: see('L1', 1),
    },
    tests: { 1: [1], 2: [2] },
    usual: [6, 20],
    cap: 20,
    source: ['PUBLIC', 'R24', 'R14'],
    evidence: 'partly',
  },
  L6: {
    causes: { 1: place('asRead', 20, [edit('CAPLEN', 'sleeve.cap', 'in')]), 2: see('SH3', 1) },
    tests: { 1: [1] },
    usual: [13, 38],
    cap: 20,
    source: ['R24', 'PUBLIC'],
    evidence: 'operative',
  },
  L7: {
    causes: { 1: letOut('asRead', 15, [edit('CAPLEN', 'sleeve.cap', 'out')]), 2: see('SH7', 1) },
    tests: { 1: [1], 2: [2] },
    usual: [3, 15],
    cap: 15,
    source: ['R14', 'CP'],
    evidence: 'practice',
  },
  L8: {
    causes: {
      1: letOut('length', 20, [edit('WEDGE+', 'sleeve.backSeam', 'out')]),
      2: letOut('length', 20, [
        edit('PAR+', 'sleeve.frontSeam', 'out'),
        edit('PAR+', 'sleeve.backSeam', 'out'),
      ]),
    },
    tests: { 1: [1], 2: [2] },
    usual: [6, 20],
    cap: 20,
    source: ['R1'],
    evidence: 'operative',
  },
  L9: {
    causes: { 1: place('asRead', 10, pitch), 2: place('length', 10, cap('CAP+')) },
    tests: { 1: [1], 2: [2] },
    usual: [3, 10],
    cap: 10,
    source: ['CP'],
    evidence: 'practice',
  },
})

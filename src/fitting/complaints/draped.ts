/**
 * Complaints of a draped sleeve cut in one with the body: overarm, sleeve edge and underarm.
 */
import type { Edit } from './complaint.ts'
import { DRAPED_WORDS as W } from './draped.words.ts'
import { edit, letOut, making, place, see, takeIn, zone } from './work.ts'

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

export const DRAPED = zone(W, {
  D1: {
    causes: {
      1: takeIn('perPiece', 10, swing('down'), { capUnit: 'deg' }),
      2: making(W.D1.advice[2]),
      3: letOut('perPiece', 20, sweep('wider')),
    },
    tests: { 1: [1], 2: [3] },
    usual: [5, 12],
    cap: 10,
    source: ['R14', 'CP'],
    evidence: 'partly',
  },
  D2: {
    causes: {
      1: letOut('perPiece', 10, swing('up'), { capUnit: 'deg' }),
      2: see('SH2', 1),
      3: see('SH4', 1),
    },
    tests: { 1: [1], 2: [2] },
    usual: [3, 10],
    cap: 10,
    source: ['CP'],
    evidence: 'practice',
  },
  D3: {
    causes: {
      1: place('perPiece', 8, swing('up'), { capUnit: 'deg' }),
      2: place('asRead', 25, underarm('up')),
      3: letOut('perPiece', 20, sweep('wider')),
    },
    tests: { 1: [1], 2: [2], 3: [3] },
    usual: [3, 8],
    cap: 8,
    source: ['R14', 'R16'],
    evidence: 'operative',
  },
  D4: {
    causes: {
      1: making(W.D4.advice[1]),
      2: takeIn('asRead', 20, underarm('up')),
      3: takeIn('perPiece', 20, sweep('narrower')),
    },
    tests: { 1: [2], 2: [3] },
    usual: [10, 30],
    cap: 20,
    source: ['R14', 'CP'],
    evidence: 'practice',
  },
  D5: {
    causes: {
      1: place('asRead', 13, [
        edit('SWAP', 'front.overarm', 'in'),
        edit('SWAP', 'back.overarm', 'out'),
      ]),
      2: making(W.D5.advice[2]),
      3: place('asRead', 13, [
        edit('SWEEP', 'front.sleeveEdge', 'narrower', {
          angle: { kind: 'sector', radius: 'overarm' },
        }),
        edit('SWEEP', 'back.sleeveEdge', 'wider', {
          angle: { kind: 'sector', radius: 'overarm' },
        }),
      ]),
    },
    tests: { 1: [1], 2: [3] },
    usual: [5, 13],
    cap: 13,
    source: ['CP'],
    evidence: 'practice',
  },
  D6: {
    causes: {
      1: place('asRead', 20, underarm('up')),
      2: takeIn('perPiece', 20, sweep('narrower')),
    },
    tests: { 1: [1], 2: [2] },
    usual: [10, 40],
    cap: 20,
    source: ['CP'],
    evidence: 'practice',
  },
  D7: {
    causes: { 1: letOut('perPiece', 20, sweep('wider')) },
    tests: { 1: [1] },
    usual: [10, 60],
    cap: 20,
    source: ['CP'],
    evidence: 'practice',
  },
  D8: {
    causes: { 1: making(W.D8.advice[1]), 2: making(W.D8.advice[2]) },
    tests: { 1: [1], 2: [2] },
    usual: [3, 15],
    cap: 15,
    source: ['CP'],
    evidence: 'practice',
  },
})

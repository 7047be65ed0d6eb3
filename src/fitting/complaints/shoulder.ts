/**
 * Complaints at the shoulder. A seam over the shoulder is the overarm seam of a sleeve cut in one.
 */
import type { Edit } from './complaint.ts'
import { SHOULDER_WORDS as W } from './shoulder.words.ts'
import { edit, letOut, making, place, see, takeIn, zone } from './work.ts'

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

export const SHOULDER = zone(W, {
  SH1: {
    causes: {
      1: takeIn('perPiece', 13, slope('down')),
      2: see('SH3', 1),
      3: making(W.SH1.advice[3]),
    },
    tests: { 1: [1], 2: [2] },
    usual: [5, 13],
    cap: 13,
    source: ['R1', 'R3', 'R23'],
    evidence: 'operative',
  },
  SH2: {
    causes: { 1: letOut('perPiece', 13, slope('up')), 2: see('SH4', 1), 3: see('B11', 1) },
    tests: { 1: [1], 2: [2], 3: [3] },
    usual: [5, 13],
    cap: 13,
    source: ['R1', 'R3', 'R13'],
    evidence: 'operative',
  },
  SH3: {
    causes: {
      1: takeIn('asRead', 15, tipAlong('in'), { marked: true }),
      2: see('N5', 1),
      3: see('B10', 1),
    },
    tests: { 1: [1], 2: [2], 3: [3] },
    usual: [6, 19],
    cap: 15,
    source: ['R1', 'R3', 'R13', 'PUBLIC'],
    evidence: 'operative',
  },
  SH4: {
    causes: { 1: letOut('asRead', 13, tipAlong('out')), 2: see('K1', 1), 3: see('L1', 1) },
    tests: { 1: [1], 2: [2] },
    usual: [6, 16],
    cap: 13,
    source: ['R1', 'R3'],
    evidence: 'operative',
  },
  SH5: {
    causes: {
      1: place('asRead', 13, [
        edit('SWAP', 'front.shoulder', 'in', tip),
        edit('SWAP', 'back.shoulder', 'out', tip),
        edit('PITCH', 'sleeve.cap', 'forward'),
      ]),
      2: see('K3', 1),
      3: place('asRead', 13, [
        edit('SWAP', 'front.shoulder', 'in', tip),
        edit('SWAP', 'back.shoulder', 'out', tip),
      ]),
    },
    tests: { 1: [1], 2: [2] },
    usual: [6, 13],
    cap: 13,
    source: ['R22', 'R1', 'CP'],
    evidence: 'partly',
  },
  SH6: {
    causes: {
      1: place('asRead', 13, [
        edit('SWAP', 'front.shoulder', 'out', tip),
        edit('SWAP', 'back.shoulder', 'in', tip),
      ]),
      2: place('asRead', 13, [
        edit('SWAP', 'front.shoulder', 'out', tip),
        edit('SWAP', 'back.shoulder', 'in', tip),
      ]),
      3: see('K5', 1),
    },
    tests: { 1: [1, 2], 2: [3] },
    usual: [3, 13],
    cap: 13,
    source: ['R1', 'CP'],
    evidence: 'partly',
  },
  SH7: {
    causes: {
      1: place('asRead', 5, [
        edit('EDGE', 'front.armhole', 'in', tip),
        edit('EDGE', 'back.armhole', 'in', tip),
      ]),
    },
    tests: { 1: [1] },
    usual: [1, 5],
    cap: 5,
    source: ['R14'],
    evidence: 'operative',
  },
  SH8: {
    causes: {
      1: takeIn('perPiece', 15, slope('down')),
      2: making(W.SH8.advice[2]),
      3: making(W.SH8.advice[3]),
    },
    tests: { 1: [1], 2: [2] },
    usual: [6, 15],
    cap: 15,
    source: ['R20', 'CP'],
    evidence: 'partly',
  },
})

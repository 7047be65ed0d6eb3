/**
 * Complaints at the neck, and of the whole garment hanging from it.
 */
import type { Edit } from './complaint.ts'
import { NECK_WORDS as W } from './neck.words.ts'
import { edit, letOut, making, place, see, takeIn, turned, zone } from './work.ts'

const sideNeck = { point: 'sideNeck' } as const

const neckTuck: readonly Edit[] = [
  edit('ROT', 'front.neck', 'in', {
    angle: turned('apexToNeck', 'front.waistDart', 'apexToWaist'),
  }),
]

export const NECK = zone(W, {
  N1: {
    causes: {
      1: takeIn('across', 15, neckTuck),
      2: see('B9', 1),
      3: takeIn('across', 15, neckTuck),
      4: making(W.N1.advice[4]),
      5: see('N5', 1),
    },
    tests: { 1: [1, 3], 2: [2], 3: [4], 4: [5] },
    usual: [6, 13],
    cap: 15,
    source: ['R22', 'R24', 'CP'],
    evidence: 'operative',
  },
  N2: {
    causes: {
      1: letOut('asRead', 10, [edit('MOVE', 'front.neck', 'down', { point: 'frontNeck' })]),
      2: letOut(
        'asRead',
        10,
        [edit('MOVE', 'front.neck', 'out', sideNeck), edit('MOVE', 'back.neck', 'out', sideNeck)],
        {
          at: [
            {
              places: ['allRound'],
              work: {
                moves: 'out',
                readAs: 'asRead',
                cap: 30,
                edits: [
                  edit('MOVE', 'front.neck', 'down', { part: 1 / 3, point: 'frontNeck' }),
                  edit('MOVE', 'front.neck', 'out', { part: 1 / 8, ...sideNeck }),
                  edit('MOVE', 'back.neck', 'out', { part: 1 / 8, ...sideNeck }),
                ],
              },
            },
          ],
        },
      ),
      3: see('N7'),
      4: see('SH2', 1),
    },
    tests: { 1: [1], 2: [2], 3: [3] },
    usual: [3, 10],
    cap: 10,
    source: ['R1', 'CP'],
    evidence: 'partly',
  },
  N3: {
    causes: {
      1: takeIn('across', 12, [
        edit('ROT', 'back.neck', 'in', {
          angle: turned('bladeToNeck', 'back.shoulderDart', 'bladeToShoulder'),
        }),
      ]),
      2: takeIn('across', 12, [
        edit('MOVE', 'back.neck', 'in', sideNeck),
        edit('MOVE', 'front.neck', 'in', sideNeck),
      ]),
      3: see('K3', 1),
      4: see('K7', 1),
      5: making(W.N3.advice[5]),
    },
    tests: { 1: [1], 2: [2], 3: [3], 4: [5] },
    usual: [3, 10],
    cap: 12,
    source: ['R20', 'R24', 'CP'],
    evidence: 'partly',
  },
  N4: {
    causes: {
      1: see('SH2', 1),
      2: place('asRead', 8, [edit('MOVE', 'back.neck', 'down', { point: 'nape' })]),
      3: see('K5', 1),
    },
    tests: { 1: [1], 2: [2], 3: [3] },
    usual: [3, 8],
    cap: 8,
    source: ['R3', 'R13', 'CP'],
    evidence: 'partly',
  },
  N5: {
    causes: {
      1: place('asRead', 20, [
        edit('MOVE', 'front.neck', 'in', sideNeck),
        edit('MOVE', 'back.neck', 'in', sideNeck),
      ]),
      2: see('SH1', 1),
      3: see('SH3', 1),
    },
    tests: { 1: [1], 2: [2, 3] },
    usual: [5, 20],
    cap: 20,
    source: ['CP'],
    evidence: 'practice',
  },
  N6: {
    causes: { 1: see('SH2', 1), 2: see('SH3', 1) },
    tests: { 1: [1], 2: [2] },
    usual: undefined,
    cap: undefined,
    source: ['R3', 'R1'],
    evidence: 'operative',
  },
  N7: {
    causes: { 1: see('B2', 1), 2: see('K5', 1), 3: see('SH5', 1), 4: see('W9', 1) },
    tests: { 1: [1], 2: [2], 3: [3] },
    usual: [5, 20],
    cap: 15,
    source: ['R17', 'R22', 'CP'],
    evidence: 'partly',
  },
  N8: {
    causes: { 1: see('K3', 1), 2: see('B9', 1), 3: see('SH6', 1) },
    tests: { 1: [1], 2: [2] },
    usual: [5, 20],
    cap: 15,
    source: ['R17', 'R21'],
    evidence: 'partly',
  },
})

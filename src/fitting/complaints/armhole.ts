/** Complaints at the armhole. On a sleeve cut in one they belong to the sleeve edge and the underarm. */
import type { Edit } from './complaint.ts'
import { ARMHOLE_WORDS as W } from './armhole.words.ts'
import { edit, letOut, place, see, takeIn, turned, zone } from './work.ts'

const under = { point: 'underarm' } as const

const bladeTuck: readonly Edit[] = [
  edit('ROT', 'back.armhole', 'in', {
    angle: turned('bladeToArmhole', 'back.shoulderDart', 'bladeToShoulder'),
  }),
]

export const ARMHOLE = zone(W, {
  A1: {
    causes: {
      1: letOut('asRead', 10, [
        edit('MOVE', 'front.armhole', 'down', under),
        edit('MOVE', 'back.armhole', 'down', under),
      ]),
      2: letOut('asRead', 6, [edit('EDGE', 'front.armhole', 'in')]),
      3: see('K1', 1),
      4: see('SH4', 1),
    },
    tests: { 1: [1], 2: [2], 3: [3] },
    usual: [3, 13],
    cap: 10,
    source: ['R1', 'R12', 'CP'],
    evidence: 'partly',
  },
  A2: {
    causes: {
      1: place('asRead', 15, [
        edit('MOVE', 'front.armhole', 'up', under),
        edit('MOVE', 'back.armhole', 'up', under),
      ]),
      2: see('SH1', 1),
      3: takeIn('across', 15, [edit('EDGE', 'front.side', 'in'), edit('EDGE', 'back.side', 'in')]),
    },
    tests: { 1: [1], 2: [2], 3: [3] },
    usual: [5, 20],
    cap: 15,
    source: ['R1'],
    evidence: 'operative',
  },
  A3: {
    causes: {
      1: takeIn('across', 10, bladeTuck, {
        never: {
          places: ['side', 'seam', 'hem', 'waist', 'bust', 'allRound'],
          why: W.A3.never,
        },
      }),
      2: takeIn('across', 10, bladeTuck),
      3: takeIn('across', 10, bladeTuck),
    },
    tests: { 1: [1, 2, 3] },
    usual: [3, 10],
    cap: 10,
    source: ['R24', 'CP'],
    evidence: 'practice',
  },
  A4: {
    causes: { 1: takeIn('across', 10, [edit('EDGE', 'back.armhole', 'in')]), 2: see('SH3', 1) },
    tests: {
      1: { yes: [1], leaves: { on: false, why: W.A4.leaves } },
      2: [2],
      3: { yes: [], leaves: { on: true, why: W.A4.leaves } },
    },
    usual: [3, 10],
    cap: 10,
    source: ['R2', 'CP'],
    evidence: 'heading',
  },
  A5: {
    causes: {
      1: letOut('asRead', 8, [edit('EDGE', 'front.armhole', 'in')]),
      2: takeIn('across', 8, [edit('CAPLEN', 'sleeve.cap', 'in')]),
    },
    tests: { 1: [1], 2: [2] },
    usual: [3, 8],
    cap: 8,
    source: ['CP'],
    evidence: 'practice',
  },
})

/** Complaints of the whole garment: cloth, scale and measuring before any change of the draft. */
import type { Edit } from './complaint.ts'
import { WHOLE_WORDS as W } from './whole.words.ts'
import { edit, letOut, making, takeIn, tape, zone } from './work.ts'

const sides = (way: 'in' | 'out'): readonly Edit[] => [
  edit('EDGE', 'front.side', way),
  edit('EDGE', 'back.side', way),
]

/** Four edges of 10 mm are 40 round the body: past that it is another body's draft. */
const anew = (why: string) => ({
  past: { ids: ['bustGirth', 'waistGirth', 'hipGirth'], why } as const,
})

export const WHOLE = zone(W, {
  X1: {
    causes: { 1: making(W.X1.advice[1]), 2: making(W.X1.advice[2]), 3: making(W.X1.advice[3]) },
    tests: { 1: [1], 2: [2] },
    usual: undefined,
    cap: undefined,
    source: ['R1'],
    evidence: 'partly',
  },
  X2: {
    causes: {
      1: letOut('across', 10, sides('out'), anew(W.X2.past)),
      2: making(W.X2.advice[2]),
      3: making(W.X2.advice[3]),
    },
    tests: { 1: [1], 2: [2], 3: [3] },
    usual: undefined,
    cap: 40,
    source: ['CP'],
    evidence: 'practice',
  },
  X3: {
    causes: {
      1: takeIn('across', 10, sides('in'), anew(W.X3.past)),
      2: making(W.X3.advice[2]),
      3: making(W.X3.advice[3]),
    },
    tests: { 1: [1], 2: [2], 3: [3] },
    usual: undefined,
    cap: undefined,
    source: ['CP'],
    evidence: 'practice',
  },
  X4: {
    causes: {
      1: making(W.X4.advice[1]),
      2: making(W.X4.advice[2]),
      3: tape(['bustGirth', 'waistGirth', 'hipGirth'], W.X4.advice[3]),
    },
    tests: { 1: [1], 2: [2] },
    usual: undefined,
    cap: undefined,
    source: ['PUBLIC', 'CP'],
    evidence: 'partly',
  },
})

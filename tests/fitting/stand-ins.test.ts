/** A correction that stood in for a number, once the tape has spoken. Numbers invented, worked by hand. */
import { expect, test } from 'vitest'
import type { Correction } from '../../src/fitting/correction.ts'
import { standInsAnswered, type Doubted } from '../../src/fitting/stand-ins.ts'
import { mm } from '../../src/units/length.ts'

const apex: Correction = {
  v: 1,
  id: 'c1',
  kind: 'operate',
  operation: { op: 'GROUP', piece: 'front', dart: 'bustDart', out: mm(0), down: mm(20) },
  because: {
    complaint: 'B5',
    cause: 'B5.1',
    pinned: { how: 'levelError', read: mm(20), share: 1 },
    watch: mm(0),
    round: 1,
  },
}
const doubt = (by: number | undefined): Doubted => ({
  measurement: 'waistToBustLevel',
  complaint: 'B5',
  on: '2026-11-20',
  readings: 2,
  ...(by === undefined ? {} : { by: mm(by) }),
})
const answered = (list: readonly Correction[], doubts: readonly Doubted[], now: number) =>
  standInsAnswered(list, doubts, () => ({ waistToBustLevel: 165 }), { waistToBustLevel: now }).map(
    ({ id }) => id,
  )

test('taped 18 lower where the muslin said 20: the correction has had its day', () => {
  expect(answered([apex], [doubt(-20)], 147)).toEqual(['c1'])
})
test('the old number stands, or the tape goes the other way: the correction stays', () => {
  expect(answered([apex], [doubt(-20)], 165)).toEqual([])
  expect(answered([apex], [doubt(-20)], 175)).toEqual([])
  expect(answered([apex], [doubt(-20)], 160)).toEqual([])
})
test('a doubt without an amount, of another complaint, or a correction taken back: nothing to do', () => {
  expect(answered([apex], [doubt(undefined)], 147)).toEqual([])
  expect(answered([apex], [{ ...doubt(-20), complaint: 'W1' }], 147)).toEqual([])
  const back: Correction = { v: 1, id: 'w', kind: 'withdraw', correction: 'c1', round: 2 }
  expect(answered([apex, back], [doubt(-20)], 147)).toEqual([])
})
test('a complaint that rests on two numbers waits for both', () => {
  const waist: Correction = { ...apex, because: { ...apex.because, complaint: 'W1' } }
  const doubts: readonly Doubted[] = [
    { ...doubt(14), measurement: 'napeToWaist', complaint: 'W1' },
    { ...doubt(14), complaint: 'W1' },
  ]
  const was = { napeToWaist: 400, waistToBustLevel: 165 }
  const go = (now: typeof was) => standInsAnswered([waist], doubts, () => was, now).length
  expect(go({ napeToWaist: 413, waistToBustLevel: 165 })).toBe(0)
  expect(go({ napeToWaist: 413, waistToBustLevel: 178 })).toBe(1)
})

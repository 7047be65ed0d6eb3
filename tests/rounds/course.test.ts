/** The course of an invented garment, worked out by hand: common practice, no source. */
import { expect, test } from 'vitest'
import type { Correction } from '../../src/fitting/correction.ts'
import { courseOf, swings } from '../../src/rounds/course.ts'
import { lineOf } from '../../src/rounds/line.ts'
import {
  branchFrom,
  firstRound,
  nextRound,
  withCorrection,
  withSeen,
  type Round,
} from '../../src/rounds/round.ts'
import { close } from '../../src/rounds/redraft.ts'
import { mm } from '../../src/units/length.ts'
import { body } from '../bodies.ts'

const longer = (id: string, by: number, round: number): Correction => ({
  v: 1,
  id,
  kind: 'turn-choice',
  choice: 'lengthAdded',
  by: mm(by),
  because: {
    complaint: 'W1',
    cause: 'short all round',
    pinned: { how: 'levelError', read: mm(Math.abs(by)), share: 1 },
    watch: mm(0),
    round,
  },
})
const ON = '2026-11-25'
const first = close(firstRound({ id: 'r1', garmentId: 'g1' }, 'blouse', body(), ON), ON)
const after = (round: Round, id: string, by: number): Round =>
  close(withCorrection(nextRound(round, id, ON), longer(`c-${id}`, by, round.number)), ON)
const second = after(
  withSeen(first, { complaint: 'W1', answer: 'short all round', on: ON }),
  'r2',
  10,
)
const third = after(second, 'r3', -6)
const fourth = after(third, 'r4', 4)

test('each round shows what was decided for it, and what its muslin still asks for', () => {
  const seen = withSeen(first, { complaint: 'W1', answer: 'short all round', on: ON })
  const told = courseOf([
    withSeen(seen, { complaint: 'B8', answer: 'nothing to change', on: ON }),
    second,
    third,
  ])
  expect(told).toEqual([
    { round: 1, corrected: {}, open: ['W1'] },
    { round: 2, corrected: { waist: 10 }, open: [] },
    { round: 3, corrected: { waist: -6 }, open: [] },
  ])
})

test('a zone that goes up, down and up is named, with the causes not tried', () => {
  expect(swings([first, second, third])).toEqual([])
  expect(swings([first, second, third, fourth])).toEqual([
    {
      zone: 'waist',
      rounds: [2, 3, 4],
      causes: [
        { complaint: 'W1', cause: 'tight hip or waist pushes it up' },
        { complaint: 'W1', cause: 'tight bust lifts it' },
      ],
    },
  ])
})

test('a zone that settles is not named', () => {
  const smaller = after(after(second, 'r3', 6), 'r4', 3)
  expect(swings([first, second, smaller])).toEqual([])
})

test('a correction taken back counts the other way', () => {
  const back = withCorrection(nextRound(second, 'r3', ON), {
    v: 1,
    id: 'w1',
    kind: 'withdraw',
    correction: 'c-r2',
    round: 3,
  })
  expect(courseOf([first, second, back]).at(-1)?.corrected).toEqual({ waist: -10 })
})

test('the line of a branch leaves out what was made since', () => {
  const branch = branchFrom(second, 5, 'r5', ON)
  const all = [first, second, third, fourth, branch]
  expect(lineOf(all, branch).map((r) => r.number)).toEqual([1, 2, 5])
  expect(lineOf(all, fourth).map((r) => r.number)).toEqual([1, 2, 3, 4])
})

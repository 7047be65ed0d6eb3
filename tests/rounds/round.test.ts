/** Rounds: closed for good when printed, replayed without  compared by printed numbers. */
import fc from 'fast-check'
import { expect, test } from 'vitest'
import { standardChoices } from '../../src/draft/choices.ts'
import type { Correction } from '../../src/fitting/correction.ts'
import { parseConfirmed } from '../../src/measurements/confirmed.ts'
import { compare } from '../../src/rounds/compare.ts'
import { close, redraft } from '../../src/rounds/redraft.ts'
import {
  firstRound,
  nextRound,
  withChoices,
  withCorrection,
  withNotes,
  withSeen,
  type Round,
} from '../../src/rounds/round.ts'
import { drift } from '../../src/rounds/drift.ts'
import { formatChange } from '../../src/units/format.ts'
import { mm } from '../../src/units/length.ts'
import { body } from '../bodies.ts'

const because = {
  complaint: 'B8',
  cause: 'bust shaping',
  pinned: { how: 'wholeFold', read: mm(12), share: 1 },
  watch: mm(0),
  round: 1,
} as const
const wedge = (id: string, width: number): Correction => ({
  v: 1,
  id,
  kind: 'close-wedge',
  piece: 'front',
  edge: 'sleeveEdge',
  along: 0.5,
  width: mm(width),
  because,
})
const first: Round = firstRound({ id: 'r1', garmentId: 'g1' }, 'blouse', body(), '2026-11-25')
const second = nextRound(close(first, '2026-11-25'), 'r2', '2026-11-26')

test('a printed round refuses changes to what was printed and takes what was seen on the muslin', () => {
  const printed = close(first, '2026-11-25')
  expect(() => withCorrection(printed, wedge('c1', 12))).toThrow(
    'round 1 is printed; changes go into the next round',
  )
  expect(() => withChoices(printed, standardChoices())).toThrow('round 1 is printed')
  expect(() => close(printed, '2026-11-26')).toThrow('round 1 is printed')
  expect(
    withNotes(
      withSeen(printed, { complaint: 'B8', answer: 'bust shaping', on: '2026-11-26' }),
      'soft cotton',
    ).seen,
  ).toHaveLength(1)
  expect(() => nextRound(first, 'r2', '2026-11-26')).toThrow('not printed yet')
})

test('the comparison names what the wedge changed and what stayed the same', () => {
  const c = compare(redraft(first).draft, redraft(withCorrection(second, wedge('c1', 12))).draft)
  const names = c.changes.map((x) => x.name)
  expect(names).toContain('front.sleeveEdge')
  expect(names).toContain('front.waistDart')
  expect(c.same.map((x) => x.name)).toEqual(
    expect.arrayContaining(['front.side', 'front.overarm', 'back.side', 'back.sleeveEdge']),
  )
  const sizes = c.changes.map((x) => Math.abs(x.after - x.before))
  expect(sizes).toEqual([...sizes].sort((a, b) => b - a))
})

test('before, after and change add up as printed', () => {
  const c = compare(redraft(first).draft, redraft(withCorrection(second, wedge('c1', 12))).draft)
  for (const { before, after } of c.changes) {
    const printed = (length: number): number => Math.round(length) / 10
    const said = formatChange(before, after, { unit: 'cm', inchStep: 8 })
    const number = said === 'same' ? 0 : Number(said.replace('−', '-').replace(' cm', ''))
    expect(number).toBeCloseTo(printed(after) - printed(before), 9)
  }
})

test('withdrawing a correction restores the draft and keeps the record', () => {
  const third = withCorrection(
    nextRound(close(withCorrection(second, wedge('c1', 12)), '2026-11-27'), 'r3', '2026-11-28'),
    { v: 1, id: 'c2', kind: 'withdraw', correction: 'c1', round: 3 },
  )
  expect(compare(redraft(first).draft, redraft(third).draft).changes).toEqual([])
  expect(third.corrections).toHaveLength(2)
})

test('a round kept as JSON and read back prints the same numbers', () => {
  fc.assert(
    fc.property(fc.array(fc.integer({ min: 3, max: 9 }), { maxLength: 3 }), (widths) => {
      const round = close(
        widths.reduce((r, w, i) => withCorrection(r, wedge(`c${i}`, w)), second),
        '2026-11-27',
      )
      const stored: unknown = JSON.parse(JSON.stringify(round))
      const again = { ...(stored as Round), body: bodyOf((stored as { body: unknown }).body) }
      expect(drift(again)).toEqual([])
    }),
    { numRuns: 25 },
  )
})

test('drift names the numbers a changed program would print differently', () => {
  const printed = close(first, '2026-11-25')
  const altered: Round = {
    ...printed,
    printed: {
      on: '2026-11-25',
      record: {
        ...printed.printed!.record,
        lengths: { ...printed.printed!.record.lengths, 'front.side': mm(1) },
      },
    },
  }
  expect(drift(altered)).toEqual(['front.side'])
})

function bodyOf(stored: unknown) {
  const parsed = parseConfirmed(stored)
  if (!parsed.ok) throw new Error(parsed.reason)
  return parsed.body
}

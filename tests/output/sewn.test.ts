import { expect, test } from 'vitest'
import { dayOf, hangs, ticked } from '../../src/output/sewn.ts'

const HOUR = 3_600_000
// A Friday at half past one, UTC; the hours are counted by hand.
const HUNG = Date.UTC(2026, 10, 27, 13, 30)

test('what hangs for 24 hours has 5 left after 19, and none after 24', () => {
  expect(hangs(HUNG, 24, HUNG + 19 * HOUR)).toEqual({
    until: Date.UTC(2026, 10, 28, 13, 30),
    left: 5 * HOUR,
  })
  expect(hangs(HUNG, 24, HUNG + 24 * HOUR - 1)).toMatchObject({ left: 1 })
  expect(hangs(HUNG, 24, HUNG + 24 * HOUR)).toBeUndefined()
})

test('a clock put right by minutes costs no more than it hung for; one set back is said', () => {
  expect(hangs(HUNG, 24, HUNG - 5 * 60_000)).toMatchObject({ left: 24 * HOUR })
  expect(hangs(HUNG, 24, HUNG - 2 * HOUR)).toBe('clockSetBack')
  // Set a year ahead when she hung it, and right again since: it is no year of waiting.
  expect(hangs(HUNG + 365 * 24 * HOUR, 24, HUNG)).toBe('clockSetBack')
})

test('what is no moment has hung', () => {
  expect(hangs(Date.parse('2026-11-28T99:99Z'), 24, HUNG)).toBeUndefined()
})

test('a tick has its day, whether it was kept by the day or by the moment', () => {
  expect(['2026-11-28', '2026-11-28T13:30:00.000Z'].map(dayOf)).toEqual([
    '2026-11-28',
    '2026-11-28',
  ])
  const sewn = ticked({ stay: '2026-11-28' }, 'hang.hem', '2026-11-28T13:30:00.000Z')
  expect(ticked(sewn, 'stay', undefined)).toEqual({ 'hang.hem': '2026-11-28T13:30:00.000Z' })
})

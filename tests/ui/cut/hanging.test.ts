import { afterEach, expect, test } from 'vitest'
import { hangingSaid } from '../../../src/ui/cut/plan/hanging.ts'
import { HANG_WORDS } from '../../../src/ui/cut/plan/plan.words.ts'

const HANGS = { hours: 24 }
/** By the clock of the device. */
const at = (day: number, hour: number, minute = 0) => new Date(2026, 10, day, hour, minute)
const HUNG = at(27, 14, 30).toISOString()

const zone = process.env['TZ']
afterEach(() => {
  if (zone === undefined) delete process.env['TZ']
  else process.env['TZ'] = zone
})

test('says when to go on by her own clock, and how long yet, rounded up', () => {
  expect(hangingSaid(HANGS, HUNG, at(27, 14, 30))).toEqual({
    lead: 'It hangs: 24 hours yet.',
    from: 'tomorrow from 14:30',
  })
  expect(hangingSaid(HANGS, HUNG, at(28, 9, 31))).toEqual({
    lead: 'It hangs: 5 hours yet.',
    from: 'today from 14:30',
  })
  // One hour and a minute is not one hour.
  expect(hangingSaid(HANGS, HUNG, at(28, 13, 29))?.lead).toBe('It hangs: 2 hours yet.')
  expect(hangingSaid(HANGS, HUNG, at(28, 13, 30))?.lead).toBe('It hangs: 60 minutes yet.')
  expect(hangingSaid(HANGS, HUNG, at(28, 14, 29))?.lead).toBe('It hangs: 1 minute yet.')
  expect(hangingSaid(HANGS, HUNG, at(28, 14, 30))).toBeUndefined()
})

test('a step that does not hang, and one that is not ticked, say nothing', () => {
  expect(hangingSaid({}, HUNG, at(27, 15))).toBeUndefined()
  expect(hangingSaid(HANGS, undefined, at(27, 15))).toBeUndefined()
})

test('a tick of which only the day was kept hangs while that day lasts', () => {
  const now = new Date('2026-11-28T12:00:00Z')
  expect(hangingSaid(HANGS, '2026-11-28', now)).toEqual({
    lead: 'Hanging since today.',
    from: 'tomorrow at this hour',
  })
  expect(hangingSaid(HANGS, '2026-11-27', now)).toBeUndefined()
})

test('a clock set back since does not make her wait', () => {
  expect(hangingSaid(HANGS, HUNG, at(20, 9))).toEqual({
    lead: HANG_WORDS.clockSetBack,
    from: HANG_WORDS.counted,
  })
})

test('over a night on which the clock is put forward it may be the day after tomorrow', () => {
  // In Berlin 29 March 2026 has 23 hours (EU Directive 2000/84/EC: the last Sunday of March).
  process.env['TZ'] = 'Europe/Berlin'
  const hung = new Date('2026-03-28T22:30:00Z')
  expect(hangingSaid(HANGS, hung.toISOString(), hung)?.from).toBe('on 30 March 2026 from 00:30')
})

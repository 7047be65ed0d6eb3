/** What moving says of a muslin. Which movement shows what: our table of complaints. */
import { expect, test } from 'vitest'
import { saidByMoving } from '../../src/rounds/moved.ts'
import { mm } from '../../src/units/length.ts'

const on = '2026-11-28'

test('a movement that is free and lifts little says nothing', () => {
  const movements = [
    { movement: 'armsUp', freedom: 'pulls', on },
    { movement: 'armsUp', freedom: 'free', rose: mm(18), on },
  ] as const
  expect(saidByMoving({ movements }, 'setIn')).toEqual([])
})
test('arms up name the sleeve of the garment; a hem that climbs far says so even where it is free', () => {
  const movements = [{ movement: 'armsUp', freedom: 'free', rose: mm(60), on }] as const
  expect(saidByMoving({ movements }, 'setIn')).toEqual(['L5'])
  expect(saidByMoving({ movements }, 'cutIn')).toEqual(['D3'])
  const all = [
    { movement: 'sit', freedom: 'cannot', on },
    { movement: 'armsForward', freedom: 'pulls', on },
  ] as const
  expect(saidByMoving({ movements: all }, 'none')).toEqual(['K1', 'W9'])
})

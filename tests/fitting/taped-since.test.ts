/**
 * A pin read before the tape was: what the number has brought the draft is not made again. A slit of
 * 12 mm at the centre back is 6 on each half; half of what a width across gains is of one half.
 */
import { expect, test } from 'vitest'
import { standardFor } from '../../src/draft/garments.ts'
import { fitMuslin } from '../../src/fitting/fit-muslin.ts'
import { mm } from '../../src/units/length.ts'
import { body, MIDDLE } from '../bodies.ts'

const narrow = (taped: number) =>
  fitMuslin({
    garment: 'block',
    body: body({}, { ...MIDDLE, acrossBack: MIDDLE.acrossBack + taped }),
    choices: standardFor('block'),
    corrections: [],
    complaints: [
      {
        id: 'K1',
        answers: { 1: true },
        pin: { where: 'cb', how: 'slit', side: 'both', value: mm(12) },
      },
    ],
    cutFrom: body({}, MIDDLE).values,
    retaped: ['acrossBack'],
    round: 1,
    on: '2026-11-25',
  }).decision

test('the tape stands: the whole pin is made', () => {
  expect(narrow(0).edits[0]?.applied).toBeCloseTo(6, 6)
})
test('the tape brought half of it: the other half is made', () => {
  expect(narrow(6).edits[0]?.applied).toBeCloseTo(3, 6)
})
test('the tape brought all of it: nothing is made twice', () => {
  const { decision, reasons } = narrow(12)
  expect(decision).toBe('nothing')
  expect(reasons.join(' ')).toContain('the tape has said the same since')
})

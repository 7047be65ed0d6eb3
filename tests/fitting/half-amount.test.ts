/** From pins to half pieces, each sum worked by hand. Rules: common practice as noted in the file. */
import { describe, expect, test } from 'vitest'
import type { PinPlace, ReadAs } from '../../src/fitting/complaints/complaint.ts'
import {
  clothOf,
  halfAmount,
  settled,
  STANDARD_RULES,
  type How,
} from '../../src/fitting/half-amount.ts'
import { mm } from '../../src/units/length.ts'

const read = (how: How, value: number, where: PinPlace, readAs: ReadAs): number =>
  halfAmount({ how, value: mm(value), where, side: 'both' }, readAs)

describe('how much cloth', () => {
  test('a fold read to the pin holds twice that', () => {
    expect(clothOf({ how: 'fold', value: mm(8) })).toBe(16)
    expect(clothOf({ how: 'pinch', value: mm(8) })).toBe(8)
    expect(clothOf({ how: 'slit', value: mm(8) })).toBe(8)
  })
})

describe('on the half piece', () => {
  test.each([
    ['upright tuck on the centre, 12 wide: half on each half', 'pinch', 12, 'cf', 'across', 6],
    ['upright tuck on the centre, 6 deep', 'fold', 6, 'cb', 'across', 6],
    ['tuck at the neck of one half, 12 wide: not halved', 'pinch', 12, 'neck', 'across', 12],
    ['the same, 6 deep: 12', 'fold', 6, 'armhole', 'across', 12],
    ['pinch at a side seam, 10 deep: 10 on each edge', 'fold', 10, 'side', 'across', 10],
    ['pinch at a side seam, 20 wide: 10 on each edge', 'pinch', 20, 'seam', 'across', 10],
    ['40 round the body at two side seams: 10 an edge', 'pinch', 40, 'allRound', 'across', 10],
    ['40 round the body into darts and a side: 20 a half', 'pinch', 40, 'allRound', 'half', 20],
    ['level tuck across the centre, 7 deep: 14, not halved', 'fold', 7, 'cb', 'length', 14],
    ['level tuck all round, 9 wide: 9 on front and back', 'pinch', 9, 'allRound', 'length', 9],
    ['slit in a seam open 14: 7 an edge', 'slit', 14, 'side', 'across', 7],
    ['slit at the side, all of it on the front: 14', 'slit', 14, 'side', 'onePiece', 14],
    ['40 short across the whole front: 20 a half', 'slit', 40, 'cf', 'onePiece', 20],
    ['level line 12 off', 'level', 12, 'cf', 'length', 12],
    ['8 from the seam to the new pins, on each piece', 'newLine', 8, 'seam', 'across', 8],
    ['the same past the shoulder', 'newLine', 8, 'shoulder', 'perPiece', 8],
    ['shoulder fold 8 deep: 8 on each piece', 'fold', 8, 'shoulder', 'perPiece', 8],
    ['shoulder gap 14: 7 on each piece', 'slit', 14, 'shoulder', 'perPiece', 7],
  ] as const)('%s', (_, how, value, where, readAs, half) => {
    expect(read(how, value, where, readAs)).toBe(half)
  })
})

describe('what is applied', () => {
  // 87 in a hundred of 20 is 17.4; the most of a round is 15, and 2.4 are watched.
  test('the share of a take-in first, then the most of one round', () => {
    const s = settled(mm(20), 'pinch', 'in', 15)
    expect(s.applied).toBe(15)
    expect(s.eased).toBeCloseTo(2.6, 9)
    expect(s.heldBack).toBeCloseTo(2.4, 9)
    // The other way about, the cap first, would be 13.05.
    expect(settled(mm(12), 'pinch', 'in', 15).applied).toBeCloseTo(10.44, 9)
  })
  test('a let-out is whole, and so is what a level says', () => {
    expect(settled(mm(12), 'slit', 'out', 15).applied).toBe(12)
    expect(settled(mm(12), 'level', 'in', 15).applied).toBe(12)
    expect(settled(mm(22), 'slit', 'out', 15)).toMatchObject({ applied: 15, heldBack: 7 })
  })
  test('under 3 mm nothing; the table may say otherwise', () => {
    expect(settled(mm(2.9), 'slit', 'out', 15).applied).toBe(0)
    expect(settled(mm(3), 'slit', 'out', 15).applied).toBe(3)
    const own = { ...STANDARD_RULES, takeInShare: 0.9, smallest: 1 }
    expect(settled(mm(2), 'fold', 'in', 15, own).applied).toBeCloseTo(1.8, 9)
  })
})

/** From pins to half pieces, each sum worked by hand. Rules: common practice as noted in the file. */
import { describe, expect, test } from 'vitest'
import { clothOf, halfAmount, type Read } from '../../src/fitting/half-amount.ts'
import { mm } from '../../src/units/length.ts'

const read = (how: Read['how'], value: number, place: Read['place'], runs: Read['runs']): number =>
  halfAmount({ how, value: mm(value), place, runs })

describe('how much cloth', () => {
  test('a fold read to the pin holds twice that', () => {
    expect(clothOf({ how: 'fold', value: mm(8) })).toBe(16)
    expect(clothOf({ how: 'pinch', value: mm(8) })).toBe(8)
    expect(clothOf({ how: 'slit', value: mm(8) })).toBe(8)
  })
})

describe('on the half piece', () => {
  test.each([
    ['upright tuck on the centre, 12 wide: half on each half', 'pinch', 12, 'centre', 'upright', 6],
    ['upright tuck on the centre, 6 deep', 'fold', 6, 'centre', 'upright', 6],
    ['upright tuck inside one half, 12 wide: not halved', 'pinch', 12, 'inside', 'upright', 12],
    ['pinch at a side seam, 10 deep: 10 on each edge', 'fold', 10, 'seam', 'upright', 10],
    ['pinch at a side seam, 20 wide: 10 on each edge', 'pinch', 20, 'seam', 'upright', 10],
    ['40 round the body at two side seams: 10 an edge', 'pinch', 40, 'allRound', 'upright', 10],
    ['level tuck across the centre, 7 deep: 14, not halved', 'fold', 7, 'centre', 'level', 14],
    ['level tuck all round, 9 wide: 9 on front and back', 'pinch', 9, 'allRound', 'level', 9],
    ['slit in a seam open 14: 7 an edge', 'slit', 14, 'seam', 'upright', 7],
    ['level line 12 off', 'level', 12, 'centre', 'level', 12],
    ['8 from the seam to the new pins', 'newLine', 8, 'seam', 'upright', 8],
  ] as const)('%s', (_, how, value, place, runs, half) => {
    expect(read(how, value, place, runs)).toBe(half)
  })
})

/**
 * The block drawn for a published size table: US home-sewing body sizes for misses, 6 to 24, in
 * inches (industry standard of the late 1960s, as pattern envelopes print it). What the table does
 * not give, shoulder, neck, armhole, follows the size, and is held to two rules from elsewhere.
 */
import { describe, expect, test } from 'vitest'
import { pieceOf, type Draft } from '../../src/draft/draft.ts'
import { sewnEase } from '../../src/draft/ease.ts'
import { standardFor } from '../../src/draft/garments.ts'
import { draft } from '../../src/draft/make.ts'
import { namedPoint, sewnLength } from '../../src/draft/piece.ts'
import { mm } from '../../src/units/length.ts'
import { bodyOf } from '../bodies.ts'

const inch = (n: number): number => n * 25.4
/** size, high bust, bust, waist, hip, back waist length. */
const MISSES: readonly (readonly [number, number, number, number, number, number])[] = [
  [6, 28.5, 30.5, 23, 32.5, 15.5],
  [8, 29.5, 31.5, 24, 33.5, 15.75],
  [10, 30.5, 32.5, 25, 34.5, 16],
  [12, 32, 34, 26.5, 36, 16.25],
  [14, 34, 36, 28, 38, 16.5],
  [16, 36, 38, 30, 40, 16.75],
  [18, 38, 40, 32, 42, 17],
  [20, 40, 42, 34, 44, 17.25],
  [22, 42, 44, 37, 46, 17.5],
  [24, 44, 46, 39, 48, 17.75],
]
function sized([, highBust, bust, waist, hip, back]: (typeof MISSES)[number]): Draft {
  const person = bodyOf({
    highBustGirth: mm(inch(highBust)),
    bustGirth: mm(inch(bust)),
    waistGirth: mm(inch(waist)),
    hipGirth: mm(inch(hip)),
    napeToWaist: mm(inch(back)),
    waistToHip: inch(8),
    waistToBustLevel: inch(6.5),
    apexSpacing: inch(7),
  })
  return draft('block', person, standardFor('block'))
}

describe.each(MISSES)('misses size %i', (...row) => {
  const [, , bust, , , back] = row
  const d = sized(row)
  const [b, f] = [pieceOf(d, 'back'), pieceOf(d, 'front')]
  const choices = standardFor('block')

  test('back waist length, bust and hip stand on the paper as the table has them', () => {
    expect(namedPoint(b, 'C').y).toBeCloseTo(inch(back), 9)
    expect(namedPoint(b, 'U').x + namedPoint(f, 'U').x).toBeCloseTo(
      inch(bust) / 2 + 2 * choices.easeBust,
      9,
    )
    const at = (level: 'bust' | 'waist' | 'hip') => sewnEase(d).find((e) => e.level === level)
    expect(at('hip')?.ease).toBeCloseTo(4 * choices.easeHip, 6)
    expect(at('waist')?.ease).toBeCloseTo(4 * choices.easeWaist, 6)
  })
  // A textbook of 1902: for regular shoulders the side is half the back length, an inch either way.
  test('the side is half the back length, within the inch of high and low shoulders', () => {
    const side = namedPoint(b, 'C').y - namedPoint(b, 'E').y
    expect(Math.abs(side - inch(back) / 2)).toBeLessThanOrEqual(25.4)
  })
})

// A magazine article on fitting: 4¾ in for sizes 6 to 8, 5¼ for 18 to 20; to its step of ¼ in.
test.each([
  [6, 4.75],
  [8, 4.75],
  [18, 5.25],
  [20, 5.25],
])('size %i: the shoulder is about %d in, as in fitted patterns', (size, long) => {
  const row = MISSES.find(([s]) => s === size)!
  expect(Math.abs(sewnLength(pieceOf(sized(row), 'front'), 'shoulder') - inch(long))).toBeLessThan(
    6.4,
  )
})

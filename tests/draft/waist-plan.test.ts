/**
 * How the waist is taken in, against sums worked out by hand. The limits are common practice and
 * a public draft (one dart holds 32 mm on the back, 44 on the front); 2.6 is 1/(2·tan 11°).
 */
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { lowerTip, openBelow, waistPlan, type Widths } from '../../src/draft/blocks/waist-plan.ts'
import { standardChoices, type Choices } from '../../src/draft/choices.ts'

const LEGS = { back: 165, front: 140 }
const widths = (bust: number, waist: number): Widths => ({
  bust: { back: bust, front: bust },
  waist,
})
const plan = (bust: number, waist: number, choices: Partial<Choices> = {}) =>
  waistPlan(widths(bust, waist), { ...standardChoices(), ...choices }, LEGS)

describe('in order: side, dart, more side, second dart, centre back', () => {
  test('8 mm and less is not shaped, 9 is', () => {
    expect(plan(250, 242).kind).toBe('straight')
    expect(plan(250, 241).kind).toBe('shaped')
  })
  test('a waist wider than the bust runs out to it', () => {
    expect(plan(250, 262)).toMatchObject({ kind: 'wider', side: -12 })
  })
  test('half at the side up to 20, the dart takes the rest', () => {
    // 30: half is 15. 48: half would be 24, the side takes 20, the dart 28.
    expect(plan(250, 220)).toMatchObject({ side: 15, back: { darts: [15], centre: 0 } })
    expect(plan(250, 202)).toMatchObject({
      side: 20,
      back: { darts: [28] },
      front: { darts: [28] },
    })
  })
  test('56: the back dart would be 36; the side takes 24, both darts 32', () => {
    expect(plan(250, 194)).toMatchObject({
      side: 24,
      back: { darts: [32] },
      front: { darts: [32] },
    })
  })
  test('70: the side stops at 25; 45 is over both limits, so two darts each', () => {
    const p = plan(250, 180)
    expect(p.side).toBe(25)
    expect(p.back.darts).toEqual([23.5, 21.5])
    expect(p.front.darts).toEqual([23.5, 21.5])
    expect(p.back.centre).toBe(0)
  })
  test('100: 75 at the back is over two darts of 32, the centre back takes 11', () => {
    // The second back dart stands 20 lower: min(32, 145/2.6 = 55.8) = 32. 75 − 64 = 11.
    expect(plan(250, 150).back).toEqual({ darts: [32, 32], centre: 11, left: 0 })
    // Front: 44 and min(44, 120/2.6 = 46.2) = 44 hold 88; 75 goes into 38.5 and 36.5.
    expect(plan(250, 150).front).toEqual({ darts: [38.5, 36.5], centre: 0, left: 0 })
  })
  test('a short leg holds less: 22° at the tip', () => {
    // 78/2.6 = 30: a front dart of 34 on a leg of 78 would open 2·atan(17/78) = 24.6°.
    const p = waistPlan(widths(250, 196), standardChoices(), { back: 165, front: 78 })
    expect(p.side).toBe(24)
    expect(p.front.darts).toEqual([30])
  })
})

test('on a waist close under the bust the darts hold little and the rest hangs looser', () => {
  // Legs of 48 and 23: 48/2.6 = 18.5 in front, no second dart under 6; 25 at the side leave 45.
  const p = waistPlan(widths(250, 180), standardChoices(), { back: 48, front: 23 })
  expect(p.front.darts).toEqual([23 / 2.6])
  expect(p.front.left).toBeCloseTo(45 - 23 / 2.6, 9)
})

describe('other orders', () => {
  test('a second dart at once leaves the side at its choice', () => {
    expect(plan(250, 194, { surplus: 'twoDarts' })).toMatchObject({
      side: 20,
      back: { darts: [19, 17], centre: 0 },
      front: { darts: [36] },
    })
  })
  test('the centre back before a second dart', () => {
    // 36 at the back: the dart holds 32, the centre takes 4.
    expect(plan(250, 194, { surplus: 'centreBack' }).back).toEqual({
      darts: [32],
      centre: 4,
      left: 0,
    })
  })
  test('dartless hangs from the bust', () => {
    expect(plan(250, 194, { shaping: 'straight' })).toMatchObject({ kind: 'straight', side: 0 })
  })
})

test('whatever the order, side, darts and centre together take the whole surplus', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 9, max: 95 }),
      fc.integer({ min: -15, max: 25 }),
      fc.constantFrom('auto' as const, 'twoDarts' as const, 'centreBack' as const),
      (surplus, share, order) => {
        const bust = { back: 250 - share, front: 250 + share }
        const waist = 250 - surplus
        const p = waistPlan({ bust, waist }, { ...standardChoices(), surplus: order }, LEGS)
        if (p.kind !== 'shaped') return
        for (const half of ['back', 'front'] as const) {
          const { darts, centre, left } = p[half]
          const taken = p.side + centre + left + darts.reduce((a, b) => a + b, 0)
          expect(Math.abs(bust[half] - waist - taken)).toBeLessThanOrEqual(0.5)
          expect(Math.min(p.side, centre, ...darts)).toBeGreaterThanOrEqual(0)
        }
      },
    ),
  )
})

describe('below the waist', () => {
  test('a dart closes where it was chosen, short of the hem, or later for a longer leg', () => {
    expect(lowerTip(28, 140, 220, 200)).toEqual({ down: 140, why: 'chosen' })
    expect(lowerTip(28, 140, 150, 200)).toEqual({ down: 125, why: 'shortOfHem' })
    // 44 × 2.6 = 114.4 is more than the 100 chosen.
    expect(lowerTip(44, 100, 220, 200).down).toBeCloseTo(114.4, 6)
  })
  test('and above the hip, which has no width to spare', () => {
    expect(lowerTip(28, 140, 400, 137)).toEqual({ down: 122, why: 'shortOfHip' })
  })
  test('nearer the hem than its leg allows it runs out open', () => {
    // 32 × 2.6 = 83.2 does not fit into 90 − 25.
    expect(lowerTip(32, 140, 90, 200)).toEqual({ down: 140, why: 'runsOut' })
  })
  test('half way down a dart is half open', () => {
    expect(openBelow({ darts: [28], centre: 0, left: 0 }, 140, 220, 200, 70)).toBeCloseTo(14, 9)
    // A centre seam of 10 is 5 half way to the hip, level at both ends.
    expect(openBelow({ darts: [], centre: 10, left: 0 }, 140, 220, 200, 100)).toBeCloseTo(5, 9)
  })
})

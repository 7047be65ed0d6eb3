/** Vectors worked out by hand calculator from the formulas of our notes; two figures are given. */
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { fullBust, openingAt, turnOf, wedgeTurn } from '../../src/fitting/rotation.ts'
import { toDegrees } from '../../src/units/angle.ts'

const degrees = (turn: ReturnType<typeof turnOf>): number =>
  turn === undefined ? NaN : toDegrees(turn)

describe('a tuck closed about a point', () => {
  test('12 at 150 is 4.585°; it opens 14.40 at 180 and 7.20 at 90', () => {
    const turn = turnOf(12, 150)
    expect(degrees(turn)).toBeCloseTo(4.585, 3)
    expect(openingAt(turn!, 180)).toBeCloseTo(14.4, 2)
    expect(openingAt(turn!, 90)).toBeCloseTo(7.2, 2)
  })
  test.each([
    [3, 1.23],
    [6, 2.46],
    [9, 3.68],
    [12, 4.91],
    [15, 6.14],
    [18, 7.37],
  ])('%i at 140 is %f°', (width, angle) => {
    expect(degrees(turnOf(width, 140))).toBeCloseTo(angle, 2)
  })
  test('wider than twice the reach has no turn', () => {
    expect(turnOf(301, 150)).toBeUndefined()
    expect(turnOf(10, 0)).toBeUndefined()
  })
})

describe('a fuller bust: angle, front length, side dart', () => {
  test.each([
    [10, 70, 110, 110, 5.07, 5.76, 9.74],
    [20, 70, 110, 110, 9.92, 10.42, 19.02],
    [30, 70, 110, 110, 14.61, 14.1, 27.96],
    [12.7, 65, 115, 105, 6.15, 6.3, 11.27],
  ])('%f wider, H %i beside and %i above, %i along', (e, dx, dy, along, angle, length, dart) => {
    const made = fullBust(e, dx, dy, along)
    expect(toDegrees(made!.turn)).toBeCloseTo(angle, 2)
    expect(made!.length).toBeCloseTo(length, 2)
    expect(made!.dart).toBeCloseTo(dart, 2)
  })
  test('nothing wider changes nothing, and a smaller bust takes back what a fuller one gave', () => {
    const none = fullBust(0, 70, 110, 110)
    expect(none!.turn).toBeCloseTo(0, 12)
    expect(none!.length).toBeCloseTo(0, 12)
    fc.assert(
      fc.property(fc.double({ min: 0.5, max: 30, noNaN: true }), (e) => {
        const made = fullBust(e, 70, 110, 110)!
        // The width the turn gives is the width that was asked.
        expect(110 * Math.sin(made.turn) + 70 * (1 - Math.cos(made.turn))).toBeCloseTo(e, 9)
        expect(fullBust(-e, 70, 110, 110)!.dart).toBeLessThan(0)
      }),
    )
  })
  test('a width no turn can give is refused', () => {
    expect(fullBust(400, 70, 110, 110)).toBeUndefined()
  })
})

test('a wedge across the back: 10 over 200 turns 2.87° and jogs the centre by 3 at either end for a lever of 120', () => {
  const made = wedgeTurn(10, 200, 120)
  expect(degrees(made!.turn)).toBeCloseTo(2.865, 3)
  expect(made!.jogEach).toBeCloseTo(3, 9)
})

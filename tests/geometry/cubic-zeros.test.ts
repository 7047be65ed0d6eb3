/** Zeros of cubics made from their own roots, so that the answer is known beforehand: worked out. */
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { cubicZeros } from '../../src/geometry/cubic-zeros.ts'

/** Bernstein coefficients of k(t − p)(t − q)(t − r), by blossoming. */
function bernstein(k: number, p: number, q: number, r: number): [number, number, number, number] {
  const blossom = (x: number, y: number, z: number): number =>
    k *
    (x * y * z -
      ((p + q + r) / 3) * (x * y + y * z + z * x) +
      ((p * q + q * r + r * p) / 3) * (x + y + z) -
      p * q * r)
  return [blossom(0, 0, 0), blossom(0, 0, 1), blossom(0, 1, 1), blossom(1, 1, 1)]
}
/** From −1 to 2 by thousandths, never 0 or 1 itself. */
const root = fc.integer({ min: -1000, max: 1999 }).map((n) => (2 * n + 1) / 2000)

describe('zeros of a cubic', () => {
  test('are the roots it was made from that lie between 0 and 1, ascending', () => {
    fc.assert(
      fc.property(
        root,
        root,
        root,
        fc.double({ min: 50, max: 5000, noNaN: true }),
        (p, q, r, k) => {
          const roots = [p, q, r].sort((a, b) => a - b)
          const apart = [...roots, 0, 1].sort((a, b) => a - b)
          fc.pre(apart.every((x, i) => i === 0 || x - apart[i - 1]! > 1e-3))
          const want = roots.filter((x) => x > 0 && x < 1)
          const got = cubicZeros(...bernstein(k, p, q, r))
          expect(got).toHaveLength(want.length)
          for (const [i, t] of got.entries()) expect(t).toBeCloseTo(want[i]!, 9)
        },
      ),
    )
  })
  test('a touch counts once, and so do the very ends', () => {
    expect(cubicZeros(...bernstein(300, 0.5, 0.5, 3))).toEqual([expect.closeTo(0.5, 6)])
    expect(cubicZeros(...bernstein(300, 0, 0, 3))).toEqual([0])
    expect(cubicZeros(...bernstein(300, -1, 1, 1))).toEqual([expect.closeTo(1, 12)])
    expect(cubicZeros(0, 1, 2, 3)).toEqual([0])
  })
  test('a straight line is a cubic too; one that is nought everywhere has no zeros to tell', () => {
    expect(cubicZeros(-1, 0, 1, 2)).toEqual([expect.closeTo(1 / 3, 12)])
    expect(cubicZeros(0, 0, 0, 0)).toEqual([])
  })
})

/** Checked against complex multiplication done by hand. */
import { expect, test } from 'vitest'
import {
  after,
  carried,
  inverse,
  onto,
  ontoLine,
  scaleBy,
  solved,
  turnBy,
  type Similarity,
} from '../../src/capture/similarity.ts'

// (1 + 2i)(3 - i) + (10 - 4i) = 3 - i + 6i + 2 + 10 - 4i = 15 + i
const KNOWN: Similarity = { a: 1, b: 2, dx: 10, dy: -4 }

test('carries a point as the complex product says', () => {
  expect(carried(KNOWN, { x: 3, y: -1 })).toEqual({ x: 15, y: 1 })
  expect(scaleBy(KNOWN)).toBeCloseTo(Math.sqrt(5), 12)
  expect(turnBy({ a: 0, b: 2, dx: 0, dy: 0 })).toBeCloseTo(Math.PI / 2, 12)
})

test('there and back again is nothing', () => {
  const both = after(inverse(KNOWN), KNOWN)
  expect(both.a).toBeCloseTo(1, 12)
  expect([both.b, both.dx, both.dy].every((v) => Math.abs(v) < 1e-12)).toBe(true)
})

test('two points, or lines enough, give the similarity; one point leaves it open', () => {
  const P = [
    { x: 0, y: 0 },
    { x: 3, y: -1 },
    { x: -2, y: 7 },
  ]
  const found = solved(P.flatMap((p) => onto(p, carried(KNOWN, p), 1)))
  expect(found?.a).toBeCloseTo(1, 9)
  expect(found?.dy).toBeCloseTo(-4, 9)
  const across = [
    { x: 1, y: 0 },
    { x: 0, y: 1 },
    { x: Math.SQRT1_2, y: Math.SQRT1_2 },
    { x: 0.6, y: -0.8 },
  ]
  const lines = [...P, { x: 5, y: 5 }].map((p, k) =>
    ontoLine(p, carried(KNOWN, p), across[k] ?? { x: 1, y: 0 }, 1),
  )
  expect(solved(lines)?.b).toBeCloseTo(2, 6)
  expect(solved(onto({ x: 1, y: 1 }, { x: 2, y: 2 }, 1))).toBeUndefined()
})

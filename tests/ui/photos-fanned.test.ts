/** Rings held against WCAG 2.2, 2.5.8 Target Size (Minimum): 24 by 24 px, none over another. */
import fc from 'fast-check'
import { expect, it } from 'vitest'
import { distance, type Point } from '../../src/geometry/point.ts'
import { fanned } from '../../src/ui/measure/photos/fanned.ts'

/** A photo on a phone of 390 px; the front photo has twelve points at the most. */
const FRAME = { width: 330, height: 420 }
const TARGET = 24
const anywhere = fc.record({
  x: fc.double({ min: -20, max: FRAME.width + 20, noNaN: true }),
  y: fc.double({ min: -20, max: FRAME.height + 20, noNaN: true }),
})
const chebyshev = (a: Point, b: Point) => Math.max(Math.abs(a.x - b.x), Math.abs(a.y - b.y))

it('no ring lies over another or out of the frame, wherever the points lie', () => {
  const points = fc.array(anywhere, { minLength: 2, maxLength: 12 })
  const knot = fc
    .tuple(anywhere, fc.array(anywhere, { minLength: 2, maxLength: 12 }))
    .map(([at, offs]) => offs.map((p) => ({ x: at.x + p.x / 20, y: at.y + p.y / 20 })))
  fc.assert(
    fc.property(fc.oneof(points, knot), (places) => {
      const rings = fanned(places, FRAME)
      for (const [i, a] of rings.entries()) {
        expect(Math.min(a.x, FRAME.width - a.x)).toBeGreaterThanOrEqual(TARGET / 2)
        expect(Math.min(a.y, FRAME.height - a.y)).toBeGreaterThanOrEqual(TARGET / 2)
        for (const b of rings.slice(i + 1)) expect(chebyshev(a, b)).toBeGreaterThanOrEqual(TARGET)
      }
    }),
  )
})

it('a ring with room about it lies on its place', () => {
  const places = [
    { x: 100, y: 100 },
    { x: 126, y: 100 },
    { x: 100, y: 126 },
  ]
  expect(fanned(places, FRAME)).toEqual(places)
})

it('of two that are close either gives way alike, and the nearer ring is that of the nearer place', () => {
  const two = fc.tuple(
    fc.record({ x: fc.integer({ min: 60, max: 270 }), y: fc.integer({ min: 60, max: 360 }) }),
    fc.record({ x: fc.integer({ min: -12, max: 12 }), y: fc.integer({ min: -12, max: 12 }) }),
    anywhere,
  )
  fc.assert(
    fc.property(two, ([a, by, tip]) => {
      fc.pre(by.x !== 0 || by.y !== 0)
      const b = { x: a.x + by.x, y: a.y + by.y }
      const [ringA, ringB] = fanned([a, b], FRAME)
      if (!ringA || !ringB) throw new Error('a ring is missing')
      expect(ringA.x + ringB.x).toBeCloseTo(a.x + b.x)
      expect(ringA.y + ringB.y).toBeCloseTo(a.y + b.y)
      const nearer = distance(tip, a) - distance(tip, b)
      if (Math.abs(nearer) > 1e-6)
        expect(Math.sign(distance(tip, ringA) - distance(tip, ringB))).toBe(Math.sign(nearer))
    }),
  )
})

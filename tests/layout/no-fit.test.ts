import fc from 'fast-check'
import { FillRule, areaPathsD, intersectD, type PointD } from 'clipper2-ts'
import { describe, expect, test } from 'vitest'
import { convexParts, convexSum } from '../../src/layout/convex-parts.ts'
import { noFit, parted } from '../../src/layout/no-fit.ts'
import { NoFitTable } from '../../src/layout/no-fit-table.ts'
import {
  outlineArea,
  outlineOf,
  turnedOutline,
  turnedOver,
  type Outline,
} from '../../src/layout/outline.ts'

const square = (side: number): Outline =>
  outlineOf([
    [0, 0],
    [side, 0],
    [side, side],
    [0, side],
  ])
/** A U open at the top: 4 wide, 3 high, walls and floor 1, so the slot is 2 wide and 2 deep. */
const U = outlineOf([
  [0, 0],
  [4, 0],
  [4, 3],
  [3, 3],
  [3, 1],
  [1, 1],
  [1, 3],
  [0, 3],
])

/** Twice the area enclosed by loose runs, by Green's theorem; holes count against. */
function enclosed(runs: Float64Array): number {
  let twice = 0
  for (let k = 0; k < runs.length; k += 4)
    twice += runs[k]! * runs[k + 3]! - runs[k + 2]! * runs[k + 1]!
  return twice / 2
}
const path = (ring: Outline, dx = 0, dy = 0): PointD[] =>
  Array.from({ length: ring.length / 2 }, (_, i) => ({
    x: ring[2 * i]! + dx,
    y: ring[2 * i + 1]! + dy,
  }))

/** Star-shaped outlines with hollows: a radius for each of so many directions. */
const outlines = fc
  .array(fc.double({ min: 2, max: 20, noNaN: true }), { minLength: 3, maxLength: 12 })
  .map((radii) =>
    outlineOf(
      radii.map((r, i): [number, number] => {
        const a = (2 * Math.PI * i) / radii.length
        return [r * Math.cos(a), r * Math.sin(a)]
      }),
    ),
  )

describe('convex parts', () => {
  test('parts are convex and cover the outline (property)', () => {
    fc.assert(
      fc.property(outlines, (ring) => {
        const parts = convexParts(ring)
        const sum = parts.reduce((s, p) => s + outlineArea(p), 0)
        expect(sum).toBeCloseTo(outlineArea(ring), 6)
        for (const p of parts)
          for (let i = 0; i < p.length; i += 2) {
            const [j, k] = [(i + 2) % p.length, (i + 4) % p.length]
            const turn =
              (p[j]! - p[i]!) * (p[k + 1]! - p[i + 1]!) - (p[j + 1]! - p[i + 1]!) * (p[k]! - p[i]!)
            expect(turn).toBeGreaterThan(-1e-9)
          }
      }),
    )
  })

  test('the sum of two squares is a square as wide as both', () => {
    // Definition of the Minkowski sum: [0, 2]² ⊕ [0, 3]² = [0, 5]².
    expect(outlineArea(convexSum(square(2), square(3)))).toBe(25)
  })
})

describe('no-fit region', () => {
  test('two squares overlap while one is less than a side away', () => {
    // By hand: sides 2 and 3, moves from −3 to 2 either way, 5 × 5.
    const runs = noFit(parted(square(2)), parted(square(3)))
    expect(enclosed(runs)).toBeCloseTo(25, 9)
    expect(Math.min(...runs)).toBe(-3)
    expect(Math.max(...runs)).toBe(2)
  })

  test('a square smaller than the slot fits into it, and its freedom is what is left', () => {
    // By hand: a square of 1.5 in a slot 2 × 2: the whole is 5.5 × 4.5 less 0.5 × (2 − 0 deep + …),
    // the slot leaves moves 0.5 wide from the floor (y = 1) up to where it stands clear (y = 3).
    const runs = noFit(parted(U), parted(square(1.5)))
    expect(enclosed(runs)).toBeCloseTo(5.5 * 4.5 - 0.5 * 2, 9)
  })

  test('a square shut in has a hole in its region', () => {
    // A ring 6 × 6 with walls of 1, cut open by a slit narrower than the square: hole 4 − 3 = 1 wide.
    const ring = outlineOf([
      [0, 0],
      [6, 0],
      [6, 2.9],
      [5, 2.9],
      [5, 1],
      [1, 1],
      [1, 5],
      [5, 5],
      [5, 3.1],
      [6, 3.1],
      [6, 6],
      [0, 6],
    ])
    const runs = noFit(parted(ring), parted(square(3)))
    expect(enclosed(runs)).toBeCloseTo(9 * 9 - 1 * 1, 9)
  })

  test('inside the region exactly where a clipping library finds a common area (property)', () => {
    const place = fc.tuple(
      fc.double({ min: -40, max: 40, noNaN: true }),
      fc.double({ min: -40, max: 40, noNaN: true }),
    )
    fc.assert(
      fc.property(
        outlines,
        outlines,
        fc.array(place, { minLength: 20, maxLength: 20 }),
        (a, b, at) => {
          const table = new NoFitTable([parted(a), parted(b)], 0)
          for (const [dx, dy] of at) {
            const depth = table.depth(0, 1, dx, dy)
            const common = Math.abs(
              areaPathsD(intersectD([path(a)], [path(b, dx, dy)], FillRule.NonZero, 8)),
            )
            // A sliver of the library's grid decides nothing.
            if (common > 1e-6) expect(depth).toBeGreaterThan(0)
            else expect(depth).toBeLessThan(1e-3)
            expect(table.depth(1, 0, -dx, -dy)).toBe(depth)
          }
        },
      ),
      { numRuns: 60 },
    )
  })

  test('moved clear by its depth in some direction, and by less in none (property)', () => {
    fc.assert(
      fc.property(outlines, outlines, (a, b) => {
        const table = new NoFitTable([parted(a), parted(b)], 0)
        const depth = table.depth(0, 1, 0, 0)
        const ways = Array.from({ length: 720 }, (_, k) => (k * Math.PI) / 360)
        const after = (by: number): readonly number[] =>
          ways.map((w) => table.depth(0, 1, by * Math.cos(w), by * Math.sin(w)))
        expect(Math.min(...after(depth * 0.99))).toBeGreaterThan(0)
        // Half a degree beside the best way leaves less than a hundredth of the depth.
        expect(Math.min(...after(depth * 1.001))).toBeLessThan(depth * 0.01)
      }),
      { numRuns: 40 },
    )
  })
})

describe('outlines', () => {
  test('a corner named twice or in line is left out', () => {
    const ring = outlineOf([
      [0, 0],
      [0, 2],
      [1, 2],
      [2, 2],
      [2, 0],
      [0, 0],
    ])
    expect([ring.length, outlineArea(ring)]).toEqual([8, 4])
  })

  test('turning and turning over keep the area and the left hand', () => {
    for (const turned of [turnedOutline(U, 90), turnedOutline(U, 37), turnedOver(U)])
      expect(outlineArea(turned)).toBeCloseTo(outlineArea(U), 9)
  })
})

/**
 * Lengths, splits, crossings and offsets held against bezier-js (a reference library, measured
 * good to 5e-10 mm in length) and against formulas of the circle.
 */
import { Bezier } from 'bezier-js'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { area } from '../../src/geometry/area.ts'
import { bridged } from '../../src/geometry/blend.ts'
import { contains } from '../../src/geometry/contains.ts'
import { intersect } from '../../src/geometry/intersect.ts'
import { pathLength, segmentLength, tAtLength } from '../../src/geometry/length.ts'
import { offset } from '../../src/geometry/offset.ts'
import { flatten, placeAt, pointAtLength, splitPath } from '../../src/geometry/path.ts'
import { distance, dot, point, subtract, type Point } from '../../src/geometry/point.ts'
import { project } from '../../src/geometry/project.ts'
import {
  arc,
  arcBetween,
  at,
  cubic,
  line,
  mirrored,
  part,
  reversed,
  tangent,
  turned,
  type Cubic,
} from '../../src/geometry/segment.ts'
import { selfIntersections } from '../../src/geometry/self-intersection.ts'

const coordinate = fc.double({ min: -400, max: 400, noNaN: true })
const anyPoint = fc.tuple(coordinate, coordinate).map(([x, y]) => point(x, y))
const anyCubic = fc
  .tuple(anyPoint, anyPoint, anyPoint, anyPoint)
  .map(([a, b, c, d]) => cubic(a, b, c, d))
const reference = (c: Cubic): Bezier =>
  new Bezier([c.from, c.c1, c.c2, c.to].map(({ x, y }) => ({ x, y })))

describe('length', () => {
  test('of any cubic agrees with the reference library to 0.01 mm', () => {
    fc.assert(
      fc.property(anyCubic, (c) => {
        // The reference itself is 0.2 mm off at a cusp; chords decide there.
        const [own, chords] = [
          segmentLength(c),
          polyline(Array.from({ length: 4001 }, (_, i) => at(c, i / 4000))),
        ]
        expect(own).toBeGreaterThanOrEqual(chords - 0.001)
        expect(own - chords).toBeLessThan(0.01)
      }),
      { numRuns: 60 },
    )
  })
  // Found by the property above. By hand: legs h, −h and −400 along one line, so
  // x′/3 = h(1 − t)² − 2h(1 − t)t − 400t², and the run turns where that is nothing.
  test('of a run that turns beside its end and comes back on itself', () => {
    const h = 0.13112037698901285
    const c = cubic(point(0, 0), point(h, 0), point(0, 0), point(-400, 0))
    const turn = (2 * h - Math.sqrt(4 * h * h - (3 * h - 400) * h)) / (3 * h - 400)
    const highest = at(c, turn).x
    expect(highest).toBeGreaterThan(0)
    expect(segmentLength(c)).toBeCloseTo(400 + 2 * highest, 6)
  })
  test('of a gentle curve agrees with the reference library to a millionth', () => {
    const c = cubic(point(0, 0), point(60, 5), point(100, 40), point(100, 110))
    expect(segmentLength(c)).toBeCloseTo(reference(c).length(), 4)
  })
  test('of a quarter circle of radius 180 is 90π', () => {
    expect(segmentLength(arc(point(3, 4), 180, 0, Math.PI / 2))).toBeCloseTo(90 * Math.PI, 9)
  })
  test('of a curve without numbers is our own mistake and says so', () => {
    const broken = cubic(point(0, 0), point(NaN, 5), point(100, 40), point(100, 110))
    expect(() => segmentLength(broken)).toThrow('a cubic without numbers')
  })
  test('half way along a cubic leaves half its length on either side', () => {
    fc.assert(
      fc.property(anyCubic, (c) => {
        const whole = segmentLength(c)
        const t = tAtLength(c, whole / 2)
        expect(segmentLength(c, 0, t)).toBeCloseTo(segmentLength(c, t, 1), 1)
      }),
      {
        numRuns: 40,
        // Found once: a curve that doubles back, on which two halves agreed with the whole by chance.
        examples: [[cubic(point(0, 0), point(155.95105431995975, 0), point(0, 0), point(0, 0))]],
      },
    )
  })
})

describe('cutting and turning', () => {
  test('the parts of a cubic are those of the reference library', () => {
    fc.assert(
      fc.property(anyCubic, fc.double({ min: 0.05, max: 0.95, noNaN: true }), (c, t) => {
        const theirs = reference(c).split(t).left.points
        const ours = part(c, 0, t) as Cubic
        for (const [i, p] of [ours.from, ours.c1, ours.c2, ours.to].entries())
          expect(distance(p, theirs[i] as Point)).toBeLessThan(1e-6)
      }),
    )
  })
  test('a turn and a mirror keep lengths; turning back and forth is nothing', () => {
    fc.assert(
      fc.property(
        anyCubic,
        anyPoint,
        fc.double({ min: -3, max: 3, noNaN: true }),
        (c, pivot, angle) => {
          expect(segmentLength(turned(c, pivot, angle))).toBeCloseTo(segmentLength(c), 3)
          expect(segmentLength(mirrored(c))).toBeCloseTo(segmentLength(c), 3)
          expect(
            distance(at(turned(turned(c, pivot, angle), pivot, -angle), 0.3), at(c, 0.3)),
          ).toBeLessThan(1e-6)
          expect(distance(at(reversed(c), 0.3), at(c, 0.7))).toBeLessThan(1e-9)
        },
      ),
    )
  })
  test('splitting a path at a length gives that length', () => {
    const path = [
      line(point(0, 0), point(100, 0)),
      arcBetween(point(100, 50), point(100, 0), point(150, 50)),
      line(point(150, 50), point(150, 200)),
    ]
    const [a, b] = splitPath(path, placeAt(path, 130))
    expect(pathLength(a)).toBeCloseTo(130, 6)
    expect(pathLength(a) + pathLength(b)).toBeCloseTo(pathLength(path), 6)
    expect(distance(pointAtLength(path, 130), at(b[0]!, 0))).toBeLessThan(1e-6)
  })
})

describe('crossings and nearest places', () => {
  test('a line through a circle meets it where Pythagoras says', () => {
    // 30 from the centre of a circle of 50: half chord 40.
    const hits = intersect(
      line(point(-100, 30), point(100, 30)),
      arc(point(0, 0), 50, 0, 2 * Math.PI),
    )
    expect(hits.map((h) => Math.round(h.at.x * 1e6) / 1e6).sort((a, b) => a - b)).toEqual([-40, 40])
  })
  test('two circles of 50, centres 60 apart, meet 40 off the line of centres', () => {
    const hits = intersect(
      arc(point(0, 0), 50, 0, 2 * Math.PI),
      arc(point(60, 0), 50, 0, 2 * Math.PI),
    )
    expect(hits.map((h) => h.at.y).sort((a, b) => a - b)).toEqual([
      expect.closeTo(-40, 6),
      expect.closeTo(40, 6),
    ])
  })
  test('cubics meet lines where the reference library says', () => {
    fc.assert(
      fc.property(anyCubic, anyPoint, anyPoint, (c, p, q) => {
        fc.pre(distance(p, q) > 1)
        for (const h of intersect(c, line(p, q))) {
          expect(distance(at(c, h.t), h.at)).toBeLessThan(1e-6)
          expect(project([line(p, q)], h.at).distance).toBeLessThan(1e-6)
        }
        const theirs = (reference(c).intersects({ p1: p, p2: q }) as number[]).filter(
          (t) => t > 0.01 && t < 0.99,
        )
        for (const t of theirs) {
          const spot = at(c, t)
          const along = project([line(p, q)], spot)
          if (along.place.t < 0.01 || along.place.t > 0.99 || along.distance > 1e-4) continue
          expect(intersect(c, line(p, q)).some((h) => distance(h.at, spot) < 0.01)).toBe(true)
        }
      }),
      { numRuns: 150 },
    )
  })
  test('the way from the nearest place on a cubic stands square on it', () => {
    const c = cubic(point(0, 0), point(60, 5), point(100, 40), point(100, 110))
    for (const p of [point(40, 60), point(80, -10), point(104, 70), point(55, 30)]) {
      const { place, at: foot } = project([c], p)
      expect(place.t).toBeGreaterThan(0)
      expect(place.t).toBeLessThan(1)
      expect(dot(subtract(p, foot), tangent(c, place.t))).toBeCloseTo(0, 8)
    }
  })
  test('the nearest place on a cubic is no farther than any of a thousand samples', () => {
    fc.assert(
      fc.property(anyCubic, anyPoint, (c, p) => {
        const best = Math.min(
          ...Array.from({ length: 1001 }, (_, i) => distance(at(c, i / 1000), p)),
        )
        expect(project([c], p).distance).toBeLessThanOrEqual(best + 1e-6)
      }),
      { numRuns: 80 },
    )
  })
  // Three control points in one: nothing leads on from there. Found by the property above.
  test.each([
    [cubic(point(0, 0), point(0, 0), point(0, 0), point(0.03, 0)), point(0.000001, 0)],
    [
      cubic(point(0, -4.981621621621636), point(0, 0), point(0, 0), point(0, -4.57e-321)),
      point(0, -0.00018018018018018018),
    ],
  ])('a place on a cubic of shrunken handles is found on it', (c, p) => {
    expect(project([c], p).distance).toBeLessThan(1e-12)
  })
})

describe('areas, offsets, outlines', () => {
  test('a circle of arcs has πr²; a square run clockwise on the page is positive', () => {
    expect(
      area([arc(point(10, 20), 30, 0, Math.PI), arc(point(10, 20), 30, Math.PI, Math.PI)]),
    ).toBeCloseTo(Math.PI * 900, 6)
    const corners = [point(0, 0), point(10, 0), point(10, 10), point(0, 10)]
    expect(area(corners.map((p, i) => line(p, corners[(i + 1) % 4]!)))).toBe(100)
  })
  test('the area under any cubic loop is that of its chords', () => {
    fc.assert(
      fc.property(anyCubic, (c) => {
        const ring = [...flatten([c], 0.001)]
        const chords = ring.map((p, i) => line(p, ring[(i + 1) % ring.length]!))
        expect(area([c, line(c.to, c.from)])).toBeCloseTo(area(chords), 0)
      }),
      { numRuns: 40 },
    )
  })
  test('an offset lies at its distance everywhere, on the left of travel', () => {
    const c = cubic(point(0, 0), point(60, 5), point(100, 40), point(100, 110))
    for (const by of [10, 25, -20])
      for (const s of offset(c, by))
        for (const t of [0, 0.3, 0.5, 0.8, 1])
          expect(project([c], at(s, t)).distance).toBeCloseTo(Math.abs(by), 2)
    expect(at(offset(line(point(0, 0), point(10, 0)), 5)[0]!, 0).y).toBe(-5)
  })
  test('a figure of eight crosses itself once; a square does not', () => {
    const ring = (list: Point[]) => list.map((p, i) => line(p, list[(i + 1) % list.length]!))
    expect(
      selfIntersections(ring([point(0, 0), point(10, 10), point(10, 0), point(0, 10)])),
    ).toHaveLength(1)
    expect(
      selfIntersections(ring([point(0, 0), point(10, 0), point(10, 10), point(0, 10)])),
    ).toEqual([])
  })
  test('inside and outside of a ring', () => {
    const ring = [point(0, 0), point(10, 0), point(10, 10), point(0, 10)]
    expect([
      contains(ring, point(5, 5)),
      contains(ring, point(15, 5)),
      contains(ring, point(10, 5)),
    ]).toEqual([true, false, true])
  })
  test('a bridge leaves and arrives in the direction of what stays', () => {
    const path = bridged(
      [line(point(0, 0), point(100, 0))],
      [line(point(101, 3), point(200, 20))],
      30,
    )
    expect(path).toHaveLength(3)
    expect(distance(tangent(path[1]!, 0), tangent(path[0]!, 1))).toBeLessThan(1e-9)
    expect(distance(tangent(path[1]!, 1), tangent(path[2]!, 0))).toBeLessThan(1e-9)
  })
})

const polyline = (points: readonly Point[]): number =>
  points.slice(1).reduce((sum, p, i) => sum + distance(points[i]!, p), 0)

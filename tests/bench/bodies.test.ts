/** What the draft bench rests on: its chance, its draws, its fits and its ruler. */
import { describe, expect, test } from 'vitest'
import { normal, whole } from '../../scripts/bench/bodies/chance.ts'
import { girthBetween } from '../../scripts/bench/bodies/derive.ts'
import {
  legs,
  sewnLength,
  sewnWidth,
  shapeOf,
  tipAngles,
} from '../../scripts/bench/bodies/measured.ts'
import { covarianceOf, filled, fit, meanOf } from '../../scripts/bench/bodies/regression.ts'
import { drawOn, expectedOn, MIDDLE } from '../../scripts/bench/bodies/tape-model-draw.ts'
import type { Piece } from '../../src/draft/piece.ts'
import { point } from '../../src/geometry/point.ts'
import { line } from '../../src/geometry/segment.ts'
import { covariance, TAPE_VARIABLES } from '../../src/measurements/tape-model.ts'

describe('chance', () => {
  test('gives the numbers printed for Marsaglia’s xorshift32', () => {
    // Seed and first outputs as widely printed for (13, 17, 5); from memory.
    const next = whole(2463534242)
    expect([next(), next(), next()]).toEqual([723471715, 2497366906, 2064144800])
  })

  test('is normal: 95.0 % within 1.96 and 99.7 % within 3', () => {
    // Any table of the normal distribution. Bounds: four standard errors of a share of 40,000.
    const draw = normal(7)
    const values = Array.from({ length: 40_000 }, draw)
    const within = (z: number): number => values.filter((v) => Math.abs(v) <= z).length / 40_000
    expect(Math.abs(within(1.959964) - 0.95)).toBeLessThan(0.0044)
    expect(Math.abs(within(3) - 0.9973)).toBeLessThan(0.001)
    expect(Math.abs(values.reduce((a, b) => a + b, 0) / 40_000)).toBeLessThan(0.02)
  })
})

describe('draws from the tape model', () => {
  const bust = TAPE_VARIABLES.findIndex(({ name }) => name === 'bust')
  const hip = TAPE_VARIABLES.findIndex(({ name }) => name === 'hip')

  test('with the bust drawn too, give back every mean and covariance of the two surveys', () => {
    // The published tables themselves: ANSUR 1988 and the 7th Korean body survey, pooled.
    const n = 20_000
    const draw = normal(11)
    const sd = Math.sqrt(covariance(bust, bust))
    const rows = Array.from({ length: n }, () => drawOn((MIDDLE[bust] ?? NaN) + sd * draw(), draw))
    const seen = covarianceOf(rows, rows)
    const means = meanOf(rows)
    for (const [i] of TAPE_VARIABLES.entries()) {
      const si = Math.sqrt(covariance(i, i))
      expect(Math.abs((means[i] ?? NaN) - (MIDDLE[i] ?? NaN)) / si).toBeLessThan(5 / Math.sqrt(n))
      for (const [j] of TAPE_VARIABLES.entries()) {
        const scale = si * Math.sqrt(covariance(j, j))
        // A sample correlation strays by at most 1/√n, a variance by √(2/n); five of them.
        expect(Math.abs((seen[i]?.[j] ?? NaN) - covariance(i, j)) / scale).toBeLessThan(
          5 * Math.sqrt(2 / n),
        )
      }
    }
  })

  test('keep the bust that was given and follow it by the textbook line', () => {
    // Conditional normal distribution: mean + (cov/var) × difference, variance less cov²/var.
    const draw = normal(13)
    const rows = Array.from({ length: 8000 }, () => drawOn(1250, draw))
    expect(rows.every((r) => Math.abs((r[bust] ?? NaN) - 1250) < 1e-9)).toBe(true)
    const line = 948.6 + (2899.43 / 5463.26) * (1250 - 889.1)
    const spread = Math.sqrt(3384.08 - 2899.43 ** 2 / 5463.26)
    const hips = rows.map((r) => [r[hip] ?? NaN])
    expect(expectedOn(1250)[hip]).toBeCloseTo(line, 1)
    expect(Math.abs((meanOf(hips)[0] ?? NaN) - line)).toBeLessThan((5 * spread) / Math.sqrt(8000))
    expect(Math.sqrt(covarianceOf(hips, hips)[0]?.[0] ?? NaN) / spread).toBeCloseTo(1, 1)
  })
})

test('a fit of Anscombe’s first set is y = 3.00 + 0.500 x', () => {
  // Anscombe, "Graphs in Statistical Analysis", American Statistician 27 (1973) 17–21:
  // slope 0.500, intercept 3.00, residual sum of squares 13.75.
  const x = [10, 8, 13, 9, 11, 14, 6, 4, 12, 7, 5]
  const y = [8.04, 6.95, 7.58, 8.81, 8.33, 9.96, 7.24, 4.26, 10.84, 4.82, 5.68]
  const own = fit(
    x.map((v) => [v]),
    y.map((v) => [v]),
  )
  expect(own.slopes[0]?.[0]).toBeCloseTo(0.5, 3)
  expect(filled(own, [0 - (own.from[0] ?? NaN)], () => 0)[0]).toBeCloseTo(3, 2)
  expect(10 * (own.scatter[0]?.[0] ?? NaN) ** 2).toBeCloseTo(13.76, 1)
})

test('a girth between two levels lies straight between them', () => {
  // Plain arithmetic: 700 at the waist, 760 at 60 below, 960 at 160 below.
  const levels = [
    [0, 700],
    [60, 760],
    [160, 960],
  ] as const
  expect([0, 30, 60, 110, 160].map((d) => girthBetween(levels, d))).toEqual([
    700, 730, 760, 860, 960,
  ])
})

describe('the ruler on a drawn piece', () => {
  // A trapezium 200 wide at the top and 260 at the foot, 300 high, one dart 40 wide at 150.
  const at = [point(0, 0), point(200, 0), point(260, 300), point(0, 300)] as const
  const names = ['neck', 'side', 'hem', 'centre'] as const
  const piece = (more: Partial<Piece> = {}): Piece => ({
    id: 'front',
    words: '',
    cut: { count: 1, how: 'onFold' },
    edges: names.map((name, i) => ({
      name,
      role: 'seam',
      path: [line(at[i] ?? at[0], at[(i + 1) % 4] ?? at[0])],
    })),
    darts: [
      {
        name: 'waistDart',
        upperTip: point(100, 50),
        inner: point(80, 150),
        outer: point(120, 150),
        lowerTip: point(100, 250),
      },
    ],
    edgeDarts: [],
    inner: [],
    points: {},
    levels: [],
    grain: { from: point(0, 0), to: point(0, 1) },
    ...more,
  })

  test('takes the dart out of the width, less of it towards its tips', () => {
    // Plain arithmetic: 200 + 60 y/300, less 40 at 150, 20 half way to a tip, 0 beyond.
    const shape = shapeOf(piece())
    const widths = [25, 100, 150, 200, 275].map((y) => sewnWidth(shape, y))
    for (const [i, want] of [205, 200, 190, 220, 255].entries())
      expect(widths[i]).toBeCloseTo(want, 2)
  })

  test('in the mouth of a side dart takes the narrower end, and waist darts at the level itself', () => {
    // The side is at 220 and 226 at the two ends; at 110 the waist dart is 40 × 60/100 = 24 wide.
    const [upper, lower] = [point(220, 100), point(226, 130)]
    const edgeDarts: Piece['edgeDarts'] = [
      { name: 'bustDart', edge: 'side', upper, lower, tip: point(150, 115) },
    ]
    expect(sewnWidth(shapeOf(piece({ edgeDarts })), 110)).toBeCloseTo(220 - 24, 2)
  })

  test('takes nothing off below the hem end of a dart that runs out open', () => {
    // Legs cut off at 300, where 40 × 100/200 = 20 is still open; half way between it is 30.
    const dart = {
      name: 'waistDart' as const,
      upperTip: point(100, 50),
      inner: point(80, 200),
      outer: point(120, 200),
      lowerTip: point(100, 400),
      open: { inner: point(90, 300), outer: point(110, 300) },
    }
    expect(sewnWidth(shapeOf(piece({ darts: [dart] })), 250)).toBeCloseTo(200 + 50 - 30, 2)
    expect(tipAngles(dart)).toHaveLength(1)
  })

  test('reads legs and angles of a dart', () => {
    // √(100² + 20²) = 101.98; twice the angle whose tangent is 20/100 = 22.62°.
    const dart = piece().darts[0]
    for (const pair of legs(piece())) for (const leg of pair) expect(leg).toBeCloseTo(101.98, 2)
    expect(dart ? tipAngles(dart) : []).toEqual([
      expect.closeTo(22.62, 2),
      expect.closeTo(22.62, 2),
    ])
  })

  test('leaves out of a seam what a dart on it takes up', () => {
    // The side is √(60² + 300²) = 305.94 long; a dart from 100 to 130 down takes a tenth of it.
    const side = [point(220, 100), point(226, 130)] as const
    const edgeDarts: Piece['edgeDarts'] = [
      { name: 'bustDart', edge: 'side', upper: side[0], lower: side[1], tip: point(120, 115) },
    ]
    expect(sewnLength(piece(), 'side')).toBeCloseTo(305.94, 2)
    expect(sewnLength(piece({ edgeDarts }), 'side')).toBeCloseTo(305.94 * 0.9, 2)
  })
})

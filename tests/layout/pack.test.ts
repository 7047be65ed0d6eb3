import { describe, expect, test } from 'vitest'
import { outlineOf, turnedOutline, type Outline } from '../../src/layout/outline.ts'
import { pack } from '../../src/layout/pack.ts'
import { isSound, overlap } from '../../src/layout/sound.ts'
import type { Layout, Pose, Strip, StripPiece } from '../../src/layout/strip.ts'
import { areaOffCloth, commonArea } from './common-area.ts'

const rectangle = (long: number, wide: number): Outline =>
  outlineOf([
    [0, 0],
    [long, 0],
    [long, wide],
    [0, wide],
  ])
const both = (outline: Outline): readonly Pose[] => [
  { outline },
  { outline: turnedOutline(outline, 180) },
]
const cut = (id: string, times: number, poses: readonly Pose[]): StripPiece[] =>
  Array.from({ length: times }, (_, k) => ({ id: `${id}${k}`, poses }))

function packed(strip: Strip, tries: number, seed = 1): Layout {
  const layout = pack(strip, { seed, spent: (done) => done / tries })
  expect(commonArea(strip, layout)).toBe(0)
  expect(areaOffCloth(strip, layout)).toBeLessThan(1e-6)
  return layout
}

/** Two triangles make a square, two L a rectangle: nothing is wasted when they are paired. */
const TRIANGLE = outlineOf([
  [0, 0],
  [10, 0],
  [0, 10],
])
const L = outlineOf([
  [0, 0],
  [10, 0],
  [10, 4],
  [4, 4],
  [4, 10],
  [0, 10],
])

describe('packing', () => {
  test('rectangles that fill the strip are laid without waste', () => {
    // By hand: 4 of 10 × 5 two abreast on a strip 10.01 wide, 20 long.
    const strip = { width: 10.01, gap: 0, pieces: cut('r', 4, [{ outline: rectangle(10, 5) }]) }
    expect(packed(strip, 20_000).length).toBeCloseTo(20, 3)
  })

  test('triangles find their partners', () => {
    // By hand: 8 triangles of 50 on a strip 20.01 wide make 4 squares, 20 long.
    const strip = { width: 20.01, gap: 0, pieces: cut('t', 8, both(TRIANGLE)) }
    expect(packed(strip, 400_000).length).toBeLessThan(20.05)
  })

  test('hollow pieces interlock', () => {
    // By hand: 2 L of 64 turned into each other fill 10 × 14; bare extents would need 20.
    const strip = { width: 14.01, gap: 0, pieces: cut('l', 2, both(L)) }
    expect(packed(strip, 50_000).length).toBeLessThan(10.05)
  })

  test('the same seed gives the same layout, another seed may not', () => {
    const strip = {
      width: 25,
      gap: 0,
      pieces: [...cut('t', 7, both(TRIANGLE)), ...cut('l', 5, both(L))],
    }
    const first = packed(strip, 30_000, 7)
    expect(packed(strip, 30_000, 7)).toEqual(first)
    expect(packed(strip, 30_000, 8)).not.toEqual(first)
  })

  test('each layout told is sound and shorter than the one before; the first comes at once', () => {
    const strip = {
      width: 25,
      gap: 0,
      pieces: [...cut('t', 7, both(TRIANGLE)), ...cut('l', 5, both(L))],
    }
    const told: Layout[] = []
    const counts: number[] = []
    pack(strip, {
      seed: 3,
      spent: (done) => done / 60_000,
      onBetter: (l, tries) => {
        told.push(l)
        counts.push(tries)
      },
    })
    expect(counts[0]).toBe(0)
    expect(told.length).toBeGreaterThan(2)
    for (const [i, l] of told.entries()) {
      expect(isSound(strip, l)).toBe(true)
      expect(commonArea(strip, l)).toBe(0)
      if (i > 0) expect(l.length).toBeLessThan(told[i - 1]!.length)
    }
  })

  test('stopped at once it still gives the first layout', () => {
    const strip = { width: 25, gap: 0, pieces: cut('l', 5, both(L)) }
    const layout = pack(strip, { seed: 1, spent: () => 1 })
    expect(isSound(strip, layout)).toBe(true)
  })

  test('pieces keep the gap', () => {
    // By hand: 4 of 10 × 5, two abreast with 1 between and none at the edges: 2 × 10 + 1.
    const strip = { width: 11.01, gap: 1, pieces: cut('r', 4, [{ outline: rectangle(10, 5) }]) }
    expect(packed(strip, 20_000).length).toBeCloseTo(21, 3)
  })

  test('bands and lattices are kept', () => {
    const outline = rectangle(7, 5)
    const strip: Strip = {
      width: 30,
      gap: 0,
      pieces: [
        { id: 'fold', poses: [{ outline, low: 0, high: 0 }] },
        { id: 'fold2', poses: [{ outline, low: 0, high: 0 }] },
        ...cut('m', 6, [{ outline, along: { first: 2, step: 10 }, across: { first: 1, step: 6 } }]),
      ],
    }
    const { placed } = packed(strip, 30_000)
    for (const p of placed.slice(0, 2)) expect(p.y).toBeCloseTo(0, 9)
    for (const p of placed.slice(2)) {
      expect(((p.x - 2) / 10) % 1).toBeCloseTo(0, 9)
      expect(((p.y - 1) / 6) % 1).toBeCloseTo(0, 9)
    }
  })

  test('a piece wider than the cloth is our own mistake', () => {
    const strip = { width: 4, gap: 0, pieces: cut('r', 1, [{ outline: rectangle(10, 5) }]) }
    expect(() => pack(strip, { seed: 1, spent: () => 1 })).toThrow(/r0 is wider than the cloth/)
  })
})

describe('soundness by the second road', () => {
  test.each([
    ['apart', 5.1, 0, false],
    ['corner in', 4.9, 4.9, true],
    ['edge on edge', 5, 0, true],
    ['one within the other', 1, 1, true],
    ['crossing without a corner inside', 2, -2, true],
  ])('%s', (_, dx, dy, expected) => {
    const other =
      _ === 'one within the other'
        ? rectangle(1, 1)
        : _.startsWith('crossing')
          ? rectangle(1, 9)
          : rectangle(5, 5)
    const moved = other.map((v, i) => v + (i % 2 === 0 ? dx : dy))
    expect(overlap(rectangle(5, 5), moved)).toBe(expected)
  })
})

import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { PAPERS } from '../../src/output/paper.ts'
import type { TileInput } from '../../src/output/tile-raster.ts'
import { planTiles, tileName, trimOf } from '../../src/output/tiles.ts'

const square = (name: string, width: number, height: number): TileInput => ({
  name,
  ring: [
    { x: 0, y: 0 },
    { x: width, y: 0 },
    { x: width, y: height },
    { x: 0, y: height },
  ],
})

describe('the count of sheets', () => {
  // By hand: A4 inside a 10 mm margin and a 12 mm strip is 190 × 265 upright and 277 × 178 lying
  // across; a line is a millimetre wide either side, and a piece may lie either way round.
  test.each([
    [100, 100, 1],
    [188, 263, 1],
    [263, 188, 1],
    [190, 263, 2],
    [275, 176, 1],
    [378, 528, 4],
    [382, 528, 6],
    [550, 300, 4],
    [900, 20, 4],
  ])('a cloth of %d × %d takes %d sheets of A4', (width, height, sheets) => {
    expect(planTiles([square('a', width, height)], PAPERS.a4).tiles).toHaveLength(sheets)
  })
  test('two small pieces share a sheet', () => {
    expect(planTiles([square('a', 80, 80), square('b', 80, 80)], PAPERS.a4).tiles).toHaveLength(1)
  })
  test('a piece is turned where that saves sheets', () => {
    const plan = planTiles([square('a', 250, 150)], PAPERS.a4)
    expect(plan.tiles).toHaveLength(1)
    expect(plan.placed[0]?.turn).toBe(1)
  })
  test('a sheet on which no cloth lies is left out', () => {
    const corner: TileInput = {
      name: 'corner',
      ring: [
        { x: 0, y: 0 },
        { x: 360, y: 0 },
        { x: 360, y: 60 },
        { x: 60, y: 60 },
        { x: 60, y: 500 },
        { x: 0, y: 500 },
      ],
    }
    const plan = planTiles([corner], PAPERS.a4)
    expect(plan.rows * plan.columns).toBe(4)
    expect(plan.tiles).toHaveLength(3)
  })
})

test('rows are lettered and columns numbered, past Z too', () => {
  expect([tileName(0, 0), tileName(1, 2), tileName(25, 0), tileName(26, 0)]).toEqual([
    'A1',
    'B3',
    'Z1',
    'AA1',
  ])
})

test('every part of every piece lies on a kept sheet, and pieces lie apart', () => {
  const side = fc.integer({ min: 20, max: 900 })
  fc.assert(
    fc.property(side, side, side, side, (w1, h1, w2, h2) => {
      const plan = planTiles([square('a', w1, h1), square('b', w2, h2)], PAPERS.letter)
      const boxes = plan.placed.map(({ ring }) => ({
        left: Math.min(...ring.map((p) => p.x)),
        right: Math.max(...ring.map((p) => p.x)),
        top: Math.min(...ring.map((p) => p.y)),
        bottom: Math.max(...ring.map((p) => p.y)),
      }))
      for (const b of boxes)
        for (let u = 0; u <= 1; u += 0.1)
          for (let v = 0; v <= 1; v += 0.1) {
            const [x, y] = [b.left + (b.right - b.left) * u, b.top + (b.bottom - b.top) * v]
            expect(
              plan.tiles.some(
                ({ box }) =>
                  x >= box.left - 1e-6 &&
                  x <= box.right + 1e-6 &&
                  y >= box.top - 1e-6 &&
                  y <= box.bottom + 1e-6,
              ),
            ).toBe(true)
          }
      const [a, b] = boxes
      if (!a || !b) throw new Error('two pieces were given')
      expect(a.right < b.left || b.right < a.left || a.bottom < b.top || b.bottom < a.top).toBe(
        true,
      )
    }),
    { numRuns: 12 },
  )
})

test('a joint is between neighbours, each joint once', () => {
  const { tiles, joints } = planTiles([square('a', 500, 700)], PAPERS.a4)
  const by = new Map(tiles.map((t) => [t.name, t]))
  expect(new Set(joints.map((j) => `${j.first}-${j.second}`)).size).toBe(joints.length)
  for (const j of joints) {
    const [a, b] = [by.get(j.first), by.get(j.second)]
    if (!a || !b) throw new Error(`joint ${j.number} names a sheet that is not there`)
    const step = [b.row - a.row, b.column - a.column]
    expect(step).toEqual(j.side === 'right' ? [0, 1] : [1, 0])
  }
})

test('a margin that leaves no paper is our own mistake', () => {
  expect(() => trimOf(PAPERS.a4, 110)).toThrow('110')
})

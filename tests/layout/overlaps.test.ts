import { expect, test } from 'vitest'
import { allowedX, allowedY, boardOf, put } from '../../src/layout/board.ts'
import { outlineOf } from '../../src/layout/outline.ts'
import { Overlaps } from '../../src/layout/overlaps.ts'
import { PlaceSearch } from '../../src/layout/place-search.ts'
import { seeded } from '../../src/layout/seeded.ts'

const SQUARE = outlineOf([
  [0, 0],
  [6, 0],
  [6, 6],
  [0, 6],
])

test('a conflict that cannot be solved weighs more and more, but never without end', () => {
  // Two squares of 6 on a strip 6.5 wide need 12; on 8 they overlap however they lie.
  const strip = {
    width: 6.5,
    gap: 0,
    pieces: ['a', 'b'].map((id) => ({ id, poses: [{ outline: SQUARE }] })),
  }
  const board = boardOf(strip)
  board.length = 8
  for (let i = 0; i < board.count; i++) {
    const s = board.stance[i]!
    put(board, i, s, allowedX(board, s, 3 + 2 * i), allowedY(board, s, 3))
  }
  const overlaps = new Overlaps(board)
  const search = new PlaceSearch(overlaps, seeded(1))
  overlaps.measureAll()
  const own = board.stance[0]!
  const weight = (): number => overlaps.weighted(0, own, board.x[0]!, board.y[0]!, Infinity)
  const before = weight()
  for (let k = 0; k < 3000; k++) overlaps.weigh()
  expect(weight()).toBeGreaterThan(1e6 * before)
  expect(weight()).toBeLessThan(Infinity)
  search.improve(0)
  search.improve(1)
  expect([...board.stance].every((s, i) => board.stances[i]!.includes(s))).toBe(true)
})

/** Laying one drawing over another: plane geometry, checked against distances worked by hand. */
import { expect, test } from 'vitest'
import { standardChoices } from '../../src/draft/choices.ts'
import { pieceOf } from '../../src/draft/draft.ts'
import { draft } from '../../src/draft/make.ts'
import { edge, namedPoint } from '../../src/draft/piece.ts'
import { distance, point } from '../../src/geometry/point.ts'
import { pathLength } from '../../src/geometry/length.ts'
import { pathStart } from '../../src/geometry/path.ts'
import { layOver, movedPoints, sharedAnchors } from '../../src/rounds/lay-over.ts'
import { mm } from '../../src/units/length.ts'
import { body } from '../bodies.ts'

const front = (added: number, over = {}) =>
  pieceOf(draft('blouse', body(over), { ...standardChoices(), lengthAdded: mm(added) }), 'front')

// Slash and spread across the body moves everything below the slash by the amount let out.
test('laid over on the waist, 15 mm let out above it show at the neck and not at the hem', () => {
  const [before, after] = [front(0), front(15)]
  const over = layOver(before, after, 'waistFold')
  expect(distance(namedPoint(over, 'C'), namedPoint(after, 'C'))).toBe(0)
  expect(namedPoint(over, 'S').y - namedPoint(after, 'S').y).toBeCloseTo(15, 9)
  expect(pathStart(edge(over, 'hem').path).y).toBeCloseTo(pathStart(edge(after, 'hem').path).y, 9)
})

test('laid over on the side neck the same change shows at the hem', () => {
  const over = layOver(front(0), front(15), 'sideNeck')
  expect(namedPoint(front(15), 'C').y - namedPoint(over, 'C').y).toBeCloseTo(15, 9)
})

// The same 15 mm: pinned on the waist what lies above is 15 mm higher, what lies below stays.
test('points that moved are told by how far, as she would measure from the pin', () => {
  const [before, after] = [front(0), front(15)]
  const moved = movedPoints(layOver(before, after, 'waistFold'), after)
  const neck = moved.find((m) => m.name === 'S')
  expect([neck?.across, neck?.down, neck?.far]).toEqual([
    0,
    expect.closeTo(-15, 9),
    expect.closeTo(15, 9),
  ])
  expect(moved.some((m) => m.name === 'C' || m.name === 'L')).toBe(false)
  const sizes = moved.map((m) => m.far)
  expect(sizes).toEqual([...sizes].sort((a, b) => b - a))
})

test('the tips of a dart are told with the points, by the name of the dart', () => {
  const before = front(0)
  const [dart] = before.darts
  const after = {
    ...before,
    darts: [{ ...dart!, upperTip: point(dart!.upperTip.x, dart!.upperTip.y + 8) }],
  }
  expect(movedPoints(before, after)).toEqual([
    expect.objectContaining({ words: 'upper tip of the waist dart', across: 0, down: 8, far: 8 }),
  ])
})

test('it is moved whole: no edge, dart or level changes its length, and the given piece stays', () => {
  const [before, after] = [front(0), front(15, { bustGirth: 960 })]
  const start = namedPoint(before, 'U')
  const over = layOver(before, after, 'apex')
  for (const e of before.edges)
    expect(pathLength(edge(over, e.name).path)).toBeCloseTo(pathLength(e.path), 9)
  const [a, b] = [before.darts[0]!, over.darts[0]!]
  expect(distance(b.inner, b.outer)).toBeCloseTo(distance(a.inner, a.outer), 9)
  expect(over.levels.map((l) => distance(l.from, l.to))).toEqual(
    before.levels.map((l) => expect.closeTo(distance(l.from, l.to), 9)),
  )
  expect(namedPoint(before, 'U')).toEqual(start)
})

test('a front without a bust tip does not offer it to lay over on', () => {
  const whole = front(0)
  const { apex: _apex, ...points } = whole.points
  const straight = { ...whole, points }
  expect(sharedAnchors(front(0), front(15))).toContain('apex')
  expect(sharedAnchors(straight, front(0))).toEqual(['sideNeck', 'waistFold'])
  expect(() => layOver(straight, front(0), 'apex')).toThrow('front has no point for apex')
})

import { expect, test } from 'vitest'
import { standardChoices, type Choices } from '../../../src/draft/choices.ts'
import { draft } from '../../../src/draft/make.ts'
import { pieceOf } from '../../../src/draft/draft.ts'
import type { Piece } from '../../../src/draft/piece.ts'
import { closeWedge } from '../../../src/fitting/wedge.ts'
import { pathLength } from '../../../src/geometry/length.ts'
import { arc, line } from '../../../src/geometry/segment.ts'
import { point } from '../../../src/geometry/point.ts'
import { hasMoved, movedParts, strayed } from '../../../src/ui/parts/piece/moved-parts.ts'
import { mm } from '../../../src/units/length.ts'
import { body, LARGE } from '../../bodies.ts'

const blouse = draft('blouse', body(), standardChoices())
const front = pieceOf(blouse, 'front')

test('a piece laid on itself has moved nowhere', () => {
  expect(movedParts(front, front)).toEqual({ lines: [], darts: [] })
})

// By hand: of a line 100 mm long only what lies past x = 50 leaves the other, which ends there.
test('only the run that leaves the old line counts as moved', () => {
  const old = [line(point(0, 0), point(50, 0)), line(point(50, 0), point(50, 40))]
  const runs = strayed([line(point(0, 0), point(100, 0))], old)
  expect(runs).toHaveLength(1)
  expect(pathLength(runs[0]!)).toBeCloseTo(50, 9)
})

// The same circle cut at another place is the same line: radius and centre say so.
test('an arc that is a part of the old arc has not moved', () => {
  const old = [arc(point(0, 0), 200, 0, 1)]
  expect(strayed([arc(point(0, 0), 200, 0.2, 0.5)], old)).toEqual([])
  expect(strayed([arc(point(0, 0), 203, 0.2, 0.5)], old)).toHaveLength(1)
})

// A wedge turns the part below it about the apex; neck, overarm and fold stay (see wedge.ts).
test('after a wedge neck, overarm and fold stand once, sleeve edge, side, hem and dart twice', () => {
  const outcome = closeWedge(front, 'sleeveEdge', 0.5, mm(10))
  if (!outcome.ok) throw new Error('the wedge of this test must close')
  const { lines, darts } = movedParts(outcome.wedge.piece, front)
  expect(new Set(lines.map((l) => l.name))).toEqual(new Set(['sleeveEdge', 'side', 'hem']))
  expect(darts).toHaveLength(1)
})

// Asked coarsely, while the hand moves: every segment that is not there as it was, whole.
test('coarsely, a segment of which one end moved counts whole, and one that stands not at all', () => {
  const corner = line(point(50, 0), point(50, 40))
  const piece = (end: number): Piece => {
    const [edge] = front.edges
    if (!edge) throw new Error('a front has edges')
    const path = [line(point(0, 0), point(end, 0)), corner]
    return { ...front, edges: [{ ...edge, path }], darts: [], edgeDarts: [], inner: [] }
  }
  const lines = movedParts(piece(60), piece(50), true).lines
  expect(lines.map(({ path }) => path)).toEqual([[line(point(0, 0), point(60, 0))]])
  expect(movedParts(piece(50), piece(50), true).lines).toEqual([])
})

// A zip of another length and a bust dart of another width are lines that moved like any other.
test('openings and edge darts are told from what they were', () => {
  const large = (choices: Partial<Choices>) =>
    pieceOf(draft('blouse', body({}, LARGE), { ...standardChoices(), ...choices }), 'front')
  const plain = large({})
  const names = (piece: Piece, before: Piece) =>
    new Set(movedParts(piece, before).lines.map((l) => l.name))
  expect(names(plain, plain)).toEqual(new Set())
  expect(names(large({ opening: 'buttonedFront' }), plain)).toContain('centreFront')
  const noDart = { ...plain, edgeDarts: [] }
  expect(names(plain, noDart)).toEqual(new Set(['bustDart 0', 'bustDart 1']))
  expect(hasMoved(plain, plain)).toBe(false)
  expect(hasMoved(plain, noDart)).toBe(true)
})

/** Which lines changed: against what a wedge and a let-out are known to leave in place. */
import { expect, test } from 'vitest'
import { standardChoices } from '../../src/draft/choices.ts'
import { pieceOf } from '../../src/draft/draft.ts'
import { draft } from '../../src/draft/make.ts'
import { closeWedge } from '../../src/fitting/wedge.ts'
import { point } from '../../src/geometry/point.ts'
import { arc, line } from '../../src/geometry/segment.ts'
import { apart, changedLines } from '../../src/rounds/changed-edges.ts'
import { layOver } from '../../src/rounds/lay-over.ts'
import { mm } from '../../src/units/length.ts'
import { body, FULL } from '../bodies.ts'

const piece = (id: 'front' | 'back', added = 0) =>
  pieceOf(draft('blouse', body(), { ...standardChoices(), lengthAdded: mm(added) }), id)

// A wedge into the waist dart turns the part below it about the bust tip: common practice.
test('a wedge changes sleeve edge, side, hem and dart; neck, overarm and fold lie as before', () => {
  const before = piece('front')
  const made = closeWedge(before, 'sleeveEdge', 0.5, mm(12))
  if (!made.ok) throw new Error(made.why.id)
  const changed = changedLines(before, made.wedge.piece)
  expect([...changed.edges].sort()).toEqual(['hem', 'side', 'sleeveEdge'])
  expect(changed.dart).toBe(true)
})

test('the same piece changes nowhere', () => {
  expect(changedLines(piece('back'), piece('back'))).toEqual({
    edges: [],
    dart: false,
    edgeDarts: [],
  })
})

// What is more than 20 mm of balance goes into a side bust dart; the full body has one.
test('a side dart that is drawn elsewhere is named, by its tip or its mouth', () => {
  const front = pieceOf(draft('blouse', body({}, FULL), standardChoices()), 'front')
  const [dart] = front.edgeDarts
  if (!dart) throw new Error('no side dart')
  const turned = { ...front, edgeDarts: [{ ...dart, tip: point(dart.tip.x + 1, dart.tip.y) }] }
  expect(changedLines(front, turned)).toEqual({ edges: [], dart: false, edgeDarts: ['bustDart'] })
  const gone = { ...front, edgeDarts: [] }
  expect(changedLines(gone, front).edgeDarts).toEqual(['bustDart'])
  expect(changedLines(front, gone).edgeDarts).toEqual(['bustDart'])
})

test('what is let out between bust and waist shows where the anchor leaves it', () => {
  const [before, after] = [piece('back'), piece('back', 15)]
  const onWaist = changedLines(layOver(before, after, 'waistFold'), after)
  expect(onWaist.edges).toContain('neck')
  expect(onWaist.edges).not.toContain('hem')
  const onNeck = changedLines(layOver(before, after, 'sideNeck'), after)
  expect(onNeck.edges).toContain('hem')
  expect(onNeck.edges).not.toContain('neck')
})

// Concentric arcs of radius 100 and 103 lie 3 apart everywhere; a line cut short by 7 lies 7 apart.
test('how far apart: between rings their difference, along a line what is missing', () => {
  const ring = (radius: number) => [arc(point(0, 0), radius, 0, 1.2)]
  expect(apart(ring(100), ring(103))).toBeCloseTo(3, 6)
  const level = (to: number) => [line(point(0, 0), point(to, 0))]
  expect(apart(level(60), level(53))).toBeCloseTo(7, 9)
})

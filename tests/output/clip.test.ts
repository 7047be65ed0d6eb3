/** Clip marks and stay stitches against hand-worked places. */
import { describe, expect, test } from 'vitest'
import { standardChoices, type Choices } from '../../src/draft/choices.ts'
import { pieceOf } from '../../src/draft/draft.ts'
import { draft } from '../../src/draft/make.ts'
import { namedPoint, type Piece } from '../../src/draft/piece.ts'
import { pathLength } from '../../src/geometry/length.ts'
import { pathEnd, pathStart } from '../../src/geometry/path.ts'
import { point } from '../../src/geometry/point.ts'
import { line } from '../../src/geometry/segment.ts'
import { cuttingLine, MUSLIN_ALLOWANCES } from '../../src/output/allowance.ts'
import { allowancesFor, CLOTH_FINISHES } from '../../src/output/finishes.ts'
import { mm } from '../../src/units/length.ts'
import { body, INVENTED_BODIES } from '../bodies.ts'
import { chordsOf, nearestOn } from './reference-offset.ts'

const drafted = (more: Partial<Choices> = {}) =>
  draft('blouse', body(), { ...standardChoices(), ...more })
function cut(piece: Piece, allowances = MUSLIN_ALLOWANCES) {
  const result = cuttingLine(piece, allowances)
  if (!result.ok) throw new Error(result.reason)
  return result
}

describe('an inner corner', () => {
  // Sleeve edge level, running left to U = (100, 50); side plumb below it. Moved out by 10 and 25
  // they meet at (125, 60), √(25² + 10²) = 26.9258 from U. The clip ends 2 short of U.
  const piece: Piece = {
    ...pieceOf(drafted(), 'back'),
    points: {},
    darts: [],
    levels: [],
    edges: [
      { name: 'overarm', role: 'seam', path: [line(point(0, 0), point(300, 0))] },
      {
        name: 'sleeveEdge',
        role: 'edge',
        path: [line(point(300, 0), point(300, 50)), line(point(300, 50), point(100, 50))],
      },
      { name: 'side', role: 'seam', path: [line(point(100, 50), point(100, 250))] },
      { name: 'hem', role: 'hem', path: [line(point(100, 250), point(0, 250))] },
      { name: 'centre', role: 'fold', path: [line(point(0, 250), point(0, 0))] },
    ],
  }
  test('is clipped from the cutting line to 2 mm before the seam', () => {
    const { clips } = cut(piece)
    expect(clips).toHaveLength(1)
    const clip = clips[0]?.path ?? []
    expect(pathStart(clip).x).toBeCloseTo(125, 6)
    expect(pathStart(clip).y).toBeCloseTo(60, 6)
    expect(pathLength(clip)).toBeCloseTo(26.9258 - 2, 4)
    expect(Math.hypot(pathEnd(clip).x - 100, pathEnd(clip).y - 50)).toBeCloseTo(2, 6)
  })
  // 3 outside both seams: they meet at (103, 53). 50 along each seam from the corner.
  test('is stayed 3 mm outside the seam for 50 mm each way', () => {
    const { stays } = cut(piece)
    expect(stays).toHaveLength(1)
    const stay = stays[0]?.path ?? []
    expect(stay).toHaveLength(2)
    expect([pathStart(stay).x, pathStart(stay).y]).toEqual([150, 53])
    expect(pathEnd(stay.slice(0, 1)).x).toBeCloseTo(103, 6)
    expect(pathEnd(stay.slice(0, 1)).y).toBeCloseTo(53, 6)
    expect(pathEnd(stay).x).toBeCloseTo(103, 6)
    expect(pathEnd(stay).y).toBeCloseTo(100, 6)
  })
  test('has no mark where both edges are cut on their line', () => {
    const { clips, stays } = cut(piece, { ...MUSLIN_ALLOWANCES, sleeveEdge: mm(0), side: mm(0) })
    expect([clips, stays]).toEqual([[], []])
  })
  // A neck that is 6 wide, its corner at B: the clip runs from 6 up and 6 in.
  test('inside one edge, as of a square neck, is clipped too', () => {
    const front = pieceOf(drafted({ neckShape: 'square' }), 'front')
    const b = namedPoint(front, 'B')
    const { clips } = cut(front, { ...MUSLIN_ALLOWANCES, neck: mm(6) })
    const own = clips.filter((c) => c.edge === 'neck')
    expect(own).toHaveLength(1)
    expect(pathStart(own[0]?.path ?? []).x).toBeCloseTo(b.x - 6, 4)
    expect(pathStart(own[0]?.path ?? []).y).toBeCloseTo(b.y - 6, 4)
  })
  // Unfolded, the point of a V turns inward: it is clipped down the fold.
  test('at the fold, as of a V neck, is clipped down the fold', () => {
    const front = pieceOf(drafted({ neckShape: 'vee' }), 'front')
    const f = namedPoint(front, 'F')
    const { clips } = cut(front, { ...MUSLIN_ALLOWANCES, neck: mm(6) })
    const clip = clips.find((c) => c.edge === 'neck')?.path ?? []
    expect(pathStart(clip).x).toBeCloseTo(0, 6)
    expect(pathEnd(clip).x).toBeCloseTo(0, 6)
    expect(pathEnd(clip).y).toBeCloseTo(f.y - 2, 6)
  })
})

describe('a hollow curve', () => {
  // A quarter of a circle or so of radius 30: 12 mm apart, each square to the seam.
  test('tighter than 60 mm is clipped along, a wider one is not', () => {
    const own = (cornerRadius: number) =>
      cut(pieceOf(drafted({ cornerRadius: mm(cornerRadius) }), 'front')).clips.filter(
        (c) => c.edge === 'sleeveEdge',
      )
    expect(own(30).length).toBeGreaterThan(1)
    expect(own(65)).toHaveLength(0)
  })
  test.each(INVENTED_BODIES)(
    'of the %s body: every clip ends 2 mm outside its seam',
    (_, numbers) => {
      const allowances = allowancesFor(CLOTH_FINISHES)
      for (const piece of draft('blouse', body({}, numbers), standardChoices()).pieces) {
        const whole = chordsOf(
          piece.edges.flatMap((e) => e.path),
          300,
        )
        for (const { path } of cut(piece, allowances).clips) {
          expect(nearestOn(whole, pathEnd(path)).distance).toBeCloseTo(2, 2)
          expect(nearestOn(whole, pathStart(path)).distance).toBeGreaterThan(4)
        }
        for (const { path } of cut(piece, allowances).stays)
          for (const p of chordsOf(path, 8)) {
            const { distance } = nearestOn(whole, p)
            expect(distance).toBeGreaterThan(3 - 0.01)
            expect(distance).toBeLessThan(3 * Math.SQRT2)
          }
      }
    },
  )
  // A neck cut on its line is neither clipped nor stayed.
  test('that is cut on its line has no marks', () => {
    const { clips, stays } = cut(pieceOf(drafted(), 'back'))
    expect([...clips, ...stays].filter((m) => m.edge === 'neck')).toHaveLength(0)
  })
})

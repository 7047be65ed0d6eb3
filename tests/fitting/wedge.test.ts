/**
 * The wedge against the exact rotation. θ = 2·asin(w/2r), moved by 2R·sin(θ/2): plane
 * trigonometry; the vectors w 12, r 150 → 4.585°, 14.40 at R 180, 7.20 at R 90, and w → θ at
 * r 140 (3→1.23°, 6→2.46°, 9→3.68°, 12→4.91°, 15→6.14°, 18→7.37°) were computed apart from this code.
 */
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { standardChoices } from '../../src/draft/choices.ts'
import { pieceOf } from '../../src/draft/draft.ts'
import { draft } from '../../src/draft/make.ts'
import { edge, outline, type Piece } from '../../src/draft/piece.ts'
import { record } from '../../src/draft/record.ts'
import { correctedDraft } from '../../src/fitting/apply.ts'
import type { Correction } from '../../src/fitting/correction.ts'
import { refusalSentence } from '../../src/fitting/refusal.ts'
import { closeWedge } from '../../src/fitting/wedge.ts'
import { pathLength } from '../../src/geometry/length.ts'
import {
  checkJoined,
  endTangent,
  flatten,
  pathEnd,
  pathStart,
  pointAtLength,
  startTangent,
} from '../../src/geometry/path.ts'
import {
  add,
  distance,
  heading,
  point,
  rotate,
  scale,
  type Point,
} from '../../src/geometry/point.ts'
import { selfIntersections } from '../../src/geometry/self-intersection.ts'
import { arcBetween, line } from '../../src/geometry/segment.ts'
import { mm } from '../../src/units/length.ts'
import { toDegrees, radians } from '../../src/units/angle.ts'
import { body, INVENTED_BODIES } from '../bodies.ts'

const front = (over = {}) => pieceOf(draft('blouse', body(over), standardChoices()), 'front')
const made = (piece: Piece, along: number, width: number) => {
  const outcome = closeWedge(piece, 'sleeveEdge', along, mm(width))
  if (!outcome.ok) throw new Error(outcome.why.id)
  return outcome.wedge
}

/** A piece on which pivot, edge and dart stand at chosen distances: edge an arc about the apex. */
function test_piece(r: number, R: number): Piece {
  const apex = point(100, 200)
  const on = (degrees: number, radius: number): Point =>
    add(
      apex,
      scale(
        point(Math.cos((degrees * Math.PI) / 180), Math.sin((degrees * Math.PI) / 180)),
        radius,
      ),
    )
  const [t, u, y, l] = [on(-70, r), on(10, r), point(100 + r, 520), point(0, 520)]
  const half = 5
  const mouth = Math.sqrt(R * R - half * half)
  return {
    id: 'front',
    words: 'test',
    cut: { count: 1, how: 'onFold' },
    edges: [
      { name: 'neck', role: 'edge', path: [line(point(0, 40), point(60, 20))] },
      { name: 'overarm', role: 'seam', path: [line(point(60, 20), t)] },
      { name: 'sleeveEdge', role: 'edge', path: [arcBetween(apex, t, u)] },
      { name: 'side', role: 'seam', path: [line(u, y)] },
      { name: 'hem', role: 'hem', path: [line(y, l)] },
      { name: 'centre', role: 'fold', path: [line(l, point(0, 40))] },
    ],
    edgeDarts: [],
    inner: [],
    darts: [
      {
        name: 'waistDart',
        upperTip: add(apex, point(0, 20)),
        inner: add(apex, point(-half, mouth)),
        outer: add(apex, point(half, mouth)),
        lowerTip: add(apex, point(0, mouth + 100)),
      },
    ],
    points: { apex, T: t, U: u, Y: y, L: l },
    levels: [],
    grain: { from: point(20, 100), to: point(20, 300) },
  }
}

describe('the exact rotation', () => {
  test('w 12, r 150: 4.585°, and 14.40 at R 180, 7.20 at R 90', () => {
    expect(toDegrees(radians(made(test_piece(150, 180), 0.5, 12).turn))).toBeCloseTo(4.585, 3)
    expect(made(test_piece(150, 180), 0.5, 12).opens).toBeCloseTo(14.4, 2)
    expect(made(test_piece(150, 90), 0.5, 12).opens).toBeCloseTo(7.2, 2)
  })
  test.each([
    [3, 1.23],
    [6, 2.46],
    [9, 3.68],
    [12, 4.91],
    [15, 6.14],
    [18, 7.37],
  ])('w %d at r 140 turns %d°', (w, degrees) => {
    expect(toDegrees(radians(made(test_piece(140, 120), 0.5, w).turn))).toBeCloseTo(degrees, 2)
  })
  test('on an edge that is an arc about the apex, the edge loses just the arc over the wedge', () => {
    const w = made(test_piece(150, 120), 0.5, 12)
    // The arc over a chord of 12 at radius 150 is 150 × 4.585° = 12.003; drawing smooth changes nothing on a circle but the cubic's own error.
    expect(w.shortens).toBeCloseTo(150 * 2 * Math.asin(12 / 300), 1)
  })
})

describe('on the blouse', () => {
  const before = front()
  const w = made(before, 0.5, 12)
  const after = w.piece

  test('the outer dart leg moved by 2R·sin(θ/2); the inner leg and the apex did not move', () => {
    const [a, b] = [before.darts[0]!, after.darts[0]!]
    const spot = pointAtLength(
      edge(before, 'sleeveEdge').path,
      pathLength(edge(before, 'sleeveEdge').path) / 2,
    )
    const r = distance(before.points['apex']!, spot)
    const theta = 2 * Math.asin(12 / (2 * r))
    expect(distance(a.outer, b.outer)).toBeCloseTo(
      2 * distance(before.points['apex']!, a.outer) * Math.sin(theta / 2),
      9,
    )
    expect(distance(a.outer, b.outer)).toBeCloseTo(w.opens, 9)
    expect(b.inner).toEqual(a.inner)
    expect(after.points['apex']).toEqual(before.points['apex'])
  })
  test('the wedge that is folded out is 12 mm wide at its place', () => {
    const spot = pointAtLength(
      edge(before, 'sleeveEdge').path,
      pathLength(edge(before, 'sleeveEdge').path) / 2,
    )
    const apex = before.points['apex']!
    const [a, b] = [rotate(spot, apex, w.turn / 2), rotate(spot, apex, -w.turn / 2)]
    expect(distance(a, b)).toBeCloseTo(12, 9)
  })
  test('the sleeve edge is shorter by less than the wedge, because it runs oblique to the rulings', () => {
    const lost =
      pathLength(edge(before, 'sleeveEdge').path) - pathLength(edge(after, 'sleeveEdge').path)
    expect(lost).toBeCloseTo(w.shortens, 6)
    expect(lost).toBeGreaterThan(0)
    expect(lost).toBeLessThan(12)
  })
  test('seams keep their length; the dart legs are equal; the hem meets fold and side square', () => {
    for (const name of ['overarm', 'side', 'neck'] as const)
      expect(pathLength(edge(after, name).path)).toBeCloseTo(pathLength(edge(before, name).path), 6)
    const d = after.darts[0]!
    expect(distance(d.upperTip, d.inner)).toBeCloseTo(distance(d.upperTip, d.outer), 6)
    expect(distance(d.lowerTip, d.inner)).toBeCloseTo(distance(d.lowerTip, d.outer), 6)
    const [side, hem] = [
      endTangent(edge(after, 'side').path),
      startTangent(edge(after, 'hem').path),
    ]
    expect(side.x * hem.x + side.y * hem.y).toBeCloseTo(0, 9)
    expect(endTangent(edge(after, 'hem').path).y).toBeCloseTo(0, 9)
  })
  test('the outline closes and is smooth where the edge was drawn anew', () => {
    checkJoined([...outline(after), outline(after)[0]!], 'front')
    expect(selfIntersections(outline(after))).toEqual([])
    const points = flatten(edge(after, 'sleeveEdge').path, 0.02)
    const turns = points
      .slice(2)
      .map((p, i) =>
        Math.abs(wrapped(heading(points[i + 1]!, p) - heading(points[i]!, points[i + 1]!))),
      )
    expect(Math.max(...turns)).toBeLessThan(0.09)
    expect(distance(pathStart(edge(after, 'sleeveEdge').path), before.points['T']!)).toBeLessThan(
      1e-9,
    )
    expect(distance(pathEnd(edge(after, 'sleeveEdge').path), after.points['U']!)).toBeLessThan(1e-9)
  })
  test('on every invented body with a dart, for every place and width, pairs stay true or it is refused', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...INVENTED_BODIES),
        fc.double({ min: 0.1, max: 0.9, noNaN: true }),
        fc.integer({ min: 3, max: 15 }),
        ([, numbers], along, width) => {
          const piece = pieceOf(draft('blouse', body({}, numbers), standardChoices()), 'front')
          const outcome = closeWedge(piece, 'sleeveEdge', along, mm(width))
          if (!outcome.ok) {
            expect(['noDart', 'dartTooWide', 'wedgeMissesEdge']).toContain(outcome.why.id)
            return
          }
          expect(pathLength(edge(outcome.wedge.piece, 'side').path)).toBeCloseTo(
            pathLength(edge(piece, 'side').path),
            5,
          )
          expect(selfIntersections(outline(outcome.wedge.piece))).toEqual([])
        },
      ),
      { numRuns: 80 },
    )
  })
})
const wrapped = (a: number): number => Math.atan2(Math.sin(a), Math.cos(a))

describe('as a recorded decision', () => {
  const because = {
    complaint: 'B8',
    cause: 'bust shaping',
    pinned: { how: 'wholeFold', read: mm(12), share: 1 },
    watch: mm(0),
    round: 1,
  } as const
  const wedge: Correction = {
    v: 1,
    id: 'c1',
    kind: 'close-wedge',
    piece: 'front',
    edge: 'sleeveEdge',
    along: 0.5,
    width: mm(12),
    because,
  }
  const longer: Correction = {
    v: 1,
    id: 'c2',
    kind: 'turn-choice',
    choice: 'lengthAdded',
    by: mm(15),
    because: { ...because, complaint: 'W1' },
  }
  const numbers = (list: readonly Correction[]) =>
    record(correctedDraft('blouse', body(), standardChoices(), list).draft)

  test('replays to the same numbers, in either order of unrelated decisions', () => {
    expect(numbers([wedge, longer])).toEqual(numbers([longer, wedge]))
  })
  test('withdrawn, it leaves the draft as it was and stays in the list', () => {
    expect(
      numbers([wedge, { v: 1, id: 'c3', kind: 'withdraw', correction: 'c1', round: 2 }]),
    ).toEqual(numbers([]))
  })
  test('waist too high by 15 mm: both sides of every seam below the bust are 15 mm longer, bust line and darts stay put', () => {
    const [a, b] = [numbers([]), numbers([longer])]
    for (const piece of ['back', 'front']) {
      expect(b.points[`${piece}.C`]![1] - a.points[`${piece}.C`]![1]).toBe(15)
      expect(b.points[`${piece}.D`]).toEqual(a.points[`${piece}.D`])
      expect(b.lengths[`${piece}.centre`]! - a.lengths[`${piece}.centre`]!).toBeCloseTo(15, 6)
      expect(b.lengths[`${piece}.overarm`]).toBe(a.lengths[`${piece}.overarm`])
    }
    expect(Math.abs(b.lengths['back.side']! - b.lengths['front.side']!)).toBeLessThan(0.01)
  })
  test('a dart whose tip would be wider than 22° is refused with the width that angle allows', () => {
    // A leg of about 60 to 70 mm under a tip 40 below the apex: 22° allows 2·leg·sin 11°, some 25 mm.
    const piece = test_piece(150, 100)
    const [d] = piece.darts
    const short: Piece = {
      ...piece,
      edgeDarts: [],
      inner: [],
      darts: [{ ...d!, upperTip: add(piece.points['apex']!, point(0, 40)) }],
    }
    const outcome = closeWedge(short, 'sleeveEdge', 0.5, mm(30))
    const why = outcome.ok ? undefined : outcome.why
    const leg = 100 - 40
    expect(why?.id).toBe('dartTooWide')
    if (why?.id === 'dartTooWide') {
      expect(why.most).toBeLessThan(2 * (leg + 10) * Math.sin((11 * Math.PI) / 180))
      expect(why.to).toBeGreaterThan(why.most)
    }
  })
  test('out of range, without a dart or too wide it is refused with the reason, and nothing moves', () => {
    const far: Correction = { ...longer, by: mm(200) }
    const refused = correctedDraft('blouse', body(), standardChoices(), [far]).refused
    expect(refusalSentence(refused[0]!.why, { unit: 'cm', inchStep: 8 })).toBe(
      'length between bust and waist would be 20.0 cm; it goes from −6.0 cm to 6.0 cm.',
    )
    expect(numbers([far])).toEqual(numbers([]))
    const straight = body({ bustGirth: 880, waistGirth: 888 })
    expect(correctedDraft('blouse', straight, standardChoices(), [wedge]).refused[0]?.why.id).toBe(
      'noDart',
    )
    expect(closeWedge(front(), 'sleeveEdge', 0.5, mm(60))).toMatchObject({
      ok: false,
      why: { id: 'dartTooWide' },
    })
    expect(closeWedge(front(), 'sleeveEdge', 0.5, mm(600))).toMatchObject({
      ok: false,
      why: { id: 'wedgeTooWide' },
    })
  })
})

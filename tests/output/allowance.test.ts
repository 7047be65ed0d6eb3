import { describe, expect, test } from 'vitest'
import { pathLength } from '../../src/geometry/length.ts'
import { pathEnd, pathStart, type Path } from '../../src/geometry/path.ts'
import { point } from '../../src/geometry/point.ts'
import { arc, at, line, type Segment } from '../../src/geometry/segment.ts'
import { standardChoices, type Choices } from '../../src/draft/choices.ts'
import { pieceOf } from '../../src/draft/draft.ts'
import { standardFor } from '../../src/draft/garments.ts'
import { draft } from '../../src/draft/make.ts'
import { edge, namedPoint, type EdgeName, type Piece } from '../../src/draft/piece.ts'
import {
  cuttingLine,
  MUSLIN_ALLOWANCES,
  readAllowances,
  type Allowances,
} from '../../src/output/allowance.ts'
import { parallel } from '../../src/output/parallel.ts'
import { mm } from '../../src/units/length.ts'
import { body, INVENTED_BODIES, MIDDLE } from '../bodies.ts'

const CM = { unit: 'cm', inchStep: 8 } as const
const drafted = (numbers = MIDDLE, more: Partial<Choices> = {}) =>
  draft('blouse', body({}, numbers), { ...standardChoices(), ...more })

/** A plain piece: fold at x = 0 from 200 up to 0, top at 0, `side` from there to the hem at 200. */
function plainPiece(side: Segment, more: Partial<Piece> = {}): Piece {
  const [top, foot] = [at(side, 0), at(side, 1)]
  return {
    ...pieceOf(drafted(), 'back'),
    darts: [],
    edgeDarts: [],
    levels: [],
    points: {},
    edges: [
      { name: 'overarm', role: 'seam', path: [line(point(0, top.y), top)] },
      { name: 'side', role: 'seam', path: [side] },
      { name: 'hem', role: 'hem', path: [line(foot, point(0, foot.y))] },
      { name: 'centre', role: 'fold', path: [line(point(0, foot.y), point(0, top.y))] },
    ],
    ...more,
  }
}
function hemSide(side: Segment, hemDepth?: number): Path {
  const allowances = { ...MUSLIN_ALLOWANCES, side: mm(10), hem: mm(40) }
  const result = cuttingLine(
    plainPiece(side),
    allowances,
    hemDepth === undefined ? undefined : mm(hemDepth),
  )
  if (!result.ok) throw new Error(result.reason)
  return result.edges.find((e) => e.name === 'side')?.path ?? []
}
const hemCorner = (side: Segment, hemDepth?: number): Spot => pathEnd(hemSide(side, hemDepth))

interface Spot {
  readonly x: number
  readonly y: number
}
/** Distance from a spot to a path, by thousands of chords and nothing of the program's own. */
function away(path: Path, p: Spot): number {
  let best = Infinity
  for (const s of path)
    for (let i = 0; i < 600; i++) {
      const [a, b] = [at(s, i / 600), at(s, (i + 1) / 600)]
      const [dx, dy] = [b.x - a.x, b.y - a.y]
      const t = Math.min(
        1,
        Math.max(0, ((p.x - a.x) * dx + (p.y - a.y) * dy) / (dx * dx + dy * dy)),
      )
      best = Math.min(best, Math.hypot(a.x + t * dx - p.x, a.y + t * dy - p.y))
    }
  return best
}

/** Length walked along a path to the spot nearest to `p`, by chords. */
function walkedTo(path: Path, p: Spot): number {
  const chain = path.flatMap((s) => Array.from({ length: 4001 }, (_, i) => at(s, i / 4000)))
  let [walked, best] = [0, { gap: Infinity, length: NaN }]
  for (const [i, q] of chain.entries()) {
    const before = chain[i - 1] ?? q
    walked += Math.hypot(q.x - before.x, q.y - before.y)
    const gap = Math.hypot(q.x - p.x, q.y - p.y)
    if (gap < best.gap) best = { gap, length: walked }
  }
  expect(best.gap).toBeLessThan(0.1)
  return best.length
}

function cut(piece: Piece, allowances: Allowances) {
  const result = cuttingLine(piece, allowances)
  if (!result.ok) throw new Error(result.reason)
  return result
}

describe('corners', () => {
  const back = pieceOf(drafted(), 'back')
  const path = (name: EdgeName): Path =>
    cut(back, MUSLIN_ALLOWANCES).edges.find((e) => e.name === name)?.path ?? []

  test('the cutting line closes and runs in the order of the edges', () => {
    const { edges } = cut(back, MUSLIN_ALLOWANCES)
    for (const [i, e] of edges.entries()) {
      const next = edges[(i + 1) % edges.length]
      if (!next) throw new Error('no next edge')
      const [a, b] = [pathEnd(e.path), pathStart(next.path)]
      expect(Math.hypot(a.x - b.x, a.y - b.y)).toBeLessThan(1e-5)
    }
  })
  // An inner corner is where both allowances hold at once. Elementary geometry.
  test('a sharp corner under the arm keeps both allowances', () => {
    const sharp = pieceOf(drafted(MIDDLE, { cornerRadius: mm(0) }), 'back')
    const corner = pathEnd(
      cut(sharp, MUSLIN_ALLOWANCES).edges.find((e) => e.name === 'sleeveEdge')?.path ?? [],
    )
    expect(away(edge(sharp, 'side').path, corner)).toBeCloseTo(25, 3)
    // The sleeve edge ends at U; past it the crossing lies square beyond that end at most.
    expect(away(edge(sharp, 'sleeveEdge').path, corner)).toBeGreaterThan(10 - 0.01)
    const u = namedPoint(sharp, 'U')
    expect(Math.hypot(corner.x - u.x, corner.y - u.y)).toBeLessThan(30)
  })
  // Unfolded, the hem must run straight over the fold: square to it. Common practice, no source.
  test('at the fold the hem is square', () => {
    const end = pathEnd(path('hem'))
    expect(end.x).toBeCloseTo(0, 6)
    expect(end.y).toBeCloseTo(namedPoint(back, 'L').y + 40, 6)
  })
  // A turned hem lies on the piece edge to edge. By hand: the side runs out 20 over 200; moved out
  // by 10 it is 10·√1.01 = 10.0499 to the right at every level. It passes the hem level at
  // 130.0499, and 40 below that it stands where it stood 40 above: at 126.0499.
  test('a hem under a slanting side is cut as its mirror', () => {
    const foot = hemCorner(line(point(100, 0), point(120, 200)))
    expect(foot.x).toBeCloseTo(126.0499, 4)
    expect(foot.y).toBeCloseTo(240, 9)
  })
  // The side as an arc about (0, 200) of radius 120, plumb at the hem: moved out by 10 its radius
  // is 130, and 40 above the hem it stands at √(130² − 40²) = 123.6932.
  test('a hem under a curved side is cut as the mirror of the curve', () => {
    const foot = hemCorner(arc(point(0, 200), 120, -Math.PI / 3, Math.PI / 3))
    expect(foot.x).toBeCloseTo(123.6932, 4)
    expect(foot.y).toBeCloseTo(240, 9)
  })
  // Turned twice by 20: the edge goes in to 128.0499 at 20 below the hem, as it stands 20 above,
  // and out again, so that 40 below it stands as at the hem itself: at 130.0499.
  test('a hem turned twice is mirrored twice', () => {
    const slant = line(point(100, 0), point(120, 200))
    expect(hemCorner(slant, 20).x).toBeCloseTo(130.0499, 4)
    expect(hemCorner(slant, 20).y).toBeCloseTo(240, 9)
    expect(away(hemSide(slant, 20), { x: 128.0499, y: 220 })).toBeLessThan(1e-4)
    // 30 deep with 40 there: 10 past the second fold it stands as 20 below, and so 20 above.
    expect(hemCorner(slant, 30).x).toBeCloseTo(128.0499, 4)
  })
  // A smooth outline whose allowance changes from 10 to 25. Common practice, no source.
  test('where sleeve edge and side run on in one line the cutting line steps square across', () => {
    const u = namedPoint(back, 'U')
    const [end, begin] = [path('sleeveEdge').at(-1), path('side')[0]]
    if (end?.kind !== 'line' || !begin) throw new Error('no step')
    expect(end.from.y).toBeCloseTo(u.y, 6)
    expect(end.from.x).toBeCloseTo(u.x + 10, 6)
    expect(at(begin, 0).x).toBeCloseTo(u.x + 25, 6)
    expect(at(begin, 0).y).toBeCloseTo(u.y, 6)
  })
  // By hand: K = (0, 0) to (50, 0), a corner rounded by 5 up to (55, −5) and on to (55, −60).
  // The rounding is tighter than 8, so the two lines moved by 8 meet: y = −8 and x = 55 − 8.
  test('a rounding tighter than its allowance gives a corner', () => {
    const moved = parallel(
      [
        line(point(0, 0), point(50, 0)),
        arc(point(50, -5), 5, Math.PI / 2, -Math.PI / 2),
        line(point(55, -5), point(55, -60)),
      ],
      8,
    )
    expect(moved).toHaveLength(2)
    expect(pathEnd(moved.slice(0, 1)).x).toBeCloseTo(47, 6)
    expect(pathEnd(moved.slice(0, 1)).y).toBeCloseTo(-8, 6)
  })
  // A cut-off point keeps its allowance; four allowances is the usual limit (SVG 1.1, 11.4).
  test('no corner stands farther out than four allowances', () => {
    for (const [, numbers] of INVENTED_BODIES)
      for (const piece of drafted(numbers).pieces) {
        const { edges } = cut(piece, MUSLIN_ALLOWANCES)
        for (const e of edges)
          expect(
            away(
              piece.edges.flatMap((own) => own.path),
              pathEnd(e.path),
            ),
          ).toBeLessThan(100)
      }
  })
})

describe('notches', () => {
  // Single in front, double at the back: common practice.
  test('one on each front seam, two on each back seam, none elsewhere', () => {
    const count = (id: 'back' | 'front') =>
      cut(pieceOf(drafted(), id), MUSLIN_ALLOWANCES).notches.map((n) => n.edge)
    expect(count('front')).toEqual(['overarm', 'side'])
    expect(count('back')).toEqual(['overarm', 'overarm', 'side', 'side'])
  })
  test('stand outside the seam line, in its middle third, where the other piece has its own', () => {
    const d = drafted()
    const along = (id: 'back' | 'front', name: EdgeName): number => {
      const piece = pieceOf(d, id)
      const own = cut(piece, MUSLIN_ALLOWANCES).notches.filter((n) => n.edge === name)
      const seam = edge(piece, name).path
      const total = pathLength(seam)
      const spots = own.map((n) => walkedTo(seam, n.at))
      for (const n of own) {
        expect(away(seam, pathEnd(n.mark))).toBeCloseTo(5, 2)
        expect(away(seam, pathStart(n.slit))).toBeCloseTo(25, 2)
        expect(away(seam, pathEnd(n.slit))).toBeCloseTo(20, 2)
      }
      const middle = spots.reduce((a, b) => a + b, 0) / spots.length
      expect(middle).toBeGreaterThan(total / 3)
      expect(middle).toBeLessThan((total * 2) / 3)
      return middle
    }
    for (const name of ['overarm', 'side'] as const)
      expect(Math.abs(along('back', name) - along('front', name))).toBeLessThan(0.1)
  })
})

describe('notches of a set-in sleeve', () => {
  // One in front, two at the back, the middle of the cap at the shoulder: common practice.
  test('stand on armhole and cap where the construction matched them', () => {
    const { pieces } = draft('sleeve', body(), standardFor('sleeve'))
    const on = (id: string, name: EdgeName) => {
      const piece = pieces.find((p) => p.id === id)
      if (!piece) throw new Error(`no ${id}`)
      return { piece, own: cut(piece, MUSLIN_ALLOWANCES).notches.filter((n) => n.edge === name) }
    }
    expect(on('front', 'armhole').own).toHaveLength(1)
    expect(on('back', 'armhole').own).toHaveLength(2)
    const { piece, own } = on('sleeve', 'cap')
    expect(own).toHaveLength(4)
    for (const name of ['A', 'K']) {
      const p = namedPoint(piece, name)
      expect(own.some((n) => Math.hypot(n.at.x - p.x, n.at.y - p.y) < 0.01)).toBe(true)
    }
  })
})

describe('what cannot be cut is refused in words', () => {
  test.each([
    [{ side: -3 }, 'The allowance at the side seam would be −0.3 cm; give 0 to 10.0 cm.'],
    [{ hem: 250 }, 'The allowance at the hem would be 25.0 cm; give 0 to 10.0 cm.'],
    [{ neck: Number.NaN }, 'The allowance at the neck edge would be no number'],
    [{ centre: 10 }, 'The centre lies on the fold and has no allowance.'],
    [{ collar: 10 }, '"collar" is no edge of this piece.'],
    [{ toString: 10 }, '"toString" is no edge of this piece.'],
  ])('%o', (given, sentence) => {
    const read = readAllowances(given as Record<string, number>, CM)
    expect(read.ok).toBe(false)
    if (!read.ok) expect(read.reason).toContain(sentence)
  })
  test('an edge with nothing left of it is named', () => {
    const closed = plainPiece(arc(point(100, 100), 60, -Math.PI / 2, -Math.PI))
    const wide = cuttingLine(closed, { ...MUSLIN_ALLOWANCES, side: mm(100) })
    expect(wide).toEqual({
      ok: false,
      reason:
        'The allowance at the side seam is wider than its curve can take: the cutting line would cross itself. Give less there.',
    })
  })
})

describe('the role of an edge decides, not its name', () => {
  const back = pieceOf(drafted(MIDDLE, { opening: 'backZip' }), 'back')
  test('a centre that is a seam takes its allowance', () => {
    const { edges } = cut(back, { ...MUSLIN_ALLOWANCES, centre: mm(20) })
    const centre = edges.find((e) => e.name === 'centre')
    expect(centre?.role).toBe('seam')
    expect(away(centre?.path ?? [], { x: -20, y: 300 })).toBeLessThan(1e-6)
  })
  test('and is refused only where every piece has it on the fold', () => {
    const folded = drafted().pieces
    expect(readAllowances({ centre: 20 }, CM, folded).ok).toBe(false)
    expect(readAllowances({ centre: 20 }, CM, [back]).ok).toBe(true)
  })
  test('a piece that is cut as it is drawn gets none', () => {
    const strip = drafted().pieces.find((p) => p.id === 'neckStrip')
    if (!strip) throw new Error('no strip')
    const every = Object.fromEntries(Object.keys(MUSLIN_ALLOWANCES).map((n) => [n, mm(12)]))
    const { path } = cut(strip, every as Allowances)
    expect(path).toEqual(strip.edges.flatMap((e) => e.path))
  })
  test('edges of finishing pieces are read, and have none of their own', () => {
    const read = readAllowances({}, CM)
    if (!read.ok) throw new Error(read.reason)
    const { outer, start, end } = read.allowances
    expect([outer, start, end]).toEqual([0, 0, 0])
  })
})

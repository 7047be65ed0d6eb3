import { describe, expect, test, vi } from 'vitest'
import { pathLength } from '../../src/geometry/length.ts'
import { pathEnd, pathStart, pointAtLength, type Path } from '../../src/geometry/path.ts'
import { at } from '../../src/geometry/segment.ts'
import { standardChoices } from '../../src/draft/choices.ts'
import { pieceOf } from '../../src/draft/draft.ts'
import { draft } from '../../src/draft/garments.ts'
import { edge, namedPoint, type EdgeName, type Piece } from '../../src/draft/piece.ts'
import { closeWedge } from '../../src/fitting/wedge.ts'
import {
  cuttingLine,
  MUSLIN_ALLOWANCES,
  readAllowances,
  type Allowances,
} from '../../src/output/allowance.ts'
import { mm } from '../../src/units/length.ts'
import { body, INVENTED_BODIES, MIDDLE } from '../bodies.ts'

/** Fonts are parsed and lines compared by brute force; a busy machine needs its time. */
vi.setConfig({ testTimeout: 60_000, hookTimeout: 60_000 })

const CM = { unit: 'cm', inchStep: 8 } as const
const drafted = (numbers = MIDDLE) => draft('blouse', body({}, numbers), standardChoices())

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

/** The middle 40 % of every cutting edge against its seam edge. */
function worstInTheMiddle(piece: Piece, allowances: Allowances): number {
  let worst = 0
  for (const { name, path } of cut(piece, allowances).edges) {
    if (name === 'centre') continue
    const length = pathLength(path)
    for (let share = 0.3; share <= 0.7001; share += 0.05) {
      const p = pointAtLength(path, length * share)
      worst = Math.max(worst, Math.abs(away(edge(piece, name).path, p) - allowances[name]))
    }
  }
  return worst
}

const MIXED = readAllowances({ neck: 6, overarm: 15, sleeveEdge: 20, side: 10, hem: 30 }, CM)

describe('the allowance in the middle of every edge', () => {
  // 0.01 mm is a thirtieth of a pencil line. From memory.
  test.each(INVENTED_BODIES)('is exact for a muslin of the %s body', (_, numbers) => {
    for (const piece of drafted(numbers).pieces)
      expect(worstInTheMiddle(piece, MUSLIN_ALLOWANCES)).toBeLessThan(0.01)
  })
  test.each(INVENTED_BODIES)('is exact where every edge has another, %s body', (_, numbers) => {
    if (!MIXED.ok) throw new Error(MIXED.reason)
    for (const piece of drafted(numbers).pieces)
      expect(worstInTheMiddle(piece, MIXED.allowances)).toBeLessThan(0.01)
  })
  test('is exact on a front whose sleeve edge was folded shorter', () => {
    const front = pieceOf(drafted(), 'front')
    const outcome = closeWedge(front, 'sleeveEdge', 0.5, mm(12))
    if (!outcome.ok) throw new Error(JSON.stringify(outcome.why))
    expect(worstInTheMiddle(outcome.wedge.piece, MUSLIN_ALLOWANCES)).toBeLessThan(0.01)
  })
})

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
  test('under the arm the corner keeps both allowances', () => {
    const corner = pathEnd(path('sleeveEdge'))
    expect(away(edge(back, 'side').path, corner)).toBeCloseTo(25, 3)
    // The sleeve edge ends at U; past it the crossing lies square beyond that end at most.
    expect(away(edge(back, 'sleeveEdge').path, corner)).toBeGreaterThan(10 - 0.01)
    const u = namedPoint(back, 'U')
    expect(Math.hypot(corner.x - u.x, corner.y - u.y)).toBeLessThan(30)
  })
  // 25 beside the side and 40 under the hem of a side that runs plumb into it: a square corner.
  test('at the hem the side runs straight down', () => {
    const y = namedPoint(back, 'Y')
    const corner = pathEnd(path('side'))
    expect(corner.x).toBeCloseTo(y.x + 25, 3)
    expect(corner.y).toBeCloseTo(y.y + 40, 3)
  })
  // Unfolded, the hem must run straight over the fold: square to it. Common practice, no source.
  test('at the fold the hem is square', () => {
    const end = pathEnd(path('hem'))
    expect(end.x).toBeCloseTo(0, 6)
    expect(end.y).toBeCloseTo(namedPoint(back, 'L').y + 40, 6)
  })
  // A turned hem lies on the piece edge to edge, so its end is the mirror of what it covers.
  test('a hem under a slanting side is cut as its mirror', () => {
    const short = draft('blouse', body(), { ...standardChoices(), lengthBelowWaist: mm(130) })
    const piece = pieceOf(short, 'back')
    const y = namedPoint(piece, 'Y')
    const cutSide = cut(piece, MUSLIN_ALLOWANCES).edges.find((e) => e.name === 'side')?.path ?? []
    const foot = pathEnd(cutSide)
    expect(foot.y).toBeCloseTo(y.y + 40, 6)
    // Where the cut edge passes a level, by thousands of chords.
    const chain = cutSide.flatMap((s) => Array.from({ length: 4000 }, (_, i) => at(s, i / 4000)))
    const near = (level: number): number => {
      const i = chain.findIndex((p, k) => p.y <= level && (chain[k + 1]?.y ?? -Infinity) > level)
      const [p, q] = [chain[i], chain[i + 1]]
      if (!p || !q) throw new Error(`the cut edge does not pass ${level}`)
      return p.x + ((q.x - p.x) * (level - p.y)) / (q.y - p.y)
    }
    const slant = near(y.y) - near(y.y - 4)
    expect(Math.abs(slant)).toBeGreaterThan(0.2)
    // Mirror: as far in again below the hem line as above it, to a tenth over 4 mm.
    expect(Math.abs(near(y.y) - near(y.y + 4) - slant)).toBeLessThan(0.1)
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
  test('a curve too tight for its allowance is named', () => {
    const front = pieceOf(drafted(), 'front')
    const wide = cuttingLine(front, { ...MUSLIN_ALLOWANCES, neck: mm(100) })
    expect(wide.ok).toBe(false)
    if (!wide.ok) expect(wide.reason).toContain('neck edge')
  })
})

/** Caps of darts, worked by hand and folded by plain trigonometry. */
import { describe, expect, test } from 'vitest'
import { standardChoices } from '../../src/draft/choices.ts'
import { pieceOf } from '../../src/draft/draft.ts'
import { draft } from '../../src/draft/make.ts'
import { edge } from '../../src/draft/piece.ts'
import { pathEnd, pathStart, type Path } from '../../src/geometry/path.ts'
import { point, type Point } from '../../src/geometry/point.ts'
import { line } from '../../src/geometry/segment.ts'
import { cuttingLine, MUSLIN_ALLOWANCES } from '../../src/output/allowance.ts'
import { dartCap, type DartCap, type FoldsTowards } from '../../src/output/dart-cap.ts'
import { mm } from '../../src/units/length.ts'
import { body, FULL } from '../bodies.ts'
import { chordsOf, nearestOn, type Spot } from './reference-offset.ts'

function capOf(
  upper: Path,
  lower: Path,
  tip: Point,
  by: number,
  towards: FoldsTowards = 'second',
): DartCap {
  const cap = dartCap(upper, lower, tip, by, towards)
  if (!cap) throw new Error('no cap')
  return cap
}
const near = (p: Spot, x: number, y: number): void => {
  expect(p.x).toBeCloseTo(x, 4)
  expect(p.y).toBeCloseTo(y, 4)
}

// A plumb side at x = 100, tip at (0, 50), mouth from (100, 40) to (100, 60): half the dart has the
// slope 10/100 = 0.1. Moved out by 10, the first leg is met at x = 110, where it stands at 39.
// Closed, the lower side leans out by twice the half angle: tan 2φ = 0.2/(1 − 0.01) = 0.20202. The
// crease is level with the tip, 11 below 39, so it is met 11 · 0.20202 = 2.2222 farther out.
describe('a dart square to a plumb side', () => {
  const upper = [line(point(100, 0), point(100, 40))]
  const lower = [line(point(100, 60), point(100, 200))]
  const tip = point(0, 50)
  test('has the corners worked by hand', () => {
    const cap = capOf(upper, lower, tip, 10)
    near(pathEnd(cap.first), 110, 39)
    near(pathStart(cap.cap), 110, 39)
    near(cap.crease, 112.2222, 50)
    near(pathEnd(cap.cap), 110, 61)
    near(pathStart(cap.second), 110, 61)
    near(pathEnd(cap.second), 110, 200)
  })
  test('is the same whichever way it is folded, being square', () => {
    const cap = capOf(upper, lower, tip, 10, 'first')
    near(cap.crease, 112.2222, 50)
    near(pathStart(cap.second), 110, 61)
  })
  // Without allowance the mouth itself is capped: legs of 100.4988, and the crease at
  // x = 100 + 10 · 0.20202 = 102.0202.
  test('is capped on the seam line where there is no allowance', () => {
    const cap = capOf(upper, lower, tip, 0)
    near(pathStart(cap.cap), 100, 40)
    near(cap.crease, 102.0202, 50)
    near(pathEnd(cap.cap), 100, 60)
  })
  test('is not made where the edge ends before the fold does', () => {
    expect(
      dartCap(upper, [line(point(100, 60), point(100, 62))], tip, 10, 'second'),
    ).toBeUndefined()
  })
})

/** Paper folded by sine and cosine alone. */
const turned = (p: Spot, about: Spot, angle: number): Spot => ({
  x: about.x + Math.cos(angle) * (p.x - about.x) - Math.sin(angle) * (p.y - about.y),
  y: about.y + Math.sin(angle) * (p.x - about.x) + Math.cos(angle) * (p.y - about.y),
})
const overCrease = (p: Spot, tip: Spot, crease: Spot): Spot => {
  const a = Math.atan2(crease.y - tip.y, crease.x - tip.x)
  const q = turned(p, tip, -a)
  return turned({ x: q.x, y: 2 * tip.y - q.y }, tip, a)
}

// The check she makes with the muslin in her hands: fold the dart, and no edge stands out.
describe('folded, the cap lies on the cutting line it covers', () => {
  const upper = [line(point(90, 0), point(100, 40))]
  const lower = [line(point(102, 60), point(125, 200))]
  const tip = point(0, 45)
  const angleOf = (p: Point): number => Math.atan2(p.y - tip.y, p.x - tip.x)
  const [a, b] = [angleOf(point(100, 40)), angleOf(point(102, 60))]

  test('pressed towards the second side', () => {
    const cap = capOf(upper, lower, tip, 25, 'second')
    // The lower side turned up until the legs meet.
    const under = chordsOf(cap.second, 1).map((p) => turned(p, tip, a - b))
    for (const p of chordsOf(cap.cap, 40)) {
      const flat = angleOf(p as Point) > (a + b) / 2 ? overCrease(p, tip, cap.crease) : p
      expect(nearestOn(under, flat).distance).toBeLessThan(1e-6)
    }
  })
  test('pressed towards the first side', () => {
    const cap = capOf(upper, lower, tip, 25, 'first')
    const under = chordsOf(cap.first, 1).map((p) => turned(p, tip, b - a))
    for (const p of chordsOf(cap.cap, 40)) {
      const flat = angleOf(p as Point) < (a + b) / 2 ? overCrease(p, tip, cap.crease) : p
      expect(nearestOn(under, flat).distance).toBeLessThan(1e-6)
    }
  })
  test('legs of unlike length are closed on the first one', () => {
    const cap = capOf(upper, lower, tip, 25, 'second')
    const out = (p: Spot): number => Math.hypot(p.x - tip.x, p.y - tip.y)
    expect(out(pathStart(cap.cap))).toBeCloseTo(out(pathEnd(cap.cap)), 6)
  })
})

describe('on a piece', () => {
  // Invented numbers of a full bust give a side bust dart.
  const front = pieceOf(draft('blouse', body({}, FULL), standardChoices()), 'front')
  const dart = front.edgeDarts[0]
  if (!dart) throw new Error('no side bust dart')

  test('a side bust dart is pressed down and lies flush, curved side and all', () => {
    const cut = cuttingLine(front, MUSLIN_ALLOWANCES)
    if (!cut.ok) throw new Error(cut.reason)
    const end = cut.darts.find((d) => d.dart === 'bustDart')
    if (!end) throw new Error('no end of the dart')
    const angle = (p: Spot): number => Math.atan2(p.y - dart.tip.y, p.x - dart.tip.x)
    const [a, b] = [angle(dart.upper), angle(dart.lower)]
    const side = chordsOf(cut.edges.find((e) => e.name === 'side')?.path ?? [], 400)
    const under = side.filter((p) => angle(p) > b - 1e-9).map((p) => turned(p, dart.tip, a - b))
    const fold = side.filter((p) => angle(p) >= a && angle(p) <= b)
    expect(fold.length).toBeGreaterThan(3)
    for (const p of fold) {
      const flat = angle(p) > (a + b) / 2 ? overCrease(p, dart.tip, end.crease) : p
      expect(nearestOn(under, flat).distance).toBeLessThan(0.005)
    }
  })
  test('the legs run on in their own lines, and both are notched', () => {
    const cut = cuttingLine(front, MUSLIN_ALLOWANCES)
    if (!cut.ok) throw new Error(cut.reason)
    const [first, second] = cut.darts[0]?.legs ?? []
    for (const [leg, mouth] of [
      [first, dart.upper],
      [second, dart.lower],
    ] as const) {
      if (!leg) throw new Error('no leg')
      const [from, to] = [leg[0].from, leg[0].to]
      near(from, mouth.x, mouth.y)
      const off =
        (to.x - dart.tip.x) * (mouth.y - dart.tip.y) - (to.y - dart.tip.y) * (mouth.x - dart.tip.x)
      expect(Math.abs(off) / Math.hypot(mouth.x - dart.tip.x, mouth.y - dart.tip.y)).toBeLessThan(
        1e-6,
      )
    }
    expect(cut.notches.filter((n) => n.edge === 'side')).toHaveLength(3)
  })

  // A hem at 100 below a dart whose legs would meet at (55, 150). Turned up, the hem shows the dart
  // as its mirror: legs from (55, 50) through (60, 100) and (50, 100). 40 below the hem they are
  // 9 to each side of 55, and the crease lies 9 · 0.20202 = 1.8182 lower.
  test('a waist dart that runs out at the hem is mirrored in the hem and capped', () => {
    const piece = {
      ...front,
      edgeDarts: [],
      darts: [
        {
          name: 'waistDart' as const,
          upperTip: point(55, 0),
          inner: point(47, 70),
          outer: point(63, 70),
          lowerTip: point(55, 150),
          open: { inner: point(50, 100), outer: point(60, 100) },
        },
      ],
      edges: [
        { name: 'overarm', role: 'seam', path: [line(point(0, 0), point(120, 0))] },
        { name: 'side', role: 'seam', path: [line(point(120, 0), point(120, 100))] },
        { name: 'hem', role: 'hem', path: [line(point(120, 100), point(0, 100))] },
        { name: 'centre', role: 'fold', path: [line(point(0, 100), point(0, 0))] },
      ],
    } as const
    const cut = cuttingLine(piece, { ...MUSLIN_ALLOWANCES, hem: mm(40) })
    if (!cut.ok) throw new Error(cut.reason)
    const [end] = cut.darts
    if (!end) throw new Error('no end of the dart')
    near(end.legs[0][0].from, 60, 100)
    near(end.legs[0][0].to, 64, 140)
    near(end.legs[1][0].to, 46, 140)
    near(end.crease, 55, 141.8182)
    expect(edge(piece, 'hem').path).toHaveLength(1)
  })
})

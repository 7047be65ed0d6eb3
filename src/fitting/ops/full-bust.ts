/**
 * A fuller or smaller bust on the drawn front. The hinge H lies a third up the arm edge; the upper
 * side part turns about H by φ, the lower side part goes with the bust tip's end of it, and the
 * lower centre drops to match. With dx, dy from bust tip to H and L to the side along the dart:
 * width = dy·sin φ + dx·(1 − cos φ), length = dx·sin φ − dy·(1 − cos φ), dart = 2L·sin(φ/2).
 * The waist dart takes the width up, where there is one. Source: public alteration lessons; exact
 * geometry worked out in `rotation.ts`.
 */
import { bridged } from '../../geometry/blend.ts'
import { pathLength } from '../../geometry/length.ts'
import { movedPath, placeAt, splitPath, turnedPath } from '../../geometry/path.ts'
import { add, distance, point, rotate, subtract, type Point } from '../../geometry/point.ts'
import { line } from '../../geometry/segment.ts'
import { DART_MOST } from '../../draft/blocks/waist-plan.ts'
import { edge, withEdge, type Dart, type Piece } from '../../draft/piece.ts'
import { mm } from '../../units/length.ts'
import { armEdge, hingeOf, pivotOf, sideMouth } from '../landmarks.ts'
import { fullBust } from '../rotation.ts'
import { atMouth, withSideDart } from './across.ts'
import { truedDart, truedEdgeDart } from './field.ts'
import { made, refused, withHalf, type Halves, type Made } from './outcome.ts'

/** The arm edge is drawn anew so far either side of the hinge, mm. Common practice, no source. */
const ANEW = 40
/** A dart narrower than this is ease and no dart, mm. */
const DART_LEAST = 2

export function bustChanged(halves: Halves, by: number): Made {
  const apex = pivotOf(halves.front)
  if (by < 0 && !halves.front.edgeDarts.some((d) => d.name === 'bustDart'))
    return refused({ id: 'noSideDart', piece: 'front' })
  const opened = withSideDart(halves.front, 0)
  const mouth = sideMouth(halves.front)
  if (!opened || !mouth) return refused({ id: 'noPlace', piece: 'front', edge: 'side' })
  const { piece: front, dart, new: fresh } = opened
  const hinge = hingeOf(front)
  const [dx, dy] = [hinge.x - apex.x, apex.y - hinge.y]
  const out = fullBust(by, dx, dy, distance(apex, mouth))
  if (!out || dx <= 0 || dy <= 0)
    return refused({ id: 'noPlace', piece: 'front', edge: armEdge(front) })
  // Clockwise on the page carries the bust tip's end outwards and down about a hinge above it.
  const turn = -out.turn
  const shift = subtract(rotate(apex, hinge, turn), apex)
  const lower = point(shift.x, shift.y)
  const centre = point(0, shift.y)
  const go = (p: Point): Point => add(p, lower)

  const arm = armEdge(front)
  const path = edge(front, arm).path
  const [above, below] = splitPath(path, placeAt(path, pathLength(path) * (1 - 1 / 3)))
  const armPath = bridged(above, turnedPath(below, hinge, turn), ANEW)
  const side = edge(front, 'side').path
  const [upperSide, lowerSide] = atMouth(side, dart)
  const [upper, low] = [rotate(dart.upper, hinge, turn), go(dart.lower)]
  const width = distance(upper, low)
  if (low.y - upper.y < DART_LEAST)
    return refused({ id: 'dartTooSmall', piece: 'front', to: mm(width) })
  const hem = edge(front, 'hem').path
  const dartHem = (p: Point): Point =>
    add(p, p.x > (front.darts[0]?.lowerTip.x ?? apex.x) ? lower : centre)
  const waist = front.darts.map((d, i) => (i === 0 ? widened(d, lower, centre) : shifted(d, lower)))
  if (waist[0] && distance(waist[0].inner, waist[0].outer) > DART_MOST.front + 0.1)
    return refused({
      id: 'dartTooWide',
      to: mm(distance(waist[0].inner, waist[0].outer)),
      most: mm(DART_MOST.front),
    })
  if (waist[0] && by < 0 && waist[0].outer.x - waist[0].inner.x < DART_LEAST)
    return refused({
      id: 'dartTooSmall',
      piece: 'front',
      to: mm(waist[0].outer.x - waist[0].inner.x),
    })
  const place = (name: string, p: Point): Point => {
    if (name === 'apex') return p
    if (name === 'U' || name === 'Q') return rotate(p, hinge, turn)
    if (name === 'J1') return upper
    if (name === 'J2') return low
    if (p.y <= apex.y + 0.01) return p
    if (p.x > apex.x + 0.01 && p.y > dart.upper.y) return go(p)
    return p.y > apex.y ? add(p, centre) : p
  }
  const whole: Piece = {
    ...front,
    darts: waist,
    edgeDarts: front.edgeDarts.map((d) =>
      d.name === 'bustDart'
        ? truedEdgeDart({
            ...d,
            upper,
            lower: low,
            tip: add(d.tip, point(shift.x / 2, shift.y / 2)),
            turned: (d.turned ?? 0) + out.turn,
          })
        : d,
    ),
    points: Object.fromEntries(Object.entries(front.points).map(([n, p]) => [n, place(n, p)])),
    levels: front.levels.map((l) =>
      l.from.y > apex.y + 0.01
        ? { ...l, from: add(l.from, centre), to: add(l.to, point(0, shift.y)) }
        : l,
    ),
  }
  const edges = withEdge(
    withEdge(withEdge(front, arm, armPath), 'side', [
      ...turnedPath(upperSide, hinge, turn),
      line(upper, low),
      ...movedPath(lowerSide, lower),
    ]),
    'hem',
    hemOf(hem, dartHem),
  ).edges.map((e) =>
    e.name === 'centre'
      ? { ...e, path: hemOf(e.path, (p) => (p.y > apex.y + 0.01 ? add(p, centre) : p)) }
      : e,
  )
  return made(withHalf(halves, { ...whole, edges }), ...(fresh ? ['createdSideDart'] : []))
}

const hemOf = (path: Piece['edges'][number]['path'], go: (p: Point) => Point) =>
  path.map((s) => {
    if (s.kind === 'line') return line(go(s.from), go(s.to))
    if (s.kind === 'cubic')
      return { ...s, from: go(s.from), c1: go(s.c1), c2: go(s.c2), to: go(s.to) }
    return { ...s, centre: go(s.centre) }
  })

/** The inner leg goes with the centre, the outer with the side; both tips stay between them. */
function widened(d: Dart, lower: Point, centre: Point): Dart {
  const half = point(lower.x / 2, lower.y)
  return truedDart({
    ...d,
    inner: add(d.inner, centre),
    outer: add(d.outer, lower),
    upperTip: add(d.upperTip, point(lower.x / 2, 0)),
    lowerTip: add(d.lowerTip, half),
    ...(d.open
      ? { open: { inner: add(d.open.inner, centre), outer: add(d.open.outer, lower) } }
      : {}),
  })
}
const shifted = (d: Dart, by: Point): Dart => ({
  ...d,
  upperTip: add(d.upperTip, by),
  inner: add(d.inner, by),
  outer: add(d.outer, by),
  lowerTip: add(d.lowerTip, by),
  ...(d.open ? { open: { inner: add(d.open.inner, by), outer: add(d.open.outer, by) } } : {}),
})

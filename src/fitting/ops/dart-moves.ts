/**
 * Darts moved, lengthened and widened by themselves. A dart that moves keeps its intake; one that
 * takes in more does so on both legs alike; its tips stay between the legs. Common practice.
 */
import { crossings } from '../../geometry/intersect.ts'
import { pathEnd, splitPath, movedPath, type Path } from '../../geometry/path.ts'
import { add, distance, point, scale, subtract, unit, type Point } from '../../geometry/point.ts'
import { line } from '../../geometry/segment.ts'
import { DART_MOST } from '../../draft/blocks/waist-plan.ts'
import {
  edge,
  isHalf,
  namedPoint,
  withEdge,
  type Dart,
  type EdgeDart,
  type Piece,
} from '../../draft/piece.ts'
import { mm } from '../../units/length.ts'
import { atMouth } from './across.ts'
import { truedEdgeDart } from './field.ts'
import type { Operation } from './operation.ts'
import { halfOf, made, refused, withHalf, type Halves, type Made } from './outcome.ts'

/** A dart keeps so far from the ends of its edge and from other darts, mm. */
const CLEAR = 10

export function dartMoved(halves: Halves, op: Extract<Operation, { op: 'GROUP' }>): Made {
  const piece = halfOf(halves, op.piece)
  const by = point(op.out, op.down)
  const waist = piece.darts.find((d) => d.name === op.dart)
  if (waist) return waistDartMoved(halves, piece, waist, by)
  const dart = piece.edgeDarts.find((d) => d.name === op.dart)
  if (!dart) return refused({ id: 'noDart', piece: piece.id })
  return dart.edge === 'side'
    ? sideDartMoved(halves, piece, dart, by)
    : refused({ id: 'noPlace', piece: piece.id, edge: dart.edge })
}

/** Across the whole dart moves; down only its upper tip does, because its mouth is the waist. */
function waistDartMoved(halves: Halves, piece: Piece, dart: Dart, by: Point): Made {
  const across = point(by.x, 0)
  const others = piece.darts.filter((d) => d !== dart)
  const now: Dart = {
    ...dart,
    inner: add(dart.inner, across),
    outer: add(dart.outer, across),
    upperTip: add(dart.upperTip, by),
    lowerTip: add(dart.lowerTip, across),
    ...(dart.open
      ? { open: { inner: add(dart.open.inner, across), outer: add(dart.open.outer, across) } }
      : {}),
  }
  const side = namedPoint(piece, 'W').x
  const room = others.every(
    (d) => d.inner.x > now.outer.x + CLEAR || d.outer.x < now.inner.x - CLEAR,
  )
  if (
    now.inner.x < CLEAR ||
    now.outer.x > side - CLEAR ||
    !room ||
    now.inner.y - now.upperTip.y < LEG_LEAST
  )
    return refused({ id: 'noPlace', piece: piece.id, edge: 'side' })
  return made(
    withHalf(halves, {
      ...piece,
      darts: piece.darts.map((d) => (d === dart ? now : d)),
      points: movedPoints(piece, (n, p) =>
        n === (dart.name === 'waistDart' ? 'M' : 'O')
          ? add(p, across)
          : n === 'apex' && dart.name === 'waistDart'
            ? add(p, by)
            : p,
      ),
    }),
  )
}
const LEG_LEAST = 40

function sideDartMoved(halves: Halves, piece: Piece, dart: EdgeDart, by: Point): Made {
  const side = edge(piece, 'side').path
  const [above, below] = atMouth(side, dart)
  const mouth = subtract(dart.lower, dart.upper)
  const shut: Path = [...above, ...movedPath(below, scale(mouth, -1))]
  const at = dart.upper.y + by.y
  const [top, waist] = [namedPoint(piece, 'U').y, namedPoint(piece, 'W').y - mouth.y]
  if (at < top + CLEAR || at > waist - CLEAR)
    return refused({ id: 'noPlace', piece: piece.id, edge: 'side' })
  const hit = crossings(shut, line(point(dart.upper.x - 80, at), point(dart.upper.x + 80, at)))[0]
  if (!hit) return refused({ id: 'noPlace', piece: piece.id, edge: 'side' })
  const [up, low] = splitPath(shut, hit.place)
  const upper = pathEnd(up)
  const lower = add(upper, mouth)
  const across = subtract(upper, dart.upper)
  const tip = add(dart.tip, point(by.x, across.y))
  const now = truedEdgeDart({ ...dart, upper, lower, tip: add(tip, point(0, 0)) })
  const named: Readonly<Record<string, Point>> = {
    J1: upper,
    J2: lower,
    J3: scale(add(upper, lower), 0.5),
    J4: now.tip,
  }
  return made(
    withHalf(halves, {
      ...withEdge(piece, 'side', [...up, line(upper, lower), ...movedPath(low, mouth)]),
      edgeDarts: piece.edgeDarts.map((d) => (d === dart ? now : d)),
      points: movedPoints(piece, (n, p) =>
        n === 'J' ? add(p, point(0, across.y)) : (named[n] ?? p),
      ),
    }),
  )
}

const movedPoints = (piece: Piece, go: (name: string, p: Point) => Point): Piece['points'] =>
  Object.fromEntries(Object.entries(piece.points).map(([n, p]) => [n, go(n, p)]))

export function dartLength(halves: Halves, op: Extract<Operation, { op: 'DARTLEN' }>): Made {
  const piece = halfOf(halves, op.piece)
  const waist = piece.darts.find((d) => d.name === op.dart)
  if (waist) {
    const way = unit(subtract(scale(add(waist.inner, waist.outer), 0.5), waist.upperTip))
    const upperTip = add(waist.upperTip, scale(way, op.by))
    if (distance(upperTip, waist.inner) < LEG_LEAST || upperTip.y > waist.inner.y - LEG_LEAST)
      return refused({
        id: 'dartTooSmall',
        piece: piece.id,
        to: mm(distance(upperTip, waist.inner)),
      })
    return made(
      withHalf(halves, {
        ...piece,
        darts: piece.darts.map((d) => (d === waist ? { ...d, upperTip } : d)),
      }),
    )
  }
  const dart = piece.edgeDarts.find((d) => d.name === op.dart)
  if (!dart) return refused({ id: 'noDart', piece: piece.id })
  const way = unit(subtract(scale(add(dart.upper, dart.lower), 0.5), dart.tip))
  const tip = add(dart.tip, scale(way, op.by))
  if (distance(tip, dart.upper) < LEG_LEAST || distance(tip, dart.upper) < op.by)
    return refused({ id: 'dartTooSmall', piece: piece.id, to: mm(distance(tip, dart.upper)) })
  return made(
    withHalf(halves, {
      ...piece,
      edgeDarts: piece.edgeDarts.map((d) => (d === dart ? truedEdgeDart({ ...d, tip }) : d)),
      points: movedPoints(piece, (n, p) => (n === 'J4' && dart.name === 'bustDart' ? tip : p)),
    }),
  )
}

/** Half of the change on either leg, at the mouth of a diamond dart. */
export function dartIntake(halves: Halves, op: Extract<Operation, { op: 'DARTSHAPE' }>): Made {
  const piece = halfOf(halves, op.piece)
  const dart = piece.darts.find((d) => d.name === op.dart)
  if (!dart) return refused({ id: 'noDart', piece: piece.id })
  const mouth = distance(dart.inner, dart.outer)
  const to = mouth + op.by
  const most = isHalf(piece.id) ? DART_MOST[piece.id] : Infinity
  if (to > most + 0.1) return refused({ id: 'dartTooWide', to: mm(to), most: mm(most) })
  if (to < 0) return refused({ id: 'dartTooSmall', piece: piece.id, to: mm(0) })
  const half = scale(unit(subtract(dart.outer, dart.inner)), op.by / 2)
  const grown = (d: { inner: Point; outer: Point }, part: number) => ({
    inner: add(d.inner, scale(half, -part)),
    outer: add(d.outer, scale(half, part)),
  })
  const open = dart.open && grown(dart.open, distance(dart.open.inner, dart.open.outer) / mouth)
  const now: Dart = { ...dart, ...grown(dart, 1), ...(open ? { open } : {}) }
  return made(withHalf(halves, { ...piece, darts: piece.darts.map((d) => (d === dart ? now : d)) }))
}

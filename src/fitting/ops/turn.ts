/**
 * A part turned about bust tip or blade: a wedge closed at an edge and taken up by a dart. The
 * part is the run of the outline from the wedge to the dart on the side away from the centre; it
 * turns whole, so every edge on it keeps its length. θ = 2·asin(w / 2r); the dart opens by
 * 2R·sin(θ/2). Source: pivot method of pattern making; worked out. Over 200 lines because the three
 * darts that may take a turn up are drawn alike and stand beside each other.
 */
import { contains } from '../../geometry/contains.ts'
import {
  endTangent,
  flatten,
  pathEnd,
  pathStart,
  turnedPath,
  type Path,
} from '../../geometry/path.ts'
import {
  add,
  between,
  distance,
  point,
  quarterTurn,
  rotate,
  scale,
  subtract,
  unit,
  type Point,
} from '../../geometry/point.ts'
import { cubic, line } from '../../geometry/segment.ts'
import { DART_ANGLE_MOST, DART_MOST } from '../../draft/blocks/waist-plan.ts'
import {
  edge,
  isHalf,
  withEdge,
  type AnyDart,
  type Dart,
  type EdgeDart,
  type EdgeName,
  type Piece,
} from '../../draft/piece.ts'
import { mm } from '../../units/length.ts'
import { turnOf } from '../rotation.ts'
import { armEdge, overEdge, pivotOf } from '../landmarks.ts'
import { atMouth, withSideDart } from './across.ts'
import { closing } from './closing.ts'
import { truedDart, truedEdgeDart } from './field.ts'
import type { Operation } from './operation.ts'
import { halfOf, made, refused, withHalf, type Halves, type Made } from './outcome.ts'

export function turnedAt(halves: Halves, op: Extract<Operation, { op: 'ROT' }>): Made {
  const piece = halfOf(halves, op.piece)
  const pivot = pivotOf(piece)
  if (!piece.edges.some((e) => e.name === op.edge))
    return refused({ id: 'noEdge', piece: piece.id, edge: op.edge })
  const receiver = receiverOn(piece, pivot, op.into, op.edge)
  if (!receiver) return refused({ id: 'noDart', piece: piece.id })
  // Which way the part turns: its own ruling comes to lie on the other.
  const follows = receiver.at === 'after' || receiver.at === 'hem'
  const wedge = { name: op.edge, pivot, along: op.along, width: op.width, follows }
  const done = closing(edge(piece, op.edge).path, wedge)
  if (!done.ok) return done
  const { closed, angle, spot } = done.closing
  const go = (p: Point): Point => rotate(p, pivot, angle)
  const on = (part: Path): Path => turnedPath(part, pivot, angle)
  const turnedPiece = receiver.take(receiver.piece, on, go, angle, op.edge, closed, spot)
  if (!turnedPiece.ok) return turnedPiece
  return made(withHalf(halves, turnedPiece.piece), ...(receiver.fresh ? [receiver.fresh] : []))
}

type Taken = { readonly ok: true; readonly piece: Piece } | Extract<Made, { ok: false }>
interface Receiver {
  readonly piece: Piece
  readonly fresh?: string
  /** Clockwise round the outline the dart lies after the wedge, before it, or at the hem. */
  readonly at: 'after' | 'before' | 'hem'
  readonly take: (
    piece: Piece,
    on: (p: Path) => Path,
    go: (p: Point) => Point,
    angle: number,
    closedEdge: EdgeName,
    closed: Path,
    spot: Point,
  ) => Taken
}

function receiverOn(
  piece: Piece,
  pivot: Point,
  into: AnyDart,
  edgeName: EdgeName,
): Receiver | undefined {
  if (into === 'bustDart') {
    const opened = withSideDart(piece, 0)
    if (!opened) return undefined
    return {
      piece: opened.piece,
      ...(opened.new ? { fresh: 'createdSideDart' } : {}),
      at: 'after',
      take: (p, on, go, angle, name, closed, spot) =>
        takenBySide(p, pivot, on, go, angle, name, closed, spot),
    }
  }
  if (into === 'shoulderDart') {
    const opened = withShoulderDart(piece, pivot)
    return {
      piece: opened.piece,
      ...(opened.new ? { fresh: 'createdShoulderDart' } : {}),
      at: edgeName === 'neck' ? 'after' : 'before',
      take: (p, on, go, _, name, closed, spot) => takenByShoulder(p, on, go, name, closed, spot),
    }
  }
  const dart = piece.darts[0] ?? newWaistDart(piece, pivot)
  if (!dart) return undefined
  const own = piece.darts.length > 0
  return {
    piece: own ? piece : { ...piece, darts: [dart] },
    ...(own ? {} : { fresh: 'createdWaistDart' }),
    at: 'hem',
    take: (p, on, go, _, name, closed, spot) => takenByWaist(p, pivot, on, go, name, closed, spot),
  }
}

/** Edges of the run from the wedge to the hem, clockwise. */
function after(piece: Piece, name: EdgeName): readonly EdgeName[] {
  const order: readonly EdgeName[] = ['neck', overEdge(piece), armEdge(piece), 'side']
  return order.slice(order.indexOf(name) + 1)
}

function takenBySide(
  piece: Piece,
  pivot: Point,
  on: (p: Path) => Path,
  go: (p: Point) => Point,
  angle: number,
  name: EdgeName,
  closed: Path,
  spot: Point,
): Taken {
  const dart = piece.edgeDarts.find((d) => d.name === 'bustDart')
  if (!dart) return { ok: false, why: { id: 'noDart', piece: piece.id } }
  const run = after(piece, name)
  const [above, below] = atMouth(edge(piece, 'side').path, dart)
  const upper = go(dart.upper)
  const open = turnedBetween(pivot, dart.lower, upper)
  if (open < 0.2 * MOUTH_LEAST)
    return { ok: false, why: { id: 'dartTooSmall', piece: 'front', to: mm(Math.max(0, open)) } }
  const mouth = distance(upper, dart.lower)
  const leg = distance(dart.tip, dart.lower)
  if (
    mouth >
    Math.max(2 * leg * Math.sin(DART_ANGLE_MOST / 2), distance(dart.upper, dart.lower)) + 0.1
  )
    return {
      ok: false,
      why: {
        id: 'dartTooWide',
        to: mm(mouth),
        most: mm(2 * leg * Math.sin(DART_ANGLE_MOST / 2)),
        dart: 'bustDart',
      },
    }
  const inPart = partTest(piece, pivot, spot, dart.upper)
  const whole: Piece = {
    ...piece,
    edges: piece.edges.map((e) => {
      if (e.name === name) return { ...e, path: closed }
      if (e.name === 'side')
        return { ...e, path: [...on(above), line(upper, dart.lower), ...below] }
      return run.includes(e.name) ? { ...e, path: on(e.path) } : e
    }),
    edgeDarts: piece.edgeDarts.map((d) =>
      d === dart
        ? truedEdgeDart({ ...d, upper, turned: (d.turned ?? 0) - angle })
        : d.edge === 'shoulder' || d.edge === 'overarm'
          ? turnedEdgeDart(d, inPart, go)
          : d,
    ),
    points: Object.fromEntries(
      Object.entries(piece.points).map(([n, p]) => [
        n,
        n === 'J1' ? upper : n === 'apex' || !inPart(p) ? p : go(p),
      ]),
    ),
  }
  return { ok: true, piece: whole }
}
const MOUTH_LEAST = 5
/** How far apart two places are, signed by whether the upper lies above the lower. */
const turnedBetween = (_pivot: Point, lower: Point, upper: Point): number =>
  upper.y < lower.y + 0.01 ? distance(lower, upper) : -distance(lower, upper)

function takenByShoulder(
  piece: Piece,
  on: (p: Path) => Path,
  go: (p: Point) => Point,
  name: EdgeName,
  closed: Path,
  spot: Point,
): Taken {
  const dart = piece.edgeDarts.find((d) => d.name === 'shoulderDart')
  if (!dart) return { ok: false, why: { id: 'noDart', piece: piece.id } }
  const over = overEdge(piece)
  const [inner, outer] = atMouth(edge(piece, over).path, dart)
  const atNeck = name === 'neck'
  // From the neck the inner part of the shoulder turns, from the armhole the outer.
  const [a, b] = atNeck ? [go(dart.upper), dart.lower] : [dart.upper, go(dart.lower)]
  const path = atNeck ? [...on(inner), line(a, b), ...outer] : [...inner, line(a, b), ...on(outer)]
  if (b.x - a.x < 0.5)
    return {
      ok: false,
      why: { id: 'dartTooSmall', piece: piece.id, to: mm(Math.max(0, b.x - a.x)) },
    }
  const mouth = distance(a, b)
  if (mouth > SHOULDER_DART_MOST)
    return {
      ok: false,
      why: {
        id: 'dartTooWide',
        to: mm(mouth),
        most: mm(SHOULDER_DART_MOST),
        dart: 'shoulderDart',
      },
    }
  const inPart = partTest(piece, pivotOf(piece), spot, atNeck ? dart.upper : dart.lower)
  return {
    ok: true,
    piece: {
      ...piece,
      edges: piece.edges.map((e) =>
        e.name === name ? { ...e, path: closed } : e.name === over ? { ...e, path } : e,
      ),
      edgeDarts: piece.edgeDarts.map((d) =>
        d === dart ? truedEdgeDart({ ...d, upper: a, lower: b }) : d,
      ),
      points: Object.fromEntries(
        Object.entries(piece.points).map(([n, p]) => [
          n,
          n === 'V3' || n === 'O1' || !inPart(p) ? p : go(p),
        ]),
      ),
    },
  }
}
/** A back shoulder dart holds this at the most, mm: 12 to 18 from memory, eased past it. */
const SHOULDER_DART_MOST = 26

function takenByWaist(
  piece: Piece,
  pivot: Point,
  on: (p: Path) => Path,
  go: (p: Point) => Point,
  name: EdgeName,
  closed: Path,
  spot: Point,
): Taken {
  const [dart, ...others] = piece.darts
  if (!dart) return { ok: false, why: { id: 'noDart', piece: piece.id } }
  const run = after(piece, name)
  const outer = go(dart.outer)
  const wider = truedDart({
    ...dart,
    outer,
    ...(dart.open ? { open: { inner: dart.open.inner, outer: go(dart.open.outer) } } : {}),
  })
  const mouth = outer.x > dart.inner.x ? distance(dart.inner, outer) : -distance(dart.inner, outer)
  const most = mostAtMouth(piece, wider)
  if (mouth > most + 0.1)
    return { ok: false, why: { id: 'dartTooWide', to: mm(mouth), most: mm(most) } }
  if (mouth < 1)
    return { ok: false, why: { id: 'dartTooSmall', piece: piece.id, to: mm(Math.max(0, mouth)) } }
  const slit = point(dart.lowerTip.x, pathEnd(edge(piece, 'side').path).y)
  const side = on(edge(piece, 'side').path)
  const inPart = partTest(piece, pivot, spot, slit)
  return {
    ok: true,
    piece: {
      ...piece,
      edges: piece.edges.map((e) => {
        if (e.name === name) return { ...e, path: closed }
        if (e.name === 'hem') return { ...e, path: hemAnew(piece, side, slit) }
        return run.includes(e.name) ? { ...e, path: on(e.path) } : e
      }),
      darts: [wider, ...others.map((d) => turnedDart(d, go))],
      edgeDarts: piece.edgeDarts.map((d) => turnedEdgeDart(d, inPart, go)),
      points: Object.fromEntries(
        Object.entries(piece.points).map(([n, p]) => [
          n,
          n === 'M'
            ? between(wider.inner, wider.outer, 0.5)
            : n === 'apex' || !inPart(p)
              ? p
              : go(p),
        ]),
      ),
    },
  }
}

const mostAtMouth = (piece: Piece, dart: Dart): number =>
  Math.min(
    isHalf(piece.id) ? DART_MOST[piece.id] : Infinity,
    2 * distance(dart.upperTip, dart.inner) * Math.sin(DART_ANGLE_MOST / 2),
  )

const turnedDart = (d: Dart, go: (p: Point) => Point): Dart => ({
  ...d,
  upperTip: go(d.upperTip),
  inner: go(d.inner),
  outer: go(d.outer),
  lowerTip: go(d.lowerTip),
  ...(d.open ? { open: { inner: go(d.open.inner), outer: go(d.open.outer) } } : {}),
})
const turnedEdgeDart = (
  d: EdgeDart,
  inPart: (p: Point) => boolean,
  go: (p: Point) => Point,
): EdgeDart =>
  inPart(between(d.upper, d.lower, 0.5)) || inPart(d.tip)
    ? { ...d, tip: go(d.tip), upper: go(d.upper), lower: go(d.lower) }
    : d

/** Is a point on the part: inside the outline on the far side of wedge, pivot and dart? */
function partTest(piece: Piece, pivot: Point, spot: Point, dartEnd: Point): (p: Point) => boolean {
  const ring = piece.edges.flatMap((e) => flatten(e.path, 0.5))
  const at = (p: Point): number =>
    ring.reduce((best, q, i) => (distance(q, p) < distance(ring[best]!, p) ? i : best), 0)
  const [a, b] = [at(spot), at(dartEnd)]
  const [from, to] = a < b ? [a, b] : [b, a]
  const part = [...ring.slice(from, to + 1), pivot]
  return (p) => distance(p, pivot) > 0.5 && p.x > CENTRE && contains(part, p, 0.2)
}
const CENTRE = 0.5

/** Straight from the fold to the slit, then a curve that reaches the turned side seam square. */
function hemAnew(piece: Piece, side: Path, slit: Point): Path {
  const fold = pathEnd(edge(piece, 'hem').path)
  const foot = pathEnd(side)
  const inwards = quarterTurn(endTangent(side))
  const handle = distance(foot, slit) / 3
  const towards = unit(subtract(fold, slit))
  return [
    cubic(foot, add(foot, scale(inwards, handle)), add(slit, scale(towards, -handle)), slit),
    line(slit, fold),
  ]
}

/** A shoulder dart with its mouth still shut, aimed at the blade. */
function withShoulderDart(piece: Piece, pivot: Point): { piece: Piece; new: boolean } {
  if (piece.edgeDarts.some((d) => d.name === 'shoulderDart')) return { piece, new: false }
  const over = overEdge(piece)
  const path = edge(piece, over).path
  const [a, b] = [pathStart(path), pathEnd(path)]
  const at =
    over === 'shoulder'
      ? between(a, b, 0.5)
      : add(a, scale(unit(subtract(b, a)), Math.min(60, distance(a, b) / 3)))
  const way = unit(subtract(pivot, at))
  const tip = add(at, scale(way, Math.min(SHOULDER_DART_LONG, distance(pivot, at) * 0.8)))
  const dart: EdgeDart = { name: 'shoulderDart', edge: over, tip, upper: at, lower: at }
  return {
    piece: {
      ...withEdge(piece, over, [line(a, at), line(at, at), line(at, b)]),
      edgeDarts: [...piece.edgeDarts, dart],
    },
    new: true,
  }
}
/** 60 to 80 mm, from memory. */
const SHOULDER_DART_LONG = 70

/** A waist dart with its mouth still shut, under the pivot. */
function newWaistDart(piece: Piece, pivot: Point): Dart | undefined {
  const c = piece.points['C']
  const hem = pathEnd(edge(piece, 'hem').path)
  if (!c || c.y - pivot.y < 60) return undefined
  const at = point(pivot.x, c.y)
  return {
    name: 'waistDart',
    upperTip: point(pivot.x, pivot.y + NEW_TIP),
    inner: at,
    outer: at,
    lowerTip: point(pivot.x, Math.min(c.y + NEW_LOW, hem.y - NEW_TIP)),
  }
}
const [NEW_TIP, NEW_LOW] = [25, 100]

/** Part of the waist dart turned into the side dart: what lies between them turns about the bust tip. */
export function split(halves: Halves, width: number): Made {
  const opened = withSideDart(halves.front, 0)
  const dart = halves.front.darts[0]
  if (!dart) return refused({ id: 'noDart', piece: 'front' })
  if (!opened) return refused({ id: 'noPlace', piece: 'front', edge: 'side' })
  const { piece, dart: bust, new: fresh } = opened
  const pivot = pivotOf(piece)
  const turn = turnOf(width, distance(pivot, dart.outer))
  if (turn === undefined || width >= distance(dart.inner, dart.outer))
    return refused({ id: 'dartTooSmall', piece: 'front', to: mm(0) })
  const go = (p: Point): Point => rotate(p, pivot, turn)
  const [above, below] = atMouth(edge(piece, 'side').path, bust)
  const low = turnedPath(below, pivot, turn)
  const lower = go(bust.lower)
  const side: Path = [...above, line(bust.upper, lower), ...low]
  const slit = point(dart.lowerTip.x, pathEnd(edge(piece, 'hem').path).y)
  const narrower = truedDart({
    ...dart,
    outer: go(dart.outer),
    ...(dart.open ? { open: { inner: dart.open.inner, outer: go(dart.open.outer) } } : {}),
  })
  const inPart = partTest(piece, pivot, bust.lower, slit)
  const front: Piece = {
    ...withEdge(withEdge(piece, 'side', side), 'hem', hemAnew(piece, side, slit)),
    darts: [narrower, ...piece.darts.slice(1).map((d) => turnedDart(d, go))],
    edgeDarts: piece.edgeDarts.map((d) =>
      d.name === 'bustDart' ? truedEdgeDart({ ...d, lower, turned: (d.turned ?? 0) + turn }) : d,
    ),
    points: Object.fromEntries(
      Object.entries(piece.points).map(([n, p]) => [
        n,
        n === 'M'
          ? between(narrower.inner, narrower.outer, 0.5)
          : n === 'J2'
            ? lower
            : n === 'apex' || !inPart(p)
              ? p
              : go(p),
      ]),
    ),
  }
  return made(withHalf(halves, front), ...(fresh ? ['createdSideDart'] : []))
}

/**
 * Closing a wedge at an edge: the cloth between two rulings to the apex is folded out, the part
 * below turns about the apex until the rulings meet, and the waist dart opens by as much.
 *
 * With w the width pinned at the edge and r the distance apex–edge, the turn is
 * θ = 2·asin(w / 2r); a point of the dart leg at distance R from the apex moves by 2R·sin(θ/2).
 * (w 12, r 150: 4.585°, 14.40 at R 180.) Where the edge runs oblique to the rulings it loses
 * less than w once it is drawn smooth: both numbers are given back.
 *
 * The slit runs from the hem up the middle of the dart to the apex, so the side seam turns whole
 * and keeps its length; the hem gains width below the dart and is drawn anew, square at both ends.
 */
import { bridged } from '../geometry/blend.ts'
import { crossings } from '../geometry/intersect.ts'
import { pathLength } from '../geometry/length.ts'
import {
  endTangent,
  lengthTo,
  pathEnd,
  pointAtLength,
  splitPath,
  turnedPath,
  type Path,
  type Place,
} from '../geometry/path.ts'
import {
  add,
  distance,
  heading,
  point,
  quarterTurn,
  rotate,
  scale,
  subtract,
  unit,
  type Point,
} from '../geometry/point.ts'
import { selfIntersections } from '../geometry/self-intersection.ts'
import { cubic, line } from '../geometry/segment.ts'
import { DART_ANGLE_MOST, DART_MOST } from '../draft/blocks/waist-plan.ts'
import {
  edge,
  isHalf,
  outline,
  withEdge,
  type Dart,
  type EdgeName,
  type Level,
  type Piece,
} from '../draft/piece.ts'
import { mm, type Mm } from '../units/length.ts'
import type { Why } from './refusal.ts'
import { openingAt, turnOf } from './rotation.ts'

/** How far either side of the wedge the edge is drawn anew. Common practice, no source. */
const DRAWN_ANEW = 70

export interface Wedge {
  readonly piece: Piece
  /** θ, radians. */
  readonly turn: number
  /** Pivot to the pinned place on the edge. */
  readonly r: Mm
  /** Pivot to the dart leg at the waist. */
  readonly R: Mm
  /** 2R·sin(θ/2): how far the outer dart leg moves at the waist. */
  readonly opens: Mm
  /** Edge length lost after it is drawn smooth. */
  readonly shortens: Mm
  /** Place on the edge, mm from its underarm end. */
  readonly from: Mm
}

export type WedgeOutcome =
  { readonly ok: true; readonly wedge: Wedge } | { readonly ok: false; readonly why: Why }

export function closeWedge(piece: Piece, name: EdgeName, along: number, width: Mm): WedgeOutcome {
  const [pivot, dart] = [piece.points['apex'], piece.darts[0]]
  if (!pivot || !dart) return { ok: false, why: { id: 'noDart', piece: piece.id } }
  if (!piece.edges.some((e) => e.name === name))
    return { ok: false, why: { id: 'noEdge', piece: piece.id, edge: name } }
  const path = edge(piece, name).path
  const total = pathLength(path)
  const spot = pointAtLength(path, total * (1 - along))
  const r = distance(pivot, spot)
  const turn = width < r ? turnOf(width, r) : undefined
  if (turn === undefined) return { ok: false, why: { id: 'wedgeTooWide', width, reach: mm(r) } }
  const toSpot = heading(pivot, spot)
  const upper = rayOn(path, pivot, toSpot - turn / 2, spot)
  const lower = rayOn(path, pivot, toSpot + turn / 2, spot)
  if (!upper || !lower) return { ok: false, why: { id: 'wedgeMissesEdge', edge: name } }
  const wider = widened(dart, pivot, turn)
  const mouth = distance(wider.inner, wider.outer)
  const most = mostAtMouth(piece, wider)
  if (mouth > most) return { ok: false, why: { id: 'dartTooWide', to: mm(mouth), most } }
  const [above] = splitPath(path, upper)
  const [, below] = splitPath(path, lower)
  const smooth = bridged(above, turnedPath(below, pivot, -turn), DRAWN_ANEW)
  const side = turnedPath(edge(piece, 'side').path, pivot, -turn)
  const slit = point(dart.lowerTip.x, pathEnd(edge(piece, 'side').path).y)
  const carried = carriedBy(pivot, toSpot + turn / 2, slit)
  const turnedPiece: Piece = {
    ...withEdge(
      withEdge(withEdge(piece, name, smooth), 'side', side),
      'hem',
      hemAnew(piece, side, slit),
    ),
    darts: [wider, ...piece.darts.slice(1).map((d) => turnedDart(d, pivot, turn))],
    edgeDarts: piece.edgeDarts.map((d) => ({
      ...d,
      tip: rotate(d.tip, pivot, -turn),
      upper: rotate(d.upper, pivot, -turn),
      lower: rotate(d.lower, pivot, -turn),
    })),
    points: Object.fromEntries(
      Object.entries(piece.points).map(([n, p]) => [
        n,
        n === 'M'
          ? scale(add(wider.inner, wider.outer), 0.5)
          : carried(p)
            ? rotate(p, pivot, -turn)
            : p,
      ]),
    ),
    levels: piece.levels.flatMap((l) => brokenLevel(l, pivot, slit.x, turn)),
  }
  if (selfIntersections(outline(turnedPiece)).length > 0)
    return { ok: false, why: { id: 'cannotDraw', edge: name } }
  const R = distance(pivot, dart.outer)
  return {
    ok: true,
    wedge: {
      piece: turnedPiece,
      turn,
      r: mm(r),
      R: mm(R),
      opens: openingAt(turn, R),
      shortens: mm(total - pathLength(smooth)),
      from: mm(total * along),
    },
  }
}

/** What the mouth may be: the width a dart holds, or what keeps its tip's angle, if that is less. */
const mostAtMouth = (piece: Piece, dart: Dart): Mm =>
  mm(
    Math.min(
      isHalf(piece.id) ? DART_MOST[piece.id] : Infinity,
      2 * distance(dart.upperTip, dart.inner) * Math.sin(DART_ANGLE_MOST / 2),
    ),
  )

/** Where a ruling from the pivot meets the edge, nearest to the pinned spot. */
function rayOn(path: Path, pivot: Point, angle: number, spot: Point): Place | undefined {
  const far = add(pivot, scale(point(Math.cos(angle), Math.sin(angle)), distance(pivot, spot) * 2))
  const hits = crossings(path, line(pivot, far))
  const nearest = hits.sort((a, b) => distance(a.at, spot) - distance(b.at, spot))[0]
  if (!nearest) return undefined
  const behind = lengthTo(path, nearest.place)
  // A ruling through the very end of the edge leaves no edge to draw smooth.
  return behind > 1 && behind < pathLength(path) - 1 ? nearest.place : undefined
}

/** A dart nearer the side lies wholly on the part that turns. */
function turnedDart(dart: Dart, pivot: Point, turn: number): Dart {
  const go = (p: Point): Point => rotate(p, pivot, -turn)
  return {
    ...dart,
    upperTip: go(dart.upperTip),
    inner: go(dart.inner),
    outer: go(dart.outer),
    lowerTip: go(dart.lowerTip),
    ...(dart.open ? { open: { inner: go(dart.open.inner), outer: go(dart.open.outer) } } : {}),
  }
}

/** The outer leg turns; both tips stay on the line that halves the dart, so the legs stay equal. */
function widened(dart: Dart, pivot: Point, turn: number): Dart {
  const half = (p: Point): Point => rotate(p, pivot, -turn / 2)
  return {
    ...dart,
    outer: rotate(dart.outer, pivot, -turn),
    upperTip: half(dart.upperTip),
    lowerTip: half(dart.lowerTip),
    ...(dart.open
      ? { open: { inner: dart.open.inner, outer: rotate(dart.open.outer, pivot, -turn) } }
      : {}),
  }
}

/** Is a point carried by the part that turns: right of the slit and below the lower ruling? */
const carriedBy =
  (pivot: Point, ruling: number, slit: Point) =>
  (p: Point): boolean =>
    p.x > slit.x + 0.01 && heading(pivot, p) > ruling

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

function brokenLevel(l: Level, pivot: Point, x: number, turn: number): Level[] {
  if (l.from.y < pivot.y - 0.01 || l.to.x <= x) return [l]
  const knee = point(x, l.from.y)
  return [
    { ...l, to: knee },
    { ...l, from: rotate(knee, pivot, -turn), to: rotate(l.to, pivot, -turn) },
  ]
}

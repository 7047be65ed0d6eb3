/**
 * An edge with a wedge closed in it, or opened: the part on one side of the wedge turns about the
 * pivot until its ruling lies on the other, and the edge is drawn smooth again. The edge loses what
 * was pinned, whatever its way about the pivot: θ = 2·asin(w / 2r) where a bridge of that turn can
 * be so long, else the least turn past it that leaves the edge an easy curve. An edge that stands slantwise to the
 * pivot loses by the turn times how far its line runs past the pivot, which is less than r.
 * Source: pivot method of pattern making; worked out.
 */
import { bridgedTo, type BridgedTo } from '../../geometry/blend.ts'
import { crossings } from '../../geometry/intersect.ts'
import { pathLength } from '../../geometry/length.ts'
import {
  lengthTo,
  placeAt,
  pointAtLength,
  splitPath,
  turnedPath,
  type Path,
} from '../../geometry/path.ts'
import { add, distance, heading, point, scale, type Point } from '../../geometry/point.ts'
import { line } from '../../geometry/segment.ts'
import { radians } from '../../units/angle.ts'
import { mm, type Mm } from '../../units/length.ts'
import { edge, type Piece } from '../../draft/piece.ts'
import { has, pivotOf } from '../landmarks.ts'
import type { Why } from '../refusal.ts'
import { openingAt, turnOf } from '../rotation.ts'
import type { Operation, TurnEdge } from './operation.ts'

/** How far either side of a closed wedge the edge is drawn anew, mm. Common practice, no source. */
const ANEW = { neck: 30, armhole: 50, sleeveEdge: 70 } as const
/** So many times the turn of an edge square to the pivot, and less where that runs past its end. Judgement. */
const [LESS, MORE] = [[0.5], [2.5, 2, 1.5, 1.2]] as const
/** The secant arrives in three or four steps. */
const STEPS = 16
/** Halvings towards the nearest turn that is exact: to a thousandth of what it may be. */
const HALVINGS = 10
/** Nearer than this an edge is as long as it was to be, mm. */
const EXACT = 5e-4

export interface ClosedWedge {
  readonly name: TurnEdge
  readonly pivot: Point
  /** Share of the edge, the neck from the fold, arm edges from the underarm. */
  readonly along: number
  /** What the edge loses, mm; negative opens. */
  readonly width: Mm
  /** The part that turns is the end of the path, not its beginning. */
  readonly follows: boolean
}
export interface Closing {
  readonly closed: Path
  /** The turn of the part, clockwise on the page, radians. */
  readonly angle: number
  /** Where it was pinned. */
  readonly spot: Point
}
export interface WedgeAt {
  readonly pivot: Point
  readonly spot: Point
  /** Angle of the wedge, radians. */
  readonly turn: number
  /** Its width at the edge, square to the line from the pivot, mm. */
  readonly across: Mm
}
/** The wedge of an operation on its piece; undefined where it cannot be closed. */
export function wedgeAt(
  piece: Piece,
  { edge: name, along, width }: Extract<Operation, { op: 'ROT' }>,
): WedgeAt | undefined {
  if (!has(piece, name)) return undefined
  const pivot = pivotOf(piece)
  // The wedge is the same whichever part turns.
  const done = closing(edge(piece, name).path, { name, pivot, along, width, follows: true })
  if (!done.ok) return undefined
  const { spot, angle } = done.closing
  const turn = Math.abs(angle)
  return { pivot, spot, turn, across: openingAt(radians(turn), distance(pivot, spot)) }
}

type ClosingOutcome =
  { readonly ok: true; readonly closing: Closing } | { readonly ok: false; readonly why: Why }

export function closing(path: Path, wedge: ClosedWedge): ClosingOutcome {
  const { name, pivot, width } = wedge
  const size = Math.abs(width)
  const spot = spotOn(path, wedge)
  const r = distance(pivot, spot)
  const plain = size < r ? turnOf(size, r) : undefined
  if (plain === undefined)
    return { ok: false, why: { id: 'wedgeTooWide', width: mm(size), reach: mm(r) } }
  const at = (turn: number): Attempt | undefined => attempt(path, wedge, spot, turn)
  const first = at(plain)
  if (!first) return { ok: false, why: { id: 'wedgeMissesEdge', edge: name } }
  const found = exact(first) ? first : slantwise(first, plain, at, width)
  if (!found) return { ok: false, why: { id: 'wedgeMissesEdge', edge: name } }
  if (!exact(found))
    return {
      ok: false,
      why: { id: 'edgeSlants', edge: name, width: mm(size), most: mm(found.changed) },
    }
  return {
    ok: true,
    closing: { closed: found.path, angle: found.angle, spot },
  }
}
const exact = ({ off }: Attempt): boolean => Math.abs(off) < EXACT
/** Too little is lost, or won, with this turn. */
const short = ({ changed }: Attempt, size: number): boolean => changed < size

/** The turn taken where the plain one does not serve; inexact where none does. */
function slantwise(
  first: Attempt,
  plain: number,
  at: (turn: number) => Attempt | undefined,
  width: Mm,
): Attempt | undefined {
  const size = Math.abs(width)
  const some = between(first, furthest(at, plain, short(first, size)), at, size)
  return some && exact(some) ? nearestEasy(first.turn, some, at, Math.sign(width)) : some
}

function furthest(
  at: (turn: number) => Attempt | undefined,
  plain: number,
  more: boolean,
): Attempt | undefined {
  for (const times of more ? MORE : LESS) {
    const far = at(plain * times)
    if (far) return far
  }
  return undefined
}

/** A turn that is exact, between the first and the furthest; else what comes nearest. */
function between(
  near: Attempt,
  far: Attempt | undefined,
  at: (turn: number) => Attempt | undefined,
  size: number,
): Attempt | undefined {
  let [a, b] = [near, far]
  if (!b || exact(b) || short(a, size) === short(b, size)) return b
  for (let i = 0; i < STEPS; i++) {
    const rate = (size - a.changed) / (b.changed - a.changed)
    // Every third step halves, or the secant would creep up from one side.
    const next = at(a.turn + (b.turn - a.turn) * (i % 3 === 2 ? 1 / 2 : rate))
    if (!next || exact(next)) return next
    if (short(next, size) === short(a, size)) a = next
    else b = next
  }
  return a
}

/**
 * Bridges of many turns can be so long: the least is taken whose bridge need not be drawn flatter
 * (where it opens: fuller) than an even one, so that the edge keeps its ease for a later change.
 */
function nearestEasy(
  near: number,
  far: Attempt,
  at: (turn: number) => Attempt | undefined,
  way: number,
): Attempt {
  let [a, b] = [near, far]
  for (let i = 0; i < HALVINGS; i++) {
    const next = at((a + b.turn) / 2)
    if (next && exact(next) && next.evenOff * way <= 0) b = next
    else a = (a + b.turn) / 2
  }
  return b
}

const spotOn = (path: Path, { name, along }: ClosedWedge): Point =>
  pointAtLength(path, pathLength(path) * (name === 'neck' ? along : 1 - along))

interface Attempt extends BridgedTo {
  readonly turn: number
  readonly angle: number
  /** What the edge loses with this turn, or gains where it opens, mm. */
  readonly changed: number
}
/** The edge after a turn; undefined where a ruling runs past its end. */
function attempt(
  path: Path,
  { name, pivot, along, width, follows }: ClosedWedge,
  spot: Point,
  turn: number,
): Attempt | undefined {
  const towards = heading(pivot, spot)
  const rays = [towards - turn / 2, towards + turn / 2].map((a) => rayOn(path, pivot, a, spot))
  const [one, other] = rays
  if (one === undefined || other === undefined) return undefined
  const [low, high] = one < other ? [one, other] : [other, one]
  const total = pathLength(path)
  const opens = width < 0
  const middle = total * (name === 'neck' ? along : 1 - along)
  const [start] = splitPath(path, placeAt(path, opens ? middle : low))
  const [, end] = splitPath(path, placeAt(path, opens ? middle : high))
  const way = wayRound(pivot, path, low, high) * (follows ? -1 : 1) * (opens ? -1 : 1)
  const angle = way * turn
  const on = (part: Path): Path => turnedPath(part, pivot, angle)
  const bridge = follows
    ? bridgedTo(start, on(end), ANEW[name], total - width)
    : bridgedTo(on(start), end, ANEW[name], total - width)
  return { ...bridge, turn, angle, changed: Math.abs(width) - bridge.off * Math.sign(width) }
}

/** 1 where the edge runs clockwise round the pivot from one cut to the other, else −1. */
function wayRound(pivot: Point, path: Path, from: number, to: number): number {
  const turn = heading(pivot, pointAtLength(path, to)) - heading(pivot, pointAtLength(path, from))
  return Math.sin(turn) >= 0 ? 1 : -1
}

function rayOn(path: Path, pivot: Point, angle: number, spot: Point): number | undefined {
  const far = add(pivot, scale(point(Math.cos(angle), Math.sin(angle)), distance(pivot, spot) * 2))
  const hits = crossings(path, line(pivot, far))
  const [nearest] = hits.sort((a, b) => distance(a.at, spot) - distance(b.at, spot))
  if (!nearest) return undefined
  const behind = lengthTo(path, nearest.place)
  return behind > 1 && behind < pathLength(path) - 1 ? behind : undefined
}

/**
 * The bust dart of a front, moved to where she wants it: one place or two, as a dart, as gathers,
 * or marked to become a style seam. All of it turns about one pivot, where the dart's middle line
 * passes the bust tip. Sources: slash and pivot, tips 13 to 64 mm off the bust tip (public
 * dressmaking lessons).
 */
import { bridged } from '../geometry/blend.ts'
import { crossings } from '../geometry/intersect.ts'
import { pathLength } from '../geometry/length.ts'
import {
  lengthTo,
  pathEnd,
  pathStart,
  placeAt,
  splitPath,
  type Path,
  type Place,
} from '../geometry/path.ts'
import {
  add,
  distance,
  dot,
  point,
  rotate,
  scale,
  subtract,
  unit,
  type Point,
} from '../geometry/point.ts'
import { project } from '../geometry/project.ts'
import { line } from '../geometry/segment.ts'
import { found } from '../units/amount.ts'
import { mm } from '../units/length.ts'
import type { Choices } from './choices.ts'
import { dartTo, smoothed, subtended, turnIntake, type Spot } from './intake.ts'
import type { OptionWord } from './options.ts'
import {
  edge,
  withEdge,
  type EdgeDart,
  type EdgeName,
  type InnerLine,
  type Piece,
} from './piece.ts'
import type { Step } from './step.ts'
import { intoWaist } from './waist-intake.ts'
import { FINISHING_WORDS as W } from './finishing.words.ts'

export type DartPlace = OptionWord<'dartAt'>
type Elsewhere = Exclude<DartPlace, 'side'>

export interface Served {
  readonly front: Piece
  readonly steps: readonly Step[]
  /** Places that were wanted and have no room. */
  readonly stays: readonly Elsewhere[]
}

/** A dart never keeps less than this where part of it is moved away, mm. */
const LEAST_LEFT = 5
/** A seam edge loses no more than this when a closed dart is drawn smooth, mm. */
const KEPT = 0.3

/** @param short how far a tip stays off the bust tip, mm */
export function served(front: Piece, choices: Choices, short: number): Served {
  const dart = front.edgeDarts.find((d) => d.name === 'bustDart')
  if (!dart) return { front, steps: [], stays: [] }
  const pivot = pivotOf(front, dart)
  const whole = subtended(pivot, dart.upper, dart.lower)
  const mouth = distance(dart.upper, dart.lower)
  const part = Math.min(choices.dartSecondMouth, mouth - LEAST_LEFT)
  const reach = distance(pivot, dart.upper)
  const second =
    choices.dartSecond === 'none' || choices.dartSecond === choices.dartAt || part <= 0
      ? undefined
      : { to: choices.dartSecond, angle: 2 * Math.asin(part / (2 * reach)) }
  const start: Served = {
    front: { ...front, points: { ...front.points, Q: pivot } },
    steps: [],
    stays: [],
  }
  const halfWay = second ? moved(start, second.to, second.angle, pivot, short, choices) : start
  const left = second && halfWay.stays.length === 0 ? whole - second.angle : whole
  const done =
    choices.dartAt === 'side'
      ? halfWay
      : moved(halfWay, choices.dartAt, left, pivot, short, choices)
  if (done.steps.length === 0 && choices.dartAs === 'dart') return { ...done, front }
  switch (choices.dartAs) {
    case 'dart':
      return done
    case 'gathers':
      return gathered(done, pivot)
    case 'seam':
      return { ...done, front: asSeam(done.front) }
  }
}

/** A dart in shoulder or armhole is marked to become a seam; from elsewhere none starts. */
const asSeam = (front: Piece): Piece => ({
  ...front,
  edgeDarts: front.edgeDarts.map((d) =>
    d.name === 'bustDart' && (d.edge === 'shoulder' || d.edge === 'armhole')
      ? { ...d, seam: true }
      : d,
  ),
})

/** Where the middle line of the dart passes nearest the bust tip. */
function pivotOf(front: Piece, dart: EdgeDart): Point {
  const apex = front.points['apex'] ?? dart.tip
  const middle = scale(add(dart.upper, dart.lower), 0.5)
  const along = unit(subtract(dart.tip, middle))
  return add(middle, scale(along, dot(subtract(apex, middle), along)))
}

function moved(
  before: Served,
  to: Elsewhere,
  angle: number,
  pivot: Point,
  short: number,
  choices: Choices,
): Served {
  const { front } = before
  const dart = front.edgeDarts.find((d) => d.name === 'bustDart')
  const cut = spotFor(front, to, pivot, choices)
  if (!dart || !cut) return { ...before, stays: [...before.stays, to] }
  const { piece, opened, carried } = turnIntake(front, dart, pivot, cut, angle)
  const clockwise = carried(dart.upper)
  const turn = clockwise ? angle : -angle
  const whole = (p: Point): Point => rotate(p, pivot, turn)
  const go = (p: Point): Point => (carried(p) ? whole(p) : p)
  const upper = clockwise ? rotate(dart.upper, pivot, turn) : dart.upper
  const lower = clockwise ? dart.lower : rotate(dart.lower, pivot, turn)
  const closed = distance(upper, lower) < CLOSED
  const name = front.edgeDarts.some((d) => d.name === 'bustDart2') ? 'bustDart' : 'bustDart2'
  const rest: EdgeDart[] = front.edgeDarts
    .filter((d) => d !== dart)
    // A dart turns as a whole, with its mouth; its tip may reach over the cut.
    .map((d) =>
      carried(d.upper) && carried(d.lower)
        ? { ...d, tip: whole(d.tip), upper: whole(d.upper), lower: whole(d.lower) }
        : d,
    )
  const turnedPiece: Piece = {
    ...piece,
    edgeDarts: [
      ...rest,
      ...(closed ? [] : [{ ...dartTo(pivot, 'bustDart', dart.edge, [upper, lower], short) }]),
    ],
    points: Object.fromEntries(Object.entries(front.points).map(([n, p]) => [n, go(p)])),
    levels: front.levels.map((l) =>
      carried(l.from)
        ? { ...l, from: go(l.from), to: go(l.to) }
        : { ...l, to: carried(l.to) ? pivot : l.to },
    ),
  }
  const sided = closed ? sideSmoothed(turnedPiece, dart.edge, upper) : turnedPiece
  const made =
    to === 'waist'
      ? intoWaist(sided, pivot, opened, turn, short)
      : opening(sided, closed ? 'bustDart' : name, cut.edge, opened, pivot, short)
  return {
    ...before,
    front: made,
    steps: [...before.steps, step(front, dart, cut, opened, pivot, short, to)],
  }
}
/** A mouth narrower than this is shut, mm. */
const CLOSED = 1e-4

function opening(
  piece: Piece,
  name: 'bustDart' | 'bustDart2',
  on: EdgeName,
  opened: readonly [Point, Point],
  pivot: Point,
  short: number,
): Piece {
  const dart = dartTo(pivot, name, on, opened, short)
  const letters = name === 'bustDart' ? ['K1', 'K2', 'K3'] : ['T1', 'T2', 'T3']
  const points = Object.fromEntries(
    [opened[0], opened[1], dart.tip].map((p, i) => [letters[i] ?? '', p]),
  )
  const edges =
    on === 'centre'
      ? piece.edges.map((e) => (e.name === 'centre' ? { ...e, role: 'seam' as const } : e))
      : piece.edges
  return {
    ...piece,
    edges,
    edgeDarts: [...piece.edgeDarts, dart],
    points: { ...piece.points, ...points },
  }
}

/** The side where its dart was: drawn smooth, and its letters gone. */
function sideSmoothed(piece: Piece, name: EdgeName, at: Point): Piece {
  const points = Object.fromEntries(Object.entries(piece.points).filter(([n]) => !/^J\d?$/.test(n)))
  return { ...withEdge(piece, name, smoothed(edge(piece, name).path, at, KEPT)), points }
}

/** Where the piece is cut for a dart; undefined where there is no room for one. */
function spotFor(front: Piece, to: Elsewhere, pivot: Point, choices: Choices): Spot | undefined {
  const on = (name: EdgeName, place: Place): Spot => ({ edge: name, place })
  const share = (name: EdgeName, at: number): Spot => {
    const { path } = edge(front, name)
    return on(name, placeAt(path, pathLength(path) * at))
  }
  switch (to) {
    case 'shoulder':
      return share('shoulder', 0.5)
    case 'neck':
      return share('neck', NECK_AT)
    // Nearest to the bust tip, so that the dart stands square on the edge.
    case 'armhole':
      return on('armhole', project(edge(front, 'armhole').path, pivot).place)
    case 'french':
      return frenchSpot(front, pivot)
    case 'waist':
      return waistSpot(front, pivot)
    case 'centreFront': {
      // A buttoned front laps over there.
      if (choices.opening === 'buttonedFront') return undefined
      const { path } = edge(front, 'centre')
      const across = line(point(-REACH, pivot.y), point(pivot.x, pivot.y))
      const met = crossings(path, across)[0]
      return met && on('centre', met.place)
    }
  }
}
/** Share of the neck edge from the fold. Judgement. */
const NECK_AT = 0.5
const REACH = 500
/** A French dart starts this far above the waist, and clear of the side dart's mouth, mm. */
const FRENCH = { aboveWaist: 75, clear: 25 } as const

function frenchSpot(front: Piece, pivot: Point): Spot | undefined {
  const { path } = edge(front, 'side')
  const w = front.points['W']
  const dart = front.edgeDarts.find((d) => d.name === 'bustDart')
  // A second waist dart would be cut through.
  const second = [...front.darts, ...front.edgeDarts].some((d) => d.name === 'waistDart2')
  if (!w || !dart || second) return undefined
  const at = lengthTo(path, project(path, w).place) - FRENCH.aboveWaist
  const low = lengthTo(path, project(path, dart.lower).place)
  return at > low + FRENCH.clear && pivot.y < w.y
    ? { edge: 'side', place: placeAt(path, at) }
    : undefined
}

/** On the waist seam at the dart, or on the hem under it. */
function waistSpot(front: Piece, pivot: Point): Spot | undefined {
  const waist = front.edges.find((e) => e.name === 'waist')
  if (waist) {
    const dart = front.edgeDarts.find((d) => d.name === 'waistDart')
    if (dart) return { edge: 'waist', place: project(waist.path, dart.upper).place }
    return under(waist.path, 'waist', pivot)
  }
  const dart = front.darts[0]
  if (dart?.open) return undefined
  return under(edge(front, 'hem').path, 'hem', dart ? dart.lowerTip : pivot)
}
function under(path: Path, name: EdgeName, p: Point): Spot | undefined {
  const met = crossings(path, line(point(p.x, p.y - 1), point(p.x, p.y + 3 * REACH)))[0]
  return met && { edge: name, place: met.place }
}

function step(
  front: Piece,
  dart: EdgeDart,
  cut: Spot,
  opened: readonly [Point, Point],
  pivot: Point,
  short: number,
  to: Elsewhere,
): Step {
  const { path } = edge(front, cut.edge)
  const at = pathEnd(splitPath(path, cut.place)[0])
  const along = lengthTo(path, cut.place)
  const whole = pathLength(path)
  const upTo = (name: string): number => {
    const p = front.points[name]
    return p ? lengthTo(path, project(path, p).place) : 0
  }
  const [end, far] = {
    shoulder: ['S', along] as const,
    neck: ['F', along] as const,
    armhole: ['U', whole - along] as const,
    french: ['W', upTo('W') - along] as const,
    waist: [front.points['C1'] ? 'C1' : cut.edge === 'waist' ? 'C' : 'L', whole - along] as const,
    centreFront: ['C', along - upTo('C')] as const,
  }[to]
  return {
    verb: 'moveDart',
    piece: front.id,
    from: dart.edge,
    edge: cut.edge,
    at: 'K',
    end,
    along: found('', mm(far)),
    pivot: 'Q',
    opens: found('', mm(distance(opened[0], opened[1]))),
    tip: found('', mm(short)),
    why: W.dartMoved[to],
    lights: [[line(at, pivot)]],
  }
}
/**
 * Its words name the length in millimetres; `lengthsIn` sets it into her unit.
 * @param sewn how long the stretch is once it is drawn up, mm
 */
export const gatherMark = (path: Path, sewn: number): InnerLine => ({
  name: 'gathers',
  words: W.gatherTo(Math.round(sewn)),
  path,
})

/** Darts of the bust drawn up as gathers: the edge is drawn smooth over their mouths. */
function gathered(done: Served, pivot: Point): Served {
  const { front } = done
  const own = front.edgeDarts.filter((d) => d.name === 'bustDart' || d.name === 'bustDart2')
  return { ...done, front: own.reduce((p, d) => drawnUp(p, d, pivot), front) }
}
/** Gathers spread this far either side of where the dart would be, mm. Judgement. */
const SPREAD = 35

function drawnUp(front: Piece, dart: EdgeDart, pivot: Point): Piece {
  const { path } = edge(front, dart.edge)
  const spot = (p: Point): Place => project(path, p).place
  const [a, b] = [dart.upper, dart.lower].sort(
    (p, q) => lengthTo(path, spot(p)) - lengthTo(path, spot(q)),
  )
  const [before] = splitPath(path, spot(a!))
  const [, after] = splitPath(path, spot(b!))
  if (before.length === 0 || after.length === 0) return front
  const reach = Math.min(SPREAD, 0.6 * pathLength(before), 0.6 * pathLength(after))
  const smooth = bridged(before, after, reach)
  const takes = pathLength(smooth) - (pathLength(before) + pathLength(after))
  const [from, to] = [pathLength(before) - reach, pathLength(smooth) - pathLength(after) + reach]
  const [upTo] = splitPath(smooth, placeAt(smooth, Math.min(to, pathLength(smooth))))
  const marked = splitPath(upTo, placeAt(upTo, Math.max(0, from)))[1]
  const sewn = pathLength(marked) - takes
  return {
    ...withEdge(front, dart.edge, smooth),
    edgeDarts: front.edgeDarts.filter((d) => d !== dart),
    gathers: [...(front.gathers ?? []), { edge: dart.edge, takes }],
    inner: [...front.inner, gatherMark(marked, sewn)],
    points: { ...front.points, Q: pivot, G1: pathStart(marked), G2: pathEnd(marked) },
  }
}

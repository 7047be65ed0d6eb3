/**
 * Moving intake round the apex. A dart whose legs run to a pivot is closed by turning a part of
 * the piece about that pivot; where the part was cut loose a new dart opens by the same angle. The
 * sum of the angles that all mouths subtend at the pivot never changes. Method: slash and pivot,
 * common practice.
 */
import { bridged } from '../geometry/blend.ts'
import { pathLength } from '../geometry/length.ts'
import { contains } from '../geometry/contains.ts'
import {
  endTangent,
  flatten,
  pathEnd,
  pathStart,
  splitPath,
  startTangent,
  type Path,
  type Place,
} from '../geometry/path.ts'
import { cross, distance, dot, point, rotate, subtract, type Point } from '../geometry/point.ts'
import { line, turned, type Segment } from '../geometry/segment.ts'
import type { AnyDart, Edge, EdgeDart, EdgeName, Piece } from './piece.ts'

/** A place on the outline: an edge and a place on its path. */
export interface Spot {
  readonly edge: EdgeName
  readonly place: Place
}

export interface Turned {
  readonly piece: Piece
  /** Ends of the mouth that opened, in the order of the outline. */
  readonly opened: readonly [Point, Point]
  /** Was a point of the piece carried by the part that turned? */
  readonly carried: (p: Point) => boolean
}

interface Run {
  readonly edge: Pick<Edge, 'name' | 'role'>
  readonly s: Segment
}

/** A mouth is drawn as one straight segment of its edge. */
const isMouth = (s: Segment, d: EdgeDart): boolean =>
  s.kind === 'line' &&
  ((distance(s.from, d.upper) < ONE && distance(s.to, d.lower) < ONE) ||
    (distance(s.from, d.lower) < ONE && distance(s.to, d.upper) < ONE))
const ONE = 1e-6

/** The angle that both ends of a mouth subtend at the pivot, radians. */
export function subtended(pivot: Point, a: Point, b: Point): number {
  const [u, v] = [subtract(a, pivot), subtract(b, pivot)]
  return Math.abs(Math.atan2(cross(u, v), dot(u, v)))
}

/**
 * Closes `angle` of a dart (all of it at most) and opens as much at `cut`. The part that turns
 * lies between both, on the side that does not hold the fold below the pivot.
 */
export function turnIntake(
  piece: Piece,
  dart: EdgeDart,
  pivot: Point,
  cut: Spot,
  angle: number,
): Turned {
  const runs = cutRuns(piece, cut)
  const mouth = runs.list.findIndex(({ s }) => isMouth(s, dart))
  if (mouth < 0) throw new Error(`${piece.id}: the dart ${dart.name} has no mouth on its edge`)
  const { list, at } = runs
  const n = list.length
  // Clockwise from the cut to the mouth when the cut lies before it or on the fold, else from the
  // mouth to the cut.
  const before = at < mouth || cut.edge === 'centre'
  const part = (i: number): boolean =>
    before ? between(i, at, mouth, n) : between(i, mouth + 1, at, n)
  const turn = before ? angle : -angle
  const go = (s: Segment): Segment => turned(s, pivot, turn)
  const ring = [
    pivot,
    ...flatten(ordered(list, part, before ? at : (mouth + 1) % n).map(({ s }) => s)),
  ]
  const carried = (p: Point): boolean => contains(ring, p, EDGE_OF_PART)
  const [knee, other] = [pathStart([list[at % n]!.s]), pathEnd([list[(at - 1 + n) % n]!.s])]
  const opened: [Point, Point] = before
    ? [other, rotate(knee, pivot, turn)]
    : [rotate(other, pivot, turn), knee]
  const mouthThere: Run = { edge: edgeOf(piece, cut.edge), s: line(opened[0], opened[1]) }
  const closing = list[mouth]!
  const [first, second] = before
    ? [rotate(pathStart([closing.s]), pivot, turn), pathEnd([closing.s])]
    : [pathStart([closing.s]), rotate(pathEnd([closing.s]), pivot, turn)]
  const left: Run[] =
    distance(first, second) > ONE ? [{ edge: closing.edge, s: line(first, second) }] : []
  const out = list.flatMap((run, i): Run[] => [
    ...(i === at ? [mouthThere] : []),
    ...(i === mouth ? left : [part(i) ? { ...run, s: go(run.s) } : run]),
  ])
  // A cut at the very end of the outline opens behind its last segment.
  if (at === n) out.push(mouthThere)
  return { piece: { ...piece, edges: regrouped(piece, out) }, opened, carried }
}
/** Points on the rim of a part count as carried, mm. */
const EDGE_OF_PART = 1e-4

const between = (i: number, from: number, to: number, n: number): boolean => {
  const [a, b] = [from % n, to % n]
  return a <= b ? i >= a && i < b : i >= a || i < b
}

function ordered(list: readonly Run[], part: (i: number) => boolean, from: number): Run[] {
  const n = list.length
  const out: Run[] = []
  for (let k = 0; k < n; k++) {
    const i = (from + k) % n
    if (!part(i)) break
    out.push(list[i]!)
  }
  return out
}

/** All segments of the outline, cut at the spot; `at` is the index of the segment that begins there. */
function cutRuns(piece: Piece, cut: Spot): { list: Run[]; at: number } {
  const list: Run[] = []
  let at = -1
  for (const e of piece.edges) {
    const halves: readonly Path[] = e.name === cut.edge ? splitPath(e.path, cut.place) : [e.path]
    for (const [i, half] of halves.entries()) {
      if (i === 1) at = list.length
      list.push(...half.map((s) => ({ edge: { name: e.name, role: e.role }, s })))
    }
  }
  if (at < 0) throw new Error(`${piece.id}: no edge ${cut.edge} to cut`)
  return { list, at }
}

const edgeOf = (piece: Piece, name: EdgeName): Pick<Edge, 'name' | 'role'> => {
  const e = piece.edges.find((x) => x.name === name)
  if (!e) throw new Error(`${piece.id}: no edge ${name}`)
  return { name, role: e.role }
}

const regrouped = (piece: Piece, runs: readonly Run[]): Edge[] =>
  piece.edges.map((e) => ({
    ...e,
    path: runs.filter((r) => r.edge.name === e.name).map((r) => r.s),
  }))

/** A dart on an edge whose mouth is `opened`, its tip `short` of the pivot on the line that halves it. */
export function dartTo(
  pivot: Point,
  name: EdgeDart['name'],
  on: EdgeName,
  [first, second]: readonly [Point, Point],
  short: number,
): EdgeDart {
  const middle = point((first.x + second.x) / 2, (first.y + second.y) / 2)
  const far = distance(pivot, middle)
  // A tip is never more than two thirds of the way out: shorter is no dart.
  const share = Math.min(short / far, 2 / 3)
  const tip = point(pivot.x + (middle.x - pivot.x) * share, pivot.y + (middle.y - pivot.y) * share)
  return { name, edge: on, tip, upper: first, lower: second }
}

/** All mouths of a piece as the angles they subtend at the pivot; darts of other names left out. */
export const anglesRound = (
  piece: Piece,
  pivot: Point,
  names?: readonly AnyDart[],
): readonly number[] => [
  ...piece.edgeDarts
    .filter((d) => !names || names.includes(d.name))
    .map((d) => subtended(pivot, d.upper, d.lower)),
  ...piece.darts
    .filter((d) => !names || names.includes(d.name))
    .map((d) => subtended(pivot, d.inner, d.outer)),
]

/** Two runs of an edge that a closed dart left at an angle, drawn smooth; their length is kept to `keep` mm. */
export function smoothed(path: Path, at: Point, keep: number): Path {
  const runs = split(path, at)
  if (!runs) return path
  const [first, second] = runs
  const bend = bendOf(runs)
  if (bend < 1e-4) return path
  // A bend drawn smooth over r on either side loses r·bend²/6 of its length (for small bends).
  const before = pathLength(path)
  // On an edge that is curved besides, less is drawn anew until its length is kept.
  for (let reach = Math.min(SMOOTH_OVER, (6 * keep) / (bend * bend)); reach > PENCIL; reach /= 2) {
    const smooth = bridged(first, second, reach)
    if (Math.abs(pathLength(smooth) - before) <= keep) return smooth
  }
  return path
}
/** A bend drawn anew over less than a pencil line is none, mm. */
const PENCIL = 0.3

/** Two edges that are sewn together, each bent where it meets `at`: rounded alike, so that both stay equal. */
export function roundedPair(
  a: Path,
  atA: Point,
  b: Path,
  atB: Point,
  keep: number,
): readonly [Path, Path] {
  const [one, two] = [split(a, atA), split(b, atB)]
  if (!one || !two) return [a, b]
  const [ba, bb] = [bendOf(one), bendOf(two)]
  const apart = Math.abs(ba * ba - bb * bb)
  const reach = apart > 0 ? Math.min(SMOOTH_OVER, (6 * keep) / apart) : SMOOTH_OVER
  const round = (path: Path, [first, second]: readonly [Path, Path], bend: number): Path =>
    bend < 1e-4 ? path : bridged(first, second, reach)
  return [round(a, one, ba), round(b, two, bb)]
}

function split(path: Path, at: Point): readonly [Path, Path] | undefined {
  const index = path.findIndex((s) => distance(pathEnd([s]), at) < ONE * 10)
  return index < 0 || index === path.length - 1
    ? undefined
    : [path.slice(0, index + 1), path.slice(index + 1)]
}
function bendOf([first, second]: readonly [Path, Path]): number {
  const [a, b] = [endTangent(first), startTangent(second)]
  return Math.abs(Math.atan2(cross(a, b), dot(a, b)))
}
/** How far either side of a bend is drawn anew at most, mm. Judgement. */
const SMOOTH_OVER = 40

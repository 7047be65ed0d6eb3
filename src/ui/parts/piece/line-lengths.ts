/**
 * The lengths that stand along the lines of a drawing: every edge, and the longest of the
 * measured lines where several lie on each other. A line being walked always has its length.
 */
import { pathLength } from '../../../geometry/length.ts'
import {
  pathEnd,
  pathStart,
  placeAt,
  pointAtPlace,
  tangentAtPlace,
  type Path,
} from '../../../geometry/path.ts'
import { add, between, distance, quarterTurn, scale, type Point } from '../../../geometry/point.ts'
import { line } from '../../../geometry/segment.ts'
import { mm, type Mm } from '../../../units/length.ts'
import type { Dart, Piece } from '../../../draft/piece.ts'
import type { Step } from '../../../draft/step.ts'

export interface LineLength {
  readonly id: string
  readonly length: Mm
  readonly path: Path
  /** Foot of the words: the middle of the line, moved aside by `gap`. */
  readonly at: Point
  /** Radians; never upside down. */
  readonly angle: number
}

const SAME = 0.01

/** `gap` in mm: how far the words stand off the line; `room` in mm: how long they are. */
export function lineLengths(
  piece: Piece,
  steps: readonly Step[],
  { gap, room }: { gap: number; room: number },
): readonly LineLength[] {
  const clear = [...Object.values(piece.points), ...piece.darts.flatMap(alongDart)]
  const edges = piece.edges
    .filter((e) => e.role !== 'fold')
    .map((e) => beside(`edge ${e.name}`, e.path, { gap, room, clear }))
  const darts = piece.darts.map((d): LineLength => {
    const path = [line(d.inner, d.outer)]
    // Below the mouth, outside the dart: above it stands the length of the waist line.
    const at = add(d.outer, { x: room * 0.55, y: gap * 1.1 })
    return { id: 'dart', length: mm(distance(d.inner, d.outer)), path, at, angle: 0 }
  })
  const words = { gap, room, clear }
  const drawn = measuredLengths(piece, steps, words)
  // Where the words of an edge stand already, a measured line goes without.
  const free = drawn.filter((l) => edges.every((e) => distance(e.at, l.at) > room * 0.6))
  return [...edges, ...darts, ...free]
}

/** Measured lines, longest first; one that lies on a longer one is left out. */
function measuredLengths(
  piece: Piece,
  steps: readonly Step[],
  words: Words,
): readonly LineLength[] {
  const drawn = ownSteps(piece, steps).flatMap((s) => (s.verb === 'measure' ? s.lights : []))
  const kept: LineLength[] = []
  for (const path of [...drawn].sort((a, b) => pathLength(b) - pathLength(a))) {
    const length = pathLength(path)
    const onEdge = piece.edges.some((e) => e.role !== 'fold' && liesOn(path, e.path))
    if (length < words.room || onEdge || kept.some((k) => liesOn(path, k.path))) continue
    kept.push(beside(`line ${kept.length}`, path, words))
  }
  return kept
}

/** Points the words of a length lie over, from end to end, for what must keep clear of them. */
export const wordsOver = ({ at, angle }: LineLength, room: number): Point[] =>
  [-0.4, 0, 0.4].map((k) => ({
    x: at.x + Math.cos(angle) * room * k,
    y: at.y + Math.sin(angle) * room * k,
  }))

/** The length of a line that is lit and has no words of its own yet; it stands on the other side. */
export function litLength(
  lit: readonly Path[],
  standing: readonly LineLength[],
  gap: number,
): LineLength | undefined {
  const [path] = lit
  if (!path || lit.length > 1 || standing.some((l) => sameLine(l.path, path))) return undefined
  const length = pathLength(path)
  return length < SAME ? undefined : beside('lit', path, { gap: -gap, room: 0, clear: [] })
}

export const sameLine = (a: Path, b: Path): boolean =>
  (distance(pathStart(a), pathStart(b)) < SAME && distance(pathEnd(a), pathEnd(b)) < SAME) ||
  (distance(pathStart(a), pathEnd(b)) < SAME && distance(pathEnd(a), pathStart(b)) < SAME)

export const ownSteps = (piece: Piece, steps: readonly Step[]): readonly Step[] =>
  steps.filter((s) => s.piece === piece.id)

interface Words {
  readonly gap: number
  readonly room: number
  /** What the words must not lie on: points with their letters, darts. */
  readonly clear: readonly Point[]
}
/** Along the line, the middle first. */
const PLACES = [0.5, 0.4, 0.6, 0.3, 0.7, 0.22, 0.78, 0.14, 0.86]
/** A line this near to upright is read from its foot upwards, whichever way it was drawn. */
const UPRIGHT = 0.3

/** The outline runs clockwise, so its left side is outside; a measured line is read from below. */
function beside(id: string, path: Path, { gap, room, clear }: Words): LineLength {
  const length = pathLength(path)
  let best: { at: Point; angle: number; covers: number } | undefined
  for (const share of PLACES) {
    const place = placeAt(path, length * share)
    const way = tangentAtPlace(path, place)
    const flipped = way.x < -UPRIGHT || (Math.abs(way.x) <= UPRIGHT && way.y > 0)
    const read = flipped ? scale(way, -1) : way
    const outward = scale(quarterTurn(id.startsWith('edge') ? way : read), -1)
    const at = add(pointAtPlace(path, place), scale(outward, gap))
    const covers = clear.filter((p) => distance(p, at) < room * 0.62).length
    if (!best || covers < best.covers) best = { at, angle: Math.atan2(read.y, read.x), covers }
  }
  if (!best) throw new Error(`${id}: no place for its length`)
  return { id, length: mm(length), path, at: best.at, angle: best.angle }
}

/** Points along the middle of a dart, close enough that no words fit between. */
const alongDart = (d: Dart): Point[] =>
  Array.from({ length: 9 }, (_, i) => between(d.upperTip, d.lowerTip, i / 8))

/** Two straight lines of which the first shares more than its end with the second. */
function liesOn(a: Path, b: Path): boolean {
  const [p, q] = [a[0], b[0]]
  if (p?.kind !== 'line' || q?.kind !== 'line' || b.length !== 1) return false
  const upright = Math.abs(p.from.x - p.to.x) < SAME
  const same = upright
    ? Math.abs(q.from.x - q.to.x) < SAME && Math.abs(p.from.x - q.from.x) < SAME
    : Math.abs(q.from.y - q.to.y) < SAME && Math.abs(p.from.y - q.from.y) < SAME
  const axis = upright ? 'y' : 'x'
  const low = Math.max(Math.min(p.from[axis], p.to[axis]), Math.min(q.from[axis], q.to[axis]))
  const high = Math.min(Math.max(p.from[axis], p.to[axis]), Math.max(q.from[axis], q.to[axis]))
  return same && high - low > SAME
}

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
import { add, distance, quarterTurn, scale, type Point } from '../../../geometry/point.ts'
import { line } from '../../../geometry/segment.ts'
import { mm, type Mm } from '../../../units/length.ts'
import type { Piece } from '../../../draft/piece.ts'
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

/** `gap` in mm: how far the words stand off the line; `room` in mm: shorter lines go without. */
export function lineLengths(
  piece: Piece,
  steps: readonly Step[],
  { gap, room }: { gap: number; room: number },
): readonly LineLength[] {
  const edges = piece.edges
    .filter((e) => e.role !== 'fold')
    .map((e) => beside(`edge ${e.name}`, e.path, mm(pathLength(e.path)), gap))
  const darts = piece.darts.map((d): LineLength => {
    const path = [line(d.inner, d.outer)]
    const at = add(d.outer, { x: gap * 0.5, y: gap })
    return {
      id: 'dart',
      length: mm(distance(d.inner, d.outer)),
      path,
      at: { x: at.x + room / 2, y: at.y },
      angle: 0,
    }
  })
  return [...edges, ...darts, ...measuredLengths(piece, steps, gap, room)]
}

/** Measured lines, longest first; one that lies on a longer one is left out. */
function measuredLengths(
  piece: Piece,
  steps: readonly Step[],
  gap: number,
  room: number,
): readonly LineLength[] {
  const drawn = ownSteps(piece, steps).flatMap((s) => (s.verb === 'measure' ? s.lights : []))
  const kept: LineLength[] = []
  for (const path of [...drawn].sort((a, b) => pathLength(b) - pathLength(a))) {
    const length = pathLength(path)
    const onEdge = piece.edges.some((e) => e.role !== 'fold' && liesOn(path, e.path))
    if (length < room || onEdge || kept.some((k) => liesOn(path, k.path))) continue
    kept.push(beside(`line ${kept.length}`, path, mm(length), gap))
  }
  return kept
}

/** The length of a line that is lit and has no words of its own yet; it stands on the other side. */
export function litLength(
  lit: readonly Path[],
  standing: readonly LineLength[],
  gap: number,
): LineLength | undefined {
  const [path] = lit
  if (!path || lit.length > 1 || standing.some((l) => sameLine(l.path, path))) return undefined
  const length = pathLength(path)
  return length < SAME ? undefined : beside('lit', path, mm(length), -gap)
}

export const sameLine = (a: Path, b: Path): boolean =>
  (distance(pathStart(a), pathStart(b)) < SAME && distance(pathEnd(a), pathEnd(b)) < SAME) ||
  (distance(pathStart(a), pathEnd(b)) < SAME && distance(pathEnd(a), pathStart(b)) < SAME)

export const ownSteps = (piece: Piece, steps: readonly Step[]): readonly Step[] =>
  steps.filter((s) => s.piece === piece.id)

/** The outline runs clockwise, so its left side is outside; a measured line is read from below. */
function beside(id: string, path: Path, length: Mm, gap: number): LineLength {
  const place = placeAt(path, length / 2)
  const way = tangentAtPlace(path, place)
  const flipped = way.x < -1e-6 || (Math.abs(way.x) <= 1e-6 && way.y > 0)
  const read = flipped ? scale(way, -1) : way
  const outward = scale(quarterTurn(id.startsWith('edge') ? way : read), -1)
  return {
    id,
    length,
    path,
    at: add(pointAtPlace(path, place), scale(outward, gap)),
    angle: Math.atan2(read.y, read.x),
  }
}

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

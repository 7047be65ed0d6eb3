/**
 * A drawn half piece measured from its geometry alone, whatever the construction says of it:
 * widths at a level with the darts sewn, seams as sewn, darts by their points.
 */
import { pathLength } from '../../../src/geometry/length.ts'
import { flatten, lengthTo, pathEnd, pathStart, type Path } from '../../../src/geometry/path.ts'
import { distance, dot, subtract, type Point } from '../../../src/geometry/point.ts'
import { project } from '../../../src/geometry/project.ts'
import { edge, outline, type Dart, type EdgeName, type Piece } from '../../../src/draft/piece.ts'

/** Chords this near the outline; a width is judged to a millimetre. */
const CHORDS = 0.02
/** A level is moved off the points of the outline by this, so that no corner counts twice. */
const OFF_CORNERS = 1e-3

export interface Shape {
  readonly piece: Piece
  readonly ring: readonly Point[]
}
export const shapeOf = (piece: Piece): Shape => ({ piece, ring: flatten(outline(piece), CHORDS) })

/** Where the outline does not run on from edge to edge, or holds what is no number. */
export function gaps({ edges }: Piece): number[] {
  return edges.map(({ path }, i) => {
    const next = edges[(i + 1) % edges.length]
    return next ? distance(pathEnd(path), pathStart(next.path)) : NaN
  })
}

/** Width of the half piece at a level, from the centre to the side, darts sewn. */
export function sewnWidth(shape: Shape, level: number): number {
  const mouths = shape.piece.edgeDarts.filter(
    (d) => d.edge === 'side' && d.upper.y < level && d.lower.y > level,
  )
  // In the mouth of a dart there is no cloth once it is sewn: the level runs on to where both ends
  // meet, and the narrower counts. Waist darts are crossed at the level itself, inside the tip.
  const ends = mouths.length > 0 ? mouths.flatMap((d) => [d.upper.y, d.lower.y]) : [level]
  return Math.min(...ends.map((y) => drawnWidth(shape, y))) - dartsAt(shape.piece, level)
}

function drawnWidth({ piece, ring }: Shape, level: number): number {
  const y = level + OFF_CORNERS
  const across = ring.flatMap((a, i) => {
    const b = ring[(i + 1) % ring.length]
    if (!b || a.y > y === b.y > y) return []
    return [a.x + ((b.x - a.x) * (y - a.y)) / (b.y - a.y)]
  })
  const [centre, side] = across.sort((p, q) => p - q)
  if (centre === undefined || side === undefined)
    throw new Error(`measured: ${piece.id} has no width at ${level} mm`)
  return side - centre
}

const dartsAt = (piece: Piece, y: number): number =>
  piece.darts.reduce((sum, dart: Dart) => sum + openAt(dart, y), 0)

function openAt(dart: Dart, y: number): number {
  const side = (mouth: Point, foot: Point | undefined): number | undefined =>
    xAt([dart.upperTip, mouth, foot ?? dart.lowerTip], y)
  const [inner, outer] = [side(dart.inner, dart.open?.inner), side(dart.outer, dart.open?.outer)]
  return inner === undefined || outer === undefined ? 0 : Math.max(0, outer - inner)
}

/** x of a line of points that runs downwards, or undefined above and below it. */
function xAt(points: readonly Point[], y: number): number | undefined {
  for (const [i, b] of points.entries()) {
    const a = points[i - 1]
    if (a && y >= a.y && y <= b.y && b.y > a.y) return a.x + ((b.x - a.x) * (y - a.y)) / (b.y - a.y)
  }
  return undefined
}

/** Length of an edge once the darts on it are sewn. */
export function sewnLength(piece: Piece, name: EdgeName): number {
  const { path } = edge(piece, name)
  const taken = piece.edgeDarts
    .filter((d) => d.edge === name)
    .map((d) => Math.abs(along(path, d.lower) - along(path, d.upper)))
  // What is gathered in is drawn up by as much as the piece says.
  const drawnUp = (piece.gathers ?? []).filter((g) => g.edge === name).map((g) => g.takes)
  return pathLength(path) - [...taken, ...drawnUp].reduce((sum, length) => sum + length, 0)
}
const along = (path: Path, p: Point): number => lengthTo(path, project(path, p).place)

export const mouth = (dart: Dart): number => distance(dart.inner, dart.outer)

/** The two legs of every dart, tip to mouth, as pairs that are sewn together. */
export function legs(piece: Piece): (readonly [number, number])[] {
  const waist = piece.darts.flatMap((d: Dart) => {
    const [inner, outer] = [d.open?.inner ?? d.lowerTip, d.open?.outer ?? d.lowerTip]
    return [
      [distance(d.upperTip, d.inner), distance(d.upperTip, d.outer)] as const,
      [distance(inner, d.inner), distance(outer, d.outer)] as const,
    ]
  })
  return [
    ...waist,
    ...piece.edgeDarts.map((d) => [distance(d.tip, d.upper), distance(d.tip, d.lower)] as const),
  ]
}

/** Full angles at the tips of a waist dart, degrees; a dart that runs out open has one. */
export function tipAngles(dart: Dart): number[] {
  const tips = dart.open ? [dart.upperTip] : [dart.upperTip, dart.lowerTip]
  return tips.map((tip) => angleAt(tip, dart.inner, dart.outer))
}
function angleAt(tip: Point, a: Point, b: Point): number {
  const [u, v] = [subtract(a, tip), subtract(b, tip)]
  return (Math.acos(dot(u, v) / (distance(tip, a) * distance(tip, b))) * 180) / Math.PI
}

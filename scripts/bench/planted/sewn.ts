/**
 * What a muslin measures, from the geometry of its pieces alone: darts folded, seams sewn. A
 * corrected piece is measured like a fresh one; only its lettered points are asked for, never
 * how they came to be where they are.
 */
import { edge, namedPoint, type Piece } from '../../../src/draft/piece.ts'
import { distance, rotate, subtract, type Point } from '../../../src/geometry/point.ts'
import { pathLength } from '../../../src/geometry/length.ts'
import { pathEnd, pathStart } from '../../../src/geometry/path.ts'
import { sewnWidth, shapeOf, type Shape } from '../bodies/measured.ts'
import { sewnLength } from '../../../src/draft/piece.ts'
import type { Lengths } from './lengths.ts'

export interface Halves {
  readonly back: Piece
  readonly front: Piece
}

/** Levels are moved off the underarm by this, so that a width is not read in the armhole, mm. */
const OFF_UNDERARM = 1

/** @param bodyShoulder length of the body's shoulder, over which the fall of the seam is told, mm */
export function sewn({ back, front }: Halves, bodyShoulder: number): Lengths {
  const shapes = { back: shapeOf(back), front: shapeOf(front) }
  const round = (level: (p: Piece) => number): number =>
    2 * (sewnWidth(shapes.back, level(back)) + sewnWidth(shapes.front, level(front)))
  const [bustFront, bustBack] = [shapes.front, shapes.back].map((s) => 2 * bustWidth(s))
  const apex = namedPoint(front, 'apex')
  const neck = namedPoint(front, 'S')
  return {
    bust: (bustFront ?? NaN) + (bustBack ?? NaN),
    ...(bustFront === undefined ? {} : { bustFront }),
    ...(bustBack === undefined ? {} : { bustBack }),
    waist: round((p) => namedPoint(p, 'C').y),
    hip: round((p) => namedPoint(p, 'H').y),
    backLength: down(back, 'A', 'C'),
    sideLength: down(back, 'A', 'W'),
    frontLength: down(front, 'S', 'C'),
    apexDown: apex.y - neck.y,
    apexOut: apex.x - pathEnd(edge(front, 'centre').path).x,
    frontNeck: down(front, 'S', 'F'),
    neckWidth: namedPoint(back, 'S').x + namedPoint(front, 'S').x,
    bustDart: bustDart(front),
    ...(front.edges.some((e) => e.name === 'shoulder') ? armholes(shapes, bodyShoulder) : {}),
  }
}

const down = (piece: Piece, from: string, to: string): number =>
  namedPoint(piece, to).y - namedPoint(piece, from).y

/** Where the bust line lies above the underarm the sleeve begins; then just under it. */
function bustWidth(shape: Shape): number {
  const [d, u] = [namedPoint(shape.piece, 'D'), namedPoint(shape.piece, 'U')]
  return sewnWidth(shape, Math.max(d.y, u.y + OFF_UNDERARM))
}

const bustDart = (front: Piece): number =>
  front.edgeDarts
    .filter((d) => d.name === 'bustDart')
    .reduce((sum, d) => sum + distance(d.upper, d.lower), 0)

function armholes({ back, front }: { back: Shape; front: Shape }, bodyShoulder: number): Lengths {
  const seams = [back.piece, front.piece]
  const slopes = seams.map(shoulderSlope)
  const mean = (values: readonly number[]): number =>
    values.reduce((sum, v) => sum + v, 0) / values.length
  return {
    acrossBack: 2 * acrossWidth(back),
    acrossChest: 2 * acrossWidth(front),
    shoulder: mean(seams.map((p) => sewnLength(p, 'shoulder'))),
    shoulderDrop: bodyShoulder * Math.sin(mean(slopes)),
    armholeFront: pathLength(edge(front.piece, 'armhole').path),
    // By the back, which hangs from the nape; a front armhole that is longer stands off as slack.
    underarm: down(back.piece, 'A', 'U'),
  }
}

/** Half way from the shoulder point to the underarm, as the tape reads it on the body. */
function acrossWidth(shape: Shape): number {
  const [p, u] = [namedPoint(shape.piece, 'P'), namedPoint(shape.piece, 'U')]
  return sewnWidth(shape, (p.y + u.y) / 2)
}

/** Angle of the seam below the level with the dart on it folded, radians. */
function shoulderSlope(piece: Piece): number {
  const { path } = edge(piece, 'shoulder')
  const [neck, tip] = [pathStart(path), pathEnd(path)]
  const dart = piece.edgeDarts.find((d) => d.edge === 'shoulder')
  const closed = dart ? rotate(tip, dart.tip, -turnOf(dart)) : tip
  const along = subtract(closed, neck)
  return Math.atan2(along.y, along.x)
}
const turnOf = ({ tip, upper, lower }: { tip: Point; upper: Point; lower: Point }): number => {
  const [a, b] = [subtract(upper, tip), subtract(lower, tip)]
  return Math.atan2(a.x * b.y - a.y * b.x, a.x * b.x + a.y * b.y)
}

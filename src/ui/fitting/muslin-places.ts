/**
 * Her own muslin, laid flat from the draft it was cut from, and the places on it that the spoken
 * sentence can name. Both halves are drawn as in a mirror: her left lies at the left.
 */
import { boxOf, type Box } from '../../geometry/box.ts'
import { pathLength } from '../../geometry/length.ts'
import { flatten, mirroredPath, pointAtLength, type Path } from '../../geometry/path.ts'
import { between, point, type Point } from '../../geometry/point.ts'
import { crossings } from '../../geometry/intersect.ts'
import { line } from '../../geometry/segment.ts'
import { outline, type EdgeName, type Piece, type PieceId } from '../../draft/piece.ts'

/** One place on the right half of a piece; the left half is its mirror. */
export interface MuslinPlace {
  /** The word of the sentence's first gap. */
  readonly where: string
  readonly path: Path
  /** Where fold strokes are drawn for it. */
  readonly at: Point
}

/** How far inside its edge a fold is drawn, as a share of the way to the middle of the piece. */
const INSIDE = 0.3
/** Half the length that stands for a spot of the body, mm. */
const SPOT = 30

export function muslinPlaces(piece: Piece): readonly MuslinPlace[] {
  const name = piece.id
  const middle = middleOf(piece)
  const onEdge = (where: string, which: EdgeName): MuslinPlace[] =>
    piece.edges
      .filter((e) => e.name === which)
      .map(({ path }) => ({
        where,
        path,
        at: between(pointAtLength(path, pathLength(path) / 2), middle, INSIDE),
      }))
  const level = (where: string, y: number, from: number, to: number): MuslinPlace => ({
    where,
    path: [line(point(from, y), point(to, y))],
    at: point(from + (to - from) * 0.55, y),
  })
  const tip = piece.points['apex'] ?? point(middle.x, bust(piece))
  return [
    ...onEdge(`${name} neck edge`, 'neck'),
    ...onEdge('overarm seam', 'overarm'),
    ...onEdge(`${name} sleeve edge`, 'sleeveEdge'),
    ...onEdge('shoulder seam', 'shoulder'),
    ...onEdge(`${name} armhole`, 'armhole'),
    level(name === 'front' ? 'bust' : 'blade', tip.y, tip.x - SPOT, tip.x + SPOT),
    level('waist line', waist(piece), 0, widthAt(piece, waist(piece))),
    ...onEdge('side seam', 'side'),
    ...onEdge('hem', 'hem'),
  ]
}

/** On which side of the muslin a place lies: most lie on both and are shown on the one in view. */
export const viewOf = (where: string | undefined, shown: PieceId): PieceId =>
  where?.startsWith('front') || where === 'bust'
    ? 'front'
    : where?.startsWith('back') || where === 'blade'
      ? 'back'
      : shown

export const muslinBox = (piece: Piece): Box =>
  boxOf([outline(piece), mirroredPath(outline(piece))])

/** Both halves, or the one that is spoken of. */
export function halvesOf(sides: string | undefined): readonly ('left' | 'right')[] {
  if (sides === 'left side') return ['left']
  return sides === 'right side' ? ['right'] : ['left', 'right']
}

const bust = (piece: Piece): number => (piece.points['D'] ?? middleOf(piece)).y
const waist = (piece: Piece): number => (piece.points['C'] ?? middleOf(piece)).y

function widthAt(piece: Piece, y: number): number {
  const far = boxOf([outline(piece)]).right + 1
  const met = crossings(outline(piece), line(point(1, y), point(far, y)))
  return Math.max(...met.map((c) => c.at.x), 1)
}
function middleOf(piece: Piece): Point {
  const points = flatten(outline(piece), 1)
  const sum = points.reduce((a, p) => point(a.x + p.x, a.y + p.y), point(0, 0))
  return point(sum.x / points.length, sum.y / points.length)
}

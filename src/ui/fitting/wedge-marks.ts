/** What is drawn over a piece to show its wedge: the folded cloth, and where its numbers stand. */
import { edge, type AnyDart, type EdgeName, type Piece } from '../../draft/piece.ts'
import { wedgeAt } from '../../fitting/ops/closing.ts'
import type { Operation } from '../../fitting/ops/operation.ts'
import { pathEnd, type Path } from '../../geometry/path.ts'
import { project } from '../../geometry/project.ts'
import { between, distance, point, rotate, type Point } from '../../geometry/point.ts'

export interface WedgeMarks {
  readonly edgeName: EdgeName
  readonly into: AnyDart
  /** The cloth that is folded out, a closed run of straight lines. */
  readonly fold: string
  readonly pivot: Point
  readonly dart: Point
  readonly edge: Point
  readonly hem: Point
}

/** @param before the piece before the wedge; @param after with it closed */
export function wedgeMarks(
  before: Piece,
  after: Piece,
  op: Extract<Operation, { op: 'ROT' }>,
): WedgeMarks | undefined {
  const wedge = wedgeAt(before, op)
  const dart = mouthOf(after, op.into)
  if (!wedge || !dart) return undefined
  const { pivot, spot, turn } = wedge
  const path = edge(before, op.edge).path
  const reach = distance(pivot, spot)
  const corners = [rotate(spot, pivot, -turn / 2), rotate(spot, pivot, turn / 2)].map((p) =>
    onEdge(path, p, reach),
  )
  const foot = pathEnd(edge(after, 'side').path)
  return {
    edgeName: op.edge,
    into: op.into,
    fold: `M${[pivot, ...corners].map((p) => `${p.x} ${p.y}`).join('L')}Z`,
    pivot,
    dart,
    edge: pathEnd(edge(after, op.edge).path),
    hem: point(dart.x + (foot.x - dart.x) / 2, foot.y),
  }
}

function mouthOf({ darts, edgeDarts }: Piece, name: AnyDart): Point | undefined {
  const own = edgeDarts.find((d) => d.name === name)
  return own ? between(own.upper, own.lower, 0.5) : darts.find((d) => d.name === name)?.outer
}

/** A ruling ends on the edge itself, where the edge is near; else at the spot's distance. */
function onEdge(path: Path, p: Point, reach: number): Point {
  const nearest = project(path, p)
  return nearest.distance < reach / 10 ? nearest.at : p
}

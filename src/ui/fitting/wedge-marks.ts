/** What is drawn over a piece to show its wedge: the folded cloth, and where its numbers stand. */
import { edge, type Piece } from '../../draft/piece.ts'
import type { Wedge } from '../../fitting/wedge.ts'
import { lengthTo, pathEnd, pointAtLength } from '../../geometry/path.ts'
import { pathLength } from '../../geometry/length.ts'
import { project } from '../../geometry/project.ts'
import { distance, point, rotate, type Point } from '../../geometry/point.ts'
import type { EdgeName } from '../../draft/piece.ts'

export interface WedgeMarks {
  /** The cloth that is folded out, a closed run of straight lines. */
  readonly fold: string
  readonly pivot: Point
  readonly dart: Point
  readonly edge: Point
  readonly hem: Point
}

/**
 * @param before the piece before the wedge; @param after with it closed
 * @param name the edge it lies on; undefined is returned where no bust tip is drawn
 */
export function wedgeMarks(
  before: Piece,
  after: Piece,
  name: EdgeName,
  wedge: Wedge,
): WedgeMarks | undefined {
  const [pivot, dart] = [before.points['apex'], after.darts[0]]
  if (!pivot || !dart) return undefined
  const path = edge(before, name).path
  const spot = pointAtLength(path, pathLength(path) - wedge.from)
  const reach = distance(pivot, spot)
  const corners = [rotate(spot, pivot, -wedge.turn / 2), rotate(spot, pivot, wedge.turn / 2)].map(
    (p) => onEdge(path, p, reach),
  )
  const fold = `M${[pivot, ...corners].map((p) => `${p.x} ${p.y}`).join('L')}Z`
  const underarm = pathEnd(edge(after, name).path)
  const foot = pathEnd(edge(after, 'side').path)
  return {
    fold,
    pivot,
    dart: dart.outer,
    edge: underarm,
    hem: point(dart.lowerTip.x + (foot.x - dart.lowerTip.x) / 2, foot.y),
  }
}

/** A ruling ends on the edge itself, where the edge is near; else at the spot's distance. */
function onEdge(path: Parameters<typeof project>[0], p: Point, reach: number): Point {
  const nearest = project(path, p)
  return nearest.distance < reach / 10 && lengthTo(path, nearest.place) >= 0 ? nearest.at : p
}

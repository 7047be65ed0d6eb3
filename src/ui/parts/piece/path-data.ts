/** SVG path data of what is drawn on a piece: paths with true arcs, crossings, arrow heads. */
import type { Path } from '../../../geometry/path.ts'
import { add, quarterTurn, scale, subtract, unit, type Point } from '../../../geometry/point.ts'
import { pathData as written } from '../../../output/svg.ts'
import type { Dart, EdgeDart } from '../../../draft/piece.ts'
import { dartLegs, edgeDartLegs } from '../../../draft/sheet.ts'

/** One `d` for any number of paths; lines, cubics and arcs stay what they are. */
export const pathData = (...paths: readonly Path[]): string => paths.map(written).join(' ')

/** A point is where two lines cross: `arm` mm to each side. */
export const crossData = ({ x, y }: Point, arm: number): string =>
  `M${x - arm} ${y}h${2 * arm}M${x} ${y - arm}v${2 * arm}`

/** An open arrow head at `tip` for a line that comes from `from`; `long` in mm. */
export function arrowData(from: Point, tip: Point, long: number): string {
  const way = unit(subtract(tip, from))
  const foot = add(tip, scale(way, -long))
  const aside = scale(quarterTurn(way), long / 2)
  const [a, b] = [add(foot, aside), subtract(foot, aside)]
  return `M${a.x} ${a.y}L${tip.x} ${tip.y}L${b.x} ${b.y}`
}

export const dartData = (d: Dart): string => pathData(dartLegs(d))
export const edgeDartData = (d: EdgeDart): string => pathData(edgeDartLegs(d))

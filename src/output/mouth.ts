/**
 * The mouths that darts have on an edge: a bust dart on the side seam, and a waist dart that runs
 * out at the hem. Each as the crease that closes it and the side its fold is pressed to: a side
 * dart down, a waist dart towards the centre (common practice, no source).
 */
import { project } from '../geometry/project.ts'
import { splitPath, startTangent, type Path, type Place } from '../geometry/path.ts'
import type { Point } from '../geometry/point.ts'
import { line, type Line } from '../geometry/segment.ts'
import type { AnyDart, Edge, EdgeDart, Piece, Side } from '../draft/piece.ts'
import type { FoldsTowards, Mouth } from './dart-cap.ts'
import { reflectedPath } from './fold.ts'

export interface EdgeMouth extends Mouth {
  readonly dart: AnyDart
  readonly towards: FoldsTowards
  /** In a hem the allowance is turned up: its dart is the mirror of the one above the hem line. */
  readonly turnedUp: boolean
  /** On a whole piece that is not alike on both sides. */
  readonly side?: Side
}

/** The mouths on an edge in outline order. */
export function mouthsOn(piece: Piece, edge: Edge): readonly EdgeMouth[] {
  const sides = piece.edgeDarts
    .filter((d) => d.edge === edge.name && d.side === edge.side)
    .map((d) => ({ ...ordered(edge.path, d.name, d.tip, ...pressed(d), false), ...sideOf(d) }))
  const runOut = piece.darts.flatMap((d): EdgeMouth[] => {
    const { name, lowerTip, open } = d
    if (!open || !liesOn(edge.path, open.inner) || !liesOn(edge.path, open.outer)) return []
    const tip = mirrored(edge.path, open.outer, lowerTip)
    return [{ ...ordered(edge.path, name, tip, open.outer, open.inner, true), ...sideOf(d) }]
  })
  const along = (m: EdgeMouth): number => {
    const { index, t } = project(edge.path, m.first).place
    return index + t
  }
  return [...sides, ...runOut].sort((a, b) => along(a) - along(b))
}

const sideOf = ({ side }: { readonly side?: Side }): { readonly side?: Side } =>
  side ? { side } : {}

/** The ends of the mouth: a dart that lies across is pressed down, an upright one to the centre. */
function pressed({ tip, upper, lower }: EdgeDart): readonly [from: Point, to: Point] {
  const [across, down] = [upper.x + lower.x - 2 * tip.x, upper.y + lower.y - 2 * tip.y]
  const first =
    Math.abs(across) > Math.abs(down) ? upper.y < lower.y : Math.abs(upper.x) > Math.abs(lower.x)
  return first ? [upper, lower] : [lower, upper]
}

/** `from` is the side away from the fold, `to` the side the fold is pressed to. */
function ordered(
  path: Path,
  dart: AnyDart,
  tip: Point,
  from: Point,
  to: Point,
  turnedUp: boolean,
): EdgeMouth {
  const spot = ({ index, t }: Place): number => index + t
  const runsOn = spot(project(path, from).place) < spot(project(path, to).place)
  const [first, second] = runsOn ? [from, to] : [to, from]
  return { dart, tip, first, second, towards: runsOn ? 'second' : 'first', turnedUp }
}

const liesOn = (path: Path, p: Point): boolean => project(path, p).distance < ON_EDGE
const ON_EDGE = 1e-3

/** The tip of a dart that narrows beyond the hem, laid over with the allowance: above the hem. */
function mirrored(hem: Path, on: Point, tip: Point): Point {
  const there = reflectedPath([line(on, tip)], on, startTangent(hem))[0] as Line
  return there.to
}

/** The edge without its mouths: the runs before, between and after them. */
export function runsBeside(path: Path, mouths: readonly Mouth[]): readonly Path[] {
  let rest = path
  const runs: Path[] = []
  for (const m of mouths) {
    const [before, after] = splitPath(rest, project(rest, m.first).place)
    runs.push(before)
    rest = splitPath(after, project(after, m.second).place)[1]
  }
  return [...runs, rest]
}

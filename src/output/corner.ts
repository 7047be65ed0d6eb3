/**
 * Where two moved edges meet: each is carried on along its end direction until they cross. An
 * inner corner shortens both, an outer one lengthens both, and one rule serves both because the
 * crossing nearest to the seam corner is taken.
 */
import { crossings } from '../geometry/intersect.ts'
import {
  endTangent,
  pathEnd,
  pathStart,
  reversedPath,
  splitPath,
  startTangent,
  tangentAtPlace,
  type Path,
  type Place,
} from '../geometry/path.ts'
import { add, distance, dot, scale, subtract, type Point } from '../geometry/point.ts'
import { line } from '../geometry/segment.ts'
import { SAME_POINT } from '../geometry/tolerance.ts'

/**
 * A corner may stand this many allowances from the seam corner (a point of about 29°); a sharper
 * one is cut off square. 4 is the usual mitre limit of drawing programs: the PDF default is 10
 * (ISO 32000-1, 8.4.3.5), the SVG default 4 (SVG 1.1, 11.4).
 */
export const MITRE_LIMIT = 4

export interface Meeting {
  readonly first: Path
  /** What is drawn between; empty where the two meet. */
  readonly between: Path
  readonly second: Path
}

/** `first` ends and `second` begins near `corner`; `wide` is the larger of the two allowances. */
export function meet(first: Path, second: Path, corner: Point, wide: number): Meeting {
  if (distance(pathEnd(first), pathStart(second)) < SAME_POINT * 100)
    return { first, between: [], second }
  const reach = Math.max(wide, 1) * MITRE_LIMIT
  const on = onward(first, reach)
  const before = reversedPath(onward(reversedPath(second), reach))
  const met = before
    .flatMap((s, index) =>
      crossings(on, s).map((c) => ({ on: c.place, before: { index, t: c.u }, at: c.at })),
    )
    .filter((c) => distance(c.at, corner) <= reach)
  if (met.length === 0) return cutOff(first, second, wide)
  const near = met.reduce((a, b) => (distance(b.at, corner) < distance(a.at, corner) ? b : a))
  return {
    first: splitPath(on, near.on)[0],
    between: [],
    second: splitPath(before, near.before)[1],
  }
}

function onward(path: Path, reach: number): Path {
  const end = pathEnd(path)
  return [...path, line(end, add(end, scale(endTangent(path), reach)))]
}

/** Too sharp, or running on in one line with another allowance: a short straight cut across. */
function cutOff(first: Path, second: Path, wide: number): Meeting {
  const [a, b] = [pathEnd(first), pathStart(second)]
  const [onA, backB] = [endTangent(first), scale(startTangent(second), -1)]
  const runsOn = dot(onA, startTangent(second)) > Math.SQRT1_2
  if (runsOn) return { first, between: [line(a, b)], second }
  const [far, near] = [add(a, scale(onA, wide)), add(b, scale(backB, wide))]
  return { first, between: [line(a, far), line(far, near), line(near, b)], second }
}

/**
 * An edge that runs out over a hem, bent at the hem line as in a mirror: turned up, the hem then
 * lies on the piece edge to edge. `hem` is the seam line of the hem, beginning at that edge.
 */
export function bentAtHem(edge: Path, hem: Path, wide: number): Path {
  const along = startTangent(hem)
  if (Math.abs(dot(endTangent(edge), along)) < SQUARE) return edge
  const reach = Math.max(wide, 1) * MITRE_LIMIT
  const corner = pathStart(hem)
  const hemLine = line(add(corner, scale(along, -reach)), add(corner, scale(along, reach)))
  const on = onward(edge, reach)
  const place: Place | undefined = crossings(on, hemLine).at(-1)?.place
  if (!place) return edge
  const direction = tangentAtPlace(on, place)
  const mirrored = subtract(direction, scale(along, 2 * dot(direction, along)))
  const [kept] = splitPath(on, place)
  const at = pathEnd(kept)
  return [...kept, line(at, add(at, scale(mirrored, reach)))]
}
/** Within a thousandth of square the mirror changes nothing she could cut. */
const SQUARE = 1e-3

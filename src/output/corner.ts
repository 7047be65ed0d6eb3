/**
 * Where two moved edges meet: each is carried on along its end direction until they cross. An
 * inner corner shortens both, an outer one lengthens both, and one rule serves both because the
 * crossing nearest to the seam corner is taken.
 */
import { boxesMeet, boxOfPoints, grown, hull, type Box } from '../geometry/box.ts'
import { crossings, intersect } from '../geometry/intersect.ts'
import { pathLength } from '../geometry/length.ts'
import {
  endTangent,
  pathEnd,
  pathStart,
  placeAt,
  reversedPath,
  splitPath,
  startTangent,
  type Path,
  type Place,
} from '../geometry/path.ts'
import {
  add,
  cross,
  distance,
  dot,
  quarterTurn,
  scale,
  subtract,
  type Point,
} from '../geometry/point.ts'
import { endOf, line, type Segment } from '../geometry/segment.ts'
import { SAME_POINT } from '../geometry/tolerance.ts'
import { reflectedPath } from './fold.ts'

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
  const met = meetings(on, before, grown(boxOfPoints([corner]), reach)).filter(
    (c) => distance(c.at, corner) <= reach,
  )
  if (met.length === 0) return cutOff(first, second, wide)
  const near = met.reduce((a, b) => (distance(b.at, corner) < distance(a.at, corner) ? b : a))
  return {
    first: splitPath(on, near.on)[0],
    between: [],
    second: splitPath(before, near.before)[1],
  }
}

interface Met {
  readonly on: Place
  readonly before: Place
  readonly at: Point
}

/**
 * Where two paths cross within a box. A joint of one path that lies on a line of the other belongs
 * to two segments and may be missed by both.
 */
function meetings(on: Path, before: Path, around: Box): Met[] {
  const [own, its] = [nearby(on, around), nearby(before, around)]
  const crossed = its.flatMap((b) =>
    own.flatMap((o): Met[] =>
      intersect(o.s, b.s).map(({ t, u, at }) => ({
        on: { index: o.index, t },
        before: { index: b.index, t: u },
        at,
      })),
    ),
  )
  const ownJoints = joints(on, own, its).map((j): Met => ({
    on: j.joint,
    before: j.place,
    at: j.at,
  }))
  const itsJoints = joints(before, its, own).map((j): Met => ({
    on: j.place,
    before: j.joint,
    at: j.at,
  }))
  return [...crossed, ...ownJoints, ...itsJoints]
}

interface Numbered {
  readonly s: Segment
  readonly index: number
}
const nearby = (path: Path, around: Box): Numbered[] =>
  path.flatMap((s, index) => (boxesMeet(hull(s), around) ? [{ s, index }] : []))

function joints(
  path: Path,
  own: readonly Numbered[],
  other: readonly Numbered[],
): { joint: Place; place: Place; at: Point }[] {
  const ends = own
    .filter(({ index }) => index < path.length - 1)
    .map(({ s, index }) => ({ joint: { index, t: 1 }, at: endOf(s) }))
  return other.flatMap(({ s, index }) => {
    if (s.kind !== 'line') return []
    const along = subtract(s.to, s.from)
    const square = dot(along, along)
    if (square === 0) return []
    return ends.flatMap(({ joint, at }) => {
      const gap = subtract(at, s.from)
      const t = dot(gap, along) / square
      const off = Math.abs(cross(gap, along)) / Math.sqrt(square)
      return t >= 0 && t <= 1 && off < SAME_POINT ? [{ joint, place: { index, t }, at }] : []
    })
  })
}

/** Both edges and what lies between them as one path. */
export function joined(first: Path, second: Path, corner: Point, wide: number): Path {
  const met = meet(first, second, corner, wide)
  return [...met.first, ...met.between, ...met.second]
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
 * An edge that runs out over a hem, mirrored at the hem line: turned up, the hem then lies on the
 * piece edge to edge. `hem` is the seam line of the hem, beginning at that edge. A curved edge is
 * mirrored as the curve it is. `depth` is that of a hem turned twice: past it the edge is
 * mirrored once more.
 */
export function mirroredAtHem(edge: Path, hem: Path, wide: number, depth?: number): Path {
  const along = startTangent(hem)
  const once = mirroredAt(edge, pathStart(hem), along, wide)
  if (once === edge || depth === undefined || depth <= 0 || depth >= wide) return once
  const aside = quarterTurn(along)
  const outward = dot(subtract(pathStart(edge), pathStart(hem)), aside) > 0 ? -depth : depth
  return mirroredAt(once, add(pathStart(hem), scale(aside, outward)), along, wide)
}

/** The edge up to the line through `on`, and from there on what a fold along it covers. */
function mirroredAt(edge: Path, on: Point, along: Point, wide: number): Path {
  const reach = Math.max(wide, 1) * MITRE_LIMIT
  const crease = line(add(on, scale(along, -reach)), add(on, scale(along, reach)))
  const carried = onward(edge, reach)
  const place = crossings(carried, crease).at(-1)?.place
  if (!place) return edge
  const [kept] = splitPath(carried, place)
  const above = pathLength(kept) - reach
  const covers = above > SAME_POINT ? splitPath(kept, placeAt(kept, above))[1] : kept
  return [...kept, ...reversedPath(reflectedPath(covers, on, along))]
}

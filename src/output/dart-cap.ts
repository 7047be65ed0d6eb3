/**
 * The end of a dart whose mouth lies on an edge: what must be cut beyond the mouth so that, with
 * the dart folded and pressed to its side, its edge lies flush with the allowance under it. Found
 * as with paper: the dart is closed, the closed edge is cut straight through, and unfolded.
 * Outline order: `first` runs up to the mouth, `second` runs on from it.
 */
import { crossings } from '../geometry/intersect.ts'
import {
  pathEnd,
  pathStart,
  reversedPath,
  splitPath,
  turnedPath,
  type Path,
  type Place,
} from '../geometry/path.ts'
import {
  add,
  distance,
  heading,
  point,
  scale,
  subtract,
  unit,
  type Point,
} from '../geometry/point.ts'
import { endOf, line } from '../geometry/segment.ts'
import { joined, MITRE_LIMIT } from './corner.ts'
import { reflectedPath } from './fold.ts'
import { parallel } from './parallel.ts'

export interface Mouth {
  readonly tip: Point
  /** Ends of the mouth in outline order. */
  readonly first: Point
  readonly second: Point
}
/** Which of the two sides the folded dart lies on: a side bust dart on the lower one. */
export type FoldsTowards = 'first' | 'second'

export interface DartCap {
  /** The moved edge up to the dart, ending on the line of its first leg. */
  readonly first: Path
  /** From leg to leg, over the crease of the folded dart. */
  readonly cap: Path
  readonly second: Path
  /** Where the crease leaves the cloth. */
  readonly crease: Point
}

/**
 * The cap of a dart on an edge that is given its allowance. `upper` is the seam line up to the
 * mouth, `lower` from the mouth on. Undefined where the edge is too short to be folded under.
 */
export const dartCap = (
  upper: Path,
  lower: Path,
  tip: Point,
  allowance: number,
  foldsTowards: FoldsTowards,
): DartCap | undefined =>
  foldedCap(
    parallel(upper, allowance),
    parallel(lower, allowance),
    { tip, first: pathEnd(upper), second: pathStart(lower) },
    allowance,
    foldsTowards,
  )

/** The same for edges that are moved already; `wide` is how far. */
export function foldedCap(
  first: Path,
  second: Path,
  mouth: Mouth,
  wide: number,
  towards: FoldsTowards,
): DartCap | undefined {
  if (towards === 'second') return foldedOnSecond(first, second, mouth, wide)
  const seen = { tip: mouth.tip, first: mouth.second, second: mouth.first }
  const turned = foldedOnSecond(reversedPath(second), reversedPath(first), seen, wide)
  return (
    turned && {
      first: reversedPath(turned.second),
      cap: reversedPath(turned.cap),
      second: reversedPath(turned.first),
      crease: turned.crease,
    }
  )
}

function foldedOnSecond(
  first: Path,
  second: Path,
  { tip, first: a, second: b }: Mouth,
  wide: number,
): DartCap | undefined {
  const angle = between(heading(tip, a) - heading(tip, b))
  // Closed: the second side is turned about the tip until its leg lies on the first one.
  const closed = joined(first, turnedPath(second, tip, angle), a, wide)
  const atLeg = place(closed, tip, unit(subtract(a, tip)), distance(tip, a), wide)
  if (!atLeg) return undefined
  const [before, after] = splitPath(closed, atLeg)
  // The half of the fold next to the first leg lies as it is drawn, under the second side.
  const middle = heading(tip, a) - angle / 2
  const crease = point(Math.cos(middle), Math.sin(middle))
  const atCrease = place(after, tip, crease, distance(tip, a), wide)
  if (!atCrease) return undefined
  const [under] = splitPath(after, atCrease)
  const over = reversedPath(reflectedPath(under, tip, crease))
  return {
    first: before,
    cap: [...under, ...over],
    second: turnedPath(after, tip, -angle),
    crease: pathEnd(under),
  }
}

/** The same angle between −π and π. */
const between = (angle: number): number => angle - 2 * Math.PI * Math.round(angle / (2 * Math.PI))

/** Where a path crosses a ray from the tip, nearest to `far` along it. */
function place(path: Path, tip: Point, way: Point, far: number, wide: number): Place | undefined {
  const ray = line(tip, add(tip, scale(way, 2 * far + wide * MITRE_LIMIT)))
  const met = crossings(path, ray).map((c) => ({ place: c.place, at: c.at }))
  // A corner on the ray belongs to both its segments and may be missed by both.
  const corners = path
    .map((s, index) => ({ place: { index, t: 1 }, at: endOf(s) }))
    .filter(({ at }) => offRay(at, tip, way) < ON_RAY)
  const off = (p: Point): number => Math.abs(distance(tip, p) - far)
  const all = [...met, ...corners]
  return all.length === 0
    ? undefined
    : all.reduce((best, c) => (off(c.at) < off(best.at) ? c : best)).place
}
const ON_RAY = 1e-7
function offRay(p: Point, tip: Point, way: Point): number {
  const d = subtract(p, tip)
  return d.x * way.x + d.y * way.y > 0 ? Math.abs(d.x * way.y - d.y * way.x) : Infinity
}

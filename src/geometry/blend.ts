/**
 * Two runs of one edge that no longer meet in one smooth line, drawn smooth again: the last
 * `reach` of the first and the first `reach` of the second give way to one cubic that leaves and
 * arrives in the direction of what stays.
 */
import { pathLength } from './length.ts'
import {
  endTangent,
  pathEnd,
  pathStart,
  placeAt,
  splitPath,
  startTangent,
  type Path,
} from './path.ts'
import { add, cross, distance, dot, scale, type Point } from './point.ts'
import { cubic } from './segment.ts'

export const bridged = (first: Path, second: Path, reach: number): Path => {
  const { around, even } = gapOf(first, second, reach)
  return around(even)
}

export interface BridgedTo {
  readonly path: Path
  /** What the whole is still longer than it was to be, less than nothing where it is shorter, mm. */
  readonly off: number
  /** The same with an even bridge, neither fuller nor flatter. */
  readonly evenOff: number
}
/**
 * The same to a length of the whole, mm: the bridge is drawn fuller or flatter for it. Past what
 * leaves it one easy curve it stays at that limit, and `off` says what is missing.
 */
export function bridgedTo(first: Path, second: Path, reach: number, long: number): BridgedTo {
  const { around, even } = gapOf(first, second, reach)
  let [low, high] = [even * FLATTER, even * FULLER]
  const over = (handle: number): number => pathLength(around(handle)) - long
  const [least, most, evenOff] = [over(low), over(high), over(even)]
  if (least > 0) return { path: around(low), off: least, evenOff }
  if (most < 0) return { path: around(high), off: most, evenOff }
  for (let i = 0; i < HALVINGS; i++) {
    const middle = (low + high) / 2
    if (over(middle) < 0) low = middle
    else high = middle
  }
  return { path: around((low + high) / 2), off: 0, evenOff }
}
/** A bridge is drawn this much flatter or fuller than an even one at the most. Judgement. */
const [FLATTER, FULLER] = [0.8, 1.35]
/** Halving so often leaves less than a thousandth of a millimetre. */
const HALVINGS = 20

interface Gap {
  /** The whole run with a bridge of this handle; the longer its handles, the longer a bridge. */
  readonly around: (handle: number) => Path
  readonly even: number
}
function gapOf(first: Path, second: Path, reach: number): Gap {
  const keepFirst = trimmedEnd(first, reach)
  const keepSecond = trimmedStart(second, reach)
  const [from, to] = [pathEnd(keepFirst), pathStart(keepSecond)]
  const [out, back] = [endTangent(keepFirst), startTangent(keepSecond)]
  return {
    around: (handle) => [
      ...keepFirst,
      cubic(from, add(from, scale(out, handle)), add(to, scale(back, -handle)), to),
      ...keepSecond,
    ],
    even: evenHandle(distance(from, to), out, back),
  }
}

/**
 * Handle length that makes the bridge a circle's arc when the two directions allow one:
 * (4/3)·tan(φ/4) radii for a turn of φ over a chord of 2·sin(φ/2) radii (the usual cubic for an arc).
 */
function evenHandle(chord: number, out: Point, back: Point): number {
  const turn = Math.abs(Math.atan2(cross(out, back), dot(out, back)))
  if (turn < 1e-3) return chord / 3
  return (chord * (4 / 3) * Math.tan(turn / 4)) / (2 * Math.sin(turn / 2))
}

function trimmedEnd(path: Path, reach: number): Path {
  const length = pathLength(path)
  return splitPath(path, placeAt(path, length - within(reach, length)))[0]
}
function trimmedStart(path: Path, reach: number): Path {
  return splitPath(path, placeAt(path, within(reach, pathLength(path))))[1]
}
/** At least a fifth of each run keeps its place, so that its direction at the far end is kept. */
const within = (reach: number, length: number): number => Math.min(reach, length * 0.8)

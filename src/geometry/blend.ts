/**
 * Two runs of one edge that no longer meet in one smooth line, drawn smooth again: the last
 * `reach` of the first and the first `reach` of the second give way to one cubic that leaves and
 * arrives in the direction of what stays. `long` is the length the whole is to have: the cubic is
 * drawn fuller or flatter for it, where that leaves it one easy curve.
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
import { cubic, type Segment } from './segment.ts'

export function bridged(first: Path, second: Path, reach: number, long?: number): Path {
  const keepFirst = trimmedEnd(first, reach)
  const keepSecond = trimmedStart(second, reach)
  const [from, to] = [pathEnd(keepFirst), pathStart(keepSecond)]
  const [out, back] = [endTangent(keepFirst), startTangent(keepSecond)]
  const even = evenHandle(distance(from, to), out, back)
  const at = (handle: number): Segment =>
    cubic(from, add(from, scale(out, handle)), add(to, scale(back, -handle)), to)
  const kept = pathLength(keepFirst) + pathLength(keepSecond)
  const handle =
    long === undefined ? even : handleFor((h) => pathLength([at(h)]), even, long - kept)
  return [...keepFirst, at(handle), ...keepSecond]
}

/** A bridge is drawn this much flatter or fuller than an even one at the most. Judgement. */
const [FLATTER, FULLER] = [0.8, 1.35]
/** Halving so often leaves less than a thousandth of a millimetre. */
const HALVINGS = 20

/** The longer its handles, the longer a bridge; the even one where none is easy and so long. */
function handleFor(length: (handle: number) => number, even: number, wanted: number): number {
  let [low, high] = [even * FLATTER, even * FULLER]
  if (wanted < length(low) || wanted > length(high)) return even
  for (let i = 0; i < HALVINGS; i++) {
    const middle = (low + high) / 2
    if (length(middle) < wanted) low = middle
    else high = middle
  }
  return (low + high) / 2
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

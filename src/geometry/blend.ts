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
import { add, distance, scale } from './point.ts'
import { cubic } from './segment.ts'

/** A third of the chord: the handle length that keeps a shallow cubic nearest to an even curve. */
const HANDLE = 1 / 3

export function bridged(first: Path, second: Path, reach: number): Path {
  const keepFirst = trimmedEnd(first, reach)
  const keepSecond = trimmedStart(second, reach)
  const [from, to] = [pathEnd(keepFirst), pathStart(keepSecond)]
  const handle = distance(from, to) * HANDLE
  const bridge = cubic(
    from,
    add(from, scale(endTangent(keepFirst), handle)),
    add(to, scale(startTangent(keepSecond), -handle)),
    to,
  )
  return [...keepFirst, bridge, ...keepSecond]
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

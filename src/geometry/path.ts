/** A path is a run of segments, each beginning where the one before ends. */
import {
  at,
  endOf,
  mirrored,
  moved,
  part,
  reversed,
  startOf,
  tangent,
  turned,
  type Segment,
} from './segment.ts'
import { distance, norm, type Point } from './point.ts'
import { pathLength, segmentLength, tAtLength } from './length.ts'
import { FLATTEN_ERROR, SAME_POINT } from './tolerance.ts'

export type Path = readonly Segment[]

function first<T>(list: readonly T[]): T {
  const head = list[0]
  if (head === undefined) throw new Error('path: no segments')
  return head
}

export const pathStart = (path: Path): Point => startOf(first(path))
export const pathEnd = (path: Path): Point => endOf(path[path.length - 1] ?? first(path))
export const startTangent = (path: Path): Point => tangent(first(path), 0)
export const endTangent = (path: Path): Point => tangent(path[path.length - 1] ?? first(path), 1)
export const reversedPath = (path: Path): Path => [...path].reverse().map(reversed)
export const turnedPath = (path: Path, pivot: Point, angle: number): Path =>
  path.map((s) => turned(s, pivot, angle))
export const movedPath = (path: Path, by: Point): Path => path.map((s) => moved(s, by))
export const mirroredPath = (path: Path): Path => path.map(mirrored)

/** A place on a path: which segment, and t along it. */
export interface Place {
  readonly index: number
  readonly t: number
}

/** The place `length` mm from the start; throws past either end, which is our own mistake. */
export function placeAt(path: Path, length: number): Place {
  let left = length
  for (const [index, s] of path.entries()) {
    const own = segmentLength(s)
    if (left <= own + SAME_POINT) return { index, t: Math.min(1, Math.max(0, tAtLength(s, left))) }
    left -= own
  }
  throw new Error(`placeAt: ${length} mm on a path of ${pathLength(path)} mm`)
}

function segmentAt(path: Path, place: Place): Segment {
  const s = path[place.index]
  if (s === undefined) throw new Error(`path: no segment ${place.index} of ${path.length}`)
  return s
}
export const pointAtPlace = (path: Path, place: Place): Point => at(segmentAt(path, place), place.t)
export const tangentAtPlace = (path: Path, place: Place): Point =>
  tangent(segmentAt(path, place), place.t)
export const pointAtLength = (path: Path, length: number): Point =>
  pointAtPlace(path, placeAt(path, length))

export const lengthTo = (path: Path, place: Place): number =>
  pathLength(path.slice(0, place.index)) + segmentLength(segmentAt(path, place), 0, place.t)

/** Cut in two; an empty half is an empty path. */
export function splitPath(path: Path, place: Place): readonly [Path, Path] {
  const s = segmentAt(path, place)
  const [first, second] = [path.slice(0, place.index), path.slice(place.index + 1)]
  const [before, after] = [part(s, 0, place.t), part(s, place.t, 1)]
  if (hasLength(before)) first.push(before)
  if (hasLength(after)) second.unshift(after)
  return [first, second]
}
const hasLength = (s: Segment): boolean => segmentLength(s) > SAME_POINT

/** Throws unless every segment begins where the one before ends. */
export function checkJoined(path: Path, what: string): void {
  for (const [i, s] of path.entries()) {
    const before = path[i - 1]
    const gap = before ? distance(endOf(before), startOf(s)) : 0
    if (gap > SAME_POINT * 10) throw new Error(`${what}: a gap of ${gap} mm before segment ${i}`)
  }
}

/** Points along the path, no farther than `error` mm from it; first and last included. */
export function flatten(path: Path, error = FLATTEN_ERROR): Point[] {
  const out: Point[] = path.length > 0 ? [pathStart(path)] : []
  for (const s of path) {
    const steps = chords(s, error)
    for (let i = 1; i <= steps; i++) out.push(at(s, i / steps))
  }
  return out
}

/** Chords needed: sagitta of an arc; for a cubic the bound by its second differences. */
function chords(s: Segment, error: number): number {
  switch (s.kind) {
    case 'line':
      return 1
    case 'arc': {
      const most = 2 * Math.acos(Math.max(0, 1 - error / s.radius))
      return Math.max(1, Math.ceil(Math.abs(s.sweep) / Math.max(most, 1e-3)))
    }
    case 'cubic': {
      const most = Math.max(bend(s.from, s.c1, s.c2), bend(s.c1, s.c2, s.to))
      return Math.max(1, Math.ceil(Math.sqrt((0.75 * most) / error)))
    }
  }
}
/** Second difference of three handles. */
const bend = (a: Point, b: Point, c: Point): number =>
  norm({ x: a.x - 2 * b.x + c.x, y: a.y - 2 * b.y + c.y })

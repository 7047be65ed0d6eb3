/**
 * Stay stitches: a row just outside the seam line where the allowance is clipped, so that the
 * snips do not run on into the piece.
 */
import { pathLength } from '../geometry/length.ts'
import {
  endTangent,
  pathStart,
  placeAt,
  splitPath,
  startTangent,
  type Path,
} from '../geometry/path.ts'
import type { Point } from '../geometry/point.ts'
import type { EdgeName } from '../draft/piece.ts'
import { CLIP_SHORT, CORNER, following, turn, type ClippedEdge, type Spot } from './clip.ts'
import { joined } from './corner.ts'
import { parallel } from './parallel.ts'

export interface StayStitch {
  readonly edge: EdgeName
  readonly path: Path
}

/** Stay stitches lie 1/8 in outside the seam line (an apparel textbook of 2012, p. 445). */
export const STAY_OUTSIDE = 3
/** They run so far past a clipped corner on both sides. Common practice, no source. */
export const STAY_LONG = 50

export const stays = (edges: readonly ClippedEdge[], spots: readonly Spot[]): StayStitch[] =>
  merged(spots).flatMap((s) => stay(edges, s))

/** Spots whose stay stitches would run into one another are stayed as one. */
function merged(spots: readonly Spot[]): Spot[] {
  return [...spots]
    .sort((a, b) => a.index - b.index || a.from - b.from)
    .reduce<Spot[]>((done, s) => {
      const last = done.at(-1)
      return last && last.index === s.index && s.from - last.to < 2 * STAY_LONG
        ? [...done.slice(0, -1), { ...last, to: Math.max(last.to, s.to) }]
        : [...done, s]
    }, [])
}

/** Past a corner that turns in, or out of a curve that runs on, the neighbour is stayed too. */
function stay(edges: readonly ClippedEdge[], { index, from, to }: Spot): StayStitch[] {
  const own = edges[index]
  if (!own) return []
  const length = pathLength(own.edge.path)
  const [short, over] = [STAY_LONG - from, to + STAY_LONG - length]
  const before = runsIn(edges, index - 1) ? edges[index - 1] : undefined
  const after = runsIn(edges, index) ? edges[index + 1] : undefined
  // In the neighbour they end at the mouth of a dart, which is folded over them.
  const [last, next] = [before?.runs.at(-1), after?.runs[0]]
  const parts = [
    ...(before && last && short > 0 ? stayed(last, before.by, pathLength(last) - short) : []),
    ...stayed(own.edge.path, own.by, from - STAY_LONG, to + STAY_LONG),
    ...(after && next && over > 0 ? stayed(next, after.by, 0, over) : []),
  ]
  const [first, ...rest] = parts
  if (!first) return []
  const path = rest.reduce((done, p) => joined(done, p.path, p.corner, STAY_OUTSIDE), first.path)
  return [{ edge: own.edge.name, path }]
}

/** The next edge begins in an inner corner or runs on smoothly. */
function runsIn(edges: readonly ClippedEdge[], index: number): boolean {
  const [own, next] = [edges[index], following(edges, index)]
  return own && next ? turn(endTangent(own.edge.path), startTangent(next.path)) < CORNER : false
}

/** A stretch of a seam line moved to where it is stayed; nothing where the edge is cut on its line. */
function stayed(
  path: Path,
  by: number,
  from: number,
  to = Infinity,
): { path: Path; corner: Point }[] {
  if (by <= CLIP_SHORT) return []
  const length = pathLength(path)
  const [a, b] = [Math.max(0, from), Math.min(length, to)]
  const begun = a > 0 ? splitPath(path, placeAt(path, a))[1] : path
  const stretch = b < length ? splitPath(begun, placeAt(begun, b - a))[0] : begun
  const moved = parallel(stretch, Math.min(STAY_OUTSIDE, by / 2))
  return moved.length > 0 ? [{ path: moved, corner: pathStart(stretch) }] : []
}

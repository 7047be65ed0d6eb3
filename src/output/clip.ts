/**
 * Clip marks: where the outline turns inward, in a corner or in a tight hollow curve, the
 * allowance is shorter than the line it is turned to, and is snipped nearly to the seam line.
 */
import { crossings } from '../geometry/intersect.ts'
import { pathLength } from '../geometry/length.ts'
import {
  endTangent,
  pathEnd,
  pathStart,
  placeAt,
  pointAtPlace,
  startTangent,
  tangentAtPlace,
  type Path,
} from '../geometry/path.ts'
import {
  add,
  between,
  cross,
  distance,
  dot,
  quarterTurn,
  scale,
  subtract,
  type Point,
} from '../geometry/point.ts'
import { project } from '../geometry/project.ts'
import { at, line } from '../geometry/segment.ts'
import type { Edge, EdgeName } from '../draft/piece.ts'
import { MITRE_LIMIT } from './corner.ts'
import { curvature, neverHollow } from './tightest.ts'

export interface Clip {
  readonly edge: EdgeName
  /** From the cutting line towards the seam line. */
  readonly path: Path
}

/** A clip ends so far before the seam line. Common practice, no source. */
export const CLIP_SHORT = 2
/** A hollow curve tighter than this is clipped: where a French seam is given up too. Common practice. */
export const CLIP_RADIUS = 60
/** Clips along a curve stand so far apart on the seam line: 10 to 15 mm. Common practice, no source. */
const CLIP_APART = 12
/** The outline has a corner where it turns by more than this. Common practice, no source. */
export const CORNER = Math.PI / 9

/** An edge that is not on the fold, with its cutting line and its allowance. */
export interface ClippedEdge {
  readonly edge: Edge
  readonly cut: Path
  readonly by: number
  /** The seam line without the mouths of darts. */
  readonly runs: readonly Path[]
  /** The fold that ends where this edge begins. */
  readonly fold?: Path
}

/** A stretch of one edge, lengths along it, mm. A corner is a stretch of no length at its end. */
export interface Spot {
  readonly index: number
  readonly from: number
  readonly to: number
  readonly kind: 'corner' | 'curve'
}

/** Where a run of edges in outline order turns inward. */
export const spotsOf = (edges: readonly ClippedEdge[]): Spot[] =>
  edges.flatMap((e, index) => [...curves(e, index), ...corners(edges, index)])

export const clips = (edges: readonly ClippedEdge[], spots: readonly Spot[]): Clip[] =>
  spots.flatMap((s) => (s.kind === 'corner' ? cornerClip(edges, s) : curveClips(edges, s)))

/** Negative where the outline turns inward from one direction to the next. */
export const turn = (a: Point, b: Point): number => Math.atan2(cross(a, b), dot(a, b))

function corners(edges: readonly ClippedEdge[], index: number): Spot[] {
  const own = edges[index]
  if (!own) return []
  const spot = (at: number): Spot => ({ index, from: at, to: at, kind: 'corner' })
  let walked = 0
  const along = own.edge.path.flatMap((s, i): Spot[] => {
    walked += pathLength([s])
    const within = own.edge.path[i + 1]
    const next = within ? { path: [within], by: own.by } : following(edges, index)
    if (!next || Math.max(own.by, next.by) === 0) return []
    return turn(endTangent([s]), startTangent(next.path)) < -CORNER ? [spot(walked)] : []
  })
  return own.by > 0 && turnsInAtFold(own) ? [spot(0), ...along] : along
}

/** Unfolded, the edge arrives at the fold as its own mirror: a V neck turns inward there. */
function turnsInAtFold({ edge, fold }: ClippedEdge): boolean {
  if (!fold) return false
  const [along, out] = [endTangent(fold), startTangent(edge.path)]
  const arriving = subtract(out, scale(along, 2 * dot(along, out)))
  return turn(arriving, out) < -CORNER
}

export function following(
  edges: readonly ClippedEdge[],
  index: number,
): { path: Path; by: number } | undefined {
  const [own, next] = [edges[index], edges[index + 1]]
  if (!own || !next) return undefined
  const joins = distance(pathEnd(own.edge.path), pathStart(next.edge.path)) < SAME_PLACE
  return joins ? { path: next.edge.path, by: next.by } : undefined
}
const SAME_PLACE = 1e-3

/** Stretches that are hollow and tighter than CLIP_RADIUS. */
function curves({ edge, by }: ClippedEdge, index: number): Spot[] {
  if (by <= CLIP_SHORT || edge.path.every(neverHollow)) return []
  const found: Spot[] = []
  let [walked, from] = [0, NaN]
  const close = (to: number): void => {
    if (to > from) found.push({ index, from, to, kind: 'curve' })
    from = NaN
  }
  for (const s of edge.path) {
    for (let i = 0; i < SAMPLES; i++) {
      const tight = -curvature(s, (i + 0.5) / SAMPLES) * CLIP_RADIUS > 1
      if (tight && Number.isNaN(from)) from = walked
      if (!tight && !Number.isNaN(from)) close(walked)
      walked += distance(at(s, i / SAMPLES), at(s, (i + 1) / SAMPLES))
    }
  }
  close(walked)
  return found
}
const SAMPLES = 64

function cornerClip(edges: readonly ClippedEdge[], { index, from }: Spot): Clip[] {
  const own = edges[index]
  if (!own) return []
  const seam = pointAtPlace(own.edge.path, placeAt(own.edge.path, from))
  const at = (end: Point): boolean => distance(seam, end) < SAME_PLACE
  const cut = at(pathEnd(own.edge.path))
    ? pathEnd(own.cut)
    : at(pathStart(own.edge.path))
      ? pathStart(own.cut)
      : project(own.cut, seam).at
  return clipTo(own.edge.name, cut, seam)
}

function curveClips(edges: readonly ClippedEdge[], { index, from, to }: Spot): Clip[] {
  const own = edges[index]
  if (!own) return []
  const count = Math.max(1, Math.round((to - from) / CLIP_APART))
  return Array.from({ length: count }, (_, i) => from + ((to - from) * (i + 0.5)) / count).flatMap(
    (length) => {
      const place = placeAt(own.edge.path, length)
      const seam = pointAtPlace(own.edge.path, place)
      const outward = scale(quarterTurn(tangentAtPlace(own.edge.path, place)), -1)
      const met = crossings(own.cut, line(seam, add(seam, scale(outward, own.by * MITRE_LIMIT))))
      const near = met.map((c) => c.at).sort((a, b) => distance(a, seam) - distance(b, seam))[0]
      return near ? clipTo(own.edge.name, near, seam) : []
    },
  )
}

function clipTo(edge: EdgeName, cut: Point, seam: Point): Clip[] {
  const deep = distance(cut, seam)
  if (deep < 2 * CLIP_SHORT) return []
  return [{ edge, path: [line(cut, between(seam, cut, CLIP_SHORT / deep))] }]
}

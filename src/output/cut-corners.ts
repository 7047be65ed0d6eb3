/** The corners of the cutting line: moved edges brought to where they meet their neighbours. */
import {
  endTangent,
  pathEnd,
  pathStart,
  reversedPath,
  startTangent,
  type Path,
} from '../geometry/path.ts'
import { cross, distance, dot, type Point } from '../geometry/point.ts'
import { line, type Segment } from '../geometry/segment.ts'
import { SAME_POINT } from '../geometry/tolerance.ts'
import type { Edge, EdgeName, EdgeRole, Piece } from '../draft/piece.ts'
import { meet, mirroredAtHem, type Meeting } from './corner.ts'
import type { EdgeCut } from './edge-cut.ts'

export interface CutEdge {
  readonly name: EdgeName
  readonly role: EdgeRole
  readonly path: Path
}

/** A seam edge with what it was moved by. */
export interface MovedEdge {
  readonly edge: Edge
  readonly by: number
  readonly cut: EdgeCut
  /** Moved without the tight rounding it begins or ends in. */
  readonly blunt: Blunt
}
export interface Blunt {
  readonly start: boolean
  readonly end: boolean
}

/** Each edge carried on or cut back to where it meets the next. */
export function met(piece: Piece, runs: readonly MovedEdge[], hemDepth?: number): CutEdge[] {
  const paths = runs.map((r) => r.cut.path)
  const between: Path[] = runs.map(() => [])
  for (const [i, run] of runs.entries()) {
    const j = (i + 1) % runs.length
    const next = runs[j]
    const [first, second] = [paths[i], paths[j]]
    if (!next || !first || !second) throw new Error(`${piece.id}: an outline without edges`)
    const wide = Math.max(run.by, next.by)
    const smooth = runsOn(run.edge, next.edge) && !run.blunt.end && !next.blunt.start
    const mitred = smooth
      ? step(first, second)
      : meet(
          overHem(first, run.edge, next.edge, wide, hemDepth),
          reversedPath(overHem(reversedPath(second), next.edge, run.edge, wide, hemDepth)),
          pathEnd(run.edge.path),
          wide,
        )
    const corner = cutsAcross(run.edge, next.edge, first, second, mitred)
      ? step(first, second)
      : mitred
    paths[i] = corner.first
    between[i] = corner.between
    paths[j] = corner.second
  }
  return runs.map(({ edge: { name, role } }, i) => ({
    name,
    role,
    path: [...(paths[i] ?? []), ...(between[i] ?? [])],
  }))
}

/** The end of `edge` mirrored where it runs out over `hem`, a hem that is turned up. */
function overHem(path: Path, edge: Edge, hem: Edge, wide: number, depth?: number): Path {
  if (hem.role !== 'hem' || edge.role === 'fold') return path
  const hemLine =
    distance(pathEnd(edge.path), pathStart(hem.path)) < SAME_POINT * 100
      ? hem.path
      : reversedPath(hem.path)
  return mirroredAtHem(path, hemLine, wide, depth)
}

/** The two edges are one smooth line; where their allowances differ the cutting line steps. */
export const runsOn = (edge: Edge, next: Edge): boolean =>
  dot(endTangent(edge.path), startTangent(next.path)) > Math.cos(SMOOTH)
/** Two edges within 5° are drawn as one line. Common practice, no source. */
const SMOOTH = Math.PI / 36

const step = (first: Path, second: Path): Meeting => {
  const [from, to] = [pathEnd(first), pathStart(second)]
  const between = distance(from, to) < SAME_POINT * 100 ? [] : [line(from, to)]
  return { first, between, second }
}

/**
 * At an outer corner that is nearly straight a narrow allowance, carried back, would cut across
 * the wide one beside it. Folds and hems are cut there on purpose.
 */
function cutsAcross(edge: Edge, next: Edge, first: Path, second: Path, met: Meeting): boolean {
  if ([edge, next].some(({ role }) => role === 'fold' || role === 'hem')) return false
  const outer = cross(endTangent(edge.path), startTangent(next.path)) > Math.sin(SMOOTH)
  // Carried on, a path has one segment more and keeps its own end.
  const lost = (whole: Path, kept: Path, end: (path: Path) => Point): boolean =>
    kept.length <= whole.length && distance(end(whole), end(kept)) > SAME_END
  return outer && (lost(first, met.first, pathEnd) || lost(second, met.second, pathStart))
}
/** Ends this near are one: a tight end of an edge carries its direction as a line of 0.01 mm. */
const SAME_END = 0.05

/**
 * The seam line without a rounding that is too tight for its allowance, where the neighbour runs
 * on from it: the two are then met as a corner.
 */
export function blunted(
  edges: readonly Edge[],
  index: number,
  by: number,
): { path: Path; blunt: Blunt } {
  const [own, before, after] = [
    edges[index],
    edges.at(index - 1),
    edges[(index + 1) % edges.length],
  ]
  const path = own?.path ?? []
  const tight = (s: Segment | undefined): boolean =>
    path.length > 1 && s?.kind === 'arc' && s.sweep < 0 && s.radius <= by + SAME_POINT
  const blunt = {
    start: own !== undefined && before !== undefined && tight(path[0]) && runsOn(before, own),
    end: own !== undefined && after !== undefined && tight(path.at(-1)) && runsOn(own, after),
  }
  return { path: path.slice(blunt.start ? 1 : 0, blunt.end ? -1 : undefined), blunt }
}

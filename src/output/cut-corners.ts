/** The corners of the cutting line: moved edges brought to where they meet their neighbours. */
import {
  endTangent,
  pathEnd,
  pathStart,
  reversedPath,
  splitPath,
  startTangent,
  type Path,
} from '../geometry/path.ts'
import { distance, dot } from '../geometry/point.ts'
import { project } from '../geometry/project.ts'
import { line } from '../geometry/segment.ts'
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
    const corner = runsOn(run.edge, next.edge)
      ? step(first, second)
      : meet(
          overHem(first, run.edge, next.edge, wide, hemDepth),
          reversedPath(overHem(reversedPath(second), next.edge, run.edge, wide, hemDepth)),
          pathEnd(run.edge.path),
          wide,
        )
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
const runsOn = (edge: Edge, next: Edge): boolean =>
  dot(endTangent(edge.path), startTangent(next.path)) > Math.cos(SMOOTH)
/** Two edges within 5° are drawn as one line. Common practice, no source. */
const SMOOTH = Math.PI / 36

/** Square across from one to the other, at the end of whichever reaches less far past the corner. */
function step(first: Path, second: Path): Meeting {
  const later = splitPath(second, project(second, pathEnd(first)).place)[1]
  const sooner = splitPath(first, project(first, pathStart(later)).place)[0]
  const [from, to] = [pathEnd(sooner), pathStart(later)]
  const between = distance(from, to) < SAME_POINT * 100 ? [] : [line(from, to)]
  return { first: sooner, between, second: later }
}

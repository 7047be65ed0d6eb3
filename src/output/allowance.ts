/**
 * Seam allowances, one for each named edge, and the cutting line they give. Every edge is moved
 * outward by its own allowance and neighbours are carried on until they meet, so the allowance
 * is exact along an edge and only its corners depend on the neighbour.
 * The fold has none: the piece is cut there on folded cloth.
 */
import { formatLength, type UnitChoice } from '../units/format.ts'
import { mm, type Mm } from '../units/length.ts'
import { OFFSET_ERROR, offsetPath } from '../geometry/offset.ts'
import { pathEnd, pathStart, reversedPath, type Path } from '../geometry/path.ts'
import { distance, type Point } from '../geometry/point.ts'
import { project } from '../geometry/project.ts'
import { selfIntersections } from '../geometry/self-intersection.ts'
import { at } from '../geometry/segment.ts'
import { SAME_POINT } from '../geometry/tolerance.ts'
import { EDGE_WORDS, type Edge, type EdgeName, type Piece } from '../draft/piece.ts'
import { bentAtHem, meet } from './corner.ts'
import { notches, type Notch } from './notch.ts'

export type Allowances = Readonly<Record<EdgeName, Mm>>

/**
 * For a muslin: 25 mm where it will be let out (side and shoulder seams of a 1916 manual, 1 in),
 * 40 mm to let down at the hem, 10 mm at the sleeve edge (both common practice, no source). The
 * neck has none: its seam line is cut, because a neck with allowance cannot lie flat when fitted.
 */
export const MUSLIN_ALLOWANCES: Allowances = {
  centre: mm(0),
  neck: mm(0),
  overarm: mm(25),
  sleeveEdge: mm(10),
  side: mm(25),
  hem: mm(40),
}
/** More than this is no seam allowance: a deep hem is 100 mm. Common practice, no source. */
export const WIDEST_ALLOWANCE = mm(100)

export type AllowancesRead =
  | { readonly ok: true; readonly allowances: Allowances }
  | { readonly ok: false; readonly reason: string }

export const EDGE_NAMES = Object.keys(MUSLIN_ALLOWANCES) as readonly EdgeName[]
const isEdgeName = (name: string): name is EdgeName => Object.hasOwn(MUSLIN_ALLOWANCES, name)

/** Allowances in millimetres by edge name, the rest as for a muslin; refuses what cannot be cut. */
export function readAllowances(
  given: Readonly<Record<string, number>>,
  units: UnitChoice,
): AllowancesRead {
  for (const [name, value] of Object.entries(given)) {
    if (!isEdgeName(name))
      return {
        ok: false,
        reason: `"${name}" is no edge of this piece. Name one of ${EDGE_NAMES.join(', ')}.`,
      }
    if (!(Number.isFinite(value) && value >= 0 && value <= WIDEST_ALLOWANCE)) {
      const said = Number.isFinite(value) ? formatLength(mm(value), units) : 'no number'
      return {
        ok: false,
        reason: `The allowance at the ${EDGE_WORDS[name]} would be ${said}; give 0 to ${formatLength(WIDEST_ALLOWANCE, units)}.`,
      }
    }
    if (name === 'centre' && value !== 0)
      return {
        ok: false,
        reason: 'The centre lies on the fold and has no allowance. Give 0 there.',
      }
  }
  const read = Object.fromEntries(
    EDGE_NAMES.map((name) => [name, mm(given[name] ?? MUSLIN_ALLOWANCES[name])]),
  ) as Record<EdgeName, Mm>
  return { ok: true, allowances: read }
}

export interface CutEdge {
  readonly name: EdgeName
  readonly path: Path
}
export type CuttingLine =
  | {
      readonly ok: true
      /** Closed, clockwise on the page; each run carries the edge it belongs to. */
      readonly edges: readonly CutEdge[]
      readonly path: Path
      readonly notches: readonly Notch[]
    }
  | { readonly ok: false; readonly reason: string }

export function cuttingLine(piece: Piece, allowances: Allowances): CuttingLine {
  const tight = piece.edges.find((e) => tooTight(e.path, allowances[e.name]))
  if (tight) return refused(tight.name)
  const runs = piece.edges.map((e) => ({ edge: e, path: moved(e.path, allowances[e.name]) }))
  const paths = runs.map((r) => r.path)
  const between: Path[] = runs.map(() => [])
  for (const [i, run] of runs.entries()) {
    const j = (i + 1) % runs.length
    const next = runs[j]
    const [first, second] = [paths[i], paths[j]]
    if (!next || !first || !second) throw new Error(`${piece.id}: an outline without edges`)
    const wide = Math.max(allowances[run.edge.name], allowances[next.edge.name])
    const corner = pathEnd(run.edge.path)
    const met = meet(
      overHem(first, run.edge, next.edge, wide),
      reversedPath(overHem(reversedPath(second), next.edge, run.edge, wide)),
      corner,
      wide,
    )
    paths[i] = met.first
    between[i] = met.between
    paths[j] = met.second
  }
  const edges = runs.map((r, i) => ({
    name: r.edge.name,
    path: [...(paths[i] ?? []), ...(between[i] ?? [])],
  }))
  const path = edges.flatMap((e) => e.path)
  const crossed = selfIntersections(path)[0]
  if (crossed) return refused(nearestEdge(edges, crossed))
  const eaten = piece.edges.find((e) => eatsItself(e, edges, allowances[e.name]))
  if (eaten) return refused(eaten.name)
  return { ok: true, edges, path, notches: notches(piece, (name) => allowances[name]) }
}

/** Moved outward; where the edge has a corner of its own, that corner is met like any other. */
function moved(path: Path, by: Mm): Path {
  if (by === 0) return path
  const pieces = path.map((s) => offsetPath([s], by))
  return pieces.reduce((done, next, i) => {
    if (done.length === 0) return next
    const corner = path[i]
    if (!corner) throw new Error(`allowance: no segment ${i}`)
    const met = meet(done, next, pathStart([corner]), by)
    return [...met.first, ...met.between, ...met.second]
  }, [])
}

/** The end of `edge` bent as in a mirror where it runs out over `hem`, a hem that is turned up. */
function overHem(path: Path, edge: Edge, hem: Edge, wide: number): Path {
  if (hem.role !== 'hem' || edge.role === 'fold') return path
  const hemLine =
    distance(pathEnd(edge.path), pathStart(hem.path)) < SAME_POINT * 100
      ? hem.path
      : reversedPath(hem.path)
  return bentAtHem(path, hemLine, wide)
}

/** An arc bent outward-in cannot be moved by more than its radius. */
const tooTight = (path: Path, by: number): boolean =>
  path.some((s) => s.kind === 'arc' && s.sweep < 0 && s.radius <= by)

/**
 * Where a hollow curve is tighter than its allowance, the moved line turns back towards the seam
 * without always crossing itself: then some of it lies nearer to the seam than the allowance.
 */
function eatsItself(own: Edge, edges: readonly CutEdge[], by: number): boolean {
  const cut = edges.find((e) => e.name === own.name)?.path ?? []
  return (
    by > 0 &&
    cut
      .filter((s) => s.kind !== 'line')
      .some((s) =>
        [0.25, 0.5, 0.75].some((t) => project(own.path, at(s, t)).distance < by - TOO_NEAR),
      )
  )
}
/** Ten times the error of a moved curve. */
const TOO_NEAR = 10 * OFFSET_ERROR

const refused = (name: EdgeName): CuttingLine => ({
  ok: false,
  reason: `The allowance at the ${EDGE_WORDS[name]} is wider than its curve can take: the cutting line would cross itself. Give less there.`,
})

/** The edge whose cutting line runs through the crossing; the fold is never the one to change. */
function nearestEdge(edges: readonly CutEdge[], at: Point): EdgeName {
  const far = (e: CutEdge): number => project(e.path, at).distance
  const near = edges.filter((e) => e.name !== 'centre').sort((a, b) => far(a) - far(b))[0]
  return near?.name ?? 'side'
}

/**
 * Seam allowances, one for each edge, and the cutting line they give. Every edge is moved
 * outward by its own allowance and neighbours are carried on until they meet, so the allowance
 * is exact along an edge and only its corners depend on the neighbour.
 * The fold has none: the piece is cut there on folded cloth.
 */
import { formatLength, type UnitChoice } from '../units/format.ts'
import { mm, type Mm } from '../units/length.ts'
import { pathEnd, pathStart, type Path } from '../geometry/path.ts'
import { distance, type Point } from '../geometry/point.ts'
import { project } from '../geometry/project.ts'
import { selfIntersections } from '../geometry/self-intersection.ts'
import { at } from '../geometry/segment.ts'
import type { Edge, EdgeName, Piece } from '../draft/piece.ts'
import { EDGE_WORDS } from '../draft/piece.words.ts'
import { ALLOWANCE_WORDS } from './edge.words.ts'
import { atEdge, type ByEdge } from './by-edge.ts'
import { clips, spotsOf, type Clip, type ClippedEdge } from './clip.ts'
import { blunted, met, type CutEdge, type MovedEdge } from './cut-corners.ts'
import { edgeCut, type DartEnd } from './edge-cut.ts'
import { WIDEST_ALLOWANCE } from './finish.ts'
import { allowancesFor, MUSLIN_FINISHES } from './finishes.ts'
import { runsBeside } from './mouth.ts'
import { isHalf, mouthNotches, notches, type Notch } from './notch.ts'
import { stays, type StayStitch } from './stay.ts'
import { neverHollow, tightest } from './tightest.ts'

export type Allowances = ByEdge<Mm>

/** What a muslin is left beyond the seam line: 25 mm where it is let out, nothing at the neck. */
export const MUSLIN_ALLOWANCES: Allowances = allowancesFor(MUSLIN_FINISHES)

export type AllowancesRead =
  | { readonly ok: true; readonly allowances: Allowances }
  | { readonly ok: false; readonly reason: string }

export const EDGE_NAMES = Object.keys(EDGE_WORDS) as readonly EdgeName[]
const isEdgeName = (name: string): name is EdgeName => Object.hasOwn(EDGE_WORDS, name)

/**
 * Allowances in millimetres by edge name, the rest as for a muslin; refuses what cannot be cut.
 * An edge that lies on the fold in every one of `pieces` takes none; without pieces that is the
 * centre.
 */
export function readAllowances(
  given: Readonly<Record<string, number>>,
  units: UnitChoice,
  pieces: readonly Pick<Piece, 'edges'>[] = [],
): AllowancesRead {
  for (const [name, value] of Object.entries(given)) {
    if (!isEdgeName(name))
      return {
        ok: false,
        reason: ALLOWANCE_WORDS.noEdge(name, EDGE_NAMES),
      }
    if (!(Number.isFinite(value) && value >= 0 && value <= WIDEST_ALLOWANCE)) {
      const said = Number.isFinite(value)
        ? formatLength(mm(value), units)
        : ALLOWANCE_WORDS.noNumber
      return {
        ok: false,
        reason: ALLOWANCE_WORDS.outside(name, said, formatLength(WIDEST_ALLOWANCE, units)),
      }
    }
    if (value !== 0 && onFold(name, pieces))
      return {
        ok: false,
        reason: ALLOWANCE_WORDS.onFold(name),
      }
  }
  const read = Object.fromEntries(
    EDGE_NAMES.map((name) => [name, mm(given[name] ?? MUSLIN_ALLOWANCES[name])]),
  ) as Record<EdgeName, Mm>
  return { ok: true, allowances: read }
}

function onFold(name: EdgeName, pieces: readonly Pick<Piece, 'edges'>[]): boolean {
  const own = pieces.flatMap((p) => p.edges.filter((e) => e.name === name))
  return own.length > 0
    ? own.every((e) => e.role === 'fold')
    : pieces.length === 0 && name === 'centre'
}

/** What an edge is given: the fold has nothing, whatever its name, nor a piece cut as it is drawn. */
export const allowanceOf = (
  piece: Pick<Piece, 'id' | 'cutAsDrawn'>,
  edge: Edge,
  allowances: Allowances,
): Mm =>
  edge.role === 'fold' || piece.cutAsDrawn ? mm(0) : atEdge(allowances, piece.id, edge.name)

export type CuttingLine =
  | {
      readonly ok: true
      /** Closed, clockwise on the page; each run carries the edge it belongs to. */
      readonly edges: readonly CutEdge[]
      readonly path: Path
      readonly notches: readonly Notch[]
      /** How darts with a mouth on an edge run on to the cutting line. */
      readonly darts: readonly DartEnd[]
      readonly clips: readonly Clip[]
      readonly stays: readonly StayStitch[]
    }
  | { readonly ok: false; readonly reason: string }

/** @param hemDepth finished depth of a hem that is turned twice; without it the hem is turned once */
export function cuttingLine(piece: Piece, allowances: Allowances, hemDepth?: Mm): CuttingLine {
  const runs: MovedEdge[] = []
  for (const [i, edge] of piece.edges.entries()) {
    const by = allowanceOf(piece, edge, allowances)
    const { path, blunt } = blunted(piece.edges, i, by)
    const cut = edgeCut(piece, { ...edge, path }, by)
    if (!cut) return refused(edge.name)
    runs.push({ edge, by, cut, blunt })
  }
  const edges = met(piece, runs, hemDepth)
  const path = edges.flatMap((e) => e.path)
  const crossed = selfIntersections(path)[0]
  if (crossed) return refused(nearestEdge(edges, crossed))
  const short = runs.find((run, i) => fallsShort(run, edges[i]?.path ?? []))
  if (short) return refused(short.edge.name)
  const darts = runs.flatMap((r) => r.cut.darts)
  const by = (edge: Edge): Mm => allowanceOf(piece, edge, allowances)
  const hollow = clipped(piece, runs, edges)
  const spots = spotsOf(hollow)
  return {
    ok: true,
    edges,
    path,
    notches: [...notches(piece, by), ...mouthNotches(darts)],
    darts,
    clips: clips(hollow, spots),
    // A facing is not stayed: the edge it is sewn to is.
    stays: isHalf(piece) ? stays(hollow, spots) : [],
  }
}

function clipped(
  piece: Piece,
  runs: readonly MovedEdge[],
  edges: readonly CutEdge[],
): readonly ClippedEdge[] {
  return runs.flatMap(({ edge, by, cut: { mouths } }, i) => {
    const before = piece.edges.at(i - 1)
    const fold = before?.role === 'fold' ? { fold: before.path } : {}
    return edge.role === 'fold'
      ? []
      : [
          {
            edge,
            cut: edges[i]?.path ?? [],
            by,
            runs: runsBeside(edge.path, mouths),
            ...fold,
          },
        ]
  })
}

/**
 * Does any of an edge's cutting line lie nearer to its seam line than its allowance? So it is
 * where a bend or a corner cannot be cut as asked. Past the ends of the edge the corner decides.
 */
function fallsShort({ edge, by, cut: { mouths } }: MovedEdge, cut: Path): boolean {
  // Only beside a hollow bend nearly as tight as the allowance is any of it lost.
  if (by === 0 || edge.path.every(neverHollow) || tightest(edge.path).hollow > 2 * by) return false
  const atMouth = (p: Point): boolean =>
    mouths.some((m) => Math.min(distance(p, m.first), distance(p, m.second)) < AROUND_MOUTH)
  const ends = [pathStart(edge.path), pathEnd(edge.path)]
  return cut.some((s) =>
    PLACES.some((t) => {
      const near = project(edge.path, at(s, t))
      const counts = !ends.some((end) => distance(end, near.at) < AT_END) && !atMouth(near.at)
      return counts && near.distance < by - TOO_NEAR
    }),
  )
}
const PLACES = [0.1, 0.3, 0.5, 0.7, 0.9]
/** A quarter of a pencil line; the error of a moved curve is a twentieth of it. */
const TOO_NEAR = 0.1
const AT_END = 0.3
/** The cap of a dart reaches about so far beside its mouth, mm. */
const AROUND_MOUTH = 30

const refused = (name: EdgeName): CuttingLine => ({
  ok: false,
  reason: ALLOWANCE_WORDS.crosses(name),
})

/** The edge whose cutting line runs through the crossing; the fold is never the one to change. */
function nearestEdge(edges: readonly CutEdge[], at: Point): EdgeName {
  const far = (e: CutEdge): number => project(e.path, at).distance
  const near = edges.filter((e) => e.role !== 'fold').sort((a, b) => far(a) - far(b))[0]
  return near?.name ?? 'side'
}

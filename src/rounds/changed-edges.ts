/**
 * Which lines of a piece lie elsewhere than they did: edge by edge and dart by dart, as the two
 * drawings lie over each other. What coincides is drawn once, what does not is drawn twice.
 */
import { flatten, type Path } from '../geometry/path.ts'
import { distance } from '../geometry/point.ts'
import { project } from '../geometry/project.ts'
import { edge, type Dart, type EdgeDart, type EdgeName, type Piece } from '../draft/piece.ts'

export interface ChangedLines {
  readonly edges: readonly EdgeName[]
  /** A waist dart whose tips or mouth lie elsewhere, or that is there in one drawing only. */
  readonly dart: boolean
  /** The same of darts whose mouth lies on an edge: side bust dart, shoulder dart. */
  readonly edgeDarts: readonly EdgeDart['name'][]
}

/** Closer than a pencil line is wide, 0.3 mm, two lines are one line. Common practice, no source. */
export const PENCIL = 0.3
/** Curves are compared at places this near to their chords, mm. */
const SAMPLE_ERROR = 0.02

/** Lay the pieces over each other first (`lay-over.ts`): the comparison is by place. */
export function changedLines(before: Piece, after: Piece): ChangedLines {
  return {
    edges: after.edges
      .filter((e) => apart(edge(before, e.name).path, e.path) > PENCIL)
      .map((e) => e.name),
    dart:
      after.darts.length !== before.darts.length ||
      after.darts.some((d, i) => dartsApart(before.darts[i], d)),
    edgeDarts: EDGE_DARTS.filter((name) => {
      const of = (piece: Piece): EdgeDart | undefined =>
        piece.edgeDarts.find((d) => d.name === name)
      return edgeDartsApart(of(before), of(after))
    }),
  }
}

const EDGE_DARTS: readonly EdgeDart['name'][] = ['bustDart', 'shoulderDart']
function edgeDartsApart(a: EdgeDart | undefined, b: EdgeDart | undefined): boolean {
  if (!a || !b) return a !== b
  return (['tip', 'upper', 'lower'] as const).some((k) => distance(a[k], b[k]) > PENCIL)
}

/** The farthest any place of one path lies from the other path, both ways, mm. */
export const apart = (a: Path, b: Path): number => Math.max(farthest(a, b), farthest(b, a))

const farthest = (from: Path, to: Path): number =>
  Math.max(...flatten(from, SAMPLE_ERROR).map((p) => project(to, p).distance))

function dartsApart(a: Dart | undefined, b: Dart | undefined): boolean {
  if (!a || !b) return a !== b
  const corners = ['upperTip', 'inner', 'outer', 'lowerTip'] as const
  return corners.some((corner) => distance(a[corner], b[corner]) > PENCIL)
}

/** One edge of the cutting line before it meets its neighbours: moved outward, its darts capped. */
import { line, type Line } from '../geometry/segment.ts'
import type { Path } from '../geometry/path.ts'
import { pathEnd, pathStart } from '../geometry/path.ts'
import type { Point } from '../geometry/point.ts'
import type { AnyDart, Edge, EdgeName, Piece, Side } from '../draft/piece.ts'
import { foldedCap } from './dart-cap.ts'
import { mouthsOn, runsBeside, type EdgeMouth } from './mouth.ts'
import { parallel } from './parallel.ts'

/** How a dart runs on from its mouth to the cutting line. */
export interface DartEnd {
  readonly dart: AnyDart
  readonly edge: EdgeName
  readonly side?: Side
  /** From the mouth on the seam line to the cutting line, first and second leg in outline order. */
  readonly legs: readonly [readonly [Line], readonly [Line]]
  /** Where the folded dart has its crease on the cutting line. */
  readonly crease: Point
}

export interface EdgeCut {
  readonly path: Path
  readonly darts: readonly DartEnd[]
  readonly mouths: readonly EdgeMouth[]
}

/** Undefined where nothing of the edge is left, or a dart lies too near its end to be folded under. */
export function edgeCut(piece: Piece, edge: Edge, by: number): EdgeCut | undefined {
  const mouths = mouthsOn(piece, edge)
  const runs = runsBeside(edge.path, mouths).map((run) => parallel(run, by))
  if (runs.some((run) => run.length === 0)) return undefined
  const darts: DartEnd[] = []
  let path = runs[0] ?? []
  for (const [i, mouth] of mouths.entries()) {
    const cap = foldedCap(path, runs[i + 1] ?? [], mouth, by, mouth.towards)
    if (!cap) return undefined
    const legs = [
      [line(mouth.first, pathStart(cap.cap))],
      [line(mouth.second, pathEnd(cap.cap))],
    ] as const
    darts.push({
      dart: mouth.dart,
      edge: edge.name,
      legs,
      crease: cap.crease,
      ...(mouth.side ? { side: mouth.side } : {}),
    })
    path = [...cap.first, ...cap.cap, ...cap.second]
  }
  return { path, darts, mouths }
}

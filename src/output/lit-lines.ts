/** The lines of a piece that a step lights: edges, darts, lines inside. */
import { dartLegs, edgeDartLegs } from '../draft/sheet.ts'
import type { Piece, PieceId } from '../draft/piece.ts'
import type { Path } from '../geometry/path.ts'
import type { Lit, PlanStep } from './plan-step.ts'

/** The pieces of a step, each once, in its order. */
export const litPieces = (step: PlanStep, pieces: readonly Piece[]): readonly Piece[] =>
  [...new Set(step.lit.map((l): PieceId => l.piece))].flatMap(
    (id) => pieces.find((p) => p.id === id) ?? [],
  )

export const litPaths = (step: PlanStep, piece: Piece): readonly Path[] =>
  step.lit.filter((l) => l.piece === piece.id).flatMap((l) => pathsOf(l, piece))

function pathsOf(lit: Lit, piece: Piece): readonly Path[] {
  if ('edge' in lit) return piece.edges.filter((e) => e.name === lit.edge).map((e) => e.path)
  if ('line' in lit) return piece.inner.filter((i) => i.name === lit.line).map((i) => i.path)
  return [
    ...piece.darts.filter((d) => d.name === lit.dart).map((d) => dartLegs(d)),
    ...piece.edgeDarts.filter((d) => d.name === lit.dart).map((d) => edgeDartLegs(d)),
  ]
}

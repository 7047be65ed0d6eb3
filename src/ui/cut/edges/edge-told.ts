/** Which pieces an edge is on, for the edges of the Cut page. */
import { pairedId, type PieceId } from '../../../draft/piece.ts'
import { EDGES_WORDS } from './edges.words.ts'

const BODY: readonly PieceId[] = ['back', 'front', 'sleeve']

/** "back and front": the pieces that have the edge; several facings are said as one. */
export function onPieces(ids: readonly PieceId[]): string {
  const pieces = [...new Set(ids.map(pairedId))]
  const body = pieces.filter((id) => BODY.includes(id))
  const rest = pieces.filter((id) => !BODY.includes(id))
  return EDGES_WORDS.onPieces(body, rest)
}

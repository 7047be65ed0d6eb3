/** Words for the edges of the Cut page. */
import { pairedId, type PieceId } from '../../../draft/piece.ts'
import { PIECE_WORDS } from '../../../draft/piece.words.ts'

export const capital = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1)

const BODY: readonly PieceId[] = ['back', 'front', 'sleeve']

/** "back and front": the pieces that have the edge; several facings are said as one. */
export function onPieces(ids: readonly PieceId[]): string {
  const pieces = [...new Set(ids.map(pairedId))]
  const body = pieces.filter((id) => BODY.includes(id))
  const rest = pieces.filter((id) => !BODY.includes(id))
  const names = [
    ...body.map((id) => PIECE_WORDS[id]),
    ...(rest.length > 1 ? ['facings'] : rest.map((id) => PIECE_WORDS[id])),
  ]
  const [last = '', ...first] = names.toReversed()
  return first.length > 0 ? `${first.toReversed().join(', ')} and ${last}` : last
}

/** Words for the edges of the Cut page. */
import { PIECE_WORDS, type PieceId } from '../../../draft/piece.ts'

export const capital = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1)

const BODY: readonly PieceId[] = ['back', 'front', 'sleeve']

/** "back and front": the pieces that have the edge; several facings are said as one. */
export function onPieces(pieces: readonly PieceId[]): string {
  const body = pieces.filter((id) => BODY.includes(id))
  const rest = pieces.filter((id) => !BODY.includes(id))
  const names = [
    ...body.map((id) => PIECE_WORDS[id]),
    ...(rest.length > 1 ? ['facings'] : rest.map((id) => PIECE_WORDS[id])),
  ]
  const [last = '', ...first] = names.toReversed()
  return first.length > 0 ? `${first.toReversed().join(', ')} and ${last}` : last
}

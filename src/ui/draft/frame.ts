/** The frames pieces are drawn in. */
import { boxHeight, boxOf, boxWidth, type Box } from '../../geometry/box.ts'
import type { Draft } from '../../draft/draft.ts'
import { isHalf, type Piece } from '../../draft/piece.ts'

const edgesOf = (piece: Piece) => piece.edges.map((e) => e.path)

/** One frame for back and front. */
export const halvesBox = (draft: Draft): Box =>
  boxOf(draft.pieces.filter(({ id }) => isHalf(id)).flatMap(edgesOf))

/** A strip would be a slot: no frame is wider than so many times its height. */
const FLATTEST = 3

export function pieceBox(piece: Piece): Box {
  const box = boxOf(edgesOf(piece))
  const lacking = Math.max(0, boxWidth(box) / FLATTEST - boxHeight(box)) / 2
  return { ...box, top: box.top - lacking, bottom: box.bottom + lacking }
}

/** The lengths that stand on the paper, piece by piece. */
import type { Draft } from '../../draft/draft.ts'
import { partName, type Piece, type Side } from '../../draft/piece.ts'
import { dartWidthSaid, EDGE_WORDS, ofSideSaid } from '../../draft/piece.words.ts'
import { record } from '../../draft/record.ts'
import type { Mm } from '../../units/length.ts'

export interface PaperLength {
  readonly name: string
  readonly words: string
  readonly value: Mm
}

/** Edges in the order of the outline; a dart is told by its width. */
export function paperLengths(
  draft: Draft,
): readonly { readonly piece: Piece; readonly rows: readonly PaperLength[] }[] {
  const { lengths } = record(draft)
  return draft.pieces.map((piece) => ({
    piece,
    rows: [
      ...piece.edges.map((e) => ({ part: partName(e), words: ofSide(EDGE_WORDS[e.name], e) })),
      ...[...piece.darts, ...piece.edgeDarts].map((d) => ({
        part: partName(d),
        words: ofSide(dartWidthSaid(d.name), d),
      })),
    ].flatMap(({ part, words }) => {
      const name = `${piece.id}.${part}`
      const value = lengths[name]
      return value === undefined ? [] : [{ name, words, value }]
    }),
  }))
}

const ofSide = (words: string, { side }: { readonly side?: Side }): string =>
  side ? ofSideSaid(words, side) : words

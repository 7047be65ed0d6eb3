/**
 * What holds for an edge of the pieces, known by its name: a finish, an allowance. Where edges of
 * one name differ in what they are for (a centre sewn at the back and faced at the front), each
 * piece has its own.
 */
import {
  pairedId,
  type EdgeName,
  type EdgeRole,
  type PairedId,
  type Piece,
  type PieceId,
} from '../draft/piece.ts'
import { EDGE_WORDS } from '../draft/piece.words.ts'
import { EDGE_OF } from './edge.words.ts'

/** `front.centre`: an edge of one piece; left and right are one. */
export type PieceEdge = `${PairedId}.${EdgeName}`
export type EdgeKey = EdgeName | PieceEdge
export type ByEdge<T> = Readonly<Record<EdgeName, T>> & Readonly<Partial<Record<PieceEdge, T>>>
export type OpenRole = Exclude<EdgeRole, 'fold'>

export const pieceEdge = (piece: PieceId, name: EdgeName): PieceEdge => `${pairedId(piece)}.${name}`
export const atEdge = <T>(all: ByEdge<T>, piece: PieceId, name: EdgeName): T =>
  all[pieceEdge(piece, name)] ?? all[name]

/** Edges of one name that are for the same. */
export interface EdgeGroup {
  readonly name: EdgeName
  readonly role: OpenRole
  readonly pieces: readonly PieceId[]
  /** Its name; where the name has edges of another role too, one key for each piece. */
  readonly keys: readonly EdgeKey[]
  /** 'side seam', or 'centre of the front' where the name alone does not tell. */
  readonly words: string
}

/** Every edge beyond which something can lie, once, in the order of the outlines. */
export function edgeGroups(
  pieces: readonly Pick<Piece, 'id' | 'edges' | 'cutAsDrawn'>[],
): EdgeGroup[] {
  const open = pieces.flatMap((piece) =>
    piece.cutAsDrawn
      ? []
      : piece.edges.flatMap(({ name, role }) =>
          role === 'fold' ? [] : [{ name, role, piece: piece.id }],
        ),
  )
  return [...new Set(open.map(({ name }) => name))].flatMap((name) => {
    const own = open.filter((e) => e.name === name)
    const roles = [...new Set(own.map(({ role }) => role))]
    return roles.map((role): EdgeGroup => {
      const ids = [...new Set(own.filter((e) => e.role === role).map(({ piece }) => piece))]
      const apart = roles.length > 1
      return {
        name,
        role,
        pieces: ids,
        keys: apart ? [...new Set(ids.map((id) => pieceEdge(id, name)))] : [name],
        words: apart ? EDGE_OF.pieces(name, ids.map(pairedId)) : EDGE_WORDS[name],
      }
    })
  })
}

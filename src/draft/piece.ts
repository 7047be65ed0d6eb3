/**
 * A pattern piece as plain data: half pieces lie with their centre on x = 0, y grows down the
 * paper, millimetres, right half seen flat. Edges close the outline, clockwise on the page.
 */
import type { Path } from '../geometry/path.ts'
import type { Point } from '../geometry/point.ts'

export type PieceId = 'back' | 'front'

/** fold: on the fold of the cloth. seam: sewn to its partner. edge: finished by itself. hem: turned up. */
export type EdgeRole = 'fold' | 'seam' | 'edge' | 'hem'
export type EdgeName = 'centre' | 'neck' | 'overarm' | 'sleeveEdge' | 'side' | 'hem'

export const EDGE_WORDS: Readonly<Record<EdgeName, string>> = {
  centre: 'centre',
  neck: 'neck edge',
  overarm: 'overarm seam',
  sleeveEdge: 'sleeve edge',
  side: 'side seam',
  hem: 'hem',
}

export interface Edge {
  readonly name: EdgeName
  readonly role: EdgeRole
  readonly path: Path
}

/** A diamond dart: legs from the upper tip to the mouth at the waist and on to the lower tip. */
export interface Dart {
  readonly name: 'waistDart'
  readonly upperTip: Point
  /** Mouth point on the leg nearer the centre fold. */
  readonly inner: Point
  /** Mouth point on the leg nearer the side. */
  readonly outer: Point
  readonly lowerTip: Point
}

/** A level of the body drawn on the piece: bust line, waist line, hip line. */
export interface Level {
  readonly name: string
  readonly from: Point
  readonly to: Point
}

export interface Piece {
  readonly id: PieceId
  readonly words: string
  readonly cutting: string
  readonly edges: readonly Edge[]
  readonly darts: readonly Dart[]
  /** Lettered points, and `apex` on the front. */
  readonly points: Readonly<Record<string, Point>>
  readonly levels: readonly Level[]
  readonly grain: { readonly from: Point; readonly to: Point }
}

export const outline = (piece: Piece): Path => piece.edges.flatMap((e) => e.path)

export function edge(piece: Piece, name: EdgeName): Edge {
  const found = piece.edges.find((e) => e.name === name)
  if (!found) throw new Error(`${piece.id}: no edge ${name}`)
  return found
}

export function namedPoint(piece: Piece, name: string): Point {
  const found = piece.points[name]
  if (!found) throw new Error(`${piece.id}: no point ${name}`)
  return found
}

export const withEdge = (piece: Piece, name: EdgeName, path: Path): Piece => ({
  ...piece,
  edges: piece.edges.map((e) => (e.name === name ? { ...e, path } : e)),
})

/**
 * A pattern piece as plain data: half pieces lie with their centre on x = 0, y grows down the
 * paper, millimetres, right half seen flat. Edges close the outline, clockwise on the page.
 */
import { pathLength } from '../geometry/length.ts'
import type { Path } from '../geometry/path.ts'
import { distance, type Point } from '../geometry/point.ts'
import { capital } from '../units/capital.ts'

export type HalfId = 'back' | 'front'
/** Pieces that finish an edge; made from the corrected halves, so they follow every change. */
export type FinishingId =
  | 'backNeckFacing'
  | 'frontNeckFacing'
  | 'neckStrip'
  | 'armholeStrip'
  | 'slitFacing'
  | 'sleeveBinding'
  | 'keyholeFacing'
  | 'buttonFacing'
  | 'skirtButtonFacing'
  | 'backWaistFacing'
  | 'frontWaistFacing'
/** The front beyond a style seam. */
export type PartedId = 'sideFront'
export type SkirtId = 'skirtBack' | 'skirtFront'
/** A piece that serves both sides of the body, turned over or laid on the fold. */
export type PairedId = HalfId | 'sleeve' | 'cuff' | SkirtId | PartedId | FinishingId
/** Which side of the body, as worn: her left is the right of a front seen from outside. */
export type Side = 'left' | 'right'
/** A piece of one side only, where the two are not alike. */
export type SidedId = `${PairedId}${Capitalize<Side>}`
export type PieceId = PairedId | SidedId

/** fold: on the fold of the cloth. seam: sewn to its partner. edge: finished by itself. hem: turned up. */
export type EdgeRole = 'fold' | 'seam' | 'edge' | 'hem'
export type HalfEdgeName =
  'centre' | 'neck' | 'overarm' | 'shoulder' | 'sleeveEdge' | 'armhole' | 'side' | 'hem'
export type EdgeName =
  | HalfEdgeName
  /** Where bodice and skirt are sewn together. */
  | 'waist'
  /** From shoulder or armhole over the bust, where a front is parted. */
  | 'styleSeam'
  /** Of a sleeve: over the shoulder, and its seam under the arm on either side. */
  | 'cap'
  | 'frontSeam'
  | 'backSeam'
  /** Of a sleeve and its cuff, where one is sewn to the other. */
  | 'sleeveEnd'
  /** Free edge of a facing, long free edge of a strip. */
  | 'outer'
  /** Of the binding of a slit: the long edge that is sewn on. */
  | 'sewnOn'
  /** The two short ends of a strip or a cuff. */
  | 'start'
  | 'end'

export const SIDES: readonly Side[] = ['left', 'right']
export const sidedId = (id: PairedId, side: Side): SidedId => `${id}${capital(side)}` as SidedId
/** The piece it is one side of; a paired piece itself. */
export const pairedId = (id: PieceId): PairedId => id.replace(/(Left|Right)$/, '') as PairedId
export const sideOfId = (id: PieceId): Side | undefined =>
  SIDES.find((side) => id.endsWith(capital(side)))

/** Every id once for both sides and once for each: what is said of it, or keyed by it. */
export const forEverySide = <T>(
  paired: Readonly<Record<PairedId, T>>,
  sided: (what: T, side: Side) => T,
): Readonly<Record<PieceId, T>> =>
  Object.fromEntries(
    Object.entries(paired).flatMap(([id, what]) => [
      [id, what],
      ...SIDES.map((side) => [sidedId(id as PairedId, side), sided(what, side)]),
    ]),
  ) as Record<PieceId, T>

export interface Edge {
  readonly name: EdgeName
  readonly role: EdgeRole
  readonly path: Path
  /** Whose it is, on a whole piece that is not alike on both sides. */
  readonly side?: Side
  /** Its piece lies turned over: the path runs from where others end. */
  readonly turned?: true
}

/** What a line of a piece is called when nothing else may be called so: 'sideLeft'. */
export const partName = ({
  name,
  side,
}: {
  readonly name: string
  readonly side?: Side
}): string => (side ? `${name}${capital(side)}` : name)

/** A diamond dart: legs from the upper tip to the mouth at the waist and on to the lower tip. */
export interface Dart {
  readonly name: 'waistDart' | 'waistDart2'
  readonly upperTip: Point
  /** Mouth point on the leg nearer the centre fold. */
  readonly inner: Point
  /** Mouth point on the leg nearer the side. */
  readonly outer: Point
  /** Where the lower legs meet; below the hem when the dart runs out open. */
  readonly lowerTip: Point
  /** The ends of the lower legs at the hem, for a dart that is too wide to close above it. */
  readonly open?: { readonly inner: Point; readonly outer: Point }
  readonly side?: Side
}

/** A dart whose mouth lies on an edge: legs from the tip to both ends of the mouth. */
export interface EdgeDart {
  readonly name: 'bustDart' | 'bustDart2' | 'shoulderDart' | 'waistDart' | 'waistDart2'
  readonly edge: EdgeName
  readonly tip: Point
  readonly upper: Point
  readonly lower: Point
  /** How far corrections turned the edge above the mouth against that below it, radians. */
  readonly turned?: number
  /** Sewn as a seam that parts the piece and runs on into the waist dart. */
  readonly seam?: true
  readonly side?: Side
}

/** Cloth gathered into an edge where a dart would have taken it. */
export interface Gathers {
  readonly edge: EdgeName
  /** How much shorter the edge is once it is drawn up, mm. */
  readonly takes: number
}

export type AnyDart = Dart['name'] | EdgeDart['name']
/** A line inside the outline that is sewn or marked: an opening, the centre of a buttoned front. */
export interface InnerLine {
  readonly name:
    'zip' | 'slit' | 'keyhole' | 'buttons' | 'centreFront' | 'fold' | 'vent' | 'gathers' | 'mitre'
  readonly words: string
  readonly path: Path
  readonly side?: Side
}

/** A line squared out across the piece. */
export type LevelName = 'waistLine' | 'bustLine' | 'hipLine' | 'underarmLine' | 'widthOfTheSleeve'

/** A level of the body drawn on the piece: bust line, waist line, hip line. */
export interface Level {
  readonly name: LevelName
  readonly from: Point
  readonly to: Point
}

/** How many are cut and how the piece lies: `turnedOver`, the second one face down. */
export interface CutOut {
  readonly count: 1 | 2
  readonly how: 'single' | 'onFold' | 'turnedOver' | 'trueBias' | 'whole'
}

export const ON_FOLD: CutOut = { count: 1, how: 'onFold' }
export const PAIR: CutOut = { count: 2, how: 'turnedOver' }

export interface Piece {
  readonly id: PieceId
  /** The front within a style seam: its id is still that of the whole front. */
  readonly within?: 'styleSeam'
  /** The name on the paper: 'Back, half'. */
  readonly words: string
  readonly cut: CutOut
  /** A strip or a facing of a slit: its turnings are counted in, no allowance is added. */
  readonly cutAsDrawn?: true
  readonly edges: readonly Edge[]
  readonly darts: readonly Dart[]
  readonly edgeDarts: readonly EdgeDart[]
  readonly gathers?: readonly Gathers[]
  readonly inner: readonly InnerLine[]
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

/** Length of an edge as it is sewn: the mouths of darts on it are folded away. */
export function sewnLength(piece: Piece, name: EdgeName): number {
  const { path, side } = edge(piece, name)
  const mouths = piece.edgeDarts
    .filter((d) => d.edge === name && d.side === side)
    .reduce((sum, d) => sum + distance(d.upper, d.lower), 0)
  const drawnUp = (piece.gathers ?? []).reduce((sum, g) => sum + (g.edge === name ? g.takes : 0), 0)
  return pathLength(path) - mouths - drawnUp
}

/** The seam over the shoulder or along the arm, whichever the piece has. */
export const overShoulder = (piece: Piece): Edge =>
  piece.edges.find((e) => e.name === 'overarm') ?? edge(piece, 'shoulder')

/** The edge that closes a half at its top and at its foot: a skirt begins, a bodice ends at the waist. */
export const topEdge = (piece: Piece): Edge =>
  piece.edges.find((e) => e.name === 'neck') ?? edge(piece, 'waist')
export const footEdge = (piece: Piece): Edge =>
  piece.edges.find((e) => e.name === 'hem') ?? edge(piece, 'waist')

export const isSkirt = (id: PieceId): id is SkirtId => id === 'skirtBack' || id === 'skirtFront'
export const isHalf = (id: PieceId): id is HalfId => id === 'back' || id === 'front'

export const withEdge = (piece: Piece, name: EdgeName, path: Path): Piece => ({
  ...piece,
  edges: piece.edges.map((e) => (e.name === name ? { ...e, path } : e)),
})

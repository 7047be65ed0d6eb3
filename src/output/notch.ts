/**
 * Notches: what tells her which seam meets which, and which end of it is up. Single on the
 * front, double on the back (common practice; a public sewing course says the same). They sit
 * in the middle third of the seam but not in its middle, so a piece laid end for end shows.
 */
import {
  isHalf as isBodyHalf,
  isSkirt,
  pairedId,
  type Edge,
  type EdgeName,
  type Piece,
  type PieceId,
} from '../draft/piece.ts'
import { stroked } from '../draft/turned-over.ts'
import { pathLength } from '../geometry/length.ts'
import {
  lengthTo,
  pathStart,
  placeAt,
  pointAtPlace,
  reversedPath,
  splitPath,
  tangentAtPlace,
  type Path,
  type Place,
} from '../geometry/path.ts'
import { add, quarterTurn, scale, type Point } from '../geometry/point.ts'
import { project } from '../geometry/project.ts'
import { line } from '../geometry/segment.ts'
import { SAME_POINT } from '../geometry/tolerance.ts'
import type { DartEnd } from './edge-cut.ts'

export interface Notch {
  readonly edge: EdgeName
  /** On the seam line. */
  readonly at: Point
  /** Outward from the seam line: where two seams are matched. */
  readonly mark: Path
  /** Inward from the cutting line: where she snips. Empty where the allowance is too narrow. */
  readonly slit: Path
}

/** The seams that are matched; a centre only where it is a seam and not the fold. */
const NOTCHED: readonly EdgeName[] = ['overarm', 'side', 'centre', 'frontSeam', 'backSeam']
const UPWARD: readonly EdgeName[] = ['centre', 'backSeam']
/** Single in front, double at the back; the middle of a cap is single (common practice). */
const MATCHED: readonly {
  readonly id: PieceId
  readonly edge: EdgeName
  readonly point: string
  readonly twice: boolean
}[] = [
  { id: 'back', edge: 'armhole', point: 'Z', twice: true },
  { id: 'front', edge: 'armhole', point: 'Z', twice: false },
  // Where a style seam passes the bust tip.
  { id: 'front', edge: 'styleSeam', point: 'Q', twice: false },
  { id: 'sideFront', edge: 'styleSeam', point: 'Q', twice: false },
  { id: 'sleeve', edge: 'cap', point: 'L', twice: true },
  { id: 'sleeve', edge: 'cap', point: 'A', twice: false },
  // Of a sleeve turned in its armhole: then the top is no mark.
  { id: 'sleeve', edge: 'cap', point: 'S', twice: false },
  { id: 'sleeve', edge: 'cap', point: 'K', twice: false },
  // The back edge of the slit, on the sleeve and on its cuff.
  { id: 'sleeve', edge: 'sleeveEnd', point: 'M', twice: false },
  { id: 'cuff', edge: 'sleeveEnd', point: 'B', twice: false },
]
/** Share of the seam from its upper or neck end. Common practice, no source. */
const NOTCH_AT = 0.4
/** Snips of 3–5 mm, never more than half the allowance. Common practice, no source. */
const SLIT = 5
/** The two of a double notch stand so far apart. Common practice, no source. */
const DOUBLE_APART = 8

export const isHalf = (piece: Pick<Piece, 'id'>): boolean => isBodyHalf(pairedId(piece.id))

/**
 * Notches of a body piece, a skirt half or a sleeve; a facing has none. Seams run from the neck or underarm, but
 * the centre and the back seam of a sleeve up to it. Armhole and cap are matched at the points
 * their construction gives; the middle of the cap meets the shoulder.
 */
export function notches(piece: Piece, allowance: (edge: Edge) => number): Notch[] {
  const others: readonly PieceId[] = ['sleeve', 'cuff', 'sideFront']
  const paired = pairedId(piece.id)
  if (!isHalf(piece) && !isSkirt(paired) && !others.includes(paired)) return []
  const seams = NOTCHED.flatMap((name) =>
    piece.edges.filter((e) => e.name === name && e.role === 'seam'),
  )
  return [
    ...seams.flatMap((seam) => {
      const along = pathLength(seam.path)
      const backward = UPWARD.includes(seam.name) !== (seam.turned ?? false)
      const middle = along * (backward ? 1 - NOTCH_AT : NOTCH_AT)
      const twice = paired === 'back' || paired === 'skirtBack'
      return beside(twice).map((by) => notchAt(seam.name, seam.path, middle + by, allowance(seam)))
    }),
    ...MATCHED.filter(
      ({ id, point }) => id === paired && !(id === 'sleeve' && point === 'A' && piece.points['S']),
    ).flatMap(({ edge, point, twice }) =>
      piece.edges
        .filter((e) => e.name === edge && e.role === 'seam')
        .flatMap((own) => {
          // On a whole piece the letters of the half that lies turned carry a stroke.
          const spot = piece.points[own.side && own.turned ? stroked(point) : point]
          if (!spot) return []
          const at = lengthTo(own.path, project(own.path, spot).place)
          return beside(twice).map((by) => notchAt(edge, own.path, at + by, allowance(own)))
        }),
    ),
  ]
}
const beside = (twice: boolean): number[] => (twice ? [-DOUBLE_APART / 2, DOUBLE_APART / 2] : [0])

/** Both ends of a dart's mouth are notched (a trade article on notches), along its legs. */
export const mouthNotches = (darts: readonly DartEnd[]): Notch[] =>
  darts.flatMap((d) =>
    d.legs.map((leg): Notch => {
      const allowance = pathLength(leg)
      const slit = Math.min(SLIT, allowance / 2)
      const place = (length: number): Place => placeAt(leg, length)
      return {
        edge: d.edge,
        at: pathStart(leg),
        mark: allowance > SAME_POINT ? splitPath(leg, place(Math.min(SLIT, allowance)))[0] : [],
        slit: slit > SAME_POINT ? reversedPath(splitPath(leg, place(allowance - slit))[1]) : [],
      }
    }),
  )

function notchAt(name: EdgeName, path: Path, length: number, allowance: number): Notch {
  const place = placeAt(path, length)
  const at = pointAtPlace(path, place)
  const outward = scale(quarterTurn(tangentAtPlace(path, place)), -1)
  const out = (by: number): Point => add(at, scale(outward, by))
  const depth = Math.min(SLIT, allowance / 2)
  return {
    edge: name,
    at,
    mark: [line(at, out(allowance > 0 ? Math.min(SLIT, allowance) : SLIT))],
    slit: depth > 0 ? reversedPath([line(out(allowance - depth), out(allowance))]) : [],
  }
}

/**
 * Notches: what tells her which seam meets which, and which end of it is up. Single on the
 * front, double on the back (common practice; a public sewing course says the same). They sit
 * in the middle third of the seam but not in its middle, so a piece laid end for end shows.
 */
import { edge, type EdgeName, type Piece } from '../draft/piece.ts'
import { pathLength } from '../geometry/length.ts'
import { pointAtPlace, placeAt, reversedPath, tangentAtPlace, type Path } from '../geometry/path.ts'
import { add, quarterTurn, scale, type Point } from '../geometry/point.ts'
import { line } from '../geometry/segment.ts'

export interface Notch {
  readonly edge: EdgeName
  /** On the seam line. */
  readonly at: Point
  /** Outward from the seam line: where two seams are matched. */
  readonly mark: Path
  /** Inward from the cutting line: where she snips. Empty where the allowance is too narrow. */
  readonly slit: Path
}

export const NOTCHED: readonly EdgeName[] = ['overarm', 'side']
/** Share of the seam from its upper or neck end. Common practice, no source. */
const NOTCH_AT = 0.4
/** Snips of 3–5 mm, never more than half the allowance. Common practice, no source. */
const SLIT = 5
/** The two of a double notch stand so far apart. Common practice, no source. */
const DOUBLE_APART = 8

/** Notches of a piece. The overarm runs from the neck and the side from the underarm already. */
export function notches(piece: Piece, allowance: (name: EdgeName) => number): Notch[] {
  return NOTCHED.flatMap((name) => {
    const path = edge(piece, name).path
    const middle = pathLength(path) * NOTCH_AT
    const aside = piece.id === 'back' ? [-DOUBLE_APART / 2, DOUBLE_APART / 2] : [0]
    return aside.map((by) => notchAt(name, path, middle + by, allowance(name)))
  })
}

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

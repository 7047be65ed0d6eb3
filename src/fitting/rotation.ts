/**
 * The arithmetic of turning a part of a piece about a point, exact and not for small angles only.
 * Figures: worked out; test vectors beside them in `tests/fitting/rotation.test.ts`.
 */
import { mm, type Mm } from '../units/length.ts'
import { radians, type Radians } from '../units/angle.ts'

/** Turn that closes a tuck `width` wide at `reach` from the pivot; undefined where it is wider than the reach allows. */
export const turnOf = (width: number, reach: number): Radians | undefined =>
  reach > 0 && Math.abs(width) <= 2 * reach
    ? radians(2 * Math.asin(width / (2 * reach)))
    : undefined

/** How far a point at `reach` from the pivot moves when the part turns. */
export const openingAt = (turn: Radians, reach: number): Mm => mm(2 * reach * Math.sin(turn / 2))

/**
 * A wedge cut from an open edge to a hinge on the edge across, `length` wide where it is open and
 * `depth` from there to the hinge: the turn, and the jog it leaves at a straight centre edge that
 * lies `lever` from the hinge, half of it at either end.
 */
export function wedgeTurn(
  length: number,
  depth: number,
  lever: number,
): { readonly turn: Radians; readonly jogEach: Mm } | undefined {
  const turn = turnOf(length, depth)
  return turn === undefined ? undefined : { turn, jogEach: mm((length * lever) / depth / 2) }
}

export interface FullBust {
  readonly turn: Radians
  /** Added to the front length, mm; negative for a smaller bust. */
  readonly length: Mm
  /** Added to the mouth of the side dart, mm. */
  readonly dart: Mm
}

/**
 * A fuller or smaller bust in three outputs. The hinge H lies on the lower third of the armhole,
 * `dx` beside and `dy` above the apex; `along` is the distance from the apex to the side along the
 * dart. The upper side part turns about H until the piece is `width` wider at the apex:
 *   width = dy·sin φ + dx·(1 − cos φ).
 * Undefined where no turn gives that width.
 */
export function fullBust(
  width: number,
  dx: number,
  dy: number,
  along: number,
): FullBust | undefined {
  // dy·sin φ − dx·cos φ = width − dx is one sine of φ − atan(dx/dy).
  const [far, tilt] = [Math.hypot(dx, dy), Math.atan2(dx, dy)]
  const sine = (width - dx) / far
  if (!(Math.abs(sine) <= 1)) return undefined
  const turn = Math.asin(sine) + tilt
  return {
    turn: radians(turn),
    length: mm(dx * Math.sin(turn) - dy * (1 - Math.cos(turn))),
    dart: mm(2 * along * Math.sin(turn / 2)),
  }
}

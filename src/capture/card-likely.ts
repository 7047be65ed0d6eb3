/** Which of several lines near the taps are the edges of the card. */
import type { CardSize } from './card.ts'
import type { EdgeFit } from './card-edge.ts'
import type { Corners } from './card-marker.ts'
import type { SoughtEdge } from './card-seek.ts'
import { clockwise, lay, meeting, taper } from './card-shape.ts'

/**
 * How far four lines are from a flat card of one colour held about square to the camera, in squared
 * spreads, halved. Spreads: common practice, no source; the true card was the least strange reading
 * of 144 rendered ones.
 */
export function strangeness(
  squeeze: number,
  seen: readonly EdgeFit[],
  way: readonly SoughtEdge[],
  corners: Corners,
): number {
  const tilt = Math.acos(Math.min(1, squeeze)) / TILT_SPREAD
  const inside = seen.map((fit) => fit.inside)
  const contrast = Math.max(...seen.map((fit) => Math.abs(fit.contrast)))
  const range = seen.length > 0 ? (Math.max(...inside) - Math.min(...inside)) / contrast : 0
  const uneven = range / UNEVEN_SPREAD
  const askew = (taper(corners) - 1) / TAPER_SPREAD
  const weak = way.reduce((sum, { strength }) => sum - Math.log(strength), 0)
  return (tilt ** 2 + uneven ** 2 + askew ** 2) / 2 + weak
}
/** A card hung or held towards the camera turns away by about this, radians (12 degrees). */
const TILT_SPREAD = 0.21
/** Light on one card differs between its edges by about this share of its contrast. */
const UNEVEN_SPREAD = 0.25
/** A card of 86 mm at 2.4 m, tilted by 12 degrees, has one edge 0.7 % shorter; the rest is the edges' own. */
const TAPER_SPREAD = 0.02

/** The ways whose bare lines already look most like a flat card; the others are not placed finely. */
export function likeliest(
  ways: readonly (readonly SoughtEdge[])[],
  size: CardSize,
): readonly (readonly SoughtEdge[])[] {
  if (ways.length <= MOST_WAYS) return ways
  const ranked = ways.flatMap((way) => {
    const corners = meeting(way)
    const laid = corners && clockwise(corners) ? lay(corners, size) : null
    return corners && laid ? [{ way, strange: strangeness(laid.squeeze, [], way, corners) }] : []
  })
  ranked.sort((p, q) => p.strange - q.strange)
  return ranked.slice(0, MOST_WAYS).map(({ way }) => way)
}
const MOST_WAYS = 10

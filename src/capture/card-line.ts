/**
 * A straight line through places of which some are wrong: a finger over the edge, a crease, the
 * start of a rounded corner. Iteratively reweighted least squares with Tukey's biweight
 * (Huber, Ronchetti: Robust Statistics, 2nd ed.; the two constants below are from memory).
 */

/** Weight falls to nothing at this many spreads: Tukey's biweight, 95 % efficiency, 4.685. */
const TUKEY = 4.685
/** Median absolute deviation to standard deviation of a normal spread. */
const MAD_TO_SD = 1.4826
const SMALLEST_SPREAD_PX = 0.03
/** Fewer trusted places, or all of them in one spot, give no line. */
const [LEAST_PLACES, FLAT] = [3, 1e-6]

/** d = start + slope t by reweighted least squares, begun from the middle value. */
export function steadyLine(
  places: readonly { t: number; d: number }[],
): { start: number; slope: number; residual: number } | null {
  let [start, slope] = [median(places.map((p) => p.d)), 0]
  let residual = 0
  for (let turn = 0; turn < 8; turn++) {
    const away = places.map((p) => p.d - start - slope * p.t)
    const spread = Math.max(SMALLEST_SPREAD_PX, MAD_TO_SD * median(away.map(Math.abs)))
    let [w, wt, wtt, wd, wtd, wrr] = [0, 0, 0, 0, 0, 0]
    for (const [i, { t, d }] of places.entries()) {
      const off = away[i] ?? 0
      const u = off / (TUKEY * spread)
      const weight = Math.abs(u) < 1 ? (1 - u * u) ** 2 : 0
      w += weight
      wt += weight * t
      wtt += weight * t * t
      wd += weight * d
      wtd += weight * t * d
      wrr += weight * off * off
    }
    const det = w * wtt - wt * wt
    if (w < LEAST_PLACES || det < FLAT) return null
    start = (wtt * wd - wt * wtd) / det
    slope = (w * wtd - wt * wd) / det
    residual = Math.sqrt(wrr / w)
  }
  return { start, slope, residual }
}

/** The middle value; of an even number the mean of the two in the middle. */
export function median(values: readonly number[]): number {
  const sorted = [...values].sort((p, q) => p - q)
  const half = Math.floor(sorted.length / 2)
  const upper = sorted[half] ?? 0
  return sorted.length % 2 === 1 ? upper : (upper + (sorted[half - 1] ?? upper)) / 2
}

/**
 * A straight line through places of which some are wrong: a finger over the edge, a crease, the
 * start of a rounded corner. Iteratively reweighted least squares with Tukey's biweight
 * (Huber, Ronchetti: Robust Statistics, 2nd ed., chapters 4 and 7).
 */

/** Weight falls to nothing at this many spreads: Tukey's biweight, 95 % efficiency, 4.685. */
const TUKEY = 4.685
/** Median absolute deviation to standard deviation of a normal spread. */
const MAD_TO_SD = 1.4826
const SMALLEST_SPREAD_PX = 0.03

/** d = start + slope t by reweighted least squares, begun from the middle value. */
export function steadyLine(
  places: readonly { t: number; d: number }[],
): { start: number; slope: number; residual: number } | null {
  let [start, slope] = [median(places.map((p) => p.d)), 0]
  let residual = 0
  for (let turn = 0; turn < 8; turn++) {
    const away = places.map((p) => p.d - start - slope * p.t)
    const spread = Math.max(SMALLEST_SPREAD_PX, MAD_TO_SD * median(away.map(Math.abs)))
    const [w, wt, wtt, wd, wtd, wrr] = [0, 0, 0, 0, 0, 0].map(() => ({ sum: 0 }))
    if (!w || !wt || !wtt || !wd || !wtd || !wrr) return null
    places.forEach(({ t, d }, i) => {
      const u = (away[i] ?? 0) / (TUKEY * spread)
      const weight = Math.abs(u) < 1 ? (1 - u * u) ** 2 : 0
      w.sum += weight
      wt.sum += weight * t
      wtt.sum += weight * t * t
      wd.sum += weight * d
      wtd.sum += weight * t * d
      wrr.sum += weight * (away[i] ?? 0) ** 2
    })
    const det = w.sum * wtt.sum - wt.sum ** 2
    if (w.sum < 3 || det < 1e-6) return null
    start = (wtt.sum * wd.sum - wt.sum * wtd.sum) / det
    slope = (w.sum * wtd.sum - wt.sum * wd.sum) / det
    residual = Math.sqrt(wrr.sum / w.sum)
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

/**
 * One straight edge of a card, to a few hundredths of a pixel, on LINEAR light. First the best
 * line within reach is looked for; then, at stations along it, the place where the light passes
 * half way between its two sides; then a line through those places that no finger, crease or
 * rounded corner can pull aside. Every number without another source is from trial on rendered
 * cards (scripts/bench/card.ts).
 */
import { add, between, distance, quarterTurn, scale, subtract, unit } from '../geometry/point.ts'
import type { Point } from '../geometry/point.ts'
import type { Grey } from './picture.ts'

export interface EdgeFit {
  readonly from: Point
  readonly to: Point
  /** Root mean square distance of the stations from the line, pixels. */
  readonly residualPx: number
  /** Light outside the card minus light inside, middle of all stations, -1 to 1. */
  readonly contrast: number
}

/** Part of the edge left out at each end: an ID-1 corner has a radius of 3.18 mm in 53.98 mm. */
const END_SHARE = 0.1
/** Stations stand about a pixel apart, but there are never fewer nor more than this. */
const STATIONS = { fewest: 12, most: 160 }
/** Steps of the first search along and across the edge, pixels. */
const COARSE_STEP = 0.5
const FINE_STEP = 0.25
/** How far the sides are looked at when an edge is placed, as a share of its length and in pixels. */
const SIDE_SHARE = 0.09
const SIDE_PX = { least: 2.5, most: 4 }
/** Weakest difference of light that counts as an edge, and the share of stations that must show one. */
const MIN_CONTRAST = 0.012
const MIN_SHARE = 0.5
/** Weight falls to nothing at this many spreads: Tukey's biweight, 95 % efficiency, 4.685. */
const TUKEY = 4.685
/** Median absolute deviation to standard deviation of a normal spread. */
const MAD_TO_SD = 1.4826
const SMALLEST_SPREAD_PX = 0.03

/**
 * The strongest straight edge whose ends lie within `reach` pixels across from a and b.
 * The card lies to the right of travel a -> b (its corners run clockwise).
 * @param outside 'lighter' or 'darker' than the card, or 'either'
 */
export function seekEdge(
  grey: Grey,
  a: Point,
  b: Point,
  reach: number,
  outside: 'lighter' | 'darker' | 'either',
): { from: Point; to: Point } | null {
  const { stations, outward } = laidOut(a, b)
  const count = 2 * Math.ceil(reach / COARSE_STEP) + 1
  const offsetOf = (k: number): number => (k - (count - 1) / 2) * COARSE_STEP
  const rises = stations.map((t) => {
    const at = between(a, b, t)
    return Array.from({ length: count }, (_, k) => {
      const d = offsetOf(k)
      return lightAt(grey, at, outward, d + 1) - lightAt(grey, at, outward, d - 1)
    })
  })
  // One very strong station must not outvote the rest of the edge.
  const cap = median(rises.map((row) => Math.max(...row.map(Math.abs))))
  let best: { score: number; from: number; to: number } | null = null
  for (const sign of outside === 'either' ? [1, -1] : [outside === 'lighter' ? 1 : -1]) {
    for (let i = 0; i < count; i++) {
      for (let j = 0; j < count; j++) {
        let score = 0
        stations.forEach((t, s) => {
          const rise = sign * (rises[s]?.[Math.round(i + (j - i) * t)] ?? 0)
          score += Math.min(cap, rise)
        })
        if (!best || score > best.score) best = { score, from: offsetOf(i), to: offsetOf(j) }
      }
    }
  }
  if (!best || best.score <= 0) return null
  return { from: add(a, scale(outward, best.from)), to: add(b, scale(outward, best.to)) }
}

/** The edge near a -> b to sub-pixel; null when too little of it can be seen. */
export function placeEdge(grey: Grey, a: Point, b: Point): EdgeFit | null {
  let [from, to] = [a, b]
  let fit: EdgeFit | null = null
  for (let turn = 0; turn < 3; turn++) {
    fit = placeOnce(grey, from, to)
    if (!fit) return null
    ;({ from, to } = fit)
  }
  return fit
}

function placeOnce(grey: Grey, a: Point, b: Point): EdgeFit | null {
  const { stations, outward } = laidOut(a, b)
  const side = clamp(distance(a, b) * SIDE_SHARE, SIDE_PX.least, SIDE_PX.most)
  const steps = Math.round(side / FINE_STEP)
  const seen = stations.map((t) => {
    const at = between(a, b, t)
    const light = Array.from({ length: 2 * steps + 1 }, (_, k) =>
      lightAt(grey, at, outward, (k - steps) * FINE_STEP),
    )
    const flat = Math.max(1, Math.round(steps / 4))
    const inside = mean(light.slice(0, flat))
    const outside = mean(light.slice(-flat))
    return { t, contrast: outside - inside, d: crossing(light, (inside + outside) / 2, steps) }
  })
  const contrast = median(seen.map((s) => s.contrast))
  if (Math.abs(contrast) < MIN_CONTRAST) return null
  const good = seen.flatMap(({ t, contrast: own, d }) =>
    d !== null && own / contrast > 0.4 ? [{ t, d }] : [],
  )
  if (good.length < MIN_SHARE * stations.length) return null
  const line = steadyLine(good)
  if (!line) return null
  return {
    from: add(a, scale(outward, line.start)),
    to: add(b, scale(outward, line.start + line.slope)),
    residualPx: line.residual,
    contrast,
  }
}

/** Where the light crosses `level` nearest to the middle, pixels from the middle; null if never. */
function crossing(light: readonly number[], level: number, steps: number): number | null {
  let best: number | null = null
  for (let k = 0; k + 1 < light.length; k++) {
    const [p, q] = [(light[k] ?? 0) - level, (light[k + 1] ?? 0) - level]
    if (p === q || p * q > 0) continue
    const d = (k + p / (p - q) - steps) * FINE_STEP
    if (best === null || Math.abs(d) < Math.abs(best)) best = d
  }
  return best
}

/** d = start + slope t by reweighted least squares, begun from the middle value. */
function steadyLine(
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

/** Stations as shares of a -> b, and the unit vector that points off the card. */
function laidOut(a: Point, b: Point): { stations: number[]; outward: Point } {
  const count = clamp(Math.round(distance(a, b)), STATIONS.fewest, STATIONS.most)
  const stations = Array.from(
    { length: count },
    (_, i) => END_SHARE + ((1 - 2 * END_SHARE) * (i + 0.5)) / count,
  )
  return { stations, outward: scale(quarterTurn(unit(subtract(b, a))), -1) }
}

/** Light at `at` + d x `along`, between the four nearest pixel middles; the rim is carried outward. */
function lightAt(grey: Grey, at: Point, along: Point, d: number): number {
  const x = clamp(at.x + along.x * d - 0.5, 0, grey.width - 1)
  const y = clamp(at.y + along.y * d - 0.5, 0, grey.height - 1)
  const [x0, y0] = [
    Math.min(Math.floor(x), grey.width - 2),
    Math.min(Math.floor(y), grey.height - 2),
  ]
  const [fx, fy] = [x - x0, y - y0]
  const i = y0 * grey.width + x0
  const { data } = grey
  const top = (data[i] ?? 0) * (1 - fx) + (data[i + 1] ?? 0) * fx
  const low = (data[i + grey.width] ?? 0) * (1 - fx) + (data[i + grey.width + 1] ?? 0) * fx
  return top * (1 - fy) + low * fy
}

const clamp = (v: number, low: number, high: number): number => Math.min(high, Math.max(low, v))
const mean = (values: readonly number[]): number =>
  values.reduce((sum, v) => sum + v, 0) / Math.max(1, values.length)

function median(values: readonly number[]): number {
  const sorted = [...values].sort((p, q) => p - q)
  const half = Math.floor(sorted.length / 2)
  const upper = sorted[half] ?? 0
  return sorted.length % 2 === 1 ? upper : (upper + (sorted[half - 1] ?? upper)) / 2
}

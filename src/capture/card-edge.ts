/**
 * One straight edge of a card, to a few hundredths of a pixel, on LINEAR light. First the best
 * line within reach is looked for; then, at stations along it, the place where the light passes
 * half way between its two sides; then a line through those places that no finger, crease or
 * rounded corner can pull aside. Every number without another source is from trial on rendered
 * cards (scripts/bench/card.ts).
 */
import { add, between, distance, quarterTurn, scale, subtract, unit } from '../geometry/point.ts'
import type { Point } from '../geometry/point.ts'
import { median, steadyLine } from './card-line.ts'
import type { Grey } from './picture.ts'

export interface EdgeFit {
  readonly from: Point
  readonly to: Point
  /** Root mean square distance of the stations from the line, pixels. */
  readonly residualPx: number
  /** Light outside the card minus light inside, middle of all stations, -1 to 1. */
  readonly contrast: number
  /** Light inside, middle of all stations. */
  readonly inside: number
}

/** Part of the edge left out at each end: an ID-1 corner has a radius of 3.18 mm in 53.98 mm. */
const END_SHARE = 0.1
/** Stations stand about a pixel apart, but there are never fewer nor more than this. */
const STATIONS = { fewest: 12, most: 160 }
/** Step along which the light across an edge is read, pixels. */
const FINE_STEP = 0.25
/** How far the sides are looked at when an edge is placed, as a share of its length and in pixels. */
const SIDE_SHARE = 0.09
const SIDE_PX = { least: 2.5, most: 4 }
/** Half width of the piece of the step whose area is taken, pixels. */
const AREA_PX = 2
/** Weakest difference of light that counts as an edge, and the share of stations that must show one. */
const MIN_CONTRAST = 0.012
const MIN_SHARE = 0.5

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
    return { t, inside, contrast: outside - inside, d: stepAt(light, inside, outside, steps) }
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
    inside: median(seen.map((s) => s.inside)),
  }
}

/**
 * Where the step from `inside` to `outside` lies, pixels from the middle; null where there is none.
 * The half-way crossing names the place, the area under the step there measures it: between pixel
 * middles the crossing alone errs by up to 0.08 px on a sharp edge, the area does not.
 */
function stepAt(
  light: readonly number[],
  inside: number,
  outside: number,
  steps: number,
): number | null {
  const rise = outside - inside
  let near: number | null = null
  for (let k = 0; k + 1 < light.length; k++) {
    const [p, q] = [
      ((light[k] ?? 0) - inside) / rise - 0.5,
      ((light[k + 1] ?? 0) - inside) / rise - 0.5,
    ]
    if (p > 0 || q <= 0) continue
    const at = k + p / (p - q)
    if (near === null || Math.abs(at - steps) < Math.abs(near - steps)) near = at
  }
  if (near === null) return null
  const centre = Math.round(near)
  const half = Math.min(Math.round(AREA_PX / FINE_STEP), centre, light.length - 1 - centre)
  if (half < 1 / FINE_STEP) return (near - steps) * FINE_STEP
  let area = 0
  for (let k = centre - half; k <= centre + half; k++) {
    const share = ((light[k] ?? 0) - inside) / rise
    area += Math.abs(k - centre) === half ? share / 2 : share
  }
  return (centre + half - area - steps) * FINE_STEP
}

/** Stations as shares of a -> b, and the unit vector that points off the card. */
export function laidOut(a: Point, b: Point): { stations: number[]; outward: Point } {
  const count = clamp(Math.round(distance(a, b)), STATIONS.fewest, STATIONS.most)
  const stations = Array.from(
    { length: count },
    (_, i) => END_SHARE + ((1 - 2 * END_SHARE) * (i + 0.5)) / count,
  )
  return { stations, outward: scale(quarterTurn(unit(subtract(b, a))), -1) }
}

/** Light at `at` + d x `along`, between the four nearest pixel middles; the rim is carried outward. */
export function lightAt(grey: Grey, at: Point, along: Point, d: number): number {
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

/**
 * The apexes in a front photo of close plain cloth, by the light on them. A surface bends most at an
 * apex, in every direction, and light falls off as the surface turns: there the shading changes
 * within a thumb's breadth, along more than one direction. A fold, a seam, the edge of a shadow
 * change it along one direction only. Two such places, about as high and about as far from the
 * middle as each other, are taken; where none stands out there is no answer. Picture px.
 */
import type { Point } from '../geometry/point.ts'
import { rowAt } from './outline.ts'
import type { Picture } from './picture.ts'
import type { OutlineRow } from './reading.ts'

/** A place that stands out of the chest by bending in every direction. */
export interface ApexSpot {
  readonly at: Point
  /** How many times it stands out from the rest of the chest. */
  readonly score: number
}
export interface ApexSearch {
  /** Usual places; left and right are hers. */
  readonly left: Point
  readonly right: Point
  /** Length shoulder to hip joints. */
  readonly torso: number
  /** How far the usual level strays. */
  readonly sdY: number
}
export interface FoundApexes {
  readonly left: ApexSpot
  readonly right: ApexSpot
}

/** Sizes in torsos of about 490 mm: the apex's own relief, what is taken for the broad shape, the window. */
const FINE = 0.009
const BROAD = 0.028
const WINDOW = 0.014
/** Nearer to the outline than this the cloth turns away from the light, in torsos. */
const RIM = 0.05
/** Least times a place must stand out from the chest's median, and each of a pair that is believed. */
const LEAST_SCORE = 2
const LEAST_OF_PAIR = 10
/** The two lie nearly level, and nearly as far from the middle as each other: spreads in torsos. */
const LEVEL_SD = 0.02
const EVEN_SD = 0.03
/** Half their spacing strays from its usual share of the breadth by this (proportions.ts), in torsos. */
const HALF_SD = 0.025
/** A spot lies above or below the apex by this, as the light falls, in torsos. */
const SPOT_SD = 0.015
/** A pair stranger than this, in squared spreads halved, is none. */
const STRANGEST = 4.5
/** Where spots stand out by more than this all are clear; more does not make one truer. */
const FULL_SCORE = 40

/** @param rows outline of the trunk from armpits to waist, top first */
export function apexSpots(
  picture: Picture,
  rows: readonly OutlineRow[],
  torso: number,
): readonly ApexSpot[] {
  const [first, last] = [rows[0], rows.at(-1)]
  if (!first || !last) return []
  const box = {
    left: Math.max(0, Math.floor(Math.min(...rows.map((row) => row.left)))),
    right: Math.min(picture.width, Math.ceil(Math.max(...rows.map((row) => row.right)))),
    top: Math.max(0, Math.floor(first.y)),
    bottom: Math.min(picture.height, Math.ceil(last.y)),
  }
  const [w, h] = [box.right - box.left, box.bottom - box.top]
  if (w < 20 || h < 20) return []
  const light = logLight(picture, box)
  const fine = blurred(light, w, h, FINE * torso)
  const broad = blurred(light, w, h, BROAD * torso)
  const relief = fine.map((v, k) => v - (broad[k] ?? 0))
  const corner = cornerness(relief, w, h, WINDOW * torso)
  const usual = [...corner].sort((a, b) => a - b)[corner.length >> 1] ?? 0
  const spots: ApexSpot[] = []
  for (let y = 2; y < h - 2; y++) {
    const row = rowAt(rows, box.top + y)
    if (!row) continue
    const [from, to] = [row.left + RIM * torso, row.right - RIM * torso]
    for (let x = 2; x < w - 2; x++) {
      const own = corner[y * w + x] ?? 0
      const at = { x: box.left + x + 0.5, y: box.top + y + 0.5 }
      if (own < LEAST_SCORE * usual || at.x < from || at.x > to) continue
      if (isPeak(corner, w, x, y)) spots.push({ at, score: own / usual })
    }
  }
  return spots
}

function isPeak(values: Float64Array, w: number, x: number, y: number): boolean {
  const own = values[y * w + x] ?? 0
  for (let dy = -1; dy <= 1; dy++)
    for (let dx = -1; dx <= 1; dx++) if ((values[(y + dy) * w + x + dx] ?? 0) > own) return false
  return true
}

/** The pair that looks most like two apexes; undefined when none does. */
export function pickApexes(
  spots: readonly ApexSpot[],
  { left, right, torso, sdY }: ApexSearch,
): FoundApexes | undefined {
  const middle = (left.x + right.x) / 2
  const y = (left.y + right.y) / 2
  const half = (left.x - right.x) / 2
  const sign = Math.sign(half)
  const far = (d: number, sd: number): number => (d / sd) ** 2 / 2
  let best: (FoundApexes & { rank: number }) | undefined
  const side = (which: number): ApexSpot[] =>
    spots.filter(({ at }) => (at.x - middle) * which > 0.3 * Math.abs(half))
  for (const a of side(sign))
    for (const b of side(-sign)) {
      const strange =
        far(a.at.y - b.at.y, LEVEL_SD * torso) +
        far(a.at.x + b.at.x - 2 * middle, EVEN_SD * torso) +
        far(Math.abs(a.at.x - b.at.x) / 2 - Math.abs(half), HALF_SD * torso) +
        far((a.at.y + b.at.y) / 2 - y, Math.hypot(sdY, SPOT_SD * torso))
      if (strange > STRANGEST || Math.min(a.score, b.score) < LEAST_OF_PAIR) continue
      const clear = ({ score }: ApexSpot): number => Math.log(Math.min(FULL_SCORE, score))
      const rank = clear(a) + clear(b) - strange
      if (!best || rank > best.rank) best = { left: a, right: b, rank }
    }
  return best
}

interface Box {
  readonly left: number
  readonly right: number
  readonly top: number
  readonly bottom: number
}

/** Logarithm of brightness: shading counts the same on dark cloth and on light. */
function logLight({ data, width }: Picture, { left, right, top, bottom }: Box): Float64Array {
  const w = right - left
  const out = new Float64Array(w * (bottom - top))
  for (let y = top; y < bottom; y++)
    for (let x = left; x < right; x++) {
      const k = (y * width + x) * 4
      const sum = (data[k] ?? 0) + (data[k + 1] ?? 0) + (data[k + 2] ?? 0)
      out[(y - top) * w + x - left] = Math.log(sum + 12)
    }
  return out
}

function blurred(from: Float64Array, w: number, h: number, sd: number): Float64Array {
  const reach = Math.max(1, Math.ceil(2.5 * sd))
  const bell = Array.from({ length: 2 * reach + 1 }, (_, k) =>
    Math.exp(-(((k - reach) / sd) ** 2) / 2),
  )
  const total = bell.reduce((sum, v) => sum + v, 0)
  // Written out plainly: an array made for each tap costs ten times the sum itself.
  const pass = (source: Float64Array, dx: number, dy: number): Float64Array => {
    const out = new Float64Array(source.length)
    const [last, stride] = dx === 1 ? [w - 1, 1] : [h - 1, w]
    for (let y = 0; y < h; y++)
      for (let x = 0; x < w; x++) {
        const own = dx * x + dy * y
        const base = y * w + x - own * stride
        let sum = 0
        for (let k = -reach; k <= reach; k++) {
          const at = own + k < 0 ? 0 : own + k > last ? last : own + k
          sum += (bell[k + reach] ?? 0) * (source[base + at * stride] ?? 0)
        }
        out[y * w + x] = sum / total
      }
    return out
  }
  return pass(pass(from, 1, 0), 0, 1)
}

/** The smaller eigenvalue of the gradients' spread in a window (Shi, Tomasi, Good features to track, 1994). */
function cornerness(relief: Float64Array, w: number, h: number, sd: number): Float64Array {
  const [xx, xy, yy] = [0, 1, 2].map(() => new Float64Array(w * h)) as [
    Float64Array,
    Float64Array,
    Float64Array,
  ]
  for (let y = 1; y < h - 1; y++)
    for (let x = 1; x < w - 1; x++) {
      const k = y * w + x
      const gx = ((relief[k + 1] ?? 0) - (relief[k - 1] ?? 0)) / 2
      const gy = ((relief[k + w] ?? 0) - (relief[k - w] ?? 0)) / 2
      xx[k] = gx * gx
      xy[k] = gx * gy
      yy[k] = gy * gy
    }
  const [a, b, c] = [blurred(xx, w, h, sd), blurred(xy, w, h, sd), blurred(yy, w, h, sd)]
  return a.map((p, k) => {
    const [q, r] = [b[k] ?? 0, c[k] ?? 0]
    return (p + r) / 2 - Math.hypot((p - r) / 2, q)
  })
}

/**
 * The elastic or cord she tied round the waist, seen as a thin line across the trunk that is
 * lighter or darker than the cloth on BOTH sides of it. A hem or the top of a skirt is a step from
 * one colour to another, not a line, and is passed over. Works in every view, px, y down.
 */
import { rowAt } from './outline.ts'
import type { Picture } from './picture.ts'
import type { OutlineRow } from './reading.ts'

export interface Band {
  /** Height of the band's middle line at the left end, the middle and the right end of the trunk. */
  readonly left: number
  readonly middle: number
  readonly right: number
  /** Grey levels the band stands out from the cloth, of 255. */
  readonly contrast: number
}

/** Strips across the trunk; the outermost turn away from the light and are left out. */
const STRIPS = 17
const OUTER_SHARE = 0.12
/** The band bows as a circle seen from above or below: ends against middle, share of the width. */
const BOWS = [-0.16, -0.12, -0.08, -0.04, 0, 0.04, 0.08, 0.12, 0.16]
/** A camera held askew: right end against left end, share of the width. */
const TILTS = [-0.08, -0.05, -0.025, 0, 0.025, 0.05, 0.08]
/** Half the height of an elastic of 6 to 14 mm, in shares of a trunk about 270 mm wide. */
const HALF_HEIGHTS = [0.014, 0.022]
/** Grey levels a line must stand out by to be taken for a band; cloth and shading stay below. */
const LEAST_CONTRAST = 9
/** Beyond this a line is no clearer, only whiter. */
const FULL_CONTRAST = 60
/** Share of the strips that must show the line: from the side the near arm hides the middle. */
const LEAST_SHARE = { across: 0.72, besideArm: 0.34 } as const
/** Fewer strips than this beside a card hung in front of the trunk say too little. */
const LEAST_STRIPS = 4
/** A second line elsewhere nearly as strong as the best makes the find doubtful. */
const RIVAL = 0.8
/** Lines nearer than this to the best, share of the width, are the same band. */
const SAME_BAND = 0.1

interface Curve {
  readonly middle: number
  readonly bow: number
  readonly tilt: number
}
interface Strip {
  /** -0.5 at the left edge of the trunk, 0.5 at the right. */
  readonly across: number
  readonly grey: readonly number[]
  /** The strip's columns lie within those of the card. */
  readonly behindCard: boolean
}
/** How far each row stands out; undefined where the card hides it. */
type Line = readonly (number | undefined)[]
interface Search {
  readonly from: number
  readonly to: number
  readonly seen: keyof typeof LEAST_SHARE
  /** Where a card hides the trunk, px. */
  readonly hidden?: Hidden
}
export interface Hidden {
  readonly left: number
  readonly right: number
  readonly top: number
  readonly bottom: number
}

export function findBand(
  picture: Picture,
  trunk: readonly OutlineRow[],
  search: Search,
): Band | undefined {
  const { from, to } = search
  const centre = rowAt(trunk, (from + to) / 2)
  if (!centre || to - from < 8) return undefined
  const width = centre.right - centre.left
  const strips = stripsOf(picture, trunk, search, width)
  const finds = HALF_HEIGHTS.flatMap((half) => {
    const reach = Math.max(2, Math.round(half * width * 1.6))
    const lines = strips.map((strip) => lineOf(strip, reach, search))
    return [1, -1].flatMap((sign) => {
      const strength = (curve: Curve): number =>
        strengthOf(curve, strips, lines, width, sign, LEAST_SHARE[search.seen])
      const rounded = lines.map((line) => softened(line, reach))
      // Inside the band every row is as clear as the next; rounded off, its middle is the strongest.
      const centred = (curve: Curve): number =>
        strengthOf(curve, strips, rounded, width, sign, 0, Infinity)
      const how = { centred, sign, reach }
      return strongestPerRow(to - from, strength).map((find) => ({ ...find, ...how }))
    })
  })
  const best = finds.reduce<(typeof finds)[number] | undefined>(
    (top, find) => (find.sum > (top?.sum ?? 0) ? find : top),
    undefined,
  )
  if (!best) return undefined
  const far = finds.filter(
    (find) => Math.abs(find.curve.middle - best.curve.middle) > SAME_BAND * width,
  )
  if (far.some((find) => find.sum > RIVAL * best.sum)) return undefined
  const { middle, bow, tilt } = refined(best.curve, best.centred, width)
  const height = (u: number): number => from + 0.5 + middle + (4 * bow * u * u + tilt * u) * width
  const end = (side: -1 | 1): number => {
    const u = side * (0.5 - OUTER_SHARE)
    return followed(picture, trunk, search, height(u), u, best.sign, best.reach) ?? height(side / 2)
  }
  return { left: end(-1), middle: height(0), right: end(1), contrast: best.sum }
}

/** This far from the outline its pixels are mixed with the room behind. */
const MIXED_PX = 1.5
/** From one column to the next the band rises or falls by no more than this, px. */
const STEP_PX = 2

/**
 * The height of the band where it leaves the sight: from the outermost strip it is followed column by
 * column to the edge of the trunk, where a ring seen from above turns up faster than the middle tells.
 */
function followed(
  picture: Picture,
  trunk: readonly OutlineRow[],
  search: Search,
  start: number,
  across: number,
  sign: number,
  reach: number,
): number | undefined {
  const side = Math.sign(across)
  const first = rowAt(trunk, start - 0.5)
  if (!first) return undefined
  let [y, x] = [start, (first.left + first.right) / 2 + across * (first.right - first.left)]
  for (;;) {
    const row = rowAt(trunk, y - 0.5)
    if (!row) return undefined
    if (side < 0 ? x < row.left + MIXED_PX : x > row.right - MIXED_PX) return y
    const from = Math.round(y) - 2 * reach - STEP_PX
    const grey = Array.from({ length: 4 * reach + 2 * STEP_PX + 1 }, (_, k) =>
      luma(picture, Math.floor(x), from + k),
    )
    const column = { grey, across, behindCard: within(x, search.hidden, 0) }
    const line = softened(lineOf(column, reach, { ...search, from }), reach)
    const near = line.flatMap((value, k) =>
      value === undefined || Math.abs(from + k + 0.5 - y) > STEP_PX
        ? []
        : [[value * sign, k] as const],
    )
    const [value, k] = near.reduce((top, one) => (one[0] > top[0] ? one : top), [0, 0])
    if (value < LEAST_CONTRAST) return undefined
    y = from + k + 0.5
    x += side
  }
}

function strongestPerRow(rows: number, strength: (curve: Curve) => number) {
  return Array.from({ length: rows }, (_, middle) => {
    let found = { curve: { middle, bow: 0, tilt: 0 }, sum: 0 }
    for (const bow of BOWS)
      for (const tilt of TILTS) {
        const sum = strength({ middle, bow, tilt })
        if (sum > found.sum) found = { curve: { middle, bow, tilt }, sum }
      }
    return found
  }).filter((find) => find.sum > 0)
}

/** Mean over all strips of how far the line stands out; 0 when too few of those that could show it do. */
function strengthOf(
  { middle, bow, tilt }: Curve,
  strips: readonly Strip[],
  lines: readonly Line[],
  width: number,
  sign: number,
  leastShare: number,
  most = FULL_CONTRAST,
): number {
  let [sum, clear, open] = [0, 0, 0]
  strips.forEach(({ across }, k) => {
    const row = middle + (4 * bow * across * across + tilt * across) * width
    const line = lines[k] ?? []
    const below = Math.floor(row)
    if (below < 0 || below + 1 >= line.length) {
      open += 1
      return
    }
    const [upper, lower] = [line[below], line[below + 1]]
    if (upper === undefined || lower === undefined) return
    open += 1
    const value = (upper * (below + 1 - row) + lower * (row - below)) * sign
    if (leastShare > 0 && value <= LEAST_CONTRAST) return
    clear += 1
    sum += Math.min(Math.max(0, value), most)
  })
  // Every strip counts: a line gains nothing by hiding behind the card.
  return open < LEAST_STRIPS || clear < leastShare * open ? 0 : sum / strips.length
}

/** Steps the curve to its strongest place, a quarter of a pixel at a time at the end. */
function refined(start: Curve, strength: (curve: Curve) => number, width: number): Curve {
  let [curve, top] = [start, strength(start)]
  for (const step of [1, 0.5, 0.25]) {
    const moves = [-step, step].flatMap((d) => [
      { middle: d, bow: 0, tilt: 0 },
      { middle: 0, bow: d / width, tilt: 0 },
      { middle: -d / 2, bow: d / width, tilt: 0 },
      { middle: 0, bow: 0, tilt: d / width },
    ])
    for (let turn = 0; turn < 8; turn++) {
      const before = top
      for (const move of moves) {
        const next = {
          middle: curve.middle + move.middle,
          bow: curve.bow + move.bow,
          tilt: curve.tilt + move.tilt,
        }
        const sum = strength(next)
        if (sum > top) [curve, top] = [next, sum]
      }
      if (top === before) break
    }
  }
  return curve
}

function stripsOf(
  picture: Picture,
  trunk: readonly OutlineRow[],
  { from, to, hidden }: Search,
  width: number,
): Strip[] {
  const half = Math.max(1, Math.round((width / STRIPS) * 0.35))
  return Array.from({ length: STRIPS }, (_, k) => {
    const across = (k / (STRIPS - 1) - 0.5) * (1 - 2 * OUTER_SHARE)
    const grey: number[] = []
    let behindCard = false
    for (let y = from; y < to; y++) {
      const row = rowAt(trunk, y)
      const x = row ? (row.left + row.right) / 2 + across * (row.right - row.left) : 0
      behindCard ||= within(x, hidden, half)
      let sum = 0
      for (let dx = -half; dx <= half; dx++) sum += luma(picture, Math.floor(x) + dx, y)
      grey.push(sum / (2 * half + 1))
    }
    return { across, grey, behindCard }
  })
}

const within = (x: number, hidden: Hidden | undefined, half: number): boolean =>
  hidden !== undefined && x > hidden.left - half && x < hidden.right + half

function lineOf({ grey, behindCard }: Strip, reach: number, { from, hidden }: Search): Line {
  return behindCard && hidden
    ? besideCard(grey, reach, from, hidden)
    : grey.map((_, k) => ridgeAt(grey, k, k - reach, k + reach))
}

/** The rim of a card blurs the row above it; a slit of cloth narrower than this does not show. px. */
const [RIM_BLUR, LEAST_SLIT] = [1, 2]

/**
 * A strip that a card covers in part: rows it hides, or whose neighbours at `reach` it hides, say
 * nothing. Of a row close above its rim the cloth that still shows in between is the neighbour.
 */
function besideCard(
  grey: readonly number[],
  reach: number,
  from: number,
  { top, bottom }: Hidden,
): Line {
  const rim = Math.floor(top) - from - RIM_BLUR
  return grey.map((_, k) => {
    if (from + k - reach > bottom) return ridgeAt(grey, k, k - reach, k + reach)
    if (rim - k < LEAST_SLIT) return undefined
    return ridgeAt(grey, k, k - reach, Math.min(k + reach, rim))
  })
}

/** Triangle-weighted mean over `reach` rows to each side. */
function softened(line: Line, reach: number): (number | undefined)[] {
  return line.map((own, k) => {
    if (own === undefined) return undefined
    let [sum, weights] = [0, 0]
    for (let d = -reach; d <= reach; d++) {
      const weight = reach + 1 - Math.abs(d)
      sum += weight * (line[k + d] ?? 0)
      weights += weight
    }
    return sum / weights
  })
}

/** How far a row stands out from BOTH its neighbours, signed; 0 when it lies between them. */
function ridgeAt(grey: readonly number[], k: number, up: number, down: number): number {
  const [value, above, below] = [grey[k] ?? 0, grey[up], grey[down]]
  if (above === undefined || below === undefined) return 0
  const [a, b] = [value - above, value - below]
  return a > 0 && b > 0 ? Math.min(a, b) : a < 0 && b < 0 ? Math.max(a, b) : 0
}

/** Brightness of a pixel, ITU-R BT.601 weights. */
function luma({ data, width }: Picture, x: number, y: number): number {
  const k = (y * width + x) * 4
  return 0.299 * (data[k] ?? 0) + 0.587 * (data[k + 1] ?? 0) + 0.114 * (data[k + 2] ?? 0)
}

/**
 * The trunk's edge beside an arm that the mask joins to it: the wall may still show between them, and
 * bare skin or a crease of shade bounds the cloth where it does not. The edge is the smoothest way
 * from row to row along which the colour changes, with her own cloth on the inner side of it; the
 * best of all ways by dynamic programming (Viterbi's, any textbook). px, y down.
 */
import type { Picture } from './picture.ts'

/** An edge moves by at most this many px from one row to the next: 45 degrees out of plumb. */
const STEEPEST = 1
/** What a change of direction by one px a row costs, in grey levels of edge. From trial. */
const BEND_COST = 60
/** Search to each side of where the edge was last seen, as a share of the trunk's width. */
const REACH = 0.16
/** Rows beside the arm, up to the armpit, as a share of the trunk's width. */
const ROWS = 0.5
/** An edge is worth at most this: a border of cloth and wall is no truer than one of cloth and skin. */
const CLEAR = 60
/** Less change than this, over as many rows, is no edge (255 levels, three channels together). */
const [FAINT, FAINT_ROWS] = [12, 3]
/** Colour of the inner side against the cloth below: shade moves it by about this, another thing by more. */
const OWN_COLOUR = 45
/** Her cloth is looked at from this far inside the edge, px, over this many rows. */
const [INSIDE, BELOW] = [3, 8]

type Colour = readonly [number, number, number]

/**
 * The edge row by row beyond `from`, in steps of `step`, as far as it can be followed.
 * @param edge x of the edge by index of the row; row k lies at y = first + k
 * @param outward 1 when the arm lies to the right of the edge
 */
export function edgeBesideArm(
  picture: Picture,
  edge: readonly number[],
  { first, from, step, width, outward }: Search,
): readonly number[] {
  const own = clothAt(picture, edge, first, from, step, outward)
  const begin = Math.round(edge[from] ?? 0)
  const reach = Math.max(4, Math.round(REACH * width))
  const strengths: number[][] = []
  for (let k = from + step; k >= 0 && k < edge.length && strengths.length < ROWS * width; k += step)
    strengths.push(strengthsOf(picture, first + k, begin - reach, 2 * reach + 1, own, outward))
  const start = { at: reach, slope: slopeAt(edge, from, step) }
  const way = bestWay(strengths, start)
  const end = lastClear(way.map((at, row) => strengths[row]?.[at] ?? 0))
  const seen = way
    .slice(0, end)
    .map((at, row) => sharpest(picture, begin - reach + at, first + from + step * (row + 1)))
  return calm(seen)
}
export interface Search {
  readonly first: number
  readonly from: number
  readonly step: 1 | -1
  readonly width: number
  readonly outward: 1 | -1
}

/** Mean colour just inside the edge over the rows before `from`. */
function clothAt(
  picture: Picture,
  edge: readonly number[],
  first: number,
  from: number,
  step: number,
  outward: number,
): Colour {
  const sum: [number, number, number] = [0, 0, 0]
  for (let n = 0; n < BELOW; n++) {
    const k = from - step * n
    const x = Math.round((edge[k] ?? 0) - outward * INSIDE)
    for (let c = 0; c < 3; c++) sum[c] = (sum[c] ?? 0) + channel(picture, x, first + k, c) / BELOW
  }
  return sum
}

/** px a row over the rows before `from`, within what an edge may move. */
function slopeAt(edge: readonly number[], from: number, step: number): number {
  const [a, b] = [edge[from - step * BELOW], edge[from]]
  const slope = a === undefined || b === undefined ? 0 : (b - a) / BELOW
  return Math.max(-STEEPEST, Math.min(STEEPEST, Math.round(slope)))
}

/** For each place of a row how much of an edge of her cloth lies there. */
function strengthsOf(
  picture: Picture,
  y: number,
  left: number,
  count: number,
  own: Colour,
  outward: number,
): number[] {
  return Array.from({ length: count }, (_, k) => {
    const [inner, outer] = [
      colourAt(picture, left + k, y, -outward),
      colourAt(picture, left + k, y, outward),
    ]
    const [near, far] = [apart(inner, own), apart(outer, own)]
    const change = Math.min(apart(inner, outer), Math.max(0, far - near))
    return Math.min(CLEAR, change) * Math.exp(-((near / OWN_COLOUR) ** 2))
  })
}

/** Mean over two pixels to one side of the line left of pixel x, and the rows above and below. */
function colourAt(picture: Picture, x: number, y: number, side: number): Colour {
  const mean: [number, number, number] = [0, 0, 0]
  const columns = side > 0 ? [x, x + 1] : [x - 1, x - 2]
  for (const column of columns)
    for (let dy = -1; dy <= 1; dy++)
      for (let c = 0; c < 3; c++) mean[c] = (mean[c] ?? 0) + channel(picture, column, y + dy, c) / 6
  return mean
}

const channel = ({ data, width, height }: Picture, x: number, y: number, c: number): number =>
  data[
    (Math.max(0, Math.min(height - 1, y)) * width + Math.max(0, Math.min(width - 1, x))) * 4 + c
  ] ?? 0

const apart = (a: Colour, b: Colour): number => Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2])

/** Index of the edge in each row: most edge for the least turning. */
function bestWay(
  strengths: readonly (readonly number[])[],
  start: { readonly at: number; readonly slope: number },
): number[] {
  const count = strengths[0]?.length ?? 0
  const slopes = 2 * STEEPEST + 1
  const state = (at: number, slope: number): number => at * slopes + slope + STEEPEST
  let sums = new Float64Array(count * slopes).fill(-Infinity)
  sums[state(start.at, start.slope)] = 0
  const came: Int32Array[] = []
  for (const row of strengths) {
    const next = new Float64Array(count * slopes).fill(-Infinity)
    const from = new Int32Array(count * slopes).fill(-1)
    for (let at = 0; at < count; at++)
      for (let slope = -STEEPEST; slope <= STEEPEST; slope++) {
        const before = at - slope
        if (before < 0 || before >= count) continue
        for (let turned = -STEEPEST; turned <= STEEPEST; turned++) {
          const sum =
            (sums[state(before, turned)] ?? -Infinity) -
            BEND_COST * Math.abs(slope - turned) +
            (row[at] ?? 0)
          if (sum <= (next[state(at, slope)] ?? 0)) continue
          next[state(at, slope)] = sum
          from[state(at, slope)] = state(before, turned)
        }
      }
    sums = next
    came.push(from)
  }
  let best = sums.indexOf(Math.max(...sums))
  const way: number[] = []
  for (const from of came.reverse()) {
    way.push(Math.floor(best / slopes))
    best = from[best] ?? 0
  }
  return way.reverse()
}

/** How many rows are clear before the edge fades for good. */
function lastClear(values: readonly number[]): number {
  let faint = 0
  for (const [k, value] of values.entries()) {
    faint = value < FAINT ? faint + 1 : 0
    if (faint === FAINT_ROWS) return k + 1 - FAINT_ROWS
  }
  return values.length - faint
}

/** Where between the pixels the colour changes most, x or the line beside it: parabola through three. */
function sharpest(picture: Picture, x: number, y: number): number {
  const change = (at: number): number =>
    apart(colourAt(picture, at, y, -1), colourAt(picture, at, y, 1))
  const near = [x - 1, x, x + 1].sort((a, b) => change(b) - change(a))
  const best = near[0] ?? x
  const [a, b, c] = [change(best - 1), change(best), change(best + 1)]
  const bend = a - 2 * b + c
  return best + (bend < 0 ? Math.max(-0.5, Math.min(0.5, (a - c) / (2 * bend))) : 0)
}

/** Median over five rows, so that one speck moves nothing. */
function calm(xs: readonly number[]): number[] {
  return xs.map((own, k) => {
    const near = xs.slice(Math.max(0, k - 2), k + 3).sort((a, b) => a - b)
    return near.length < 5 ? own : (near[2] ?? own)
  })
}

/**
 * Takes the arms off an outline seen from front or back. Below the armpits an arm hangs free and
 * is no part of the run; where mask or body join arm and trunk, the edge jumps outward from one
 * row to the next. From there the trunk's edge is followed in the picture as far as it shows
 * beside the arm, and carried on beyond.
 */
import { edgeBesideArm } from './edge-beside-arm.ts'
import type { Picture } from './picture.ts'
import type { OutlineRow } from './reading.ts'

/** An edge that moves by more than this share of the trunk's width within a row is no trunk. */
const JUMP = 0.035
/** The edge is carried on from this share of the trunk's width, taken as rows before the jump. */
const FIT_ROWS = 0.16
/** The rows nearest a jump are already drawn towards the arm by the coarse mask. */
const SKIP_ROWS = 0.04
/** Going up, a trunk's lean is lost over this share of its width: at the armpits it is plumb. */
const PLUMB_WITHIN = 0.06

type Side = 'left' | 'right'

export interface Trunk {
  readonly rows: readonly OutlineRow[]
  /** First row (going down) whose edge was seen, per side; above it the edge is carried on. */
  readonly seenFrom: { readonly left: number; readonly right: number }
  /** Last row whose edge was seen; below it a hand or an arm is joined to the hip. */
  readonly seenTo: { readonly left: number; readonly right: number }
}

/**
 * @param start row between armpits and hips where the trunk stands alone, usually the waist
 * @param picture without it the edges are carried on from where the outline loses them
 */
export function withoutArms(
  outline: readonly OutlineRow[],
  start: number,
  picture?: Picture,
): Trunk {
  const first = outline[0]?.y ?? 0
  const begin = Math.max(0, Math.min(outline.length - 1, Math.round(start - first)))
  const width = (outline[begin]?.right ?? 0) - (outline[begin]?.left ?? 0)
  const trunkEdge = (side: Side): Edge => {
    const outward = side === 'left' ? -1 : 1
    const xs = outline.map((row) => row[side])
    const top = seenUpTo(xs, begin, -1, width, outward)
    const bottom = seenUpTo(xs, begin, 1, width, outward)
    const search = { first, from: top, step: -1, width, outward } as const
    const beside = picture && top > 0 ? edgeBesideArm(picture, xs, search) : []
    beside.forEach((x, k) => (xs[top - 1 - k] = x))
    const from = top - beside.length
    carryOn(xs, from, -1, width)
    carryOn(xs, bottom, 1, width)
    return { xs, from: first + from, to: first + bottom }
  }
  const [left, right] = [trunkEdge('left'), trunkEdge('right')]
  const rows = outline.map((row, k) => ({
    y: row.y,
    left: left.xs[k] ?? row.left,
    right: right.xs[k] ?? row.right,
  }))
  return {
    rows,
    seenFrom: { left: left.from, right: right.from },
    seenTo: { left: left.to, right: right.to },
  }
}

interface Edge {
  readonly xs: readonly number[]
  readonly from: number
  readonly to: number
}

/** Index of the last row before the edge jumps outward; the end of the outline when it never does. */
function seenUpTo(
  xs: readonly number[],
  begin: number,
  step: 1 | -1,
  width: number,
  outward: 1 | -1,
): number {
  let k = begin
  while (k + step >= 0 && k + step < xs.length) {
    const move = ((xs[k + step] ?? 0) - (xs[k] ?? 0)) * outward
    if (move > JUMP * width) return k - step * Math.round(SKIP_ROWS * width)
    k += step
  }
  return k
}

/** Replaces everything beyond row `seen` by where the rows before it lead. */
function carryOn(xs: number[], seen: number, step: 1 | -1, width: number): void {
  const count = Math.max(4, Math.round(FIT_ROWS * width))
  const from = Array.from({ length: count }, (_, n) => seen - step * n)
  const line = straightThrough(from.map((row) => [row, xs[row] ?? 0]))
  const fade = PLUMB_WITHIN * width
  for (let row = seen + step; row >= 0 && row < xs.length; row += step) {
    const away = Math.abs(row - seen)
    const along = step === 1 ? away : fade * (1 - Math.exp(-away / fade))
    xs[row] = line(seen + step * along)
  }
}

/** Least-squares line y(x). */
export function straightThrough(pairs: readonly (readonly [number, number])[]) {
  const n = pairs.length
  const mx = pairs.reduce((sum, [x]) => sum + x, 0) / n
  const my = pairs.reduce((sum, [, y]) => sum + y, 0) / n
  const sxx = pairs.reduce((sum, [x]) => sum + (x - mx) ** 2, 0)
  const sxy = pairs.reduce((sum, [x, y]) => sum + (x - mx) * (y - my), 0)
  const slope = sxx === 0 ? 0 : sxy / sxx
  return (x: number): number => my + slope * (x - mx)
}

/**
 * Takes the arms off an outline seen from front or back. Below the armpits an arm hangs free and
 * is no part of the run; where mask or body join arm and trunk, the edge jumps outward from one
 * row to the next. From there the trunk's own edge is carried on straight.
 */
import type { OutlineRow } from './reading.ts'

/** An edge that moves by more than this share of the trunk's width within a row is no trunk. */
const JUMP = 0.035
/** The edge is carried on from this share of the trunk's width, taken as rows before the jump. */
const FIT_ROWS = 0.16
/** The rows nearest a jump are already drawn towards the arm by the coarse mask. */
const SKIP_ROWS = 0.04

type Side = 'left' | 'right'

export interface Trunk {
  readonly rows: readonly OutlineRow[]
  /** First row (going down) whose edge was seen, per side; above it the edge is carried on. */
  readonly seenFrom: { readonly left: number; readonly right: number }
  /** Last row whose edge was seen; below it a hand or an arm is joined to the hip. */
  readonly seenTo: { readonly left: number; readonly right: number }
}

/** `start` is a row between armpits and hips where the trunk stands alone, usually the waist. */
export function withoutArms(outline: readonly OutlineRow[], start: number): Trunk {
  const first = outline[0]?.y ?? 0
  const begin = Math.max(0, Math.min(outline.length - 1, Math.round(start - first)))
  const width = (outline[begin]?.right ?? 0) - (outline[begin]?.left ?? 0)
  const edges = { left: outline.map((row) => row.left), right: outline.map((row) => row.right) }
  const reach = { left: [0, 0], right: [0, 0] }
  for (const side of ['left', 'right'] as const)
    reach[side] = [
      carry(edges[side], begin, -1, width, side),
      carry(edges[side], begin, 1, width, side),
    ]
  const rows = outline.map((row, k) => ({
    y: row.y,
    left: edges.left[k] ?? row.left,
    right: edges.right[k] ?? row.right,
  }))
  const at = (side: Side, end: 0 | 1): number => first + (reach[side][end] ?? 0)
  return {
    rows,
    seenFrom: { left: at('left', 0), right: at('right', 0) },
    seenTo: { left: at('left', 1), right: at('right', 1) },
  }
}

/** Walks from `begin`; replaces everything beyond a jump by the line of the rows before it. */
function carry(edge: number[], begin: number, step: 1 | -1, width: number, side: Side): number {
  const outward = side === 'left' ? -1 : 1
  let k = begin
  while (k + step >= 0 && k + step < edge.length) {
    const move = ((edge[k + step] ?? 0) - (edge[k] ?? 0)) * outward
    if (move > JUMP * width) break
    k += step
  }
  if (k + step < 0 || k + step >= edge.length) return k
  const seen = k - step * Math.round(SKIP_ROWS * width)
  const count = Math.max(4, Math.round(FIT_ROWS * width))
  const from = Array.from({ length: count }, (_, n) => seen - step * n)
  const line = straightThrough(from.map((row) => [row, edge[row] ?? 0]))
  for (let row = seen + step; row >= 0 && row < edge.length; row += step) edge[row] = line(row)
  return seen
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

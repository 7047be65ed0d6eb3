/**
 * How much every two pieces overlap as they lie, and what that weighs. Overlap is the depth of the
 * no-fit region, the least move that parts the two, times the size of the pair; its weight grows
 * while the two stay in conflict and fades when they are clear, so the search is driven out of
 * places where it would rest.
 * Sources: guided local search for overlaps, Egeblad, Nielsen and Odgaard 2007, "Fast neighborhood
 * search for two- and three-dimensional nesting problems", EJOR 183, and Umetani et al. 2009,
 * "Solving the irregular strip packing problem via guided local search for overlap minimization",
 * ITOR 16; growth by share of the worst overlap and fading, Gardeyn, Vanden Berghe and Wauters
 * 2025, arXiv 2509.13329.
 */
import type { Board } from './board.ts'

/** A weight grows by this factor for the worst overlap and by the lesser one for the slightest. */
const MOST_GROWTH = 2
const LEAST_GROWTH = 1.2
/** Of a pair that is clear again, until it is 1. Figures of all three: arXiv 2509.13329. */
const FADING = 0.95
/** Weights stop growing here: past it they would run out of numbers, and every place weigh alike. */
const MOST_WEIGHT = 1e150

export class Overlaps {
  readonly board: Board
  /** How often a place was tried; the measure of work, the same on every machine. */
  tries = 0
  /** count × count, symmetric: depth × size of the pair as it lies, its weight, weight × size. */
  private readonly overlap: Float64Array
  private readonly weight: Float64Array
  private readonly pull: Float64Array
  private readonly size: Float64Array

  constructor(board: Board) {
    this.board = board
    const { count, area } = board
    const cells = count * count
    this.overlap = new Float64Array(cells)
    this.weight = new Float64Array(cells).fill(1)
    this.size = new Float64Array(cells)
    const most = Math.max(...area)
    // Large pieces are kept apart first: the root of the mean side of the pair, arXiv 2509.13329.
    for (let i = 0; i < count; i++)
      for (let j = 0; j < count; j++)
        this.size[i * count + j] = Math.pow((area[i]! * area[j]!) / (most * most), 1 / 4)
    this.pull = this.size.slice()
  }

  forgetWeights(): void {
    this.weight.fill(1)
    this.pull.set(this.size)
  }

  /**
   * Weighted overlap of `piece` if it lay so; once it is known to be `bound` or more the sum is
   * left off there. Infinite where there is no place (NaN).
   */
  weighted(piece: number, stance: number, x: number, y: number, bound: number): number {
    this.tries++
    if (x !== x || y !== y) return Infinity
    const { board, pull } = this
    const { count, table, form, box, x: xs, y: ys } = board
    const own = board.formOf[stance]!
    const left = x - table.halfLength[own]!
    const right = x + table.halfLength[own]!
    const low = y - table.halfWidth[own]!
    const high = y + table.halfWidth[own]!
    const row = piece * count
    let sum = 0
    for (let j = 0, k = 0; j < count; j++, k += 4) {
      if (left >= box[k + 1]! || right <= box[k]!) continue
      if (low >= box[k + 3]! || high <= box[k + 2]! || j === piece) continue
      const depth = table.depth(form[j]!, own, x - xs[j]!, y - ys[j]!)
      if (depth > 0) {
        sum += pull[row + j]! * depth
        if (sum >= bound) return sum
      }
    }
    return sum
  }

  /** Measures the overlaps of one piece anew, after it has moved. */
  measure(piece: number): void {
    const { board, overlap, size } = this
    const { count, table, form, x, y } = board
    const own = form[piece]!
    for (let j = 0; j < count; j++) {
      if (j === piece) continue
      const depth = table.depth(form[j]!, own, x[piece]! - x[j]!, y[piece]! - y[j]!)
      const at = piece * count + j
      overlap[at] = depth * size[at]!
      overlap[j * count + piece] = overlap[at]
    }
  }

  /** Measures everything anew; answers the whole. */
  measureAll(): number {
    for (let i = 0; i < this.board.count; i++) this.measure(i)
    return this.whole()
  }

  /** The sum over all pairs, without weights; 0 when the layout is sound. */
  whole(): number {
    let twice = 0
    for (let k = 0; k < this.overlap.length; k++) twice += this.overlap[k]!
    return twice / 2
  }

  inConflict(piece: number): boolean {
    const { count } = this.board
    const end = (piece + 1) * count
    for (let k = piece * count; k < end; k++) if (this.overlap[k]! > 0) return true
    return false
  }

  /** Every weight takes account of its pair as it lies now. */
  weigh(): void {
    const { overlap, weight, pull, size } = this
    let worst = 0
    for (let k = 0; k < overlap.length; k++) if (overlap[k]! > worst) worst = overlap[k]!
    if (worst === 0) return
    for (let k = 0; k < overlap.length; k++) {
      const share = overlap[k]! / worst
      const w = weight[k]!
      if (share > 0)
        weight[k] = Math.min(MOST_WEIGHT, w * (LEAST_GROWTH + (MOST_GROWTH - LEAST_GROWTH) * share))
      else if (w > 1) weight[k] = Math.max(1, w * FADING)
      else continue
      pull[k] = weight[k]! * size[k]!
    }
  }
}

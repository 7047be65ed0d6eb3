/**
 * Looks for a place of one piece with less weighted overlap: places thrown at random over the
 * whole strip and round the present one, the best few of them walked downhill, the very best to
 * the end. The piece is put there if it is better off.
 * Source of the plan: Gardeyn, Vanden Berghe and Wauters 2025, arXiv 2509.13329; the depth that is
 * walked down is exact here.
 */
import { allowedX, allowedY, put, type Board } from './board.ts'
import type { Overlaps } from './overlaps.ts'
import type { Chance } from './seeded.ts'

/** Random places over the strip and near the present one; measured with `bench:layout`. */
const FAR = 30
const NEAR = 15
/** So many of the best are walked downhill. */
const KEPT = 3
/** First and last step of the two walks, shares of the smaller side of the piece. */
const WALK = [0.25, 0.02] as const
const LAST_WALK = [0.01, 0.0005] as const
const LONGER = 1.1
const SHORTER = 0.5

export class PlaceSearch {
  private readonly overlaps: Overlaps
  private readonly board: Board
  private readonly chance: Chance
  /** The best places found, best first: weighted overlap, stance, place. */
  private found = 0
  private readonly loss = new Float64Array(KEPT)
  private readonly stance = new Int32Array(KEPT)
  private readonly x = new Float64Array(KEPT)
  private readonly y = new Float64Array(KEPT)
  /** Smaller side of every form. */
  private readonly side: Float64Array

  constructor(overlaps: Overlaps, chance: Chance) {
    this.overlaps = overlaps
    this.board = overlaps.board
    this.chance = chance
    const { halfLength, halfWidth } = this.board.table
    this.side = halfLength.map((h, f) => 2 * Math.min(h, halfWidth[f]!))
  }

  /** Puts the piece at a better place, if one is found. */
  improve(piece: number): boolean {
    const { board } = this
    const own = board.stance[piece]!
    const now = this.overlaps.weighted(piece, own, board.x[piece]!, board.y[piece]!, Infinity)
    if (now === 0) return false
    this.found = 0
    this.consider(piece, own, board.x[piece]!, board.y[piece]!)
    this.throwNear(piece, own)
    this.throwFar(piece)
    const side = this.side[board.formOf[own]!]!
    let best = 0
    for (let k = 0; k < this.found; k++) {
      this.walk(piece, k, side * WALK[0], side * WALK[1])
      if (this.loss[k]! < this.loss[best]!) best = k
    }
    this.walk(piece, best, side * LAST_WALK[0], side * LAST_WALK[1])
    if (this.loss[best]! >= now) return false
    put(board, piece, this.stance[best]!, this.x[best]!, this.y[best]!)
    this.overlaps.measure(piece)
    return true
  }

  private throwNear(piece: number, own: number): void {
    const { board, chance } = this
    const stances = board.stances[piece]!
    const form = board.formOf[own]!
    const [wide, high] = [2 * board.table.halfLength[form]!, this.side[form]!]
    for (let k = 0; k < NEAR; k++) {
      const s = chance.next() < 0.5 ? own : stances[chance.below(stances.length)]!
      const x = allowedX(board, s, board.x[piece]! + (chance.next() - 0.5) * wide)
      const y = allowedY(board, s, board.y[piece]! + (chance.next() - 0.5) * high)
      this.consider(piece, s, x, y)
    }
  }

  private throwFar(piece: number): void {
    const { board, chance } = this
    const stances = board.stances[piece]!
    for (let k = 0; k < FAR; k++) {
      const s = stances[chance.below(stances.length)]!
      const [reach, low] = [board.reach[s]!, board.low[s]!]
      const x = allowedX(board, s, reach + chance.next() * (board.length - 2 * reach))
      const y = allowedY(board, s, low + chance.next() * (board.high[s]! - low))
      this.consider(piece, s, x, y)
    }
  }

  private consider(piece: number, stance: number, x: number, y: number): void {
    const { loss } = this
    const bound = this.found < KEPT ? Infinity : loss[KEPT - 1]!
    const here = this.overlaps.weighted(piece, stance, x, y, bound)
    if (here >= bound) return
    let k = this.found < KEPT ? this.found++ : KEPT - 1
    for (; k > 0 && loss[k - 1]! > here; k--) {
      loss[k] = loss[k - 1]!
      this.stance[k] = this.stance[k - 1]!
      this.x[k] = this.x[k - 1]!
      this.y[k] = this.y[k - 1]!
    }
    loss[k] = here
    this.stance[k] = stance
    this.x[k] = x
    this.y[k] = y
  }

  /** Downhill by steps along, across and aslant, longer after a gain and shorter after none. */
  private walk(piece: number, k: number, first: number, last: number): void {
    const { board, chance, overlaps } = this
    const s = this.stance[k]!
    let x = this.x[k]!
    let y = this.y[k]!
    let loss = this.loss[k]!
    let stepX = first
    let stepY = first
    while (loss > 0 && (stepX > last || stepY > last)) {
      const way = chance.below(3)
      const ux = way === 1 ? 0 : stepX
      const uy = way === 0 ? 0 : way === 2 && chance.next() < 0.5 ? -stepY : stepY
      let better = false
      for (let sign = 1; sign >= -1 && !better; sign -= 2) {
        const nx = allowedX(board, s, x + sign * ux)
        const ny = allowedY(board, s, y + sign * uy)
        const there = overlaps.weighted(piece, s, nx, ny, loss)
        if (there < loss) {
          x = nx
          y = ny
          loss = there
          better = true
        }
      }
      // A step aslant counts for half a step of either kind.
      const by = better ? LONGER : way === 2 ? Math.SQRT1_2 : SHORTER
      if (way !== 1) stepX *= by
      if (way !== 0) stepY *= by
    }
    this.x[k] = x
    this.y[k] = y
    this.loss[k] = loss
  }
}

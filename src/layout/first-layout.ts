/**
 * A first layout, sound and quick: pieces one by one, the largest first, each as far to the start
 * of the cloth as it goes. For a number of heights across the cloth the leftmost free place along
 * that line is exact: what the no-fit regions leave of it.
 * Source: bottom-left fill, Baker, Coffman and Rivest 1980, "Orthogonal packings in two
 * dimensions", SIAM Journal on Computing 9, with no-fit regions in place of rectangles.
 */
import { allowedX, allowedY, put, type Board } from './board.ts'
import type { Chance } from './seeded.ts'

/** Heights tried for every stance of a piece. */
const HEIGHTS = 60

/** Places every piece in `order`; the length of the board becomes what is used. */
export function firstLayout(b: Board, order: readonly number[], chance: Chance): void {
  const down: number[] = []
  b.length = 0
  let used = 0
  for (const piece of order) {
    // Room enough behind everything, so that a place is always found.
    b.length =
      used + 4 * Math.max(...Array.from(b.stances[piece]!, (s) => b.reach[s]! + b.stepX[s]!))
    let [bestEnd, bestX, bestY, best] = [Infinity, 0, 0, -1]
    for (const s of b.stances[piece]!) {
      for (let k = 0; k < HEIGHTS; k++) {
        const low = b.low[s]!
        const y = allowedY(b, s, low + (k < 2 ? k : chance.next()) * (b.high[s]! - low))
        if (Number.isNaN(y)) break
        const x = leftmost(b, down, s, y)
        const end = x + b.reach[s]!
        if (end < bestEnd - 1e-9 || (end < bestEnd + 1e-9 && y < bestY))
          [bestEnd, bestX, bestY, best] = [end, x, y, s]
        if (low === b.high[s]) break
      }
    }
    if (best < 0) throw new Error(`firstLayout: piece ${piece} has no place across the cloth`)
    put(b, piece, best, bestX, bestY)
    down.push(piece)
    used = Math.max(used, bestEnd)
  }
  b.length = used
}

/** Leftmost free x of stance `s` on the line at height y among the pieces already down. */
function leftmost(b: Board, down: readonly number[], s: number, y: number): number {
  const taken: [number, number][] = []
  const form = b.formOf[s]!
  for (const j of down)
    for (const [from, to] of b.table.taken(b.form[j]!, form, y - b.y[j]!))
      taken.push([from + b.x[j]!, to + b.x[j]!])
  taken.sort((p, q) => p[0] - q[0])
  const step = b.stepX[s]!
  const onward = (v: number): number =>
    step === 0 ? v : b.offX[s]! + step * Math.ceil((v - b.offX[s]!) / step - 1e-9)
  let x = onward(b.reach[s]!)
  for (const [from, to] of taken) if (from < x && x < to) x = onward(to)
  return Number.isNaN(allowedX(b, s, x)) ? Infinity : x
}

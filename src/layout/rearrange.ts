/** Changes made to a whole board between two separations. */
import { allowedX, allowedY, put, type Board } from './board.ts'
import type { Chance } from './seeded.ts'

/** No layout is shorter: the area over the width, and the longest piece at its first place. */
export function leastLength(b: Board): number {
  const area = b.area.reduce((sum, a) => sum + a, 0)
  const ends = b.stances.map((list) => Math.min(...Array.from(list, (s) => firstEnd(b, s))))
  return Math.max(area / b.strip.width, ...ends)
}

/** Where a stance ends that lies as near the start of the cloth as its lattice lets it. */
function firstEnd(b: Board, stance: number): number {
  const [reach, step, off] = [b.reach[stance]!, b.stepX[stance]!, b.offX[stance]!]
  return (step === 0 ? reach : off + step * Math.ceil((reach - off) / step - 1e-9)) + reach
}

/** Makes the board `length` long; what lay beyond is drawn in, in another stance if it must. */
export function shortenTo(b: Board, length: number): void {
  b.length = length
  for (let i = 0; i < b.count; i++) {
    const own = b.stance[i]!
    const stance = Number.isNaN(allowedX(b, own, b.x[i]!))
      ? b.stances[i]!.find((s) => !Number.isNaN(allowedX(b, s, b.x[i]!)))!
      : own
    put(b, i, stance, allowedX(b, stance, b.x[i]!), allowedY(b, stance, b.y[i]!))
  }
}

/** The pieces that make up this share of the area are the large ones. Measured, `bench:layout`. */
const LARGE = 0.75
/** Pieces nearer than this in area are as good as the same. */
const ALIKE = 0.01
const ATTEMPTS = 50

/** Two large pieces of different size change places. */
export function changeOver(b: Board, chance: Chance): void {
  const order = [...b.area.keys()].sort((i, j) => b.area[j]! - b.area[i]!)
  const whole = b.area.reduce((sum, a) => sum + a, 0)
  let large = 0
  for (let sum = 0; large < b.count && sum < LARGE * whole; large++) sum += b.area[order[large]!]!
  large = Math.min(b.count, Math.max(2, large))
  const i = order[chance.below(large)]!
  for (let k = 0; k < ATTEMPTS; k++) {
    const j = order[chance.below(large)]!
    if (Math.abs(b.area[i]! - b.area[j]!) <= ALIKE * b.area[i]!) continue
    const [x, y] = [b.x[i]!, b.y[i]!]
    putNear(b, i, b.x[j]!, b.y[j]!)
    putNear(b, j, x, y)
    return
  }
}

function putNear(b: Board, piece: number, x: number, y: number): void {
  const s = b.stance[piece]!
  put(b, piece, s, allowedX(b, s, x), allowedY(b, s, y))
}

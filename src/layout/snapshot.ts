/** The state of a board, kept to come back to. */
import { put, type Board } from './board.ts'

export interface Snapshot {
  length: number
  readonly stance: Int32Array
  readonly x: Float64Array
  readonly y: Float64Array
}

export const snapshot = (b: Board): Snapshot => ({
  length: b.length,
  stance: b.stance.slice(),
  x: b.x.slice(),
  y: b.y.slice(),
})

/** Writes the board over an older snapshot. */
export function take(b: Board, into: Snapshot): void {
  into.length = b.length
  into.stance.set(b.stance)
  into.x.set(b.x)
  into.y.set(b.y)
}

export function restore(b: Board, from: Snapshot): void {
  b.length = from.length
  for (let i = 0; i < b.count; i++) put(b, i, from.stance[i]!, from.x[i]!, from.y[i]!)
}

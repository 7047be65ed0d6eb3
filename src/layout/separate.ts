/**
 * Takes a strip on which pieces overlap and moves them until none does, or gives up at the least
 * overlap it came to. Round after round every piece in conflict looks for a better place, then
 * the weights are set anew. When nothing gets better for `patience` rounds it goes back to the
 * best and begins again with the weights it has learnt; after `strikes` such turns in a row
 * without gain it is over.
 * Source: Gardeyn, Vanden Berghe and Wauters 2025, arXiv 2509.13329, section on separation.
 */
import type { Overlaps } from './overlaps.ts'
import type { PlaceSearch } from './place-search.ts'
import { restore, snapshot, take, type Snapshot } from './snapshot.ts'
import { shuffle, type Chance } from './seeded.ts'

export interface Effort {
  readonly patience: number
  readonly strikes: number
}
/** Less than this share gained is no gain. */
const GAIN = 0.02

/** True when the layout is free of overlap; false with the board at the least overlap met. */
export function separate(
  overlaps: Overlaps,
  search: PlaceSearch,
  chance: Chance,
  effort: Effort,
  stop: () => boolean,
): boolean {
  const { board } = overlaps
  const order = new Int32Array(board.count)
  overlaps.forgetWeights()
  let least = overlaps.measureAll()
  if (least === 0) return true
  const best: Snapshot = snapshot(board)
  for (let strike = 0; strike < effort.strikes;) {
    const before = least
    for (let idle = 0; idle < effort.patience;) {
      const whole = sweep(overlaps, search, chance, order)
      if (whole === 0) return true
      idle = whole < (1 - GAIN) * least ? 0 : idle + 1
      if (whole < least) {
        least = whole
        take(board, best)
      }
      overlaps.weigh()
      if (stop()) {
        strike = effort.strikes
        break
      }
    }
    strike = least < (1 - GAIN) * before ? 0 : strike + 1
    restore(board, best)
    overlaps.measureAll()
    if (stop()) return false
  }
  return false
}

/** Every piece in conflict once, in random order; answers the overlap left. */
function sweep(overlaps: Overlaps, search: PlaceSearch, chance: Chance, order: Int32Array): number {
  let count = 0
  for (let i = 0; i < overlaps.board.count; i++) if (overlaps.inConflict(i)) order[count++] = i
  shuffle(order, count, chance)
  for (let k = 0; k < count; k++) if (overlaps.inConflict(order[k]!)) search.improve(order[k]!)
  return overlaps.whole()
}

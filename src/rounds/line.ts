/** Which round went on from which, where a garment has branches. */
import type { Round } from './round.ts'

/** One line of rounds that went on from one another, oldest first: what a branch left aside is not in it. */
export function lineOf(rounds: readonly Round[], last: Round): readonly Round[] {
  const line = [last]
  for (let at: Round | undefined = last; at;) {
    const { from, number }: Round = at
    at = rounds.find((r) => (from === undefined ? r.number === number - 1 : r.id === from))
    if (at) line.unshift(at)
  }
  return line
}

/** The muslin that `last` rests on, or is: the newest one on paper in its line. */
export const sewnIn = (rounds: readonly Round[], last: Round): Round | undefined =>
  lineOf(rounds, last).findLast((r) => r.printed !== undefined)

/** Never put on paper, and another round was begun since: it stays as it was left. */
export const isAside = (rounds: readonly Round[], round: Round): boolean =>
  !round.printed && rounds.some((r) => r.garmentId === round.garmentId && r.number > round.number)

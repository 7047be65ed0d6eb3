/** Figures of the planted bench, per kind and together. */
import type { Played, Round } from './play.ts'

export interface Figures {
  readonly n: number
  /** Median share of the planted error that is left after one and after two rounds, percent. */
  readonly left1: number
  readonly left2: number
  /** Nine in ten leave no more than this, percent. */
  readonly left2p90: number
  /** Share of cases that ended worse than they began, percent, and the worst of them, mm. */
  readonly worse: number
  readonly worstBy: number
  /** Worse by more than the ± of the reading. */
  readonly beyondNoise: number
  /** Share of cases in which another length ended worse by more than 6 mm, percent. */
  readonly elsewhere: number
}
export interface NothingFigures {
  readonly n: number
  /** No edit at all in either round, percent. */
  readonly noEdit: number
}
export interface CauseFigures {
  readonly n: number
  /** The cause put first is a true one, percent. */
  readonly first: number
  readonly asked: number
}

const rounded = (value: number): number => Math.round(value * 10) / 10
const percent = (part: number, of: number): number => rounded(of === 0 ? NaN : (100 * part) / of)
export function quantile(values: readonly number[], share: number): number {
  const row = [...values].sort((a, b) => a - b)
  const at = (row.length - 1) * share
  const [low, high] = [row[Math.floor(at)], row[Math.ceil(at)]]
  return low === undefined || high === undefined ? NaN : low + (high - low) * (at - Math.floor(at))
}

/** Nothing is counted as worse within the pencil line, mm. */
const PENCIL = 0.5
/** Elsewhere a change under the least that is seen on a level line does not count, mm. */
const SEEN_ELSEWHERE = 6

const leftIn = (p: Played, round: number): number => p.rounds[round]?.left ?? NaN
const worseBy = (p: Played): number => Math.max(...p.rounds.map(({ left }) => left)) - p.before

export function figures(played: readonly Played[]): Figures {
  const planted = played.filter(({ of }) => !of.nothing)
  const share = (round: number): number[] => planted.map((p) => (100 * leftIn(p, round)) / p.before)
  const worse = planted.map(worseBy)
  const grown = planted.map((p) => p.rounds[p.rounds.length - 1]?.elsewhere?.worse ?? 0)
  return {
    n: planted.length,
    left1: rounded(quantile(share(0), 0.5)),
    left2: rounded(quantile(share(1), 0.5)),
    left2p90: rounded(quantile(share(1), 0.9)),
    worse: percent(worse.filter((by) => by > PENCIL).length, planted.length),
    worstBy: rounded(Math.max(0, ...worse)),
    beyondNoise: planted.filter((p) => worseBy(p) > p.of.kind.plusMinus).length,
    elsewhere: percent(grown.filter((by) => by > SEEN_ELSEWHERE).length, planted.length),
  }
}

export function nothingFigures(played: readonly Played[]): NothingFigures {
  const right = played.filter(({ of }) => of.nothing)
  const still = right.filter((p) => p.rounds.every(({ edits }) => edits.length === 0))
  return { n: right.length, noEdit: percent(still.length, right.length) }
}

export const rightFirst = ({ first, truth }: Round): boolean =>
  first !== undefined && truth.includes(first)

/** First rounds with a fault: is a true cause put first, and how much was asked for it? */
export function causeFigures(played: readonly Played[]): CauseFigures {
  const firsts = played.filter(({ of }) => !of.nothing).flatMap((p) => p.rounds[0] ?? [])
  const right = firsts.filter(rightFirst)
  const asked = firsts.reduce((sum, r) => sum + r.asked, 0) / firsts.length
  return {
    n: firsts.length,
    first: percent(right.length, firsts.length),
    asked: Math.round(asked * 100) / 100,
  }
}

export function byKind(played: readonly Played[]): Map<string, Played[]> {
  const kinds = new Map<string, Played[]>()
  for (const p of played) kinds.set(p.of.kind.id, [...(kinds.get(p.of.kind.id) ?? []), p])
  return kinds
}

/** Left alone where it should be righted, worse, spoiled elsewhere, or edited without a fault. */
export function wentWrong(p: Played): boolean {
  const last = p.rounds[p.rounds.length - 1]
  if (p.of.nothing) return p.rounds.some(({ edits }) => edits.length > 0)
  return (
    leftIn(p, p.rounds.length - 1) > p.before / 3 ||
    worseBy(p) > PENCIL ||
    (last?.elsewhere?.worse ?? 0) > SEEN_ELSEWHERE
  )
}

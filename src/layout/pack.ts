/**
 * Packs a strip as short as it can in the effort it is given: a first sound layout, then the strip
 * is shortened, the overlaps that makes are separated, and so on. Where separation fails the best
 * failures are kept, one of them is taken up with two large pieces changed over, and it is tried
 * again; the last part of the effort goes into pressing the best layout together by small steps.
 * Sources: overlap minimisation on a shrinking strip, Imamichi, Yagiura and Nagamochi 2009, "An
 * iterated local search algorithm based on nonlinear programming for the irregular strip packing
 * problem", Discrete Optimization 6; exploring and pressing, the pool of failures, Gardeyn, Vanden
 * Berghe and Wauters 2025, arXiv 2509.13329.
 *
 * The same strip, seed and answers of `spent` give the same layout. Every layout told has been
 * proved sound by a second road (`sound.ts`).
 */
import { boardOf, layoutOf, type Board } from './board.ts'
import { firstLayout } from './first-layout.ts'
import { Overlaps } from './overlaps.ts'
import { PlaceSearch } from './place-search.ts'
import { changeOver, leastLength, shortenTo } from './rearrange.ts'
import { seeded, type Chance } from './seeded.ts'
import { separate, type Effort } from './separate.ts'
import { restore, snapshot, take, type Snapshot } from './snapshot.ts'
import { isSound } from './sound.ts'
import type { Layout, Strip } from './strip.ts'

export interface PackOptions {
  readonly seed: number
  /**
   * Asked often: the share of the effort that is spent, 1 or more to stop. It is told how many
   * places have been tried, so that effort can be counted the same on every machine.
   */
  readonly spent: (tries: number) => number
  /** Told every time a shorter layout is found, the first one included. */
  readonly onBetter?: (layout: Layout, tries: number) => void
}

/** Share of the effort that goes into exploring; arXiv 2509.13329. */
const EXPLORING = 0.8
/** The strip is shortened by the first share to begin with, by the last when that fails. */
const FIRST_STEP = 0.02
const LAST_STEP = 0.001
const PRESS = [0.0005, 0.00001] as const
const QUICK: Effort = { patience: 30, strikes: 1 }
const THOROUGH: Effort = { patience: 200, strikes: 3 }
const PRESSING: Effort = { patience: 100, strikes: 5 }
/** Failures taken up again: near the best of the pool, this share of it as standard deviation. */
const POOL_SPREAD = 0.25

interface Work {
  readonly board: Board
  readonly chance: Chance
  readonly least: number
  readonly separate: (effort: Effort, stop: () => boolean) => boolean
  /** Takes the board for the best layout, unless it is unsound after all. */
  readonly accept: () => boolean
  readonly best: Snapshot
  readonly overlapping: () => number
  readonly spent: () => number
}

export function pack(strip: Strip, options: PackOptions): Layout {
  const chance = seeded(options.seed)
  const board = boardOf(strip)
  const order = [...board.area.keys()].sort((i, j) => board.area[j]! - board.area[i]!)
  firstLayout(board, order, chance)
  const overlaps = new Overlaps(board)
  const search = new PlaceSearch(overlaps, chance)
  let layout = layoutOf(board)
  if (!isSound(strip, layout)) throw new Error('pack: the first layout is not sound')
  options.onBetter?.(layout, 0)
  board.length = layout.length
  const best = snapshot(board)
  const work: Work = {
    board,
    chance,
    best,
    least: leastLength(board),
    separate: (effort, stop) => separate(overlaps, search, chance, effort, stop),
    accept: () => {
      const found = layoutOf(board)
      if (!isSound(strip, found)) return false
      layout = found
      board.length = found.length
      take(board, best)
      options.onBetter?.(found, overlaps.tries)
      return true
    },
    overlapping: () => overlaps.whole(),
    spent: asked(options.spent, overlaps),
  }
  explore(work)
  press(work)
  return layout
}

/** Asking may cost as much as a clock; so many tries go by between. */
const ASK_EVERY = 4000

function asked(spent: PackOptions['spent'], overlaps: Overlaps): () => number {
  let [last, at] = [spent(overlaps.tries), overlaps.tries]
  return () => {
    if (overlaps.tries < at + ASK_EVERY && last < 1) return last
    at = overlaps.tries
    return (last = spent(at))
  }
}

interface Failure {
  readonly overlap: number
  readonly at: Snapshot
}

function explore(w: Work): void {
  const { board, best } = w
  const stop = (): boolean => w.spent() >= EXPLORING
  let step = FIRST_STEP
  let failures: Failure[] = []
  let target = shortened(w, step)
  while (target < best.length && !stop()) {
    const last = step === LAST_STEP
    if (w.separate(last ? THOROUGH : QUICK, stop) && w.accept()) {
      failures = []
      target = shortened(w, step)
    } else if (!last) {
      step = Math.max(LAST_STEP, step / 2)
      restore(board, best)
      target = shortened(w, step)
    } else {
      failures.push({ overlap: w.overlapping(), at: snapshot(board) })
      failures.sort((p, q) => p.overlap - q.overlap)
      const pick = Math.floor(Math.abs(normal(w.chance)) * POOL_SPREAD * failures.length)
      restore(board, failures[Math.min(pick, failures.length - 1)]!.at)
      changeOver(board, w.chance)
    }
  }
}

function press(w: Work): void {
  const [first, last] = PRESS
  restore(w.board, w.best)
  for (let spent = w.spent(); spent < 1; spent = w.spent()) {
    const done = Math.min(1, Math.max(0, (spent - EXPLORING) / (1 - EXPLORING)))
    if (shortened(w, first * Math.pow(last / first, done)) >= w.best.length) return
    if (!w.separate(PRESSING, () => w.spent() >= 1) || !w.accept()) restore(w.board, w.best)
  }
}

/** Shortens the board by a share of the best length; answers the new length. */
function shortened(w: Work, share: number): number {
  shortenTo(w.board, Math.max(w.least, w.best.length * (1 - share)))
  return w.board.length
}

/** Box and Muller. */
const normal = (c: Chance): number =>
  Math.sqrt(-2 * Math.log(1 - c.next())) * Math.cos(2 * Math.PI * c.next())

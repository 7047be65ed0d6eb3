/**
 * The fewest sheets: pieces are laid one after the other, largest first, wherever they touch the
 * fewest new sheets and lie on no other piece, turned by quarters. A handful of good beginnings
 * is carried on beside the best (beam search; Lowerre, "The HARPY speech recognition system",
 * 1976), because the tightest place for the first piece may leave the worst room for the next.
 * Everything is counted and ordered, nothing drawn by lot: the same pieces lie the same way.
 */
import type { Grid, Shape } from './tile-raster.ts'

/** A shape with its frame's corner at these squares of the board; may be negative. */
export interface Laid {
  /** Which of the inputs. */
  readonly index: number
  readonly shape: Shape
  readonly x: number
  readonly y: number
}
export interface Laying {
  readonly laid: readonly Laid[]
  /** Sheets touched. */
  readonly count: number
}

/** Beginnings carried on. More finds no fewer sheets on the invented bodies. Measured. */
const CARRIED = 24
/** Ways of going on that are kept of one beginning. */
const BRANCHES = 8
/** A way that costs so many sheets more than the best may still end better. */
const SLACK = 1
/** Rows and columns of sheets that are looked at; the start lies in the middle. */
const FIELD = 128

interface State extends Laying {
  readonly used: Uint8Array
  readonly left: number
  readonly right: number
  readonly top: number
  readonly bottom: number
}

/** `shapes[i]` are the ways piece i may be turned. */
export function fewestSheets(shapes: readonly (readonly Shape[])[], grid: Grid): Laying {
  const size = (i: number): number => bodySize(shapes[i]?.[0])
  const order = shapes.map((_, i) => i).sort((a, b) => size(b) - size(a) || a - b)
  let states: State[] = [BARE]
  for (const [n, index] of order.entries()) {
    // A half turn of the first piece only turns the whole board, so two turns are enough for it.
    const ways = (shapes[index] ?? []).filter((s) => n > 0 || s.turn < 2)
    const last = n === order.length - 1
    let least = Infinity
    const next = states.flatMap((state) => {
      const found = waysOn(state, ways, index, grid, least + (last ? 0 : SLACK) - state.count)
      least = Math.min(least, ...found.map((s) => s.count))
      return found
    })
    if (next.length === 0) throw new Error(`tiles: piece ${index} has no place on the field`)
    next.sort(better)
    states = next.filter((s) => s.count <= least + SLACK).slice(0, CARRIED)
  }
  const best = states[0]
  if (!best) throw new Error('tiles: nothing to lay out')
  return { laid: best.laid, count: best.count }
}

const bodySize = (shape: Shape | undefined): number =>
  shape?.body.reduce((sum, runs) => sum + runs.reduce((s, v, i) => s + (i % 2 ? v : -v), 0), 0) ?? 0

const BARE: State = {
  laid: [],
  count: 0,
  used: new Uint8Array(FIELD * FIELD),
  ...{ left: 0, right: -1, top: 0, bottom: -1 },
}

const cellOf = (row: number, column: number): number =>
  (row + FIELD / 2) * FIELD + column + FIELD / 2

/** Fewer sheets; then fewer rows and columns of them to lay out on the floor; then less turned. */
const spread = (s: { left: number; right: number; top: number; bottom: number }): number =>
  (s.right - s.left + 1) * (s.bottom - s.top + 1)
const better = (a: State, b: State): number =>
  a.count - b.count || spread(a) - spread(b) || lowest(a) - lowest(b)
const lowest = (s: State): number => Math.max(...s.laid.map((l) => l.y + l.shape.height))

interface Way {
  readonly cost: number
  readonly spread: number
  readonly way: number
  readonly pattern: number
  readonly row: number
  readonly column: number
}

/** `most` is how many new sheets are still worth a look. */
function waysOn(
  state: State,
  ways: readonly Shape[],
  index: number,
  grid: Grid,
  most: number,
): State[] {
  const first = state.right < state.left
  const all: Way[] = []
  for (const [way, shape] of ways.entries())
    for (const [pattern, { rows, columns, high, wide }] of shape.patterns.entries()) {
      const [r0, r1] = first ? [0, 0] : onField(state.top - high - 1, state.bottom + 1, high)
      const [c0, c1] = first ? [0, 0] : onField(state.left - wide - 1, state.right + 1, wide)
      for (let row = r0; row <= r1; row++)
        for (let column = c0; column <= c1; column++) {
          let cost = 0
          for (let i = 0; i < rows.length; i++)
            if (state.used[cellOf(row + (rows[i] ?? 0), column + (columns[i] ?? 0))] === 0)
              cost += 1
          if (cost > most) continue
          const over = {
            left: first ? column : Math.min(state.left, column),
            right: Math.max(state.right, column + wide),
            top: first ? row : Math.min(state.top, row),
            bottom: Math.max(state.bottom, row + high),
          }
          all.push({ cost, spread: spread(over), way, pattern, row, column })
        }
    }
  all.sort((a, b) => a.cost - b.cost || a.spread - b.spread || a.way - b.way)
  const found: State[] = []
  for (const option of all) {
    if (option.cost > (found[0]?.count ?? Infinity) - state.count + SLACK) break
    for (const [x, y] of freeShifts(state, ways, option, grid, first))
      found.push(laidOn(state, ways, option, index, x, y))
    if (found.length >= (first ? CARRIED * 4 : BRANCHES)) break
  }
  return found
}

/** Rows, or columns, on which a shape of so many may begin. */
const onField = (from: number, to: number, long: number): readonly [number, number] => [
  Math.max(from, -FIELD / 2),
  Math.min(to, FIELD / 2 - 1 - long),
]

/** The first free place of this kind by rows; on an empty board the four outermost. */
function freeShifts(
  state: State,
  ways: readonly Shape[],
  { way, pattern, row, column }: Way,
  grid: Grid,
  first: boolean,
): (readonly [number, number])[] {
  const shape = ways[way]
  const shifts = shape?.patterns[pattern]?.shifts ?? []
  if (!shape) return []
  const at = (i: number): readonly [number, number] => [
    column * grid.across + (shifts[i] ?? 0),
    row * grid.down + (shifts[i + 1] ?? 0),
  ]
  if (first) {
    const ends = [0, shifts.length - 2]
    return [...new Set(ends)].map(at)
  }
  let least = -Infinity
  let line = -1
  for (let i = 0; i < shifts.length; i += 2) {
    const [x, y] = at(i)
    if (y !== line) [line, least] = [y, -Infinity]
    if (x < least) continue
    const onward = blockedUntil(state.laid, shape, x, y)
    if (onward === undefined) return [[x, y]]
    least = onward
  }
  return []
}

/** Rows between those that are looked at first: a clash is mostly found in a few of them. */
const STRIDE = 9

/** undefined where the place is free; else the next x at which it may be. */
function blockedUntil(
  laid: readonly Laid[],
  shape: Shape,
  x: number,
  y: number,
): number | undefined {
  for (const other of laid) {
    if (other.x >= x + shape.width || x >= other.x + other.shape.width) continue
    const from = Math.max(y, other.y)
    const to = Math.min(y + shape.height, other.y + other.shape.height)
    for (const step of [STRIDE, 1]) {
      let onward = x
      for (let r = from; r < to; r += step)
        onward = clearOf(onward, shape.body[r - y], other.x, other.shape.body[r - other.y])
      if (onward > x) return onward
    }
  }
  return undefined
}

/** The least place from x on at which two rows of cloth lie apart, the second held fast. */
function clearOf(
  x: number,
  own: readonly number[] | undefined,
  fixed: number,
  its: readonly number[] | undefined,
): number {
  if (!own || !its) return x
  let onward = x
  for (let i = 0; i < own.length; i += 2)
    for (let k = 0; k < its.length; k += 2) {
      const a = own[i] ?? 0
      const end = fixed + (its[k + 1] ?? 0)
      if (onward + a <= end && fixed + (its[k] ?? 0) <= onward + (own[i + 1] ?? 0))
        onward = end + 1 - a
    }
  return onward
}

function laidOn(
  state: State,
  ways: readonly Shape[],
  { way, pattern, row, column }: Way,
  index: number,
  x: number,
  y: number,
): State {
  const shape = ways[way]
  const touched = shape?.patterns[pattern]
  if (!shape || !touched) throw new Error(`tiles: no way ${way}, ${pattern} of piece ${index}`)
  const used = state.used.slice()
  let { count, left, right, top, bottom } = state
  if (right < left) [left, top] = [column, row]
  touched.rows.forEach((r, i) => {
    const c = column + (touched.columns[i] ?? 0)
    const cell = cellOf(row + r, c)
    if (used[cell] === 0) count += 1
    used[cell] = 1
    left = Math.min(left, c)
    right = Math.max(right, c)
    top = Math.min(top, row + r)
    bottom = Math.max(bottom, row + r)
  })
  const laid = [...state.laid, { index, shape, x, y }]
  return { laid, count, used, left, right, top, bottom }
}

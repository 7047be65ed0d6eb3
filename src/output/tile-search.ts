/**
 * The fewest sheets: pieces are laid one after the other, largest first, wherever they touch the
 * fewest new sheets and lie on no other piece, turned by quarters. A handful of good beginnings
 * is carried on beside the best (beam search; Lowerre, "The HARPY speech recognition system",
 * 1976), because the tightest place for the first piece may leave the worst room for the next.
 * Everything is counted and ordered, nothing drawn by lot: the same pieces lie the same way.
 */
import type { Grid, Pattern, Runs, Shape } from './tile-raster.ts'

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

/**
 * Beginnings carried on, fewer where there are many pieces. More finds no fewer sheets on the
 * invented bodies. Measured.
 */
const CARRIED = { most: 24, least: 6, pieces: 60 } as const
/** Ways of going on that are kept of one beginning. */
const BRANCHES = 8
/** A way that costs so many sheets more than the best may still end better. */
const SLACK = 1
/** Rows and columns of sheets that are looked at; the start lies in the middle. */
const FIELD = 64

interface State extends Laying {
  readonly used: Uint8Array
  /** Squares of each sheet that carry cloth. */
  readonly taken: Uint32Array
  readonly left: number
  readonly right: number
  readonly top: number
  readonly bottom: number
}

/** `shapes[i]` are the ways piece i may be turned. */
export function fewestSheets(shapes: readonly (readonly Shape[])[], grid: Grid): Laying {
  const size = (i: number): number => bodySize(shapes[i]?.[0])
  const order = shapes.map((_, i) => i).sort((a, b) => size(b) - size(a) || a - b)
  const share = Math.floor(CARRIED.pieces / shapes.length)
  const carried = Math.max(CARRIED.least, Math.min(CARRIED.most, share))
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
    states = next.filter((s) => s.count <= least + SLACK).slice(0, carried)
  }
  const best = states[0]
  if (!best) throw new Error('tiles: nothing to lay out')
  return { laid: best.laid, count: best.count }
}

const bodySize = (shape: Shape | undefined): number => {
  const ends = shape ? [...shape.body.ends] : []
  return ends.reduce((sum, end, i) => sum + (i % 2 ? end + 1 : -end), 0)
}

const BARE: State = {
  laid: [],
  count: 0,
  used: new Uint8Array(FIELD * FIELD),
  taken: new Uint32Array(FIELD * FIELD),
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
  /** Cheapest first, then the smallest board, then the least turned. */
  readonly order: number
  readonly way: number
  readonly pattern: number
  readonly row: number
  readonly column: number
}
const orderOf = (cost: number, board: number, way: number): number =>
  (cost * FIELD * FIELD + board) * 4 + way

/** The sheets of a pattern as steps on the field from the one it begins on. */
const OFFSETS = new WeakMap<Pattern, Int32Array>()
function offsetsOf(pattern: Pattern): Int32Array {
  const known = OFFSETS.get(pattern)
  if (known) return known
  const made = Int32Array.from(pattern.rows, (r, i) => r * FIELD + (pattern.columns[i] ?? 0))
  OFFSETS.set(pattern, made)
  return made
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
  const sheet = grid.across * grid.down
  const all: Way[] = []
  // Wherever nothing lies the piece can always go.
  const free = Math.min(...ways.flatMap((w) => w.patterns.map((p) => p.rows.length)))
  const limit = Math.min(most, free + SLACK)
  const { used, taken } = state
  for (const [way, shape] of ways.entries())
    for (const [pattern, own] of shape.patterns.entries()) {
      const { high, wide, cloth } = own
      const offsets = offsetsOf(own)
      const room = offsets.length * sheet - cloth
      const [r0, r1] = first ? [0, 0] : onField(state.top - high - 1, state.bottom + 1, high)
      const [c0, c1] = first ? [0, 0] : onField(state.left - wide - 1, state.right + 1, wide)
      for (let row = r0; row <= r1; row++)
        for (let column = c0; column <= c1; column++) {
          const from = cellOf(row, column)
          let [cost, full] = [0, 0]
          for (let i = 0; i < offsets.length && cost <= limit; i++) {
            const cell = from + (offsets[i] ?? 0)
            cost += 1 - (used[cell] ?? 1)
            full += taken[cell] ?? 0
          }
          // Too dear, or less room left on these sheets than the piece takes of them.
          if (cost > limit || full > room) continue
          const board = first
            ? (high + 1) * (wide + 1)
            : (Math.max(state.right, column + wide) - Math.min(state.left, column) + 1) *
              (Math.max(state.bottom, row + high) - Math.min(state.top, row) + 1)
          all.push({ cost, order: orderOf(cost, board, way), way, pattern, row, column })
        }
    }
  all.sort((a, b) => a.order - b.order)
  const found: State[] = []
  for (const option of all) {
    if (option.cost > (found[0]?.count ?? Infinity) - state.count + SLACK) break
    for (const [x, y] of freeShifts(state, ways, option, grid, first))
      found.push(laidOn(state, ways, option, index, x, y, grid))
    if (found.length >= (first ? CARRIED.most * 4 : BRANCHES)) break
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
      const onward = clearOf(x, shape.body, from - y, other, from - other.y, to - from, step)
      if (onward > x) return onward
    }
  }
  return undefined
}

/** The least place from x on at which no two rows of cloth that were looked at lie together. */
function clearOf(
  x: number,
  own: Runs,
  ownRow: number,
  { x: fixed, shape: { body: its } }: Laid,
  itsRow: number,
  rows: number,
  step: number,
): number {
  let onward = x
  for (let r = 0; r < rows; r += step) {
    const [i0, i1] = [own.starts[ownRow + r] ?? 0, own.starts[ownRow + r + 1] ?? 0]
    const [k0, k1] = [its.starts[itsRow + r] ?? 0, its.starts[itsRow + r + 1] ?? 0]
    for (let i = i0; i < i1; i += 2)
      for (let k = k0; k < k1; k += 2) {
        const first = own.ends[i] ?? 0
        const end = fixed + (its.ends[k + 1] ?? 0)
        const meets = fixed + (its.ends[k] ?? 0) <= onward + (own.ends[i + 1] ?? 0)
        if (meets && onward + first <= end) onward = end + 1 - first
      }
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
  grid: Grid,
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
  const taken = withTaken(state.taken, shape, x, y, grid)
  const laid = [...state.laid, { index, shape, x, y }]
  return { laid, count, used, taken, left, right, top, bottom }
}

function withTaken(
  taken: Uint32Array,
  { body, height }: Shape,
  x: number,
  y: number,
  { across, down }: Grid,
): Uint32Array {
  const now = taken.slice()
  for (let r = 0; r < height; r++) {
    const row = Math.floor((y + r) / down)
    for (let i = body.starts[r] ?? 0; i < (body.starts[r + 1] ?? 0); i += 2) {
      const [first, last] = [x + (body.ends[i] ?? 0), x + (body.ends[i + 1] ?? 0)]
      for (let column = Math.floor(first / across); column * across <= last; column++) {
        const from = Math.max(first, column * across)
        const to = Math.min(last, (column + 1) * across - 1)
        const cell = cellOf(row, column)
        now[cell] = (now[cell] ?? 0) + to - from + 1
      }
    }
  }
  return now
}

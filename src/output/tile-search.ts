/**
 * The fewest sheets: pieces are laid one after the other, largest first, wherever they touch the
 * fewest new sheets and lie on no other piece, turned by quarters. A handful of good beginnings
 * is carried on beside the best (beam search; Lowerre, "The HARPY speech recognition system",
 * 1976), because the tightest place for the first piece may leave the worst room for the next.
 * Everything is counted and ordered, nothing drawn by lot: the same pieces lie the same way.
 */
import { BARE, cellOf, FIELD, laidOn, type Laying, type State } from './tile-board.ts'
import { blockedUntil } from './tile-clash.ts'
import type { Grid, Pattern } from './tile-patterns.ts'
import type { Shape } from './tile-raster.ts'

/**
 * Beginnings carried on, fewer where there are many pieces. More finds no fewer sheets on the
 * invented bodies. Measured.
 */
const CARRIED = { most: 24, least: 6, pieces: 60 } as const
/** Ways of going on that are kept of one beginning. */
const BRANCHES = 8
/** A way that costs so many sheets more than the best may still end better. */
const SLACK = 1

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
    const { way, pattern, row, column } = option
    const shape = ways[way]
    const touched = shape?.patterns[pattern]
    if (!shape || !touched) throw new Error(`tiles: no way ${way}, ${pattern} of piece ${index}`)
    for (const [x, y] of freeShifts(state, shape, touched, option, grid, first))
      found.push(laidOn(state, shape, touched, { index, row, column, x, y }, grid))
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
  shape: Shape,
  { shifts }: Pattern,
  { row, column }: Way,
  grid: Grid,
  first: boolean,
): (readonly [number, number])[] {
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

/** The board while it is being laid: which sheets are used, and how much of each is taken. */
import type { Laid } from './tile-clash.ts'
import type { Grid, Pattern } from './tile-patterns.ts'
import type { Shape } from './tile-raster.ts'

export interface Laying {
  readonly laid: readonly Laid[]
  /** Sheets touched. */
  readonly count: number
}

/** Rows and columns of sheets that are looked at; the start lies in the middle. */
export const FIELD = 64

export interface State extends Laying {
  readonly used: Uint8Array
  /** Squares of each sheet that carry cloth. */
  readonly taken: Uint32Array
  readonly left: number
  readonly right: number
  readonly top: number
  readonly bottom: number
}

export const BARE: State = {
  laid: [],
  count: 0,
  used: new Uint8Array(FIELD * FIELD),
  taken: new Uint32Array(FIELD * FIELD),
  ...{ left: 0, right: -1, top: 0, bottom: -1 },
}

export const cellOf = (row: number, column: number): number =>
  (row + FIELD / 2) * FIELD + column + FIELD / 2

/** Where a piece goes: its corner in squares, and the sheet its pattern begins on. */
export interface Spot {
  readonly index: number
  readonly row: number
  readonly column: number
  readonly x: number
  readonly y: number
}

export function laidOn(
  state: State,
  shape: Shape,
  touched: Pattern,
  { index, row, column, x, y }: Spot,
  grid: Grid,
): State {
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

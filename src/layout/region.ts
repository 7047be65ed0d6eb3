/**
 * One no-fit region made ready for the hot loops. Its box is divided into cells; each knows
 * whether it lies inside, outside or on the boundary, and which runs of the boundary can be the
 * nearest to a point in it, mostly one or two.
 */
export interface Region {
  /** Of each run: start, direction, 1 / length², y of the end. */
  readonly runs: Float64Array
  readonly left: number
  readonly low: number
  /** Cells per unit of length, along and across. */
  readonly perX: number
  readonly perY: number
  readonly kind: Uint8Array
  /** Runs of cell k: `near` from `first[k]` to before `first[k + 1]`, as places in `runs`. */
  readonly first: Int32Array
  readonly near: Int32Array
}

const RUN = 6
/** Cells along and across. More cost memory and time to make and gain little; measured. */
const CELLS = 32
const OUTSIDE = 0
const INSIDE = 1
const ON_EDGE = 2

/** @param runs x1 y1 x2 y2 of each run, the region on the left hand */
export function packedRuns(runs: Float64Array): Float64Array {
  const out = new Float64Array((runs.length / 4) * RUN)
  for (let k = 0, at = 0; k < runs.length; k += 4, at += RUN) {
    const dx = runs[k + 2]! - runs[k]!
    const dy = runs[k + 3]! - runs[k + 1]!
    out[at] = runs[k]!
    out[at + 1] = runs[k + 1]!
    out[at + 2] = dx
    out[at + 3] = dy
    out[at + 4] = 1 / (dx * dx + dy * dy)
    out[at + 5] = runs[k + 3]!
  }
  return out
}

/** The region of packed runs within a box of these half sides round the origin. */
export function regionOf(runs: Float64Array, halfX: number, halfY: number): Region {
  const [stepX, stepY] = [(2 * halfX) / CELLS, (2 * halfY) / CELLS]
  // To the farthest corner of a cell, and a hair for rounding.
  const radius = (Math.hypot(stepX, stepY) / 2) * (1 + 1e-9)
  const kind = new Uint8Array(CELLS * CELLS)
  const first = new Int32Array(CELLS * CELLS + 1)
  const near: number[] = []
  const squares = new Float64Array(runs.length / RUN)
  for (let cell = 0; cell < kind.length; cell++) {
    const x = ((cell % CELLS) + 0.5) * stepX - halfX
    const y = (Math.floor(cell / CELLS) + 0.5) * stepY - halfY
    let least = Infinity
    for (let k = 0; k < squares.length; k++) {
      squares[k] = squareTo(runs, k * RUN, x, y)
      least = Math.min(least, squares[k]!)
    }
    const inside = isInside(runs, x, y)
    kind[cell] = least <= radius * radius ? ON_EDGE : inside ? INSIDE : OUTSIDE
    if (kind[cell] !== OUTSIDE) {
      const reach = Math.sqrt(least) + 2 * radius
      for (let k = 0; k < squares.length; k++) if (squares[k]! <= reach * reach) near.push(k * RUN)
    }
    first[cell + 1] = near.length
  }
  return {
    runs,
    left: -halfX,
    low: -halfY,
    perX: 1 / stepX,
    perY: 1 / stepY,
    kind,
    first,
    near: Int32Array.from(near),
  }
}

/** Least move from (x, y) out of the region, the root of `clear` or less counting as none. */
export function depthIn(r: Region, x: number, y: number, clear: number): number {
  const column = ((x - r.left) * r.perX) | 0
  const row = ((y - r.low) * r.perY) | 0
  if (column < 0 || column >= CELLS || row < 0 || row >= CELLS) return 0
  const cell = row * CELLS + column
  const kind = r.kind[cell]!
  if (kind === OUTSIDE) return 0
  const { runs, near } = r
  if (kind === ON_EDGE && !isInside(runs, x, y)) return 0
  const end = r.first[cell + 1]!
  let least = Infinity
  for (let k = r.first[cell]!; k < end; k++) {
    const square = squareTo(runs, near[k]!, x, y)
    if (square < least) least = square
  }
  return least > clear ? Math.sqrt(least) : 0
}

function squareTo(runs: Float64Array, at: number, x: number, y: number): number {
  let ax = x - runs[at]!
  let ay = y - runs[at + 1]!
  const dx = runs[at + 2]!
  const dy = runs[at + 3]!
  let t = (ax * dx + ay * dy) * runs[at + 4]!
  if (t > 0) {
    if (t > 1) t = 1
    ax -= t * dx
    ay -= t * dy
  }
  return ax * ax + ay * ay
}

function isInside(runs: Float64Array, x: number, y: number): boolean {
  let inside = false
  for (let k = 0; k < runs.length; k += RUN) {
    const ay = runs[k + 1]!
    // The very y of the next run's start, so that a level through a corner is counted once.
    if (ay > y !== runs[k + 5]! > y) {
      const dy = runs[k + 3]!
      const side = (runs[k]! - x) * dy - (ay - y) * runs[k + 2]!
      if (side > 0 === dy > 0) inside = !inside
    }
  }
  return inside
}

/** Stretches of the line at height y that lie in the region: pairs, from and to. */
export function stretchesIn(runs: Float64Array, y: number): readonly (readonly [number, number])[] {
  const xs: number[] = []
  for (let k = 0; k < runs.length; k += RUN) {
    const ay = runs[k + 1]!
    if (ay > y !== runs[k + 5]! > y) xs.push(runs[k]! + ((y - ay) / runs[k + 3]!) * runs[k + 2]!)
  }
  xs.sort((p, q) => p - q)
  const out: (readonly [number, number])[] = []
  for (let i = 0; i + 1 < xs.length; i += 2) out.push([xs[i]!, xs[i + 1]!])
  return out
}

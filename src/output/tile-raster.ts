/**
 * A piece as small squares, for laying out only: which squares its cloth takes, and which sheets
 * its lines touch for every way of shifting it against the trim lines. A sheet is a whole number
 * of squares each way, so "touches this sheet" is exact for the shifts that are tried.
 */
import { boxHeight, boxOfPoints, boxWidth, grown } from '../geometry/box.ts'
import { distance, point, type Point } from '../geometry/point.ts'
import { placedPoint, type Quarter } from './mark.ts'
import type { Ring } from './ring.ts'
import { patternsOf, type Frame, type Grid, type Pattern } from './tile-patterns.ts'

/** White kept between two pieces, mm. */
export const CLEAR = 4
/** A drawn line and its ends may reach so far over the path it is drawn on, mm. */
export const EDGE_OF_LINE = 1
/** Side of a square, about; smaller finds hardly fewer sheets and takes longer. Measured. */
const SQUARE = 4
/** Sheets as large as A0 would have too many squares: at most so many along a side. */
const MOST_SQUARES = 300

export interface TileInput {
  readonly name: string
  /** The closed line the scissors follow, in the piece's own millimetres. */
  readonly ring: Ring
  /** Everything drawn, as open runs of points; without it all of the cloth counts as drawn. */
  readonly ink?: readonly (readonly Point[])[]
  /** Never turned and never parted: it lies whole on one sheet. */
  readonly whole?: boolean
}

export function gridOf(cell: { readonly width: number; readonly height: number }): Grid {
  const squares = (long: number): number =>
    Math.max(1, Math.min(MOST_SQUARES, Math.round(long / SQUARE)))
  const [across, down] = [squares(cell.width), squares(cell.height)]
  return { across, down, width: cell.width / across, height: cell.height / down }
}

/** The cloth of each row of squares: row r has the runs from starts[r] to starts[r + 1]. */
export interface Runs {
  readonly starts: Int32Array
  /** First and last square of each run, in turn. */
  readonly ends: Int32Array
}
export interface Shape {
  readonly turn: Quarter
  /** Where the frame's corner lies in the turned piece. */
  readonly corner: Point
  /** Squares of the frame. */
  readonly width: number
  readonly height: number
  readonly body: Runs
  readonly patterns: readonly Pattern[]
}

export function shapeOf(input: TileInput, turn: Quarter, grid: Grid): Shape {
  const turned = (points: readonly Point[]): Point[] =>
    points.map((p) => placedPoint(p, { turn, by: point(0, 0) }))
  const ring = turned(input.ring)
  const ink = (input.ink ?? [[...input.ring, ...input.ring.slice(0, 1)]]).map(turned)
  const box = grown(boxOfPoints([...ring, ...ink.flat()]), EDGE_OF_LINE)
  // One empty square all round: the cloth reaches a little farther than its lines.
  const corner = point(box.left - grid.width, box.top - grid.height)
  const width = Math.ceil(boxWidth(box) / grid.width - 1e-9) + 2
  const height = Math.ceil(boxHeight(box) / grid.height - 1e-9) + 2
  const frame = { corner, width, height, grid }
  const body = new Uint8Array(width * height)
  draw(body, frame, [...ring, ...ring.slice(0, 1)], CLEAR / 2)
  fill(body, frame, ring)
  const drawn = new Uint8Array(width * height)
  for (const run of ink) {
    draw(drawn, frame, run, EDGE_OF_LINE)
    // A lettered point may lie in the hollow of a neck: nothing goes on it either.
    draw(body, frame, run, CLEAR / 2)
  }
  if (!input.ink) fill(drawn, frame, ring)
  const patterns = patternsOf(drawn, body, frame).filter((p) => !input.whole || p.rows.length === 1)
  return { turn, corner, width, height, body: runsOf(body, width, height), patterns }
}

/** Every square that lies within `near` of the run, along x and along y; a few more at slants. */
function draw(bits: Uint8Array, frame: Frame, run: readonly Point[], near: number): void {
  const { corner, width, height, grid } = frame
  const step = Math.min(grid.width, grid.height) / 2
  for (let i = 1; i < run.length; i++) {
    const [a, b] = [run[i - 1] ?? corner, run[i] ?? corner]
    const count = Math.max(1, Math.ceil(distance(a, b) / step))
    const part = point((b.x - a.x) / count, (b.y - a.y) / count)
    const [beside, above] = [near + Math.abs(part.x) / 2, near + Math.abs(part.y) / 2]
    for (let k = 0; k < count; k++) {
      const x = a.x + part.x * (k + 0.5) - corner.x
      const y = a.y + part.y * (k + 0.5) - corner.y
      const first = Math.max(0, Math.floor((x - beside) / grid.width + 1e-9))
      const last = Math.min(width - 1, Math.ceil((x + beside) / grid.width - 1e-9) - 1)
      const low = Math.min(height - 1, Math.ceil((y + above) / grid.height - 1e-9) - 1)
      for (let r = Math.max(0, Math.floor((y - above) / grid.height + 1e-9)); r <= low; r++)
        bits.fill(1, r * width + first, r * width + last + 1)
    }
  }
}

/** Squares whose middle lies inside, by the even–odd rule. */
function fill(bits: Uint8Array, { corner, width, height, grid }: Frame, ring: Ring): void {
  const crossed: number[][] = Array.from({ length: height }, () => [])
  ring.forEach((a, i) => {
    const b = ring[(i + 1) % ring.length] ?? a
    const [upper, lower] = a.y < b.y ? [a, b] : [b, a]
    const rowOf = (y: number): number => Math.ceil((y - corner.y) / grid.height - 0.5)
    for (let r = Math.max(0, rowOf(upper.y)); r < Math.min(height, rowOf(lower.y)); r++) {
      const y = corner.y + (r + 0.5) * grid.height
      crossed[r]?.push(a.x + ((b.x - a.x) * (y - a.y)) / (b.y - a.y))
    }
  })
  for (const [r, met] of crossed.entries()) {
    met.sort((a, b) => a - b)
    for (let i = 0; i + 1 < met.length; i += 2) {
      const first = Math.ceil(((met[i] ?? 0) - corner.x) / grid.width - 0.5)
      const last = Math.floor(((met[i + 1] ?? 0) - corner.x) / grid.width - 0.5)
      if (last >= first) bits.fill(1, r * width + first, r * width + last + 1)
    }
  }
}

function runsOf(bits: Uint8Array, width: number, height: number): Runs {
  const starts = new Int32Array(height + 1)
  const ends: number[] = []
  for (let r = 0; r < height; r++) {
    starts[r] = ends.length
    for (let x = 0; x < width; x++) {
      if (bits[r * width + x] !== 1) continue
      const begin = x
      while (x + 1 < width && bits[r * width + x + 1] === 1) x += 1
      ends.push(begin, x)
    }
  }
  starts[height] = ends.length
  return { starts, ends: Int32Array.from(ends) }
}

/**
 * Moves the edges of an outline from the coarse mask (a cell is about 8 mm on a standing woman)
 * to the strongest change of colour beside them. Edges without a clear change stay where the
 * mask put them. px, y down.
 */
import type { Picture } from './picture.ts'
import type { OutlineRow } from './reading.ts'

/** How far an edge may move, px; further off lies another edge. */
const REACH = 5
/** Changes near the mask's edge count more: the weight falls as a bell of this width, px. */
const BELL = 3.5
/** Colour change over 4 px (three channels together, of 441) below which nothing is seen. */
const LEAST_CHANGE = 24
/** Neighbouring rows whose median shift is taken, so that one speck of the wall moves nothing. */
const NEIGHBOURS = 4

export function sharpened(picture: Picture, outline: readonly OutlineRow[]): readonly OutlineRow[] {
  const left = calm(outline.map((row) => shift(picture, row.y, row.left)))
  const right = calm(outline.map((row) => shift(picture, row.y, row.right)))
  return outline.map((row, k) => ({
    y: row.y,
    left: row.left + (left[k] ?? 0),
    right: row.right + (right[k] ?? 0),
  }))
}

/** From the mask's edge to the strongest change near it; undefined where none is clear. */
function shift(picture: Picture, y: number, edge: number): number | undefined {
  const start = Math.round(edge) - REACH - 1
  const changes: number[] = []
  for (let x = start; x <= Math.round(edge) + REACH + 1; x++)
    changes.push(change(picture, x, y) * Math.exp(-(((x - edge) / BELL) ** 2) / 2))
  const best = Math.max(...changes)
  const k = changes.indexOf(best)
  const [a, c] = [changes[k - 1], changes[k + 1]]
  if (best < LEAST_CHANGE || a === undefined || c === undefined) return undefined
  const bend = a - 2 * best + c
  return start + k + (bend < 0 ? (a - c) / (2 * bend) : 0) - edge
}

/** Colour change across the line between pixel x - 1 and pixel x, two pixels to each side. */
function change({ data, width, height }: Picture, x: number, y: number): number {
  if (x < 2 || x + 1 >= width || y < 0 || y >= height) return 0
  const k = (y * width + x) * 4
  let sum = 0
  for (let c = 0; c < 3; c++) {
    const at = (dx: number): number => data[k + dx * 4 + c] ?? 0
    sum += (at(0) + at(1) - at(-1) - at(-2)) ** 2
  }
  return Math.sqrt(sum)
}

/** Median over neighbouring rows; rows without a clear change count as no shift. */
function calm(shifts: readonly (number | undefined)[]): number[] {
  return shifts.map((_, k) => {
    const near = shifts.slice(Math.max(0, k - NEIGHBOURS), k + NEIGHBOURS + 1)
    const sorted = near.map((value) => value ?? 0).sort((a, b) => a - b)
    return sorted[Math.floor(sorted.length / 2)] ?? 0
  })
}

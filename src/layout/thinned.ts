/**
 * Fewer corners for a ring of many chords: those that lie within `error` of the line between their
 * neighbours are left out. Source: Douglas and Peucker 1973, "Algorithms for the reduction of the
 * number of points required to represent a digitized line", Cartographica 10.
 */
import { outlineOf, type Outline } from './outline.ts'

export function thinned(ring: Outline, error: number): Outline {
  const count = ring.length / 2
  // Two corners far apart stay, so that the ring falls into two runs.
  let far = 0
  for (let i = 1; i < count; i++) if (apart(ring, 0, i) > apart(ring, 0, far)) far = i
  const kept = [...run(ring, 0, far, error), ...run(ring, far, count, error)]
  return outlineOf(kept.map((i): [number, number] => [ring[2 * i]!, ring[2 * i + 1]!]))
}

/** Corners kept from `from` up to, not with, `to`; `to` may be the first corner again. */
function run(ring: Outline, from: number, to: number, error: number): readonly number[] {
  const count = ring.length / 2
  let [worst, at] = [error, -1]
  for (let i = from + 1; i < to; i++) {
    const off = offLine(ring, from, to % count, i)
    if (off > worst) [worst, at] = [off, i]
  }
  return at < 0 ? [from] : [...run(ring, from, at, error), ...run(ring, at, to, error)]
}

const apart = (r: Outline, i: number, j: number): number =>
  Math.hypot(r[2 * i]! - r[2 * j]!, r[2 * i + 1]! - r[2 * j + 1]!)

/** From corner i to the stretch between a and b. */
function offLine(r: Outline, a: number, b: number, i: number): number {
  const [dx, dy] = [r[2 * b]! - r[2 * a]!, r[2 * b + 1]! - r[2 * a + 1]!]
  const [px, py] = [r[2 * i]! - r[2 * a]!, r[2 * i + 1]! - r[2 * a + 1]!]
  const square = dx * dx + dy * dy
  const t = square === 0 ? 0 : Math.min(1, Math.max(0, (px * dx + py * dy) / square))
  return Math.hypot(px - t * dx, py - t * dy)
}

/** The longest stretch along the cloth that lies inside an outline: room for a grain arrow, a name. */
import { extentOf, type Extent, type Outline } from './outline.ts'

interface Run {
  readonly from: number
  readonly to: number
  readonly across: number
}
/** Levels looked at; the middle ones first, so that equal runs lie in the middle. */
const LEVELS = [10, 9, 11, 8, 12, 7, 13, 6, 14, 5, 15, 4, 16].map((k) => k / 20)

function longestRun(ring: Outline): Run {
  const { low, high, left, right } = extentOf(ring)
  const runs = LEVELS.flatMap((share) => {
    const across = low + share * (high - low)
    const at = crossings(ring, across)
    return at.flatMap((from, i): Run[] => {
      const to = at[i + 1]
      return i % 2 === 0 && to !== undefined ? [{ from, to, across }] : []
    })
  })
  return runs.reduce<Run>((best, r) => (r.to - r.from > 1.05 * (best.to - best.from) ? r : best), {
    from: (left + right) / 2,
    to: (left + right) / 2,
    across: (low + high) / 2,
  })
}

/** Where its grain arrow is drawn: both ends, along and across the cloth, clear of the piece's ends. */
export function grainLine(
  ring: Outline,
  across: boolean,
): { readonly from: readonly [number, number]; readonly to: readonly [number, number] } {
  const swapped = ring.map((_, i) => ring[i % 2 === 0 ? i + 1 : i - 1]!)
  const run = longestRun(across ? swapped : ring)
  const inset = INSET * (run.to - run.from)
  const [a, b] = [run.from + inset, run.to - inset]
  return across
    ? { from: [run.across, a], to: [run.across, b] }
    : { from: [a, run.across], to: [b, run.across] }
}
const INSET = 0.18

function crossings(ring: Outline, across: number): readonly number[] {
  const at: number[] = []
  for (let i = 0, j = ring.length - 2; i < ring.length; j = i, i += 2) {
    const [ax, ay, bx, by] = [ring[j]!, ring[j + 1]!, ring[i]!, ring[i + 1]!]
    if (ay > across !== by > across) at.push(ax + ((across - ay) / (by - ay)) * (bx - ax))
  }
  return at.sort((p, q) => p - q)
}

/** The centre of a half piece that was opened out, from end to end. */
export function centreLine(
  at: Extent,
  across: boolean,
): { readonly from: readonly [number, number]; readonly to: readonly [number, number] } {
  const [x, y] = [(at.left + at.right) / 2, (at.low + at.high) / 2]
  return across
    ? { from: [x, at.low], to: [x, at.high] }
    : { from: [at.left, y], to: [at.right, y] }
}

/** Of its length, from the middle of a strip: neighbours that lie side by side are numbered in turn. */
const ALONG_STRIP = [0, 0.22, -0.22]

/** Where the number of a strip stands, that lies aslant: along and across the cloth. */
export function stripNumberPlace(ring: Outline, number: number): readonly [number, number] {
  const { left, right, low, high } = extentOf(ring)
  const first = ring.findIndex((x, i) => i % 2 === 0 && x === left)
  const rises = ring[first + 1]! < (low + high) / 2 ? 1 : -1
  const share = ALONG_STRIP[number % ALONG_STRIP.length]!
  return [
    (left + right) / 2 + share * (right - left),
    (low + high) / 2 + rises * share * (high - low),
  ]
}

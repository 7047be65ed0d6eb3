/** The first search for a card's edges near rough corners, on linear light; card-edge.ts places them. */
import { add, between, scale, type Point } from '../geometry/point.ts'
import { laidOut, lightAt } from './card-edge.ts'
import { median } from './card-line.ts'
import type { Grey } from './picture.ts'

/** Step of the search across the edge, pixels. */
const COARSE_STEP = 0.5

export interface SoughtEdge {
  readonly from: Point
  readonly to: Point
  /** How strongly it shows against the strongest one found, 0 to 1. */
  readonly strength: number
}

/** Two edges whose middles lie nearer than this are one, pixels. */
const APART_PX = 1.5
/** An edge weaker than this share of the strongest is no rival to it. */
const RIVAL_SHARE = 0.3

/**
 * The strongest straight edges whose ends lie within `reach` pixels across from a and b, strongest
 * first. The card lies to the right of travel a -> b (its corners run clockwise).
 * @param outside 'lighter' or 'darker' than the card, or 'either'
 */
export function seekEdges(
  grey: Grey,
  a: Point,
  b: Point,
  reach: number,
  outside: 'lighter' | 'darker' | 'either',
  most: number,
): readonly SoughtEdge[] {
  const { stations, outward } = laidOut(a, b)
  const count = 2 * Math.ceil(reach / COARSE_STEP) + 1
  const offsetOf = (k: number): number => (k - (count - 1) / 2) * COARSE_STEP
  const rises = stations.map((t) => {
    const at = between(a, b, t)
    return Array.from({ length: count }, (_, k) => {
      const d = offsetOf(k)
      return lightAt(grey, at, outward, d + 1) - lightAt(grey, at, outward, d - 1)
    })
  })
  // One very strong station must not outvote the rest of the edge.
  const cap = median(rises.map((row) => Math.max(...row.map(Math.abs))))
  const tries: { score: number; from: number; to: number }[] = []
  for (const sign of outside === 'either' ? [1, -1] : [outside === 'lighter' ? 1 : -1]) {
    for (let i = 0; i < count; i++) {
      for (let j = 0; j < count; j++) {
        let score = 0
        stations.forEach((t, s) => {
          const rise = sign * (rises[s]?.[Math.round(i + (j - i) * t)] ?? 0)
          score += Math.min(cap, rise)
        })
        if (score > 0) tries.push({ score, from: offsetOf(i), to: offsetOf(j) })
      }
    }
  }
  tries.sort((p, q) => q.score - p.score)
  const kept: typeof tries = []
  const least = RIVAL_SHARE * (tries[0]?.score ?? 0)
  for (const one of tries) {
    if (kept.length === most || one.score < least) break
    const apart = kept.every(
      (other) => Math.abs(one.from + one.to - other.from - other.to) / 2 >= APART_PX,
    )
    if (apart) kept.push(one)
  }
  return kept.map(({ score, from, to }) => ({
    from: add(a, scale(outward, from)),
    to: add(b, scale(outward, to)),
    strength: score / (tries[0]?.score ?? score),
  }))
}

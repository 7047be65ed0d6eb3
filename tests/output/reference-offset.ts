/**
 * An offset of its own for tests: cubics through bezier-js, arcs by sine and cosine, distances by
 * chords. Nothing of the program's own arithmetic.
 */
import { Bezier } from 'bezier-js'
import type { Path } from '../../src/geometry/path.ts'
import type { Segment } from '../../src/geometry/segment.ts'

export interface Spot {
  readonly x: number
  readonly y: number
}

export function spot(s: Segment, t: number): Spot {
  switch (s.kind) {
    case 'line':
      return { x: s.from.x * (1 - t) + s.to.x * t, y: s.from.y * (1 - t) + s.to.y * t }
    case 'arc': {
      const angle = s.start + s.sweep * t
      return {
        x: s.centre.x + s.radius * Math.cos(angle),
        y: s.centre.y + s.radius * Math.sin(angle),
      }
    }
    case 'cubic': {
      const { x, y } = new Bezier([s.from, s.c1, s.c2, s.to].map(({ x, y }) => ({ x, y }))).get(t)
      return { x, y }
    }
  }
}

/** Chords of a path, so fine that none is off by more than a micrometre on the curves of a piece. */
export function chordsOf(path: Path, each = 600): Spot[] {
  return path.flatMap((s, k) => {
    const count = s.kind === 'line' ? 1 : each
    const list = Array.from({ length: count + 1 }, (_, i) => spot(s, i / count))
    return k === 0 ? list : list.slice(1)
  })
}

export interface Near {
  readonly distance: number
  readonly at: Spot
  /** Length of the chain up to there, mm. */
  readonly along: number
}

export function nearestOn(chain: readonly Spot[], p: Spot): Near {
  let best: Near = { distance: Infinity, at: p, along: 0 }
  let walked = 0
  for (let i = 1; i < chain.length; i++) {
    const [a, b] = [chain[i - 1] as Spot, chain[i] as Spot]
    const [dx, dy] = [b.x - a.x, b.y - a.y]
    const square = dx * dx + dy * dy
    const t =
      square === 0 ? 0 : Math.min(1, Math.max(0, ((p.x - a.x) * dx + (p.y - a.y) * dy) / square))
    const at = { x: a.x + t * dx, y: a.y + t * dy }
    const distance = Math.hypot(at.x - p.x, at.y - p.y)
    if (distance < best.distance) best = { distance, at, along: walked + t * Math.sqrt(square) }
    walked += Math.sqrt(square)
  }
  return best
}

export const chainLength = (chain: readonly Spot[]): number =>
  chain.reduce(
    (sum, p, i) => sum + (i === 0 ? 0 : Math.hypot(p.x - chain[i - 1]!.x, p.y - chain[i - 1]!.y)),
    0,
  )

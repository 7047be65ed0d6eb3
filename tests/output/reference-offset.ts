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

/** Where a segment is at each share of it, 0 to 1. */
function along(s: Segment): (t: number) => Spot {
  switch (s.kind) {
    case 'line':
      return (t) => ({ x: s.from.x * (1 - t) + s.to.x * t, y: s.from.y * (1 - t) + s.to.y * t })
    case 'arc':
      return (t) => {
        const angle = s.start + s.sweep * t
        return {
          x: s.centre.x + s.radius * Math.cos(angle),
          y: s.centre.y + s.radius * Math.sin(angle),
        }
      }
    case 'cubic': {
      const curve = new Bezier([s.from, s.c1, s.c2, s.to].map(({ x, y }) => ({ x, y })))
      return (t) => {
        const { x, y } = curve.get(t)
        return { x, y }
      }
    }
  }
}

/** Chords of a path, so fine that none is off by more than a micrometre on the curves of a piece. */
export function chordsOf(path: Path, each = 600): Spot[] {
  return path.flatMap((s, k) => {
    const count = s.kind === 'line' ? 1 : each
    const at = along(s)
    const list = Array.from({ length: count + 1 }, (_, i) => at(i / count))
    return k === 0 ? list : list.slice(1)
  })
}

export interface Near {
  readonly distance: number
  readonly at: Spot
  /** Length of the chain up to there, mm. */
  readonly along: number
}

/** Every chord is tried; only the nearest is written down, because there are many thousands of spots. */
export function nearestOn(chain: readonly Spot[], p: Spot): Near {
  let least = Infinity
  let chord = 0
  let share = 0
  let a = chain[0]
  for (let i = 1; a && i < chain.length; i++) {
    const b = chain[i] as Spot
    const dx = b.x - a.x
    const dy = b.y - a.y
    const square = dx * dx + dy * dy
    const t =
      square === 0 ? 0 : Math.min(1, Math.max(0, ((p.x - a.x) * dx + (p.y - a.y) * dy) / square))
    const away = (a.x + t * dx - p.x) ** 2 + (a.y + t * dy - p.y) ** 2
    if (away < least) {
      least = away
      chord = i
      share = t
    }
    a = b
  }
  const [from, to] = [chain[chord - 1], chain[chord]]
  if (!from || !to) return { distance: Infinity, at: p, along: 0 }
  const at = { x: from.x + share * (to.x - from.x), y: from.y + share * (to.y - from.y) }
  const walked = chainLength(chain, chord) + share * Math.hypot(to.x - from.x, to.y - from.y)
  return { distance: Math.sqrt(least), at, along: walked }
}

/** Length of the chain, or up to one of its spots, mm. */
export function chainLength(chain: readonly Spot[], upTo = chain.length): number {
  let sum = 0
  let a = chain[0]
  for (let i = 1; a && i < upTo; i++) {
    const b = chain[i] as Spot
    sum += Math.sqrt((b.x - a.x) ** 2 + (b.y - a.y) ** 2)
    a = b
  }
  return sum
}

/** Where the rings of points lie that are too close to be taken one by one: apart, each about its place. */
import type { Point } from '../../../geometry/point.ts'

/** WCAG 2.2, 2.5.8: a target is 24 by 24 px of the screen at least. */
export const RING_PX = 24
/** A hair of photo stays between two rings. */
const APART_PX = RING_PX + 1
/** To the edge of the frame, with room for the line round the ring that has the keyboard. */
const EDGE_PX = RING_PX / 2 + 3
/** A knot of as many points as a photo has comes apart in about a third of these. */
const ROUNDS = 300

/**
 * The middles of the rings, px of the frame. A ring lies on its place; only where two would
 * overlap do both give way along the line between them, as far as it takes. Points that lie on
 * one another part all ways round.
 */
export function fanned(
  places: readonly Point[],
  frame: { readonly width: number; readonly height: number },
): readonly Point[] {
  const within = ({ x, y }: Point): Point => ({
    x: Math.max(EDGE_PX, Math.min(frame.width - EDGE_PX, x)),
    y: Math.max(EDGE_PX, Math.min(frame.height - EDGE_PX, y)),
  })
  const rings = places.map(within)
  for (let round = 0; round < ROUNDS; round++) if (!pushed(rings, within)) break
  return rings
}

/** Moves each pair that overlaps; false when none does. */
function pushed(rings: Point[], within: (at: Point) => Point): boolean {
  let any = false
  for (const [i, one] of rings.entries())
    for (let j = i + 1; j < rings.length; j++) {
      const [a, b] = [rings[i] ?? one, rings[j] ?? one]
      const by = apart(a, b, j)
      if (!by) continue
      any = true
      rings[i] = within({ x: a.x - by.x, y: a.y - by.y })
      rings[j] = within({ x: b.x + by.x, y: b.y + by.y })
    }
  return any
}

/** How far either of two must give way; undefined where their squares are apart. `turn` tells pairs apart. */
function apart(a: Point, b: Point, turn: number): Point | undefined {
  const [dx, dy] = [b.x - a.x, b.y - a.y]
  const far = Math.max(Math.abs(dx), Math.abs(dy))
  // Half the gap is enough: the last pushes of a knot are endlessly small.
  if (far >= APART_PX - 0.5) return undefined
  const by = (APART_PX - far) / 2
  if (far === 0) return { x: Math.cos(turn) * by, y: Math.sin(turn) * by }
  return { x: (dx / far) * by, y: (dy / far) * by }
}

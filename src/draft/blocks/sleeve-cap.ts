/**
 * The cap of a set-in sleeve. Each side is two cubics from the top T to the end E of the base
 * line: level at T, level at E, and through a turning point on the straight line between them.
 * The cap's height is solved so that each side is as long as its armhole and its part of the
 * cap ease, while both half widths together are the width of the sleeve.
 *
 * The straight-line rule behind it (R24 of our sources, a pattern-making lesson site): with side
 * lines F and B and the width W, x = (W² + F² − B²)/(2W) and h = √(F² − x²).
 */
import { pathLength } from '../../geometry/length.ts'
import { add, between, norm, point, rotate, scale, subtract, unit } from '../../geometry/point.ts'
import { cubic } from '../../geometry/segment.ts'
import type { Path } from '../../geometry/path.ts'

/** Share of the line from the underarm at which the hollow turns into the round; front is hollower. From memory. */
const TURN = { front: 0.42, back: 0.36 } as const
/** There the curve stands this much steeper than the line. From memory. */
const STEEPER = (14 * Math.PI) / 180
/** Handles as shares of what they span. From memory, drawn for an even curve. */
const HANDLE = { under: 0.55, turn: 0.38, top: 0.55 } as const

export type CapSide = 'front' | 'back'

/** Height and foot of the straight-line triangle; undefined where the sides do not reach across. */
export function capTriangle(
  front: number,
  back: number,
  width: number,
): { readonly foot: number; readonly height: number } | undefined {
  const foot = (width ** 2 + front ** 2 - back ** 2) / (2 * width)
  const square = front ** 2 - foot ** 2
  return square > 0 ? { foot, height: Math.sqrt(square) } : undefined
}

/** From T at (0, 0) to E at (half, height), as if on the front, x to the right. */
export function capSide(side: CapSide, half: number, height: number): Path {
  const [top, end] = [point(0, 0), point(half, height)]
  const turn = between(end, top, TURN[side])
  const way = rotate(unit(subtract(top, end)), point(0, 0), STEEPER)
  const lower = subtract(turn, end)
  const upper = subtract(top, turn)
  return [
    cubic(
      top,
      point(HANDLE.top * -upper.x, 0),
      add(turn, scale(way, HANDLE.turn * norm(upper))),
      turn,
    ),
    cubic(
      turn,
      add(turn, scale(way, -HANDLE.turn * norm(lower))),
      point(end.x + HANDLE.under * lower.x, end.y),
      end,
    ),
  ]
}

export interface Cap {
  readonly height: number
  readonly front: number
  readonly back: number
}

/**
 * Height and half widths of a cap whose sides are `front` and `back` long and whose width is
 * `width`, all mm; undefined where no height gives it.
 */
export function solveCap(front: number, back: number, width: number): Cap | undefined {
  const halfOf = (side: CapSide, long: number, height: number): number | undefined =>
    bisect(1, long, (half) => pathLength(capSide(side, half, height)) - long)
  const across = (height: number): number => {
    const [f, b] = [halfOf('front', front, height), halfOf('back', back, height)]
    // A cap too high for its sides is narrower than any.
    return f === undefined || b === undefined ? -1 : f + b
  }
  const height = bisect(LOWEST, Math.min(front, back), (h) => width - across(h))
  if (height === undefined) return undefined
  const [f, b] = [halfOf('front', front, height), halfOf('back', back, height)]
  return f === undefined || b === undefined ? undefined : { height, front: f, back: b }
}
/** A cap lower than this is a kimono's and no set-in sleeve's, mm. */
const LOWEST = 30

/** Where a rising function is nought; undefined when it is not between the two. */
function bisect(low: number, high: number, of: (x: number) => number): number | undefined {
  if (!(of(low) <= 0 && of(high) >= 0)) return undefined
  let [a, b] = [low, high]
  for (let i = 0; i < ROUNDS; i++) {
    const middle = (a + b) / 2
    if (of(middle) <= 0) a = middle
    else b = middle
  }
  return (a + b) / 2
}
/** Halving so often leaves less than 1e-6 mm of 300. */
const ROUNDS = 30

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
 * A side of the cap keeps its shape when it is drawn larger, so its length is its chord times a
 * number that rests only on how steep the chord lies. That number is measured once, at every half
 * degree, and read between by a cubic through four neighbours (within 1e-8 of the measured one).
 */
const STEEP = {
  least: (2 * Math.PI) / 180,
  most: (85 * Math.PI) / 180,
  step: Math.PI / 360,
} as const
/** Chord at which it is measured, mm: the error of a length then falls to nothing. */
const MEASURED_AT = 1000
const tables: Partial<Record<CapSide, readonly number[]>> = {}

function longerThanChord(side: CapSide, steep: number): number {
  const table = (tables[side] ??= Array.from(
    { length: Math.round((STEEP.most - STEEP.least) / STEEP.step) + 1 },
    (_, i) => {
      const at = STEEP.least + i * STEEP.step
      const path = capSide(side, MEASURED_AT * Math.cos(at), MEASURED_AT * Math.sin(at))
      return pathLength(path) / MEASURED_AT
    },
  ))
  const place = (steep - STEEP.least) / STEEP.step
  const i = Math.min(table.length - 3, Math.max(1, Math.floor(place)))
  const t = place - i
  return (
    (-t * (t - 1) * (t - 2) * table[i - 1]!) / 6 +
    ((t + 1) * (t - 1) * (t - 2) * table[i]!) / 2 -
    ((t + 1) * t * (t - 2) * table[i + 1]!) / 2 +
    ((t + 1) * t * (t - 1) * table[i + 2]!) / 6
  )
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
  const heightOf = (side: CapSide, long: number, steep: number): number =>
    (long / longerThanChord(side, steep)) * Math.sin(steep)
  const halfOf = (side: CapSide, long: number, steep: number): number =>
    (long / longerThanChord(side, steep)) * Math.cos(steep)
  /** The back's steepness for the height of the front's; its ends where it cannot reach. */
  const beside = (steep: number): number => {
    const height = heightOf('front', front, steep)
    return nought(STEEP.least, STEEP.most, (x) => heightOf('back', back, x) - height)
  }
  const over = (steep: number): number =>
    width - halfOf('front', front, steep) - halfOf('back', back, beside(steep))
  if (!(over(STEEP.least) <= 0 && over(STEEP.most) >= 0)) return undefined
  const steep = nought(STEEP.least, STEEP.most, over)
  const cap = {
    height: heightOf('front', front, steep),
    front: halfOf('front', front, steep),
    back: halfOf('back', back, beside(steep)),
  }
  return cap.height >= LOWEST ? cap : undefined
}
/** A cap lower than this is a kimono's and no set-in sleeve's, mm. */
const LOWEST = 30

/**
 * Where a rising function is nought, or the end that is nearer: by false position, the value at an
 * end that stays halved each time (the Illinois rule of Dowell & Jarratt, BIT 11 (1971) 168–174).
 */
function nought(low: number, high: number, of: (x: number) => number): number {
  let [a, b, atA, atB] = [low, high, of(low), of(high)]
  if (atA >= 0) return low
  if (atB <= 0) return high
  let [x, stayed] = [a, 0]
  for (let i = 0; i < ROUNDS; i++) {
    const next = (a * atB - b * atA) / (atB - atA)
    const value = of(next)
    const done = Math.abs(next - x) < NEAR
    x = next
    if (done || value === 0) break
    if (value < 0) {
      ;[a, atA] = [x, value]
      if (stayed > 0) atB /= 2
      stayed = 1
    } else {
      ;[b, atB] = [x, value]
      if (stayed < 0) atA /= 2
      stayed = -1
    }
  }
  return x
}
/** A steepness this near is found, radians; ten rounds are many. */
const NEAR = 1e-11
const ROUNDS = 60

/**
 * The torso as level cross-sections, each a superellipse with its own front and back depth,
 * run smoothly from level to level. Invented numbers for a woman of 1660 mm.
 */
import { length, type Field } from './field.ts'

export const STATURE = 1660
/** Where the cord lies. */
export const WAIST_LEVEL = 1040

interface Level {
  readonly y: number
  /** Half breadth, and where the middle of front and back lie, millimetres. */
  readonly half: number
  readonly front: number
  readonly back: number
  /** Exponent of the superellipse: 2 is an ellipse, more is squarer. */
  readonly square: number
}

const LEVELS: readonly Level[] = [
  { y: 770, half: 150, front: 78, back: -84, square: 2.2 },
  { y: 810, half: 172, front: 92, back: -98, square: 2.25 },
  { y: 850, half: 178, front: 100, back: -104, square: 2.3 },
  { y: 900, half: 172, front: 105, back: -98, square: 2.3 },
  { y: 960, half: 154, front: 110, back: -83, square: 2.25 },
  { y: 1010, half: 139, front: 107, back: -72, square: 2.2 },
  { y: 1040, half: 135, front: 104, back: -70, square: 2.2 },
  { y: 1080, half: 135, front: 101, back: -75, square: 2.2 },
  { y: 1140, half: 138, front: 97, back: -87, square: 2.2 },
  { y: 1200, half: 142, front: 92, back: -97, square: 2.25 },
  { y: 1260, half: 147, front: 84, back: -105, square: 2.3 },
  { y: 1310, half: 146, front: 68, back: -105, square: 2.3 },
  { y: 1350, half: 128, front: 46, back: -97, square: 2.2 },
  { y: 1385, half: 98, front: 26, back: -80, square: 2.1 },
]

/** Catmull-Rom between the levels, so that the sides have no kinks. */
function levelAt(y: number): Omit<Level, 'y'> {
  let i = 0
  while (i < LEVELS.length - 2 && (LEVELS[i + 1]?.y ?? Infinity) < y) i++
  const [p, q] = [LEVELS[i], LEVELS[i + 1]]
  if (!p || !q) throw new Error(`torso: no level at ${y}`)
  const [before, after] = [LEVELS[i - 1] ?? p, LEVELS[i + 2] ?? q]
  const span = q.y - p.y
  const t = Math.min(1, Math.max(0, (y - p.y) / span))
  const [t2, t3] = [t * t, t * t * t]
  const run = (of: (level: Level) => number): number => {
    const into = before === p ? 0 : ((of(q) - of(before)) / (q.y - before.y)) * span
    const out = after === q ? 0 : ((of(after) - of(p)) / (after.y - p.y)) * span
    return (
      of(p) * (2 * t3 - 3 * t2 + 1) +
      into * (t3 - 2 * t2 + t) +
      of(q) * (3 * t2 - 2 * t3) +
      out * (t3 - t2)
    )
  }
  return {
    half: run((l) => l.half),
    front: run((l) => l.front),
    back: run((l) => l.back),
    square: run((l) => l.square),
  }
}

const [LOWEST, HIGHEST] = [LEVELS[0]?.y ?? 0, LEVELS.at(-1)?.y ?? 0]

/** Levels are looked up often, so they are worked out once for every quarter of a millimetre. */
const GRAIN = 0.25
const table = Array.from({ length: Math.round((HIGHEST - LOWEST) / GRAIN) + 1 }, (_, i) =>
  levelAt(LOWEST + i * GRAIN),
)

export const torsoField: Field = (x, y, z) => {
  const level = y < LOWEST ? LOWEST : y > HIGHEST ? HIGHEST : y
  const place = (level - LOWEST) / GRAIN
  const i = Math.min(table.length - 2, Math.floor(place))
  const [low, high] = [table[i], table[i + 1]]
  if (!low || !high) throw new Error(`torso: no table entry ${i}`)
  const f = place - i
  const half = low.half + (high.half - low.half) * f
  const front = low.front + (high.front - low.front) * f
  const back = low.back + (high.back - low.back) * f
  const n = low.square + (high.square - low.square) * f
  const middle = (front + back) / 2
  const deep = (front - back) / 2
  const [u, v] = [Math.abs(x) / half, Math.abs(z - middle) / deep]
  const r = (u ** n + v ** n) ** (1 / n)
  let flat = -Math.min(half, deep)
  if (r > 1e-6) {
    const slope = length((u / r) ** (n - 1) / half, (v / r) ** (n - 1) / deep, 0)
    flat = (r - 1) / slope
  }
  const over = Math.abs(y - level)
  return over === 0 ? flat : length(Math.max(flat, 0), over, 0) + Math.min(flat, 0)
}

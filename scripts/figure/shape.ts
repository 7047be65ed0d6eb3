/**
 * Other bodies from the same figure: every level is drawn wider or deeper and moved up or down, so
 * that neither the proportions nor the build are those the camera road was learnt on. Invented.
 */
import type { Figure } from './body.ts'
import type { Field, Vec } from './field.ts'

/** Factors at some levels of the plain figure (mm above the floor), straight between them. */
export type Knots = readonly (readonly [level: number, factor: number])[]

export interface Shape {
  readonly wide: Knots
  readonly deep: Knots
  /** How long a stretch of height becomes; 1 everywhere leaves the levels where they are. */
  readonly tall: Knots
}

/** Highest level that is mapped, mm: above the crown. */
const TOP = 2000
const GRAIN = 1

/** Straight between knots, then smoothed so that no crease shows in the light. */
function smooth(knots: Knots): (level: number) => number {
  const at = (y: number): number => {
    const k = knots.findIndex(([level]) => level > y)
    if (k === 0) return knots[0]?.[1] ?? 1
    const [a, b] = [knots.at(k === -1 ? -1 : k - 1), knots[k]]
    if (!a || !b) return a?.[1] ?? 1
    return a[1] + ((y - a[0]) / (b[0] - a[0])) * (b[1] - a[1])
  }
  const half = 40
  return (y) => {
    let sum = 0
    for (let d = -half; d <= half; d += 10) sum += at(y + d)
    return sum / 9
  }
}

export interface Warp {
  /** Where a place of the plain figure lies on this one. */
  readonly outer: (plain: Vec) => Vec
  /** The place of the plain figure that became this one. */
  readonly inner: (p: Vec) => Vec
  readonly field: (plain: Field) => Field
}

export function warpOf(shape: Shape): Warp {
  const tall = smooth(shape.tall)
  const heights = [0]
  for (let y = 0; y < TOP; y += GRAIN) heights.push((heights.at(-1) ?? 0) + GRAIN * tall(y))
  const level = (plain: number): number => {
    const k = Math.max(0, Math.min(heights.length - 2, Math.floor(plain / GRAIN)))
    const [a, b] = [heights[k] ?? 0, heights[k + 1] ?? 0]
    return a + (plain / GRAIN - k) * (b - a)
  }
  const plains = Array.from({ length: TOP / GRAIN + 200 }, (_, k) => plainOf(level, k * GRAIN))
  const plain = (y: number): number => {
    if (y <= 0) return y
    const k = Math.min(plains.length - 2, Math.floor(y / GRAIN))
    const [a, b] = [plains[k] ?? 0, plains[k + 1] ?? 0]
    return a + (y / GRAIN - k) * (b - a)
  }
  const tabled = (of: (level: number) => number): ((level: number) => number) => {
    const table = Array.from({ length: TOP + 200 }, (_, y) => of(y))
    return (y) => table[Math.max(0, Math.min(table.length - 1, Math.round(y)))] ?? 1
  }
  const [wide, deep, tallAt] = [smooth(shape.wide), smooth(shape.deep), tall].map(tabled)
  if (!wide || !deep || !tallAt) throw new Error('shape: a factor is missing')
  const inner = ([x, y, z]: Vec): Vec => {
    const own = plain(y)
    return [x / wide(own), own, z / deep(own)]
  }
  const field =
    (of: Field): Field =>
    (x, y, z) => {
      const own = plain(y)
      const [w, d, t] = [wide(own), deep(own), tallAt(own)]
      // Distances in the plain figure are shortened by the least stretch, and a slope costs more.
      return of(x / w, own, z / d) * 0.85 * Math.min(w, d, t)
    }
  const outer = ([x, y, z]: Vec): Vec => [x * wide(y), level(y), z * deep(y)]
  return { outer, inner, field }
}

function plainOf(level: (plain: number) => number, y: number): number {
  let [low, high] = [0, TOP]
  for (let k = 0; k < 40; k++) {
    const half = (low + high) / 2
    if (level(half) < y) low = half
    else high = half
  }
  return (low + high) / 2
}

export function shaped(plain: Figure, { field, inner }: Warp): Figure {
  return {
    ...plain,
    trunk: field(plain.trunk),
    head: field(plain.head),
    hair: field(plain.hair),
    legs: field(plain.legs),
    shoes: field(plain.shoes),
    arms: field(plain.arms),
    all: field(plain.all),
    ...(plain.blouse ? { blouse: field(plain.blouse) } : {}),
    plain: { figure: plain, inner },
  }
}

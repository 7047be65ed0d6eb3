/**
 * From strengths of directions to strokes: crests across, cells of like direction joined along,
 * and of each joined stroke how sure it is to be a fold rather than the roundness of the body.
 */
import { derivatives, strengthAt, strongest, way, DIRECTIONS, type Strongest } from './oriented.ts'
import { CELL_MM, type Field } from './grid.ts'

/** A stroke on the grid: cells in order along it. */
export interface Stroke {
  readonly cells: readonly number[]
  /** Radians counter-clockwise from the right, 0 to pi: an undirected line. */
  readonly angle: number
  readonly lengthMm: number
  /** What the judgement rests on: see `sureness`. */
  readonly features: readonly number[]
  /** Over 0 more likely a fold than not. */
  readonly sure: number
}

/** Scales looked for, and the two beside them that a stroke is judged by, mm across. */
const [FINE, LOOKED_FOR, COARSE] = [1.5, [2.2, 3.6], 7] as const
/** Weaker cells are no crest, in logarithms of light: 0.015 is 1.5 % of the light. */
const LEAST_STRENGTH = 0.015
/** Neighbours are joined when their directions differ by less, radians. */
const LIKE = (25 * Math.PI) / 180
/** And when they lie along the stroke, not beside it. */
const BESIDE = (50 * Math.PI) / 180
const SHORTEST_MM = 18
const LEAST_MEAN = 0.02
/** Two strokes of about one direction that lie on each other for half their cells are one. */
const SAME = { angle: (20 * Math.PI) / 180, mm: 8, share: 0.5 } as const

/**
 * Logistic weights of a stroke's features (mean and spread subtracted first), fitted on half of
 * the rendered pictures (scripts/bench/folds.ts, 14 of 28), the other half checked.
 */
const WEIGHTS = {
  of: [1.111, 0.066, 1.178, 1.265, -0.355],
  mean: [-3.077, 3.52, 2.061, 0.059, -0.63],
  spread: [0.742, 0.532, 0.22, 0.758, 0.553],
  start: -5.654,
}
/** How sure a stroke must be to be shown. */
const SHOWN = 0.7

export function strokes(relief: Field, inside: Uint8Array): readonly Stroke[] {
  const all = candidates(relief, inside).filter(({ sure }) => sure >= SHOWN)
  const kept: Stroke[] = []
  for (const one of all.sort((a, b) => b.sure - a.sure))
    if (!kept.some((other) => same(one, other, relief.width))) kept.push(one)
  return kept
}

/** Every stroke that could be one, with its features; the bench fits the judgement on them. */
export function candidates(relief: Field, inside: Uint8Array): Stroke[] {
  const { width } = relief
  const all = [FINE, ...LOOKED_FOR, COARSE].map((mm) => derivatives(relief, mm))
  return LOOKED_FOR.flatMap((_, k) => {
    const of = all[k + 1]
    if (!of) return []
    const field = strongest(of, inside)
    return joined(crests(field, width), field, width).flatMap((cells): Stroke[] => {
      const angle = meanAngle(cells.map((c) => field.angle[c] ?? 0))
      const [ordered, lengthMm] = along(cells, angle, width)
      const mean = average(cells.map((c) => field.strength[c] ?? 0))
      if (lengthMm < SHORTEST_MM || mean < LEAST_MEAN) return []
      const nearest = Math.round((angle / Math.PI) * DIRECTIONS) % DIRECTIONS
      const [fine, small, , coarse] = all.map((d) => {
        const one = way((Math.PI * nearest) / DIRECTIONS, d.sigma)
        return median(cells.map((c) => strengthAt(d, one, c)))
      })
      const middle = all[2]
      if (!middle || !fine || !small || !coarse) return []
      const one = way((Math.PI * nearest) / DIRECTIONS, middle.sigma)
      const wide = median(cells.map((c) => strengthAt(middle, one, c)))
      const features = [
        Math.log(mean),
        Math.log(lengthMm),
        average(cells.map((c) => field.onesided[c] ?? 0)),
        Math.log(small / coarse),
        Math.log(fine / wide),
      ]
      return [{ cells: ordered, angle, lengthMm, features, sure: sureness(features) }]
    })
  })
}

const sureness = (features: readonly number[]): number =>
  features.reduce(
    (sum, f, k) =>
      sum + ((WEIGHTS.of[k] ?? 0) * (f - (WEIGHTS.mean[k] ?? 0))) / (WEIGHTS.spread[k] ?? 1),
    WEIGHTS.start,
  )

/** Cells stronger than those beside them, one and two cells across. */
function crests({ strength, angle }: Strongest, width: number): number[] {
  const between = (x: number, y: number): number => {
    const [u, v] = [Math.floor(x), Math.floor(y)]
    const [fx, fy] = [x - u, y - v]
    const at = (i: number, j: number): number => strength[(v + j) * width + u + i] ?? 0
    return (
      at(0, 0) * (1 - fx) * (1 - fy) +
      at(1, 0) * fx * (1 - fy) +
      at(0, 1) * (1 - fx) * fy +
      at(1, 1) * fx * fy
    )
  }
  const cells: number[] = []
  for (let k = 0; k < strength.length; k++) {
    const own = strength[k] ?? 0
    if (own <= LEAST_STRENGTH) continue
    const [x, y, a] = [k % width, Math.floor(k / width), angle[k] ?? 0]
    const [nx, ny] = [Math.sin(a), Math.cos(a)]
    if ([-2, -1, 1, 2].every((r) => own >= between(x + r * nx, y + r * ny))) cells.push(k)
  }
  return cells
}

function joined(cells: readonly number[], { angle }: Strongest, width: number): number[][] {
  const place = new Map(cells.map((cell, i) => [cell, i]))
  const leader = cells.map((_, i) => i)
  const lead = (i: number): number => {
    let at = i
    while (leader[at] !== at) at = leader[at] ?? at
    leader[i] = at
    return at
  }
  for (const [i, cell] of cells.entries())
    for (let dy = 0; dy <= 2; dy++)
      for (let dx = dy === 0 ? 1 : -2; dx <= 2; dx++) {
        const j = place.get(cell + dy * width + dx)
        if (j === undefined) continue
        const [a, b] = [angle[cell] ?? 0, angle[cells[j] ?? 0] ?? 0]
        if (apart(a, b) >= LIKE) continue
        const diagonal = dy + Math.abs(dx) > 1
        if (diagonal && apart(Math.atan2(-dy, dx), a) > BESIDE) continue
        leader[lead(i)] = lead(j)
      }
  const groups = new Map<number, number[]>()
  for (const [i, cell] of cells.entries()) {
    const key = lead(i)
    groups.set(key, [...(groups.get(key) ?? []), cell])
  }
  return [...groups.values()].filter((group) => group.length >= 5)
}

/** Between two undirected lines, 0 to a quarter turn. */
export function apart(a: number, b: number): number {
  const d = Math.abs(a - b) % Math.PI
  return Math.min(d, Math.PI - d)
}

function meanAngle(angles: readonly number[]): number {
  const [c, s] = [
    average(angles.map((a) => Math.cos(2 * a))),
    average(angles.map((a) => Math.sin(2 * a))),
  ]
  const angle = Math.atan2(s, c) / 2
  return angle < 0 ? angle + Math.PI : angle
}

function along(
  cells: readonly number[],
  angle: number,
  width: number,
): readonly [ordered: number[], lengthMm: number] {
  const t = (k: number): number =>
    (k % width) * Math.cos(angle) - Math.floor(k / width) * Math.sin(angle)
  const ordered = [...cells].sort((a, b) => t(a) - t(b))
  const [first = 0, last = 0] = [ordered[0], ordered.at(-1)]
  return [ordered, (t(last) - t(first)) * CELL_MM]
}

function same(a: Stroke, b: Stroke, width: number): boolean {
  if (apart(a.angle, b.angle) >= SAME.angle) return false
  const reach = SAME.mm / CELL_MM
  const near = a.cells.filter((p) =>
    b.cells.some(
      (q) =>
        Math.hypot((p % width) - (q % width), Math.floor(p / width) - Math.floor(q / width)) <
        reach,
    ),
  )
  return near.length > SAME.share * a.cells.length
}

const average = (list: readonly number[]): number =>
  list.reduce((sum, value) => sum + value, 0) / Math.max(1, list.length)
function median(list: readonly number[]): number {
  const sorted = [...list].sort((a, b) => a - b)
  return sorted[sorted.length >> 1] ?? 0
}

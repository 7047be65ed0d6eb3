/** The camera bench's figures of each length: error against the tape, and whether the ± kept its word. */
import { ESTIMATE_IDS, type EstimateId } from '../../../src/measurements/estimate.ts'
import { truthOf } from '../../estimate/compare.ts'

export interface JudgedBody {
  readonly name: string
  readonly estimates: Readonly<Partial<Record<EstimateId, { value: number; pm90: number }>>>
  readonly naive: Readonly<Partial<Record<EstimateId, number>>>
  readonly truth: Readonly<Record<string, number>>
}
export interface LengthFigures {
  readonly n: number
  readonly refused: number
  /** Estimate less truth, mm. */
  readonly bias?: number
  readonly mae?: number
  readonly worst?: number
  /** Share of true values within the stated ±. */
  readonly inside90?: number
  /** How many are wrong by more than three times the stated ±. */
  readonly over3Pm?: number
  readonly medianPm90?: number
  /** Mean absolute error when only the card's own scale is used. */
  readonly naiveMae?: number
}
export type GroupFigures = Partial<Record<EstimateId, LengthFigures>>

interface Miss {
  readonly error: number
  readonly pm90: number
}

export function groupFigures(bodies: readonly JudgedBody[]): GroupFigures {
  const rows = ESTIMATE_IDS.flatMap((id) => {
    const known = bodies.filter(({ truth }) => truthOf(id, truth) !== undefined)
    return known.length > 0 ? [[id, lengthFigures(known, id)] as const] : []
  })
  return Object.fromEntries(rows)
}

function lengthFigures(bodies: readonly JudgedBody[], id: EstimateId): LengthFigures {
  const misses = bodies.flatMap((body) => missOf(body, id) ?? [])
  const naive = bodies.flatMap(({ naive, truth }) => {
    const value = naive[id]
    return value === undefined ? [] : [Math.abs(value - (truthOf(id, truth) ?? NaN))]
  })
  const counts = { n: misses.length, refused: bodies.length - misses.length }
  if (misses.length === 0) return counts
  const sizes = misses.map(({ error }) => Math.abs(error))
  return {
    ...counts,
    bias: tenth(mean(misses.map(({ error }) => error))),
    mae: tenth(mean(sizes)),
    worst: tenth(Math.max(...sizes)),
    inside90: share(misses.map(inside)),
    over3Pm: misses.filter(({ error, pm90 }) => Math.abs(error) > 3 * pm90).length,
    medianPm90: tenth(median(misses.map(({ pm90 }) => pm90))),
    ...(naive.length > 0 ? { naiveMae: tenth(mean(naive)) } : {}),
  }
}

/** Share of all lengths of all bodies that lie within their own ±. */
export function pooledInside(bodies: readonly JudgedBody[]): number {
  return share(
    ESTIMATE_IDS.flatMap((id) => bodies.flatMap((body) => missOf(body, id) ?? [])).map(inside),
  )
}

export function missOf({ estimates, truth }: JudgedBody, id: EstimateId): Miss | undefined {
  const [estimate, tape] = [estimates[id], truthOf(id, truth)]
  if (!estimate || tape === undefined) return undefined
  return { error: estimate.value - tape, pm90: estimate.pm90 }
}

const inside = ({ error, pm90 }: Miss): boolean => Math.abs(error) <= pm90
const mean = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / values.length
const share = (held: readonly boolean[]): number =>
  Math.round(1000 * mean(held.map((yes) => (yes ? 1 : 0)))) / 1000
const tenth = (value: number): number => Math.round(value * 10) / 10

function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b)
  const half = sorted.length >> 1
  const upper = sorted[half] ?? NaN
  return sorted.length % 2 === 1 ? upper : (upper + (sorted[half - 1] ?? upper)) / 2
}

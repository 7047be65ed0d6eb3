/** Estimates against tape measurements that lie beside the photographs. mm. */
import { ESTIMATE_IDS, type EstimateId } from '../../src/measurements/estimate.ts'

export interface Judged {
  readonly estimates: Readonly<Partial<Record<EstimateId, { value: number; pm90: number }>>>
  readonly truth: Readonly<Record<string, number>> | undefined
}
export interface Figures {
  readonly n: number
  readonly mean: number
  readonly meanAbs: number
  readonly maxAbs: number
  /** Share of the true values that lie within the estimate's own ±. */
  readonly inside: number
}

type Measures = Readonly<Record<string, number>>

/** The truth files name the way the tape lies; our ids do not. */
const TRUTH_NAME: Readonly<Partial<Record<EstimateId, string>>> = {
  napeToWaist: 'napeToWaistTaut',
  waistToBustLevel: 'waistToBustVertical',
  sideNeckToApex: 'sideNeckToApexTaut',
  // The rendered bodies are the same on both sides.
  shoulderLengthLeft: 'shoulderLength',
  shoulderLengthRight: 'shoulderLength',
}

/** Lengths put together from those the truth files hold. */
function madeUp(id: EstimateId, m: Measures): number | undefined {
  const of = (name: string): number => m[name] ?? NaN
  switch (id) {
    case 'sideNeckOverApexToWaist':
      return of('sideNeckToApexTaut') + of('waistToBustTaut')
    case 'shoulderSlopeLeft':
    case 'shoulderSlopeRight':
      return of('shoulderLengthChord') * Math.sin((of('shoulderSlopeDeg') * Math.PI) / 180)
    case 'waistToHip':
      return Math.hypot(
        of('waistLevel') - of('hipLevel'),
        (of('hipBreadth') - of('waistBreadth')) / 2,
      )
    default:
      return undefined
  }
}

/** What an estimate should have said, mm; undefined where the truth file does not hold it. */
export function truthOf(id: EstimateId, measures: Measures | undefined): number | undefined {
  if (!measures) return undefined
  const value = madeUp(id, measures) ?? measures[TRUTH_NAME[id] ?? id]
  return value !== undefined && Number.isFinite(value) ? value : undefined
}

const round = (value: number, digits: number): number => Number(value.toFixed(digits))

export function figures(bodies: readonly Judged[]): Partial<Record<EstimateId | 'all', Figures>> {
  const errors = (id: EstimateId) =>
    bodies.flatMap(({ estimates, truth }) => {
      const [estimate, true_] = [estimates[id], truthOf(id, truth)]
      if (!estimate || true_ === undefined) return []
      return [{ error: estimate.value - true_, pm90: estimate.pm90 }]
    })
  const all = ESTIMATE_IDS.flatMap(errors)
  const rows = [...ESTIMATE_IDS.map((id) => [id, errors(id)] as const), ['all', all] as const]
  return Object.fromEntries(
    rows.flatMap(([id, list]) => (list.length > 0 ? [[id, sum(list)]] : [])),
  )
}

function sum(list: readonly { error: number; pm90: number }[]): Figures {
  const mean = (values: readonly number[]): number =>
    values.reduce((total, value) => total + value, 0) / values.length
  return {
    n: list.length,
    mean: round(mean(list.map(({ error }) => error)), 1),
    meanAbs: round(mean(list.map(({ error }) => Math.abs(error))), 1),
    maxAbs: round(Math.max(...list.map(({ error }) => Math.abs(error))), 1),
    inside: round(mean(list.map(({ error, pm90 }) => (Math.abs(error) <= pm90 ? 1 : 0))), 3),
  }
}

/** The numbers of one body, and the common road by which they become measurements that agree. */
import { addTape, emptyBook } from '../../../src/measurements/book.ts'
import {
  measure,
  MEASUREMENT_IDS,
  type MeasurementId,
} from '../../../src/measurements/catalogue.ts'
import { confirm, type Confirmed } from '../../../src/measurements/confirmed.ts'
import { mm } from '../../../src/units/length.ts'

export type Numbers = Readonly<Partial<Record<MeasurementId, number>>>
export interface BodySet {
  readonly name: string
  readonly bodies: readonly Numbers[]
  /** How the numbers came about that were not read with a tape. */
  readonly derived: Readonly<Partial<Record<MeasurementId, string>>>
}

/** The day the bench pretends to tape; nothing depends on it. */
const READ_ON = '2026-01-01'

export function numberOf(numbers: Numbers, id: MeasurementId): number {
  const value = numbers[id]
  if (value === undefined) throw new Error(`bench: ${id} is not among the numbers of this body`)
  return value
}

/** Two equal readings of each number, then what agrees of `needs` and `uses`, as she would do it. */
export function taped(
  numbers: Numbers,
  needs: readonly MeasurementId[],
  uses: readonly MeasurementId[],
): Confirmed {
  let book = emptyBook()
  for (const id of MEASUREMENT_IDS) {
    const value = numbers[id]
    if (value === undefined) continue
    book = addTape(addTape(book, id, mm(value), READ_ON), id, mm(value), READ_ON)
  }
  const outcome = confirm(book, needs, uses)
  if (!outcome.ok) throw new Error(outcome.missing.map(({ why }) => why).join(' '))
  return outcome.body
}

export interface Spread {
  readonly n: number
  readonly mean: number
  readonly sd: number
  readonly least: number
  readonly most: number
}
export function spreadOf(values: readonly number[]): Spread {
  const n = values.length
  const mean = values.reduce((sum, v) => sum + v, 0) / n
  const sd = Math.sqrt(values.reduce((sum, v) => sum + (v - mean) ** 2, 0) / (n - 1))
  return { n, mean, sd, least: Math.min(...values), most: Math.max(...values) }
}

const cell = (value: number | string): string =>
  (typeof value === 'number' ? value.toFixed(1) : value).padStart(8)

/** Mean, spread and extremes of every measurement of a set, and the balance of front and back. */
export function describe({ name, bodies, derived }: BodySet): string[] {
  const rows = MEASUREMENT_IDS.flatMap((id) => {
    const values = bodies.flatMap((b) => b[id] ?? [])
    if (values.length === 0) return []
    const { mean, sd, least, most } = spreadOf(values)
    const { min, max } = measure(id).plausible
    const beyond = values.filter((v) => v < min || v > max).length
    const told = [mean, sd, least, most, String(beyond)].map(cell).join('')
    return [`${id.padEnd(26)}${told}  ${derived[id] ?? 'taped'}`]
  })
  const head = ['mean', 'SD', 'least', 'most', 'beyond'].map(cell).join('')
  return [`${name}, ${bodies.length} bodies`, `${''.padEnd(26)}${head}`, ...rows, balance(bodies)]
}

/** Front over the apex less back over the blade; in the 7th Korean body survey −3.1, SD 19.7, 56 %. */
function balance(bodies: readonly Numbers[]): string {
  const values = bodies.map(
    (b) => numberOf(b, 'sideNeckOverApexToWaist') - numberOf(b, 'sideNeckOverBladeToWaist'),
  )
  const { mean, sd, least, most } = spreadOf(values)
  const share = (100 * values.filter((v) => v < 0).length) / values.length
  const over = (100 * values.filter((v) => v > 20).length) / values.length
  return `${'front less back length'.padEnd(26)}${[mean, sd, least, most].map(cell).join('')}  front shorter ${share.toFixed(1)} %, longer by more than 20 mm ${over.toFixed(1)} %`
}

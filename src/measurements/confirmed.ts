/**
 * The numbers a draft is made from. `Confirmed` is made here only, from readings of the tape
 * that agree, and carries those readings so that a stored one can be made again from them.
 * `Preview` may rest on estimates; a draft can be looked at from it, and never cut.
 *
 * Both are classes with a private field, because a private field is the one mark that neither
 * an object literal nor a spread copy can carry: such a copy does not compile.
 */
import { measurementAmount, type Amount } from '../units/amount.ts'
import { mm, type Mm } from '../units/length.ts'
import {
  agreedValue,
  keptReadings,
  nearestMean,
  whyNotAgreed,
  type Book,
  type TapeReading,
} from './book.ts'
import { isMeasurementId, measure, MEASUREMENT_IDS, type MeasurementId } from './catalogue.ts'
import { isRecord, parseReadings } from './stored.ts'
import { STORED_WORDS } from './stored.words.ts'

type Values = Readonly<Partial<Record<MeasurementId, Mm>>>
type Readings = Readonly<Partial<Record<MeasurementId, readonly TapeReading[]>>>

class ConfirmedBody {
  readonly v = 1
  readonly standing = 'confirmed'
  readonly #taped = true
  /** Agreed values of what was asked for, and of nothing else. */
  readonly values: Values
  /** The readings that count, from which `values` follow. */
  readonly readings: Readings
  /** ISO date of the latest reading. */
  readonly on: string

  constructor(values: Values, readings: Readings, on: string) {
    this.values = Object.freeze(values)
    this.readings = Object.freeze(readings)
    this.on = on
    Object.freeze(this)
  }
  static made(body: object): boolean {
    return #taped in body
  }
}

class PreviewBody {
  readonly standing = 'preview'
  readonly #shown = true
  readonly values: Values
  /** Where each value comes from; 'tape' says read, not that two readings agree. */
  readonly basis: Readonly<Partial<Record<MeasurementId, 'tape' | 'camera'>>>

  constructor(values: Values, basis: PreviewBody['basis']) {
    this.values = Object.freeze(values)
    this.basis = Object.freeze(basis)
    Object.freeze(this)
  }
  static made(body: object): boolean {
    return #shown in body
  }
}

export type Confirmed = ConfirmedBody
export type Preview = PreviewBody
export type Body = Confirmed | Preview

export interface Missing {
  readonly id: MeasurementId
  readonly why: string
}
export type Confirmation =
  | { readonly ok: true; readonly body: Confirmed }
  | { readonly ok: false; readonly missing: readonly Missing[] }

/** Makes the numbers for a draft; all of `needed` must agree, of `optional` those that do enter. */
export function confirm(
  book: Book,
  needed: readonly MeasurementId[],
  optional: readonly MeasurementId[],
): Confirmation {
  const missing = needed
    .filter((id) => agreedValue(book[id], id) === undefined)
    .map((id) => ({ id, why: whyNotAgreed(book[id], id) }))
  if (missing.length > 0) return { ok: false, missing }
  const readings: Partial<Record<MeasurementId, readonly TapeReading[]>> = {}
  for (const id of [...needed, ...optional]) {
    if (agreedValue(book[id], id) === undefined) continue
    readings[id] = keptReadings(book[id], id).map(({ reading }) => reading)
  }
  const body = fromReadings(readings)
  if (body) return { ok: true, body }
  if (optional.length === 0) throw new Error('confirm: asked for no measurement at all')
  return { ok: false, missing: optional.map((id) => ({ id, why: whyNotAgreed(book[id], id) })) }
}

/** A stored body made again from its own readings; a value they do not give is refused. */
export function parseConfirmed(
  stored: unknown,
):
  | { readonly ok: true; readonly body: Confirmed }
  | { readonly ok: false; readonly reason: string } {
  if (!isRecord(stored) || stored.v !== 1 || stored.standing !== 'confirmed') {
    return { ok: false, reason: STORED_WORDS.notConfirmed }
  }
  if (!isRecord(stored.readings) || !isRecord(stored.values)) {
    return { ok: false, reason: STORED_WORDS.lostReadings }
  }
  const readings: Partial<Record<MeasurementId, readonly TapeReading[]>> = {}
  for (const [name, list] of Object.entries(stored.readings)) {
    if (!isMeasurementId(name)) return { ok: false, reason: STORED_WORDS.notInCatalogue(name) }
    const parsed = parseReadings(name, list)
    if (!parsed.ok) return parsed
    if (agreedValue({ tape: parsed.value }, name) === undefined) {
      return { ok: false, reason: STORED_WORDS.disagree(name) }
    }
    readings[name] = parsed.value
  }
  const body = fromReadings(readings)
  if (!body) return { ok: false, reason: STORED_WORDS.noReading }
  const wrong = firstDifference(stored.values, body.values)
  if (wrong) return { ok: false, reason: STORED_WORDS.otherNumber(wrong) }
  return { ok: true, body }
}

/** For looking at: the tape where there is one, agreed or not, else the camera. */
export function preview(book: Book): Preview {
  const values: Partial<Record<MeasurementId, Mm>> = {}
  const basis: Partial<Record<MeasurementId, 'tape' | 'camera'>> = {}
  for (const id of MEASUREMENT_IDS) {
    const taped = nearestMean(book[id], id)
    const value = taped ?? book[id]?.proposal?.estimate.value
    if (value === undefined) continue
    values[id] = value
    basis[id] = taped === undefined ? 'camera' : 'tape'
  }
  return new PreviewBody(values, basis)
}

const OF_BOTH: readonly (readonly [left: MeasurementId, right: MeasurementId])[] = [
  ['shoulderLengthLeft', 'shoulderLengthRight'],
  ['shoulderSlopeLeft', 'shoulderSlopeRight'],
]

/**
 * Do left and right count as one? They do while two readings of one length might lie so far apart:
 * within the tolerance of the measurement itself, 3 mm along the shoulder and 6 mm of its drop.
 */
export const sidesAgree = (body: Body): boolean =>
  OF_BOTH.every(([left, right]) => {
    const [l, r] = [body.values[left], body.values[right]]
    return l === undefined || r === undefined || Math.abs(l - r) <= measure(left).tolerance.value
  })

/** The same body with the numbers of one side only, where both sides are taped. */
export function bodyOfSide(body: Confirmed, side: 'left' | 'right'): Confirmed {
  const unused = OF_BOTH.flatMap(([left, right]) =>
    knows(body, left) && knows(body, right) ? [side === 'left' ? right : left] : [],
  )
  const kept = Object.entries(body.readings).filter(([id]) => !unused.some((u) => u === id))
  return fromReadings(Object.fromEntries(kept)) ?? body
}

/** The value of a measurement; a body that was not asked for it is our own mistake. */
export function lengthOf(body: Body, id: MeasurementId): Mm {
  if (!ConfirmedBody.made(body) && !PreviewBody.made(body)) {
    throw new Error(`lengthOf: ${id} asked of something that neither the tape nor a preview made`)
  }
  const value = body.values[id]
  if (value === undefined) throw new Error(`lengthOf: ${id} is not in this ${body.standing} body`)
  return value
}

export const knows = (body: Body, id: MeasurementId): boolean => body.values[id] !== undefined

/** A measurement as an amount that remembers its id, in the words of a drafting step. */
export const measured = (body: Body, id: MeasurementId): Amount =>
  measurementAmount(id, measure(id).spoken, lengthOf(body, id))

function fromReadings(readings: Readings): Confirmed | undefined {
  const values: Partial<Record<MeasurementId, Mm>> = {}
  let latest = ''
  for (const id of MEASUREMENT_IDS) {
    const tape = readings[id]
    const value = tape && agreedValue({ tape }, id)
    if (!tape || value === undefined) continue
    values[id] = value
    for (const { on } of tape) latest = on > latest ? on : latest
  }
  return latest === '' ? undefined : new ConfirmedBody(values, readings, latest)
}

/** Recomputed and stored values are equal to the bit on one program; a nanometre covers the rest. */
const SAME = mm(1e-6)

function firstDifference(
  stored: Readonly<Record<string, unknown>>,
  made: Values,
): string | undefined {
  const names = new Set([...Object.keys(stored), ...Object.keys(made)])
  for (const name of names) {
    const [a, b] = [stored[name], isMeasurementId(name) ? made[name] : undefined]
    if (typeof a !== 'number' || b === undefined || !(Math.abs(a - b) <= SAME)) return name
  }
  return undefined
}

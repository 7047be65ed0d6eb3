/**
 * Reading stored tape readings back. A stored record is somebody else's word until every value
 * in it has been looked at; nothing here is cast.
 */
import { mm } from '../units/length.ts'
import {
  isIsoDate,
  type Book,
  type Doubt,
  type Entry,
  type Proposal,
  type TapeReading,
} from './book.ts'
import { isMeasurementId, type MeasurementId } from './catalogue.ts'
import { STORED_WORDS } from './stored.words.ts'

export type Parsed<T> =
  { readonly ok: true; readonly value: T } | { readonly ok: false; readonly reason: string }

/** Beyond these no tape was read: half a centimetre, and the 3 m of a long sewing tape. */
const SHORTEST_READING = mm(5)
const LONGEST_READING = mm(3000)

/** The whole book, withdrawn readings and proposals included. */
export function parseBook(stored: unknown): Parsed<Book> {
  if (!isRecord(stored)) return { ok: false, reason: STORED_WORDS.bookNoRecord }
  const book: Partial<Record<MeasurementId, Entry>> = {}
  for (const [name, entry] of Object.entries(stored)) {
    if (!isMeasurementId(name)) return { ok: false, reason: STORED_WORDS.notInCatalogue(name) }
    const parsed = parseEntry(name, entry)
    if (!parsed.ok) return parsed
    book[name] = parsed.value
  }
  return { ok: true, value: book }
}

/** The readings of one measurement, in their order. */
export function parseReadings(id: MeasurementId, stored: unknown): Parsed<readonly TapeReading[]> {
  if (!Array.isArray(stored)) return { ok: false, reason: STORED_WORDS.noReadings(id) }
  const readings: TapeReading[] = []
  for (const item of stored as readonly unknown[]) {
    const reading = parseReading(item)
    if (!reading) return { ok: false, reason: STORED_WORDS.notReading(id, shown(item)) }
    readings.push(reading)
  }
  return { ok: true, value: readings }
}

function parseEntry(id: MeasurementId, stored: unknown): Parsed<Entry> {
  if (!isRecord(stored)) return { ok: false, reason: STORED_WORDS.noRecord(id) }
  const tape = parseReadings(id, stored.tape)
  if (!tape.ok) return tape
  const proposal = stored.proposal === undefined ? undefined : parseProposal(stored.proposal)
  if (stored.proposal !== undefined && !proposal)
    return { ok: false, reason: STORED_WORDS.notEstimate(id, shown(stored.proposal)) }
  const doubts = stored.doubts === undefined ? undefined : parseDoubts(stored.doubts)
  if (stored.doubts !== undefined && !doubts)
    return { ok: false, reason: STORED_WORDS.notDoubts(id, shown(stored.doubts)) }
  return {
    ok: true,
    value: { ...(proposal && { proposal }), ...(doubts && { doubts }), tape: tape.value },
  }
}

function parseDoubts(stored: unknown): readonly Doubt[] | undefined {
  if (!Array.isArray(stored)) return undefined
  const doubts = stored.map(parseDoubt)
  return doubts.every((d) => d !== undefined) ? doubts : undefined
}

function parseDoubt(stored: unknown): Doubt | undefined {
  if (!isRecord(stored)) return undefined
  const { by, complaint, on, readings } = stored
  if (typeof complaint !== 'string' || !isDate(on)) return undefined
  if (typeof readings !== 'number' || !Number.isInteger(readings) || readings < 0) return undefined
  if (by !== undefined && !(typeof by === 'number' && Math.abs(by) <= LONGEST_READING))
    return undefined
  return { ...(by !== undefined && { by: mm(by) }), complaint, on, readings }
}

function parseReading(stored: unknown): TapeReading | undefined {
  if (!isRecord(stored)) return undefined
  const { value, on, definition, withdrawn } = stored
  if (!isReadingValue(value) || !isDate(on) || typeof definition !== 'string') return undefined
  if (withdrawn !== undefined && withdrawn !== true) return undefined
  return { value: mm(value), on, definition, ...(withdrawn && { withdrawn }) }
}

function parseProposal(stored: unknown): Proposal | undefined {
  if (!isRecord(stored) || !isDate(stored.on) || !isRecord(stored.estimate)) return undefined
  const { value, pm90, basis } = stored.estimate
  if (!isReadingValue(value) || typeof pm90 !== 'number' || !(pm90 >= 0)) return undefined
  if (!Number.isFinite(pm90) || typeof basis !== 'string') return undefined
  const { tapeStandsOn, reading, after } = stored
  if (tapeStandsOn !== undefined && !isDate(tapeStandsOn)) return undefined
  if (reading !== undefined && typeof reading !== 'string') return undefined
  if (after !== undefined && !isNames(after)) return undefined
  return {
    estimate: { value: mm(value), pm90: mm(pm90), basis },
    on: stored.on,
    ...(reading !== undefined && { reading }),
    ...(after !== undefined && { after }),
    ...(tapeStandsOn !== undefined && { tapeStandsOn }),
  }
}

export const isRecord = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && !Array.isArray(value)
const isDate = (value: unknown): value is string => typeof value === 'string' && isIsoDate(value)
const isNames = (value: unknown): value is readonly string[] =>
  Array.isArray(value) && value.every((name) => typeof name === 'string')
const isReadingValue = (value: unknown): value is number =>
  typeof value === 'number' && value >= SHORTEST_READING && value <= LONGEST_READING
const shown = (value: unknown): string => JSON.stringify(value) ?? String(value)

/**
 * The tape book: for each measurement what the camera proposed and every reading of the tape.
 * Nothing is thrown away: a reading taken back stays, marked as withdrawn. The book is plain
 * frozen data; every function returns a new one.
 *
 * Two readings agree when they differ by no more than the tolerance of the catalogue. When
 * they do not, a third is taken and the two nearest of all readings decide.
 */
import { inches, mm, type Mm } from '../units/length.ts'
import { BOOK_WORDS } from './book.words.ts'
import { measure, MEASUREMENT_IDS, type MeasurementId } from './catalogue.ts'
import type { Estimate, EstimateId, EstimateOutcomes } from './estimate.ts'

export interface TapeReading {
  readonly value: Mm
  /** ISO date on which it was read. */
  readonly on: string
  /** The catalogue's definition at that time; a reading of another definition does not count. */
  readonly definition: string
  readonly withdrawn?: true
}
export interface Proposal {
  readonly estimate: Estimate
  readonly on: string
  /** The reading of photos it is from, by a name of its own; books of before readings were named lack it. */
  readonly reading?: string
  /** The readings it came after: by these two books tell which is the later, whatever the clock said. */
  readonly after?: readonly string[]
  /** Asked which is right, she said on this day: the tape. A newer proposal may ask again. */
  readonly tapeStandsOn?: string
}
/** What a muslin told of a number: that it is off, and by how much where it tells that. */
export interface Doubt {
  /** So much more than was taped, mm; undefined where it is only in doubt. */
  readonly by?: Mm
  /** The complaint behind it, by its id. */
  readonly complaint: string
  readonly on: string
  /** Readings there were; one taken after them answers it. */
  readonly readings: number
}
export interface Entry {
  readonly proposal?: Proposal
  readonly doubts?: readonly Doubt[]
  readonly tape: readonly TapeReading[]
}
export type Book = Readonly<Partial<Record<MeasurementId, Entry>>>

export type Standing = 'untaped' | 'oneReading' | 'agreed' | 'onceMore'

/** A reading with its place in the entry, which is what `withdrawTape` wants. */
export interface KeptReading {
  readonly index: number
  readonly reading: TapeReading
}

/** Printed fractions of an inch carry no exact millimetres; a nanometre is no disagreement. */
const SLACK = 1e-6

/** The coarsest ruler in use; neighbouring marks of it never disagree, whatever the tolerance. */
const ONE_MARK = inches(1 / 8)

export const emptyBook = (): Book => ({})

/** Writes down what the camera says; the newest proposal replaces the one before. */
export function propose(
  book: Book,
  id: MeasurementId,
  estimate: Estimate,
  on: string,
  reading: string,
): Book {
  const entry = entryOf(book, id)
  const after = entry.proposal ? readingsTo(entry.proposal) : []
  return { ...book, [id]: { ...entry, proposal: { estimate, on: isoDate(on), reading, after } } }
}
/** The readings of photos up to this one, and it. */
export const readingsTo = ({ reading, after = [] }: Proposal): readonly string[] =>
  reading === undefined ? after : [...after, reading]

/** Writes down every estimate of a set of photographs that belongs to a tape measurement. */
export function proposeAll(
  book: Book,
  outcomes: EstimateOutcomes,
  on: string,
  reading: string,
): Book {
  let next = book
  for (const [from, ids] of Object.entries(PROPOSED_TO)) {
    const outcome = outcomes[from as keyof typeof PROPOSED_TO]
    if (outcome.ok) for (const id of ids) next = propose(next, id, outcome.estimate, on, reading)
  }
  return next
}

/** Adds one reading of the tape. A value that is no length is our own mistake: fields parse. */
export function addTape(book: Book, id: MeasurementId, value: Mm, on: string): Book {
  if (!Number.isFinite(value) || value <= 0) {
    throw new Error(`addTape: ${value} mm is not a reading of ${id}`)
  }
  const entry = entryOf(book, id)
  const reading = { value, on: isoDate(on), definition: measure(id).definition }
  return { ...book, [id]: { ...entry, tape: [...entry.tape, reading] } }
}

/** What is said of a number and not yet written down with it. */
export type NewDoubt = Omit<Doubt, 'readings'> & { readonly measurement: MeasurementId }

/** Writes down which numbers a muslin doubts; it drives nothing until the tape has spoken. */
export function doubtAll(book: Book, list: readonly NewDoubt[]): Book {
  return list.reduce((now, { measurement, on, ...said }) => {
    const entry = entryOf(now, measurement)
    const doubt = { ...said, on: isoDate(on), readings: entry.tape.length }
    const rest = (entry.doubts ?? []).filter((d) => d.complaint !== said.complaint || d.on !== on)
    return { ...now, [measurement]: { ...entry, doubts: [...rest, doubt] } }
  }, book)
}

/** Doubts that no reading has answered since, the newest first. */
export function openDoubts(entry: Entry | undefined, id: MeasurementId): readonly Doubt[] {
  const last = Math.max(-1, ...keptReadings(entry, id).map(({ index }) => index))
  return (entry?.doubts ?? []).filter(({ readings }) => last < readings).toReversed()
}

/** Numbers that a muslin doubted and the tape has answered since: their readings stand. */
export const answeredByTape = (book: Book): readonly MeasurementId[] =>
  MEASUREMENT_IDS.filter(
    (id) => (book[id]?.doubts ?? []).length > 0 && openDoubts(book[id], id).length === 0,
  )

/** Takes a reading back; it stays in the book, marked. `index` counts all readings from 0. */
export function withdrawTape(book: Book, id: MeasurementId, index: number): Book {
  const entry = entryOf(book, id)
  if (!entry.tape[index]) throw new Error(`withdrawTape: ${id} has no reading ${index}`)
  const tape = entry.tape.map((reading, i) =>
    i === index ? { ...reading, withdrawn: true as const } : reading,
  )
  return { ...book, [id]: { ...entry, tape } }
}

/** The readings that count: not withdrawn, and taken under the definition still in use. */
export function keptReadings(entry: Entry | undefined, id: MeasurementId): readonly KeptReading[] {
  const { definition } = measure(id)
  return (entry?.tape ?? [])
    .map((reading, index) => ({ index, reading }))
    .filter(({ reading }) => !reading.withdrawn && reading.definition === definition)
}

export function standing(entry: Entry | undefined, id: MeasurementId): Standing {
  const values = keptReadings(entry, id).map(({ reading }) => reading.value)
  if (values.length === 0) return 'untaped'
  if (values.length === 1) return measure(id).readingsNeeded === 1 ? 'agreed' : 'oneReading'
  return nearestGap(values) <= allowedGap(id) ? 'agreed' : 'onceMore'
}

/** Whether any number was ever taped or read from a photo. */
export const tapeBegun = (book: Book): boolean => Object.keys(book).length > 0

/** The number a draft may use: the mean of the two nearest readings, once they agree. */
export function agreedValue(entry: Entry | undefined, id: MeasurementId): Mm | undefined {
  return standing(entry, id) === 'agreed' ? nearestMean(entry, id) : undefined
}

/** The mean of the two nearest readings, agreed or not; one reading is its own mean. */
export function nearestMean(entry: Entry | undefined, id: MeasurementId): Mm | undefined {
  const values = keptReadings(entry, id).map(({ reading }) => reading.value)
  const [first] = values
  if (first === undefined || values.length === 1) return first
  const gap = nearestGap(values)
  // Equally near pairs, as in 10, 11, 12, weigh the same; the order of taping decides nothing.
  const means = pairs(values)
    .filter(([a, b]) => b - a <= gap + SLACK)
    .map(([a, b]) => (a + b) / 2)
  return mm(means.reduce((sum, mean) => sum + mean, 0) / means.length)
}

/** How far apart the two nearest readings are; undefined with fewer than two. */
export function spread(entry: Entry | undefined, id: MeasurementId): Mm | undefined {
  const values = keptReadings(entry, id).map(({ reading }) => reading.value)
  return values.length < 2 ? undefined : mm(nearestGap(values))
}

/**
 * The photo's number where the tape lies further from it than twice its ±, and she has not said
 * which is right. Either may be wrong, so this asks and stops nothing.
 * Twice the half width of 90 %: by chance alone once in a thousand (normal distribution).
 */
export function photoDiffers(entry: Entry | undefined, id: MeasurementId): Estimate | undefined {
  const taped = nearestMean(entry, id)
  const proposal = entry?.proposal
  if (taped === undefined || !proposal || proposal.tapeStandsOn !== undefined) return undefined
  const { value, pm90 } = proposal.estimate
  return Math.abs(taped - value) > 2 * pm90 + SLACK ? proposal.estimate : undefined
}

/** She said that the tape is right; the proposal stays in the book, and asks no more. */
export function tapeStands(book: Book, id: MeasurementId, on: string): Book {
  const entry = entryOf(book, id)
  if (!entry.proposal) throw new Error(`tapeStands: no photo says anything of ${id}`)
  return { ...book, [id]: { ...entry, proposal: { ...entry.proposal, tapeStandsOn: isoDate(on) } } }
}

/** She takes that back: the proposal asks again. */
export function askAgain(book: Book, id: MeasurementId): Book {
  const entry = entryOf(book, id)
  if (!entry.proposal) return book
  const { tapeStandsOn: _said, ...proposal } = entry.proposal
  return { ...book, [id]: { ...entry, proposal } }
}

/** Neither is trusted: every reading is withdrawn, and it is taped anew. */
export function tapeAnew(book: Book, id: MeasurementId): Book {
  return keptReadings(book[id], id).reduce((b, { index }) => withdrawTape(b, id, index), book)
}

/** What is still to be done before a draft may use this measurement. */
export function whyNotAgreed(entry: Entry | undefined, id: MeasurementId): string {
  switch (standing(entry, id)) {
    case 'oneReading':
      return BOOK_WORDS.oneReading(id)
    case 'onceMore':
      return BOOK_WORDS.tooFarApart(id)
    case 'untaped':
      return entry?.proposal ? BOOK_WORDS.guess(id) : BOOK_WORDS.untaped(id)
    case 'agreed':
      return BOOK_WORDS.agreed(id)
  }
}

const allowedGap = (id: MeasurementId): number =>
  Math.max(measure(id).tolerance.value, ONE_MARK) + SLACK

const entryOf = (book: Book, id: MeasurementId): Entry => book[id] ?? { tape: [] }

const nearestGap = (values: readonly Mm[]): number =>
  Math.min(...pairs(values).map(([a, b]) => b - a))

/** Neighbours in order of size: no other pair can be nearer. */
function pairs(values: readonly Mm[]): readonly (readonly [number, number])[] {
  const sorted = [...values].sort((a, b) => a - b)
  return sorted.slice(1).map((value, i) => [sorted[i] ?? value, value] as const)
}

/** Which measurement of the book each estimate is about. */
const PROPOSED_TO = {
  napeToWaist: ['napeToWaist'],
  waistToBustLevel: ['waistToBustLevel'],
  apexSpacing: ['apexSpacing'],
  sideNeckToApex: ['sideNeckToApex'],
  sideNeckOverApexToWaist: ['sideNeckOverApexToWaist'],
  shoulderLengthLeft: ['shoulderLengthLeft'],
  shoulderLengthRight: ['shoulderLengthRight'],
  shoulderSlopeLeft: ['shoulderSlopeLeft'],
  shoulderSlopeRight: ['shoulderSlopeRight'],
  acrossBack: ['acrossBack'],
  napeToArmpitLevel: ['napeToArmpitLevel'],
  waistToHip: ['waistToHip'],
  bustGirth: ['bustGirth'],
  waistGirth: ['waistGirth'],
  hipGirth: ['hipGirth'],
} as const satisfies Partial<Record<EstimateId, readonly MeasurementId[]>>

function isoDate(on: string): string {
  if (!isIsoDate(on)) throw new Error(`book: "${on}" is not an ISO date`)
  return on
}
/** A calendar date, with or without a time behind it: 2026-11-25 or 2026-11-25T14:02:00Z. */
export const isIsoDate = (on: string): boolean =>
  /^\d{4}-(0[1-9]|1[0-2])-(0[1-9]|[12]\d|3[01])(T[\d:.]+(Z|[+-]\d\d:\d\d)?)?$/.test(on)

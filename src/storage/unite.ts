/**
 * Two tape books made into one. A book only ever grows (readings are added or marked withdrawn),
 * so uniting loses nothing: two windows, or a backup and the present, never overwrite each other.
 */
import {
  readingsTo,
  type Book,
  type Doubt,
  type Entry,
  type Proposal,
  type TapeReading,
} from '../measurements/book.ts'
import { MEASUREMENT_IDS, type MeasurementId } from '../measurements/catalogue.ts'
import { sameData } from './same.ts'

/**
 * Readings keep the order of `first`; what only `second` knows follows behind.
 * @param seen the book both went on from, where it is known: what she said of one reading of photos
 * is then taken from the one that changed it
 */
export function uniteBooks(first: Book, second: Book, seen?: Book): Book {
  const book: Partial<Record<MeasurementId, Entry>> = {}
  for (const id of MEASUREMENT_IDS) {
    const [a, b] = [first[id], second[id]]
    const entry = a && b ? uniteEntries(a, b, seen && (seen[id] ?? NOTHING)) : (a ?? b)
    if (entry) book[id] = entry
  }
  return book
}

const NOTHING: Entry = { tape: [] }

function uniteEntries(a: Entry, b: Entry, seen: Entry | undefined): Entry {
  const proposal = unitedProposal(a.proposal, b.proposal, seen)
  const tape = uniteReadings(a.tape, b.tape)
  const doubts = uniteDoubts(a, b, tape)
  return { ...(proposal && { proposal }), ...(doubts && { doubts }), tape }
}

/** One of a day and complaint counts once; where books met, it is open while it was open in one. */
function uniteDoubts(
  a: Entry,
  b: Entry,
  tape: readonly TapeReading[],
): readonly Doubt[] | undefined {
  if (!a.doubts && !b.doubts) return undefined
  const own = a.doubts ?? []
  const theirs = (b.doubts ?? [])
    .filter((d) => !own.some((o) => o.complaint === d.complaint && o.on === d.on))
    // Readings of the first book stand before theirs in the united list.
    .map((d) => ({
      ...d,
      readings: d.readings >= b.tape.length ? tape.length : placeIn(tape, b.tape, d.readings),
    }))
  return [...own, ...theirs].sort((x, y) => x.on.localeCompare(y.on))
}
/** Where the reading at `index` of one list stands in the united one. */
const placeIn = (tape: readonly TapeReading[], from: readonly TapeReading[], index: number) =>
  Math.max(
    0,
    tape.findIndex((r) => kind(r) === kind(from[index]!)),
  )

function unitedProposal(
  a: Proposal | undefined,
  b: Proposal | undefined,
  seen: Entry | undefined,
): Proposal | undefined {
  if (!a || !b) return a ?? b
  const stands = a.reading === b.reading ? ofOneReading(a, b, seen) : isLater(b, a) ? b : a
  const all = new Set([...readingsTo(a), ...readingsTo(b)])
  if (stands.reading === undefined) return stands
  return { ...stands, after: [...all].filter((name) => name !== stands.reading) }
}

/**
 * A reading of photos that knows of the other came after it, and any came after those that had no
 * names yet. Of two that do not know of one another, the later date stands; on one day their names
 * decide, so that both windows come to the same.
 */
function isLater(a: Proposal, b: Proposal): boolean {
  if (b.reading === undefined || a.after?.includes(b.reading)) return true
  if (a.reading === undefined || b.after?.includes(a.reading)) return false
  return a.on === b.on ? a.reading > b.reading : a.on > b.on
}

/** The same reading, or two without names: what changed of it since; else the later, and what she said of it. */
function ofOneReading(a: Proposal, b: Proposal, seen: Entry | undefined): Proposal {
  if (seen && sameData(b, seen.proposal)) return a
  if (seen && sameData(a, seen.proposal)) return b
  if (a.on !== b.on) return b.on > a.on ? b : a
  const said = a.tapeStandsOn === undefined && sameData(a.estimate, b.estimate)
  return said ? b : a
}

/**
 * Two equal readings of one day are two readings, so the first of a kind is paired with the
 * first of the same kind, the second with the second. Withdrawn in either is withdrawn.
 */
function uniteReadings(
  first: readonly TapeReading[],
  second: readonly TapeReading[],
): readonly TapeReading[] {
  const waiting = [...second]
  const united = first.map((reading) => {
    const twin = waiting.findIndex((other) => kind(other) === kind(reading))
    const [other] = twin < 0 ? [] : waiting.splice(twin, 1)
    return other?.withdrawn && !reading.withdrawn
      ? { ...reading, withdrawn: true as const }
      : reading
  })
  return [...united, ...waiting]
}

const kind = ({ value, on, definition }: TapeReading): string =>
  JSON.stringify([value, on, definition])

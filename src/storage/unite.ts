/**
 * Two tape books made into one. A book only ever grows (readings are added or marked withdrawn),
 * so uniting loses nothing: two windows, or a backup and the present, never overwrite each other.
 */
import type { Book, Doubt, Entry, Proposal, TapeReading } from '../measurements/book.ts'
import { MEASUREMENT_IDS, type MeasurementId } from '../measurements/catalogue.ts'
import { sameData } from './same.ts'

/**
 * Readings keep the order of `first`; what only `second` knows follows behind.
 * @param seen the book both went on from, where it is known: what a photo said is then taken from
 * the one that changed it, whatever the clock said
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
  if (seen && sameData(b, seen.proposal)) return a ?? b
  if (seen && sameData(a, seen.proposal)) return b ?? a
  return newer(a, b)
}

/** Where both changed, or nobody knows: the later photographs; on the same day those of the first. */
function newer(a: Proposal | undefined, b: Proposal | undefined): Proposal | undefined {
  if (!a || !b) return a ?? b
  return b.on > a.on ? b : a
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

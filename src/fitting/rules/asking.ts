/** What is asked while the cause of a complaint is open, and when answers leave the draft alone. */
import { complaintOf } from '../complaints/catalogue.ts'
import type { Complaint, PinPlace, Remedy, Test } from '../complaints/complaint.ts'
import type { Pin } from '../half-amount.ts'
import { causeSaid, type ReadAnswers } from './answers.ts'
import { byLean, NOTHING_BESIDE, type Beside } from './beside.ts'
import type { Asked } from './judged.ts'
import { JUDGE_WORDS } from './judge.words.ts'

/**
 * Tests not made yet that still could tell something: first those of the work done at the pin,
 * then those that lines, movements or numbers speak for.
 */
export function untold(
  c: Complaint,
  open: readonly number[],
  openTests: readonly number[],
  cannotTell: readonly number[],
  pin: Pin | undefined,
  beside: Beside = NOTHING_BESIDE,
): readonly Test[] {
  const left = c.tests.filter(
    ({ number, yes, leaves }) =>
      openTests.includes(number) &&
      !cannotTell.includes(number) &&
      (leaves !== undefined || yes.some((n) => open.includes(n))),
  )
  const list = byLean(c, left, open, beside)
  const here = ({ yes }: Test): boolean =>
    c.causes.some(({ number, remedy }) => yes.includes(number) && isAt(remedy, pin))
  return [...list.filter(here), ...list.filter((t) => !here(t))]
}

/** Is the usual work of it on the line that was pinned? */
function isAt(remedy: Remedy, pin: Pin | undefined): boolean {
  if (!pin || remedy.kind !== 'work') return false
  const parts = LINES[pin.where] ?? [pin.where]
  return remedy.edits.some(({ target }) => parts.some((part) => target.endsWith(`.${part}`)))
}
const LINES: Partial<Record<PinPlace, readonly string[]>> = {
  seam: ['side'],
  allRound: ['side'],
  cf: ['centre', 'bustDart'],
  cb: ['centre'],
  bust: ['bustDart'],
  dart: ['bustDart', 'waistDart'],
}

/**
 * An answer that says the draft is right; a cause that was named speaks louder. A sight that is
 * not there says so only when no other cause is left to be tested.
 */
export function leftAlone(
  c: Complaint,
  { yes, no, openTests, tested }: ReadAnswers,
): string | undefined {
  if (yes.length > 0) return undefined
  const more = c.tests.some(
    (t) => openTests.includes(t.number) && t.yes.some((n) => !no.includes(n)),
  )
  return c.tests.find(
    ({ number, leaves }) => leaves && tested[number] === leaves.on && (leaves.on || !more),
  )?.leaves?.why
}

export function whatTells(
  c: Complaint,
  yes: readonly number[],
  open: readonly number[],
  tests: readonly Test[],
): readonly Asked[] {
  if (yes.length > 1)
    return [
      {
        complaint: c.id,
        what: JUDGE_WORDS.differentWork(yes.map((n) => causeSaid(c.id, n))),
      },
    ]
  if (tests.length === 0) return [{ complaint: c.id, what: noneSaid(c, open) }]
  return tests.map(({ number, ask }) => ({
    complaint: c.id,
    what: JUDGE_WORDS.test(number, ask),
    test: number,
  }))
}

/** No test spoke for a cause: none is taken because it is the last. */
function noneSaid(c: Complaint, open: readonly number[]): string {
  const untested = c.causes.filter(
    ({ number }) => open.includes(number) && !c.tests.some(({ yes }) => yes.includes(number)),
  )
  const look = untested.flatMap(({ name, remedy }) =>
    remedy.kind === 'see'
      ? [JUDGE_WORDS.causeOf(name, complaintOf(remedy.complaint).name)]
      : [name],
  )
  return JUDGE_WORDS.allNo(look)
}

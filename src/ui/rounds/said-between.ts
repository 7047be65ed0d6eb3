/** What was said of two muslins: gone, better, the same, worse, new; and how a thing seen is told in words. */
import { causeWords } from '../../fitting/complaints/catalogue.ts'
import { HEADS } from '../../fitting/complaints/heads.ts'
import type { ComplaintId } from '../../fitting/complaints/complaint.ts'
import { whole } from '../../fitting/pinned.ts'
import { NOTHING_TO_CHANGE, UNSETTLED, type Round, type Seen } from '../../rounds/round.ts'
import type { Mm } from '../../units/length.ts'
import type { Said } from '../fitting/change-said.ts'
import { SAID_WORDS } from './compare.words.ts'

export interface SaidLine {
  readonly complaint: ComplaintId
  readonly name: string
  /** `again`: on both, and not read on both, so that nobody knows whether it is less. */
  readonly how: 'gone' | 'better' | 'same' | 'worse' | 'again' | 'new' | 'unseen'
  /** Cloth that was too much or missing, where it was read, on the older and the newer muslin. */
  readonly before: Mm | undefined
  readonly after: Mm | undefined
  /** Where the newer of the two was settled. */
  readonly answer: string
}

/**
 * One line a complaint, newest state first. A muslin nobody has looked at yet says nothing, so
 * what was seen before it is not called gone.
 */
export function saidBetween(before: Round, after: Round): readonly SaidLine[] {
  const [older, newer] = [latestSeen(before), latestSeen(after)]
  const ids = [...new Set([...newer.keys(), ...older.keys()])]
  return ids.map((complaint) => {
    const [a, b] = [older.get(complaint), newer.get(complaint)]
    const [was, is] = [a?.pinned && whole(a.pinned), b?.pinned && whole(b.pinned)]
    return {
      complaint,
      name: HEADS[complaint].name,
      how: b ? (a ? less(was, is) : 'new') : newer.size > 0 ? 'gone' : 'unseen',
      before: was,
      after: is,
      answer: (b ?? a)?.answer ?? '',
    }
  })
}

/** Two readings of one pin differ by so much, mm. Common practice, no source. */
const READ_WITHIN = 2
function less(was: Mm | undefined, is: Mm | undefined): 'better' | 'same' | 'worse' | 'again' {
  if (was === undefined || is === undefined) return 'again'
  const by = Math.abs(is) - Math.abs(was)
  return Math.abs(by) <= READ_WITHIN ? 'same' : by < 0 ? 'better' : 'worse'
}

/** Said twice of one muslin, the last word counts. */
const latestSeen = (round: Round): ReadonlyMap<ComplaintId, Seen> =>
  new Map(round.seen.map((s) => [s.complaint, s]))

/** What was read of it on both muslins, on one, or on neither. */
export function lineSaid({ name, before, after }: SaidLine): Said {
  if (before !== undefined && after !== undefined)
    return before === after ? SAID_WORDS.still(name, after) : SAID_WORDS.fromTo(name, before, after)
  const read = after ?? before
  return read === undefined ? SAID_WORDS.unread(name) : SAID_WORDS.read(name, read)
}

/** Where it was settled, as one word or two. */
export function answerSaid(complaint: ComplaintId, answer: string): string {
  if (answer === UNSETTLED) return SAID_WORDS.undecided
  return answer === NOTHING_TO_CHANGE
    ? SAID_WORDS.nothingToChange
    : causeWords({ complaint, cause: answer })
}

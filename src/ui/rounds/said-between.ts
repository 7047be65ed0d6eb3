/** What was said of two muslins: gone, better, the same, worse, new; and how a thing seen is told in words. */
import { HEADS } from '../../fitting/complaints/heads.ts'
import type { ComplaintId } from '../../fitting/complaints/complaint.ts'
import { whole } from '../../fitting/pinned.ts'
import type { Round, Seen } from '../../rounds/round.ts'
import type { Mm } from '../../units/length.ts'
import type { Said } from '../fitting/change-words.ts'

export interface SaidLine {
  readonly complaint: ComplaintId
  readonly name: string
  /** `again`: on both, and not read on both, so that nobody knows whether it is less. */
  readonly how: 'gone' | 'better' | 'same' | 'worse' | 'again' | 'new' | 'not looked at yet'
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
      how: b ? (a ? less(was, is) : 'new') : newer.size > 0 ? 'gone' : 'not looked at yet',
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

/** "Gaping armhole, from 1.2 cm to 0.6 cm." */
export function lineSaid({ name, before, after }: SaidLine): Said {
  if (before !== undefined && after !== undefined)
    return before === after
      ? [`${name}, still `, after, '.']
      : [`${name}, from `, before, ' to ', after, '.']
  const read = after ?? before
  return read === undefined ? [`${name}.`] : [`${name}, `, read, '.']
}

/** Where it was settled, as one word or two. */
export const answerSaid = (answer: string): string =>
  answer === 'unsettled' ? 'undecided' : answer

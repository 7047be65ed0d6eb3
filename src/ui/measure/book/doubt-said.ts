/** What a muslin told of a number of the book, as she reads it. */
import { HEADS } from '../../../fitting/complaints/heads.ts'
import { isComplaintId } from '../../../fitting/complaints/complaint.ts'
import type { Doubt } from '../../../measurements/book.ts'
import { mm, type Mm } from '../../../units/length.ts'
import { DOUBT_WORDS } from './tape-book.words.ts'

export function doubtSaid(
  { by, complaint, on }: Doubt,
  say: (length: Mm) => string,
): { readonly lead: string; readonly rest: string } {
  const name = isComplaintId(complaint) ? HEADS[complaint].name : complaint
  const { lead, inDoubt, less, more } = DOUBT_WORDS
  if (by === undefined) return { lead, rest: inDoubt(on, name) }
  return { lead, rest: (by < 0 ? less : more)(on, name, say(mm(Math.abs(by)))) }
}

/** What a muslin told of a number of the book, as she reads it. */
import { HEADS } from '../../../fitting/complaints/heads.ts'
import { isComplaintId } from '../../../fitting/complaints/complaint.ts'
import type { Doubt } from '../../../measurements/book.ts'
import { mm, type Mm } from '../../../units/length.ts'

export function doubtSaid(
  { by, complaint, on }: Doubt,
  say: (length: Mm) => string,
): { readonly lead: string; readonly rest: string } {
  const name = isComplaintId(complaint) ? HEADS[complaint].name.toLowerCase() : complaint
  const size =
    by === undefined
      ? 'puts it in doubt'
      : `speaks for ${say(mm(Math.abs(by)))} ${by < 0 ? 'less' : 'more'}`
  return {
    lead: 'The muslin doubts it.',
    rest: `On ${on} “${name}” ${size}. Tape it again. If the tape agrees, take back the change that stood in for it: the draft follows the number.`,
  }
}

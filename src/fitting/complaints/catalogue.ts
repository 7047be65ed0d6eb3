/** All complaints by their ids. */
import { ARMHOLE } from './armhole.ts'
import { BACK } from './back.ts'
import { BUST } from './bust.ts'
import { COMPLAINT_IDS, isComplaintId, type Complaint, type ComplaintId } from './complaint.ts'
import { DRAPED } from './draped.ts'
import { HEADS } from './heads.ts'
import { keptCause, type KeptCause } from './kept-causes.ts'
import { NECK } from './neck.ts'
import { SHOULDER } from './shoulder.ts'
import { SLEEVE } from './sleeve.ts'
import { WAIST } from './waist.ts'
import { WHOLE } from './whole.ts'

const BODIES = [
  ...NECK,
  ...SHOULDER,
  ...BUST,
  ...ARMHOLE,
  ...BACK,
  ...WAIST,
  ...SLEEVE,
  ...DRAPED,
  ...WHOLE,
]
export const ALL_COMPLAINTS: readonly Complaint[] = BODIES.map((body) => ({
  ...HEADS[body.id],
  ...body,
}))
const BY_ID = new Map<ComplaintId, Complaint>(ALL_COMPLAINTS.map((c) => [c.id, c]))

export function complaintOf(id: ComplaintId): Complaint {
  const found = BY_ID.get(id)
  if (!found) throw new Error(`complaints: ${id} has no entry`)
  return found
}
export const catalogued = (): readonly ComplaintId[] => COMPLAINT_IDS.filter((id) => BY_ID.has(id))

/** What a kept cause says; what names none comes back as it was kept. */
export function causeWords(kept: KeptCause): string {
  const [id = '', number] = keptCause(kept).split('.')
  const causes = isComplaintId(id) ? complaintOf(id).causes : []
  return causes.find((cause) => String(cause.number) === number)?.name ?? kept.cause
}

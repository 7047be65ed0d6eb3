/** From a cause to the work that is done for it: under its own name, or that of another complaint. */
import { complaintOf } from '../complaints/catalogue.ts'
import {
  causeId,
  type Cause,
  type ComplaintId,
  type Remedy,
  type Work,
} from '../complaints/complaint.ts'
import { keptCause, type KeptCause } from '../complaints/kept-causes.ts'
import type { Pin } from '../half-amount.ts'

interface Link {
  readonly of: ComplaintId
  readonly number: number
}
export interface Followed {
  readonly chain: readonly Link[]
  readonly remedy: Exclude<Remedy, { kind: 'see' }>
  readonly leads: ComplaintId
}

/** Throws where the causes of the catalogue lead round in a circle. */
export function followed(id: ComplaintId, cause: Cause): Followed {
  const chain: Link[] = [{ of: id, number: cause.number }]
  let [remedy, leads] = [cause.remedy, id]
  while (remedy.kind === 'see') {
    const { complaint, cause: wanted }: Extract<Remedy, { kind: 'see' }> = remedy
    const next = complaintOf(complaint).causes.find(({ number }) => number === (wanted ?? 1))
    if (!next || chain.some(({ of }) => of === complaint))
      throw new Error(`${id}: cause ${cause.number} leads to no work`)
    chain.push({ of: complaint, number: next.number })
    remedy = next.remedy
    leads = complaint
  }
  return { chain, remedy, leads }
}

/** What is looked at again once a cause was corrected, by the entry that holds its work. */
export function trueAfter(kept: KeptCause): readonly string[] {
  const { complaint } = kept
  const cause = complaintOf(complaint).causes.find(
    ({ number }) => causeId(complaint, number) === keptCause(kept),
  )
  return cause ? complaintOf(followed(complaint, cause).leads).trueAfter : []
}

export function workAt(remedy: Extract<Remedy, { kind: 'work' }>, pin: Pin | undefined): Work {
  const at = pin && remedy.at?.find(({ places }) => places.includes(pin.where))
  return at ? at.work : remedy
}

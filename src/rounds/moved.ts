/**
 * The movements a muslin is always tried in, and the complaint each of them speaks for when the
 * cloth pulls or the hem climbs. Which movement shows what: our table of complaints.
 */
import type { ComplaintId } from '../fitting/complaints/complaint.ts'
import type { SleeveKind } from '../fitting/finding/find.ts'
import { CLIMBS } from '../fitting/whys.ts'
import { freedomOf, roseOf, type Movement, type Worn } from './worn.ts'

export const TRIED = ['armsForward', 'armsUp', 'sit'] as const satisfies readonly Movement[]
export type Tried = (typeof TRIED)[number]

const SAYS: Readonly<Record<Tried, (sleeve: SleeveKind) => ComplaintId>> = {
  armsForward: () => 'K1',
  armsUp: (sleeve) => (({ setIn: 'L5', cutIn: 'D3', none: 'A2' }) as const)[sleeve],
  sit: () => 'W9',
}

/** Complaints that the movements speak for, in their order. */
export const saidByMoving = (
  round: Pick<Worn, 'movements'>,
  sleeve: SleeveKind,
): readonly ComplaintId[] =>
  TRIED.filter((movement) => {
    const freedom = freedomOf(round, movement)
    const pulls = freedom === 'pulls' || freedom === 'cannot'
    return pulls || (roseOf(round, movement) ?? 0) >= CLIMBS
  }).map((movement) => SAYS[movement](sleeve))

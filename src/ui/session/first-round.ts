/** The first round of a garment, with what it brought along from another. */
import type { Confirmed } from '../../measurements/confirmed.ts'
import { withCarried } from '../../rounds/carried.ts'
import { firstRound, type Round } from '../../rounds/round.ts'
import type { HungGarment } from '../../storage/schema/garment.ts'

/** @param on a date like "2026-11-28" */
export function firstRoundOf(
  id: string,
  { id: garmentId, garment, carried }: HungGarment,
  body: Confirmed,
  on: string,
): Round {
  const first = firstRound({ id, garmentId }, garment, body, on)
  return carried ? withCarried(first, carried) : first
}

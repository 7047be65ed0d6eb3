/** What another garment taught of the body, taken into the first round of the next one. */
import type { GarmentId } from '../draft/draft.ts'
import { GARMENTS } from '../draft/garments.ts'
import type { Correction } from '../fitting/correction.ts'
import { redraft } from './redraft.ts'
import type { Round } from './round.ts'

/** The first round with what another garment taught of the body, as far as this one can be so corrected. */
export function withCarried(first: Round, carried: readonly Correction[]): Round {
  const read = carried.filter((c) => readsIt(first.garment, c))
  const refused = new Set(
    redraft({ ...first, corrections: read }).refused.map(({ correction }) => correction),
  )
  return { ...first, corrections: read.filter(({ id }) => !refused.has(id)) }
}

const readsIt = (garment: GarmentId, c: Correction): boolean =>
  c.kind !== 'turn-choice' || GARMENTS[garment].choices.includes(c.choice)

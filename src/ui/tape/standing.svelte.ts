/**
 * What the tape and the page head say about her work: one line under each place, the garment on
 * the table, and when it was last kept. The session writes here; the tape only reads.
 */
import { createContext } from 'svelte'
import type { PlaceId } from './places.ts'

export class TapeStanding {
  /** "23 of 26", "round 3"; a place without a line shows none. */
  words = $state.raw<Readonly<Partial<Record<PlaceId, string>>>>({})
  /** Id of the garment on the table: Draft, Fit, Compare and Cut lead to its pages. */
  garment = $state.raw<string | undefined>()
  /** When the device last kept her work; undefined until the first save. */
  keptAt = $state.raw<Date | undefined>()
}

export const [useStanding, provideStanding] = createContext<TapeStanding>()

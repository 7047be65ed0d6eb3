/** What can be drawn for a garment from the tape book and its rounds. Nothing is kept here. */
import type { Draft } from '../../draft/draft.ts'
import { GARMENTS, standardFor } from '../../draft/garments.ts'
import { draft } from '../../draft/make.ts'
import type { Corrected } from '../../fitting/apply.ts'
import { knows, preview, type Missing } from '../../measurements/confirmed.ts'
import { redraft } from '../../rounds/redraft.ts'
import type { Round } from '../../rounds/round.ts'
import { firstRoundOf } from './first-round.ts'
import { confirmedFor } from './taped.ts'
import type { Work } from './work.svelte.ts'

/** What can be drawn for a garment now. */
export type Drawn =
  | { readonly standing: 'confirmed'; readonly round: Round; readonly corrected: Corrected }
  /** From camera numbers and single readings: to look at, never to cut. */
  | { readonly standing: 'preview'; readonly draft: Draft; readonly missing: readonly Missing[] }
  | { readonly standing: 'missing'; readonly missing: readonly Missing[] }

/** What lies on the table for this garment: its latest round, else a preview, else what is missing. */
export function drawn(
  work: Pick<Work, 'book' | 'garment' | 'latest' | 'today'>,
  garmentId: string,
): Drawn | undefined {
  const hung = work.garment(garmentId)
  if (!hung) return undefined
  const round = work.latest(garmentId)
  if (round) return { standing: 'confirmed', round, corrected: redraft(round) }
  const taped = confirmedFor(work.book, hung.garment)
  if (taped.ok) {
    const fresh = firstRoundOf('unsaved', hung, taped.body, work.today())
    return { standing: 'confirmed', round: fresh, corrected: redraft(fresh) }
  }
  const guess = preview(work.book)
  const enough = GARMENTS[hung.garment].needs.every((id) => knows(guess, id))
  return enough
    ? {
        standing: 'preview',
        draft: draft(hung.garment, guess, standardFor(hung.garment)),
        missing: taped.missing,
      }
    : { standing: 'missing', missing: taped.missing }
}

/**
 * What the Draft and Cut pages have to show for a garment, with the two cases the session does
 * not know: a garment that is not there, and numbers whose lines do not meet.
 */
import { GARMENTS } from '../../draft/garments.ts'
import type { Drawn, Session } from '../session.svelte.ts'

export type Shown =
  | Exclude<Drawn, { standing: 'missing' }>
  | (Extract<Drawn, { standing: 'missing' }> & {
      /** How many numbers the garment needs in all. */
      readonly needed: number
    })
  | { readonly standing: 'undrawable' }
  | { readonly standing: 'absent' }

export function drawnFor(session: Pick<Session, 'drawn' | 'garment'>, garmentId: string): Shown {
  const hung = session.garment(garmentId)
  if (!hung || hung.takenOffOn !== undefined) return { standing: 'absent' }
  let drawn: Drawn | undefined
  try {
    drawn = session.drawn(garmentId)
  } catch {
    // The construction throws where lines it needs do not meet; a blank page would say nothing.
    return { standing: 'undrawable' }
  }
  if (!drawn) return { standing: 'absent' }
  return drawn.standing === 'missing'
    ? { ...drawn, needed: GARMENTS[hung.garment].needs.length }
    : drawn
}

/**
 * What the Draft and Cut pages have to show for a garment, with the two cases the session does
 * not know: a garment that is not there, and numbers whose lines do not meet.
 */
import { CannotDraw, type Undrawable } from '../../draft/cannot-draw.ts'
import { GARMENTS } from '../../draft/garments.ts'
import type { Session } from '../session.svelte.ts'
import type { Drawn } from '../session/drawn.ts'

export type Shown =
  | Exclude<Drawn, { standing: 'missing' }>
  | (Extract<Drawn, { standing: 'missing' }> & {
      /** How many numbers the garment needs in all. */
      readonly needed: number
    })
  | { readonly standing: 'undrawable'; readonly why: Undrawable | undefined }
  | { readonly standing: 'absent' }

export function drawnFor(session: Pick<Session, 'drawn' | 'garment'>, garmentId: string): Shown {
  const hung = session.garment(garmentId)
  if (!hung || hung.takenOffOn !== undefined) return { standing: 'absent' }
  let drawn: Drawn | undefined
  try {
    drawn = session.drawn(garmentId)
  } catch (error) {
    // A blank page would say nothing, not even of our own mistakes.
    return { standing: 'undrawable', why: error instanceof CannotDraw ? error.why : undefined }
  }
  if (!drawn) return { standing: 'absent' }
  return drawn.standing === 'missing'
    ? { ...drawn, needed: GARMENTS[hung.garment].needs.length }
    : drawn
}

/**
 * What the Draft and Cut pages have to show for a garment, with the two cases the session does
 * not know: a garment that is not there, and numbers whose lines do not meet.
 */
import { CannotDraw, type Undrawable } from '../../draft/cannot-draw.ts'
import { GARMENTS } from '../../draft/garments.ts'
import type { Session } from '../session.svelte.ts'
import { drawn, type Drawn } from '../session/drawn.ts'

export type Shown =
  | Exclude<Drawn, { standing: 'missing' }>
  | (Extract<Drawn, { standing: 'missing' }> & {
      /** How many numbers the garment needs in all. */
      readonly needed: number
    })
  | { readonly standing: 'undrawable'; readonly why: Undrawable | undefined }
  | { readonly standing: 'absent' }

export function drawnFor(session: Session, garmentId: string): Shown {
  const hung = session.garment(garmentId)
  if (!hung || hung.takenOffOn !== undefined) return { standing: 'absent' }
  let lies: Drawn | undefined
  try {
    lies = drawn(session, garmentId)
  } catch (error) {
    // A blank page would say nothing, not even of our own mistakes.
    return { standing: 'undrawable', why: error instanceof CannotDraw ? error.why : undefined }
  }
  if (!lies) return { standing: 'absent' }
  return lies.standing === 'missing'
    ? { ...lies, needed: GARMENTS[hung.garment].needs.length }
    : lies
}

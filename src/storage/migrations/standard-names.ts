/**
 * Names a garment was once kept under by itself, in the language of the page it was hung in. She
 * typed none of them: read back, such a garment goes by what it is.
 */
import type { GarmentId } from '../../draft/draft.ts'

export const ONCE_KEPT_AS: Readonly<Record<GarmentId, readonly string[]>> = {
  blouse: ['Draped-sleeve blouse', 'Bluse mit angeschnittenem Ärmel'],
  block: ['Bodice block', 'Grundschnitt Oberteil'],
  sleeveless: ['Sleeveless blouse', 'Ärmellose Bluse'],
  sleeve: ['Blouse with a set-in sleeve', 'Bluse mit Einsatzärmel'],
  dress: ['Dress with a waist seam', 'Kleid mit Taillennaht'],
}

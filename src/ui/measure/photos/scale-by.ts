/** What may give a photo its scale: our own sheet, or a plain rectangle whose corners she taps. */
import { A4, ID1, LETTER, type CardSize } from '../../../capture/card.ts'

export const SCALE_BY = {
  sheet: undefined,
  id1: ID1,
  a4: A4,
  letter: LETTER,
  own: undefined,
} as const satisfies Record<string, CardSize | undefined>
export type ScaleBy = keyof typeof SCALE_BY

/** What may give a photo its scale: our own sheet, or a plain rectangle whose corners she taps. */
import { A4, ID1, LETTER, type CardSize } from '../../../capture/card.ts'

export const SCALE_BY = {
  sheet: { word: 'Our printed sheet', spoken: 'sheet', size: undefined },
  id1: { word: 'Bank-size card', spoken: 'card', size: ID1 },
  a4: { word: 'Blank A4', spoken: 'paper', size: A4 },
  letter: { word: 'Blank Letter', spoken: 'paper', size: LETTER },
  own: { word: 'My own rectangle', spoken: 'rectangle', size: undefined },
} as const satisfies Record<string, { word: string; spoken: string; size: CardSize | undefined }>
export type ScaleBy = keyof typeof SCALE_BY

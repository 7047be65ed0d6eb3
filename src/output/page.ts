/** One sheet of paper: marks in millimetres from its top-left corner, some seen through a window. */
import { point } from '../geometry/point.ts'
import { textMark, type Mark } from './mark.ts'
import type { Box } from '../geometry/box.ts'
import type { PaperSize } from './paper.ts'
import { NOT_CONFIRMED, NOT_FOR_CUTTING } from './standing.ts'

export interface Layer {
  /** Only what lies inside is drawn; all of the sheet without it. */
  readonly window?: Box
  readonly marks: readonly Mark[]
}
export interface Page {
  readonly width: number
  readonly height: number
  readonly layers: readonly Layer[]
}

/** What the sheets are for; `preview` sheets say so across every page. */
export type Purpose = 'cutting' | 'preview'

/** Why the sheets are not for cutting, in the words that stand across them. */
export const stampWords = (confirmed: boolean): string =>
  confirmed ? `for looking at, ${NOT_FOR_CUTTING}` : `${NOT_CONFIRMED}, ${NOT_FOR_CUTTING}`

/** Share of the sheet's diagonal the stamp may take. */
const STAMP_LONG = 0.72
const LETTER = 0.6

export function stamped(page: Page, paper: PaperSize, words: string): Page {
  const diagonal = Math.hypot(paper.width, paper.height)
  const size = (diagonal * STAMP_LONG) / (words.length * LETTER)
  const angle = -Math.atan2(paper.height, paper.width)
  const stamp = textMark(words, point(paper.width / 2, paper.height / 2), size, {
    angle,
    anchor: 'middle',
    tone: 'stamp',
  })
  return { ...page, layers: [{ marks: [stamp] }, ...page.layers] }
}

/** Photographs on pages of their own, up to three side by side, with words under each. */
import { point } from '../geometry/point.ts'
import { textMark } from './mark.ts'
import type { Page } from './page.ts'
import { PRINT_MARGIN, type PaperSize } from './paper.ts'
import { fitted, type Face } from './wrap.ts'

export interface PrintedPhoto {
  readonly jpeg: Uint8Array
  /** Of its pixels; only the shape counts. */
  readonly width: number
  readonly height: number
  readonly words: string
}

const MARGIN = PRINT_MARGIN + 6
const GAP = 5
const IN_A_ROW = 3
const TYPE = { title: 4.8, words: 3.2 } as const

export function photoPages(
  photos: readonly PrintedPhoto[],
  paper: PaperSize,
  title: string,
  face: Face,
): Page[] {
  const wide = (paper.width - 2 * MARGIN - (IN_A_ROW - 1) * GAP) / IN_A_ROW
  const pages: Page[] = []
  for (let k = 0; k < photos.length; k += IN_A_ROW) {
    const row = photos.slice(k, k + IN_A_ROW).map((photo, i) => {
      const left = MARGIN + i * (wide + GAP)
      const top = MARGIN + 2 * TYPE.title
      const box = {
        left,
        top,
        right: left + wide,
        bottom: top + (wide * photo.height) / photo.width,
      }
      return { photo, box }
    })
    const marks = row.map(({ photo, box }) =>
      textMark(
        fitted(photo.words, TYPE.words, wide, face),
        point(box.left, box.bottom + 1.6 * TYPE.words),
        TYPE.words,
      ),
    )
    pages.push({
      width: paper.width,
      height: paper.height,
      pictures: row.map(({ photo, box }) => ({ jpeg: photo.jpeg, box })),
      layers: [
        { marks: [textMark(title, point(MARGIN, MARGIN + TYPE.title), TYPE.title), ...marks] },
      ],
    })
  }
  return pages
}

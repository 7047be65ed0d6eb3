/** One sheet of paper: marks in millimetres from its top-left corner, some seen through a window. */
import { point, type Point } from '../geometry/point.ts'
import { placedMark, textMark, type Mark } from './mark.ts'
import type { Box } from '../geometry/box.ts'
import { STANDING_WORDS } from './standing.words.ts'

export interface Layer {
  /** Only what lies inside is drawn; all of the sheet without it. */
  readonly window?: Box
  readonly marks: readonly Mark[]
  /**
   * drawing: each mark belongs to the layer of its line, and she may hide it in a reader.
   * furniture: what helps to lay the sheets together. Without it: always shown.
   */
  readonly part?: 'drawing' | 'furniture'
}
export interface Page {
  /** Of the paper. */
  readonly width: number
  readonly height: number
  readonly layers: readonly Layer[]
  /** Photographs, under everything that is drawn. */
  readonly pictures?: readonly PagePicture[]
  /** What the file is drawn larger by, so that a printer that prints smaller prints it true. */
  readonly scale?: Stretch
}
export interface PagePicture {
  readonly jpeg: Uint8Array
  /** Where it lies, mm; as wide and high as the photo's own shape. */
  readonly box: Box
}
/** Across the sheet and down it; 1 is true. */
export interface Stretch {
  readonly x: number
  readonly y: number
}

/** What the sheets are for; `preview` sheets say so across every page. */
export type Purpose = 'cutting' | 'preview'

/** Why the sheets are not for cutting, in the words that stand across them. */
export const stampWords = (confirmed: boolean): string =>
  confirmed ? STANDING_WORDS.looking : STANDING_WORDS.notConfirmed

/** Share of the sheet's diagonal the stamp may take. */
const STAMP_LONG = 0.72
const LETTER = 0.6
/** On a sheet as large as a table the words are said again and again, so no part lacks them. */
const STAMP_FIELD = 450

export function stamped(page: Page, words: string): Page {
  const count = (long: number): number => Math.ceil(long / STAMP_FIELD)
  const [across, down] = [count(page.width), count(page.height)]
  const width = page.width / (page.scale?.x ?? 1) / across
  const height = page.height / (page.scale?.y ?? 1) / down
  const size = (Math.hypot(width, height) * STAMP_LONG) / (words.length * LETTER)
  const angle = -Math.atan2(height, width)
  const marks = Array.from({ length: across * down }, (_, i) => {
    const [column, row] = [i % across, Math.floor(i / across)]
    const at = point(width * (column + 0.5), height * (row + 0.5))
    return textMark(words, at, size, { angle, anchor: 'middle', tone: 'stamp' })
  })
  return { ...page, layers: [{ marks }, ...page.layers] }
}

/** A mark somewhere else on the sheet. */
export function shiftedMark(mark: Mark, by: Point): Mark {
  if (mark.kind !== 'rect') return placedMark(mark, { turn: 0, by })
  const { left, top, right, bottom } = mark.box
  const box = { left: left + by.x, top: top + by.y, right: right + by.x, bottom: bottom + by.y }
  return { ...mark, box }
}

/** Two pages side by side on one sheet twice as wide, in order; an odd last one stands alone. */
export function twoOnOne(pages: readonly Page[]): Page[] {
  return pages.flatMap((page, i) => {
    if (i % 2 === 1) return []
    const by = point(page.width, 0)
    const beside = (pages[i + 1]?.layers ?? []).map((layer) => ({
      ...layer,
      marks: layer.marks.map((m) => shiftedMark(m, by)),
    }))
    return [{ ...page, width: page.width * 2, layers: [...page.layers, ...beside] }]
  })
}

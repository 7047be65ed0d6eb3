/**
 * A sheet given as plain rectangles, lines and texts in millimetres, such as the sheet of marks
 * that lies beside her in a photo. Black rectangles are filled; every size is true.
 */
import { boxHeight, boxWidth } from '../geometry/box.ts'
import { point } from '../geometry/point.ts'
import { line } from '../geometry/segment.ts'
import type { Mark } from './mark.ts'
import { pathMark, textMark } from './mark.ts'
import type { Page } from './page.ts'
import type { PaperSize } from './paper.ts'

export interface PlainRect {
  readonly x: number
  readonly y: number
  readonly width: number
  readonly height: number
  /** White lies over what was drawn before. Without it: black. */
  readonly fill?: 'black' | 'white'
}
export interface PlainLine {
  readonly x1: number
  readonly y1: number
  readonly x2: number
  readonly y2: number
}
export interface PlainText {
  readonly x: number
  readonly y: number
  readonly text: string
  /** Height of the type, mm. */
  readonly size: number
}
/** From the top-left corner of the sheet, mm; text stands on its y. */
export interface PlainSheet {
  readonly rects: readonly PlainRect[]
  readonly lines: readonly PlainLine[]
  readonly texts: readonly PlainText[]
}

/** Throws where a rectangle lies off the paper, which is our own mistake. */
export function plainPage(sheet: PlainSheet, paper: PaperSize): Page {
  const rects = sheet.rects.map((r): Mark => {
    const box = { left: r.x, top: r.y, right: r.x + r.width, bottom: r.y + r.height }
    const inside =
      box.left >= 0 && box.top >= 0 && box.right <= paper.width && box.bottom <= paper.height
    if (!inside || boxWidth(box) <= 0 || boxHeight(box) <= 0)
      throw new Error(`plain page: rectangle ${JSON.stringify(r)} does not lie on ${paper.name}`)
    return { kind: 'rect', box, fill: r.fill ?? 'black' }
  })
  const lines = sheet.lines.map((l) =>
    pathMark('square', [line(point(l.x1, l.y1), point(l.x2, l.y2))]),
  )
  const texts = sheet.texts.map((t) => textMark(t.text, point(t.x, t.y), t.size))
  return {
    width: paper.width,
    height: paper.height,
    layers: [{ marks: [...rects, ...lines, ...texts] }],
  }
}

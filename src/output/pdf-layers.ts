/**
 * Layers of a sheet that a reader of the file can hide and show (optional content, ISO 32000-1,
 * 8.11). Only the drawing and what helps to lay sheets together is layered: the words across a
 * preview, page one and the steps always show.
 */
import type { LineName } from './line-style.ts'
import type { Mark } from './mark.ts'
import type { Layer } from './page.ts'
import { FILE_WORDS } from './sheet.words.ts'

export type PdfLayer = 'cutting' | 'seam' | 'inner' | 'words' | 'furniture'
export const PDF_LAYERS: Readonly<Record<PdfLayer, string>> = FILE_WORDS.layers
export const PDF_LAYER_IDS = Object.keys(PDF_LAYERS) as readonly PdfLayer[]

/** Every line of a drawing has its layer; lines of a page alone are furniture wherever they stand. */
const LAYER_OF: Readonly<Record<LineName, PdfLayer>> = {
  cutting: 'cutting',
  notch: 'cutting',
  clip: 'cutting',
  seam: 'seam',
  fold: 'seam',
  stayStitch: 'seam',
  dart: 'inner',
  dartMiddle: 'inner',
  inner: 'inner',
  level: 'inner',
  plumb: 'inner',
  point: 'inner',
  grain: 'words',
  bracket: 'words',
  trim: 'furniture',
  cross: 'furniture',
  square: 'furniture',
  map: 'furniture',
  hair: 'furniture',
}

/** The layer of a mark; undefined where it always shows. */
export function layerOf(mark: Mark, part: Layer['part']): PdfLayer | undefined {
  if (part !== 'drawing') return part
  if (mark.kind === 'text' || mark.line === undefined) return 'words'
  return LAYER_OF[mark.line]
}

/**
 * Layers of a sheet that a reader of the file can hide and show (optional content, ISO 32000-1,
 * 8.11). Only the drawing and what helps to lay sheets together is layered: the words across a
 * preview, page one and the steps always show.
 */
import type { LineName } from './line-style.ts'
import type { Mark } from './mark.ts'
import type { Layer } from './page.ts'

export const PDF_LAYERS = {
  cutting: 'Cutting lines',
  seam: 'Seam lines',
  inner: 'Darts and levels',
  words: 'Words and grain',
  furniture: 'Sheet names, trim lines and bars',
} as const
export type PdfLayer = keyof typeof PDF_LAYERS
export const PDF_LAYER_IDS = Object.keys(PDF_LAYERS) as readonly PdfLayer[]

const CUTTING: readonly string[] = ['cutting', 'notch', 'clip'] satisfies readonly (
  LineName | 'clip'
)[]
const SEAM: readonly string[] = ['seam', 'fold', 'stayStitch'] satisfies readonly (
  LineName | 'stayStitch'
)[]
const WORDS: readonly LineName[] = ['bracket', 'grain']

/** The layer of a mark; undefined where it always shows. Lines not named lie inside the piece. */
export function layerOf(mark: Mark, part: Layer['part']): PdfLayer | undefined {
  if (part !== 'drawing') return part
  if (mark.kind === 'text') return 'words'
  const line = mark.line
  if (line === undefined || WORDS.includes(line)) return 'words'
  if (CUTTING.includes(line)) return 'cutting'
  return SEAM.includes(line) ? 'seam' : 'inner'
}

/**
 * Paper sizes, portrait, millimetres. A4: ISO 216:2007, 210 × 297. Letter: ANSI/ASME Y14.1,
 * size A, 8.5 × 11 in. A new size is one more row here.
 */
import { inches, mm, type Mm } from '../units/length.ts'

export interface PaperSize {
  readonly name: string
  readonly width: Mm
  readonly height: Mm
}

export const PAPERS = {
  a4: { name: 'A4', width: mm(210), height: mm(297) },
  letter: { name: 'Letter', width: inches(8.5), height: inches(11) },
} as const satisfies Record<string, PaperSize>

export type PaperId = keyof typeof PAPERS
export const PAPER_IDS = Object.keys(PAPERS) as readonly PaperId[]

/** Home printers leave 3 to 8 mm white round a sheet; 10 is sure. Common practice, no source. */
export const PRINT_MARGIN = mm(10)

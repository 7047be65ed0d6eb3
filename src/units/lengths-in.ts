/**
 * Sentences that are the same for everybody (sources, tests, reasons of the rules) name lengths in
 * whole words of millimetres; she reads them in her own unit.
 */
import { formatLength, formatNumber, type UnitChoice } from './format.ts'
import { mm } from './length.ts'

/** "Keep 6 to 13 mm" as "Keep 0.6 to 1.3 cm" or "Keep 1/4 to 1/2 in". */
export const lengthsIn = (sentence: string, units: UnitChoice): string =>
  sentence
    .replaceAll(
      RANGE,
      (_, from: string, to: string, till: string) =>
        `${formatNumber(mm(Number(from)), units)} ${to} ${till} mm`,
    )
    .replaceAll(MILLIMETRES, (_, n: string) => formatLength(mm(Number(n.replace(',', '.'))), units))
/** Both ends of a range are lengths: "6 to 13 mm". What was kept in one language is read in the other. */
const RANGE = /(?<![\d.,])(\d+) (to|bis) (\d+) mm\b/g
const MILLIMETRES = /(?<![\d.,])(\d+(?:[.,]\d+)?) mm\b/g

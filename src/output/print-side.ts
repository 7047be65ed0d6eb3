/**
 * A side of a printed square as she types it. Only one unit makes a square of that size out of a
 * bare number, so none has to be written: 99.5 is millimetres, 9.95 centimetres, 3 15/16 inches.
 */
import { MM_PER_INCH, mm, type Mm } from '../units/length.ts'
import { decimals } from '../units/number.ts'
import type { ParsedLength } from '../units/parse.ts'
import { readWritten } from '../units/written.ts'
import { PRINT_WORDS } from './print-scale.words.ts'

const UNITS = { mm: 1, cm: 10, in: MM_PER_INCH, m: 1000 } as const
/** Further off than this it is no side of that square, in whatever unit. */
const NEAR = 2

/** @param side the true side of the square */
export function readSide(text: string, side: Mm): ParsedLength {
  const written = readWritten(text)
  if (written.kind === 'refused') return { ok: false, reason: written.reason }
  const counts =
    written.kind === 'grouped' ? [written.asDecimal, written.asThousands] : [written.value]
  const units = written.unit ? [written.unit] : (['mm', 'cm', 'in'] as const)
  const [nearest] = counts
    .flatMap((count) => units.map((unit) => count * UNITS[unit]))
    .filter((value) => off(value, side) <= Math.log(NEAR))
    .sort((a, b) => off(a, side) - off(b, side))
  if (nearest === undefined)
    return {
      ok: false,
      reason: PRINT_WORDS.noSide(text.trim(), sideWords(side)),
    }
  return { ok: true, value: mm(nearest), read: sideWords(mm(nearest)) }
}
const off = (value: number, side: number): number => Math.abs(Math.log(value / side))

/** To a tenth of a millimetre: a pencil line is a quarter of one. */
export const sideWords = (side: Mm): string => `${decimals(side, 1)} mm`

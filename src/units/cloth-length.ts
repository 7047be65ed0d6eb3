/**
 * A length of cloth as it is bought and written: "2.30 m", "2 1/2 yd", "180 cm". A bare number is
 * metres, or yards for her who reads inches, where it can be one.
 */
import { CLOTH_LENGTH_WORDS } from './cloth-length.words.ts'
import { formatLength, type UnitChoice } from './format.ts'
import { FORMAT_WORDS } from './format.words.ts'
import { inches, mm, type Mm } from './length.ts'
import { decimals } from './number.ts'
import type { ParsedLength } from './parse.ts'
import { readWritten } from './written.ts'

const YARD = inches(36)
/** More than a bolt's end is no remnant. Judgement. */
const LONGEST = mm(10_000)
/** A bare number up to this is metres or yards, above it centimetres or inches. Judgement. */
const BARE = 12
const PER = { mm: 1, cm: 10, m: 1000, in: inches(1) } as const
const YARDS = /\s*(?:yds?\.?|yards?)\s*$/i

export function parseClothLength(text: string, choice: UnitChoice): ParsedLength {
  const yards = YARDS.test(text)
  const written = readWritten(yards ? text.replace(YARDS, '') : text)
  if (written.kind === 'refused') return { ok: false, reason: CLOTH_LENGTH_WORDS.how }
  const count = written.kind === 'grouped' ? written.asDecimal : written.value
  const { unit } = written
  const metric = choice.unit === 'cm'
  const per = yards
    ? YARD
    : unit
      ? PER[unit]
      : count > BARE
        ? PER[metric ? 'cm' : 'in']
        : metric
          ? PER.m
          : YARD
  const value = mm(count * per)
  return value > 0 && value <= LONGEST
    ? { ok: true, value, read: clothLengthWords(value, choice) }
    : { ok: false, reason: CLOTH_LENGTH_WORDS.noLength(text.trim()) }
}

/** "2.30 m"; in inches "2 yd 18 in", whole yards alone. */
export function clothLengthWords(length: Mm, choice: UnitChoice): string {
  if (choice.unit === 'cm') return `${decimals(length / 1000, 2)}${FORMAT_WORDS.gap}m`
  const yards = Math.floor((length + 1e-6) / YARD)
  const rest = mm(length - yards * YARD)
  if (yards === 0) return formatLength(length, choice)
  return rest < 1 ? `${yards} yd` : `${yards} yd ${formatLength(rest, choice)}`
}

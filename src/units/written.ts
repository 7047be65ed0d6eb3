/**
 * From what she typed to a number and, where she wrote one, its unit. Says nothing about which
 * unit a bare number means; `parse.ts` decides that, or asks.
 */
import { NUMBER_WORDS } from './number.words.ts'
import { FEET_NAMES, UNIT_NAMES, WRITTEN_WORDS } from './written.words.ts'

export type WrittenUnit = 'cm' | 'mm' | 'm' | 'in'

export type Written =
  | {
      readonly kind: 'number'
      readonly value: number
      readonly unit?: WrittenUnit
      /** 'fine': eighths and finer stand on an inch ruler only, so the number carries its unit. */
      readonly fraction: 'none' | 'coarse' | 'fine'
    }
  /** "1,200": one thousands mark before exactly three digits may be a decimal mark as well. */
  | {
      readonly kind: 'grouped'
      readonly asDecimal: number
      readonly asThousands: number
      readonly unit?: WrittenUnit
    }
  | { readonly kind: 'refused'; readonly reason: string }

const VULGAR: Readonly<Record<string, string>> = {
  '½': '1/2',
  '¼': '1/4',
  '¾': '3/4',
  '⅛': '1/8',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
}

const UNIT_WORDS: Readonly<Record<string, WrittenUnit>> = {
  ...Object.fromEntries(UNIT_NAMES),
  cm: 'cm',
  mm: 'mm',
  m: 'm',
  '"': 'in',
  in: 'in',
}
const FEET = new RegExp(`^(\\d+) ?(?:${FEET_NAMES}) ?(.*)$`)

/** Marks that an inch ruler carries; thirds and tenths it does not. Common practice, no source. */
const RULER_DENOMINATORS: readonly number[] = [2, 4, 8, 16, 32, 64]
/** A centimetre can be halved or quartered in speech; eighths are said of inches only. */
const COARSEST_INCH_ONLY = 8
const INCHES_PER_FOOT = 12

/** Reads one length as typed: decimal point or comma, fractions, feet and inches, unit words. */
export function readWritten(text: string): Written {
  const shown = text.trim()
  const plain = normalised(shown)
  if (plain === '') return refused(WRITTEN_WORDS.nothing)
  if (/^-/.test(plain)) {
    return refused(WRITTEN_WORDS.belowZero(shown.slice(1).trim()))
  }
  const feet = FEET.exec(plain)
  if (feet) return readFeet(shown, Number(feet[1]), feet[2] ?? '')
  const withUnit = /^(.*?) ?("|[a-zß]+)\.?$/.exec(plain)
  if (!withUnit) return readNumber(shown, plain)
  const unit = UNIT_WORDS[withUnit[2] ?? '']
  if (!unit) return refused(WRITTEN_WORDS.unreadable(shown))
  return readNumber(shown, withUnit[1] ?? '', unit)
}

function normalised(text: string): string {
  return text
    .toLowerCase()
    .replace(/[½¼¾⅛⅜⅝⅞]/g, (mark) => ` ${VULGAR[mark]}`)
    .replace(/[‘’′]/g, "'")
    .replace(/[“”″]/g, '"')
    .replace(/''/g, '"')
    .replace(/⁄/g, '/')
    .replace(/[−–]/g, '-')
    .replace(/\s+/g, ' ')
    .replace(/ ?\/ ?/g, '/')
    .trim()
}

function readFeet(shown: string, feet: number, rest: string): Written {
  const inchText = rest.replace(/ ?("|in\.?|inch|inches|zoll)$/, '')
  if (inchText === '') return number(feet * INCHES_PER_FOOT, 'none', 'in')
  const inch = readNumber(shown, inchText, 'in')
  if (inch.kind === 'refused') return inch
  if (inch.kind === 'grouped' || inch.value >= INCHES_PER_FOOT) {
    return refused(WRITTEN_WORDS.afterFeet(shown))
  }
  return number(feet * INCHES_PER_FOOT + inch.value, 'none', 'in')
}

const GROUPED = new RegExp(`^([1-9]\\d{0,2})\\${NUMBER_WORDS.thousandsMark}(\\d{3})$`)

function readNumber(shown: string, plain: string, unit?: WrittenUnit): Written {
  const grouped = GROUPED.exec(plain)
  if (grouped) {
    const asDecimal = Number(`${grouped[1]}.${grouped[2]}`)
    return {
      kind: 'grouped',
      asDecimal,
      asThousands: Number(`${grouped[1]}${grouped[2]}`),
      ...(unit && { unit }),
    }
  }
  if (/^(\d+([.,]\d+)?|[.,]\d+)$/.test(plain)) {
    return number(Number(plain.replace(',', '.')), 'none', unit)
  }
  const mixed = /^(?:(\d+)(?: |- ?))?(\d+)\/(\d+)$/.exec(plain)
  if (mixed) return readMixed(shown, mixed[1], Number(mixed[2]), Number(mixed[3]), unit)
  if (/^\d+([.,]\d+)? \d+([.,]\d+)?$/.test(plain)) {
    const [first] = plain.split(' ')
    return refused(WRITTEN_WORDS.twoNumbers(shown, first ?? ''))
  }
  return refused(WRITTEN_WORDS.unreadable(shown))
}

/** `whole` is matched only with a space or a hyphen after it, so 11/16 is never 1 1/16. */
function readMixed(
  shown: string,
  whole: string | undefined,
  top: number,
  bottom: number,
  unit?: WrittenUnit,
): Written {
  if (!RULER_DENOMINATORS.includes(bottom) || top === 0 || top >= bottom) {
    return refused(WRITTEN_WORDS.noMark(shown, `${top}/${bottom}`))
  }
  const fraction = bottom >= COARSEST_INCH_ONLY ? 'fine' : 'coarse'
  return number(Number(whole ?? 0) + top / bottom, fraction, unit)
}

const number = (
  value: number,
  fraction: 'none' | 'coarse' | 'fine',
  unit?: WrittenUnit,
): Written => ({
  kind: 'number',
  value,
  fraction,
  ...(unit && { unit }),
})
const refused = (reason: string): Written => ({ kind: 'refused', reason })

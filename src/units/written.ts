/**
 * From what she typed to a number and, where she wrote one, its unit. Says nothing about which
 * unit a bare number means; `parse.ts` decides that, or asks.
 */
export type WrittenUnit = 'cm' | 'mm' | 'm' | 'in'

export type Written =
  | {
      readonly kind: 'number'
      readonly value: number
      readonly unit?: WrittenUnit
      /** 'fine': eighths and finer stand on an inch ruler only, so the number carries its unit. */
      readonly fraction: 'none' | 'coarse' | 'fine'
    }
  /** "1,200": one comma before exactly three digits, a decimal comma or a thousands comma. */
  | {
      readonly kind: 'grouped'
      readonly asDecimal: number
      readonly asThousands: number
      readonly unit?: WrittenUnit
    }
  | { readonly kind: 'refused'; readonly reason: string }

const HOW = 'Write it as 41.3 cm, 413 mm or 16 1/4 in.'

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
  cm: 'cm',
  centimetre: 'cm',
  centimetres: 'cm',
  centimeter: 'cm',
  centimeters: 'cm',
  mm: 'mm',
  millimetre: 'mm',
  millimetres: 'mm',
  millimeter: 'mm',
  millimeters: 'mm',
  m: 'm',
  metre: 'm',
  metres: 'm',
  meter: 'm',
  meters: 'm',
  '"': 'in',
  in: 'in',
  inch: 'in',
  inches: 'in',
}

/** Marks that an inch ruler carries; thirds and tenths it does not. Common practice, no source. */
const RULER_DENOMINATORS: readonly number[] = [2, 4, 8, 16, 32, 64]
/** A centimetre can be halved or quartered in speech; eighths are said of inches only. */
const COARSEST_INCH_ONLY = 8
const INCHES_PER_FOOT = 12

/** Reads one length as typed: decimal point or comma, fractions, feet and inches, unit words. */
export function readWritten(text: string): Written {
  const shown = text.trim()
  const plain = normalised(shown)
  if (plain === '') return refused(`Nothing is written. ${HOW}`)
  if (/^-/.test(plain)) {
    return refused(
      `A length cannot be below zero. Write "${shown.slice(1).trim()}" without the minus sign.`,
    )
  }
  const feet = /^(\d+) ?(?:'|ft\.?|foot|feet) ?(.*)$/.exec(plain)
  if (feet) return readFeet(shown, Number(feet[1]), feet[2] ?? '')
  const withUnit = /^(.*?) ?("|[a-z]+)\.?$/.exec(plain)
  if (!withUnit) return readNumber(shown, plain)
  const unit = UNIT_WORDS[withUnit[2] ?? '']
  if (!unit) return refused(`"${shown}" is not a length that can be read. ${HOW}`)
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
  const inchText = rest.replace(/ ?("|in\.?|inch|inches)$/, '')
  if (inchText === '') return number(feet * INCHES_PER_FOOT, 'none', 'in')
  const inch = readNumber(shown, inchText, 'in')
  if (inch.kind === 'refused') return inch
  if (inch.kind === 'grouped' || inch.value >= INCHES_PER_FOOT) {
    return refused(
      `"${shown}": after the feet come 0 to 11 7/8 inches. Write 5' 2 1/2", or 62 1/2 in.`,
    )
  }
  return number(feet * INCHES_PER_FOOT + inch.value, 'none', 'in')
}

function readNumber(shown: string, plain: string, unit?: WrittenUnit): Written {
  const grouped = /^([1-9]\d{0,2}),(\d{3})$/.exec(plain)
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
    return refused(
      `"${shown}" is two numbers. Write a fraction as ${first} 3/8, or a decimal as ${first}.3.`,
    )
  }
  return refused(`"${shown}" is not a length that can be read. ${HOW}`)
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
    return refused(
      `"${shown}": ${top}/${bottom} is not a mark of an inch ruler. Write halves, quarters, eighths or sixteenths, as in 16 1/4.`,
    )
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

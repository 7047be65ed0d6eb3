/** What is said of a typed length, and the units it may carry. */
import type { WrittenUnit } from './written.ts'

const HOW = 'Write it as 41.3 cm, 413 mm or 16 1/4 in.'

export const WRITTEN_WORDS = {
  nothing: `Nothing is written. ${HOW}`,
  belowZero: (without: string): string =>
    `A length cannot be below zero. Write "${without}" without the minus sign.`,
  unreadable: (shown: string): string => `"${shown}" is not a length that can be read. ${HOW}`,
  afterFeet: (shown: string): string =>
    `"${shown}": after the feet come 0 to 11 7/8 inches. Write 5' 2 1/2", or 62 1/2 in.`,
  twoNumbers: (shown: string, first: string): string =>
    `"${shown}" is two numbers. Write a fraction as ${first} 3/8, or a decimal as ${first}.3.`,
  noMark: (shown: string, fraction: string): string =>
    `"${shown}": ${fraction} is not a mark of an inch ruler. Write halves, quarters, eighths or sixteenths, as in 16 1/4.`,
}

/** Small letters; `written.ts` knows the marks cm, mm, m, in and ". */
export const UNIT_NAMES: ReadonlyMap<string, WrittenUnit> = new Map([
  ['centimetre', 'cm'],
  ['centimetres', 'cm'],
  ['centimeter', 'cm'],
  ['centimeters', 'cm'],
  ['millimetre', 'mm'],
  ['millimetres', 'mm'],
  ['millimeter', 'mm'],
  ['millimeters', 'mm'],
  ['metre', 'm'],
  ['metres', 'm'],
  ['meter', 'm'],
  ['meters', 'm'],
  ['inch', 'in'],
  ['inches', 'in'],
])
/** Parts of a pattern. */
export const FEET_NAMES: string = "'|ft\\.?|foot|feet"

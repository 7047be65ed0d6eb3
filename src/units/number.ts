/** Numbers as she reads them. What is stored or drawn keeps the point and does not come here. */
import { NUMBER_WORDS } from './number.words.ts'

const marked = (digits: string): string => digits.replace('.', NUMBER_WORDS.decimalMark)

/** With so many decimals: "2.30". */
export const decimals = (value: number, count: number): string => marked(value.toFixed(count))

/** With as many decimals as it has, at the most so many: "2.3". */
export const plainNumber = (value: number, atMost = 3): string =>
  marked(`${Number(value.toFixed(atMost))}`)

/** Whole, in groups of three: "1,200". */
export const grouped = (value: number): string =>
  `${Math.round(value)}`.replace(/\B(?=(\d{3})+$)/g, NUMBER_WORDS.thousandsMark)

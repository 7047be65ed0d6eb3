/** Notions and interfacing in words. */
import { formatLength, type UnitChoice } from '../units/format.ts'
import { mm } from '../units/length.ts'
import { amountWords, STEP, type SoldBy } from './amount.ts'
import type { Interfacing } from './cut-list.ts'
import { REEL, type Notion } from './notions.ts'

/** "1 zip, the opening is 32.9 cm: ask for 35.0 cm." */
export function notionSentence(n: Notion, units: UnitChoice): string {
  const count = n.count === undefined ? '' : `${n.count} `
  const isThread = n.count !== undefined && n.length !== undefined && n.sold === undefined
  const long = isThread
    ? `: about ${Math.ceil(n.length / 10_000) * 10} m, ${n.count} of ${REEL / 1000} m`
    : n.length === undefined
      ? ''
      : n.sold === undefined
        ? `: ${formatLength(n.length, units)}${squareWords(n, units)}`
        : `: the opening is ${formatLength(n.length, units)}, ask for ${formatLength(n.sold, units)}`
  return isThread ? `Sewing thread${long}.` : `${capital(`${count}${n.words}`)}${long}.`
}
/** Half centimetres upward: a square a hair too small gives no strip. */
const squareWords = ({ square }: Notion, units: UnitChoice): string =>
  square === undefined
    ? ''
    : `, or a square of ${formatLength(mm(Math.ceil(square / 5) * 5), units)} cut round as one strip`
const capital = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1)

/** Rounded up to what the shop cuts. */
export function interfacingSentence(i: Interfacing, by: SoldBy, units: UnitChoice): string {
  const buy = mm(Math.ceil(i.length / STEP[by] - 1e-9) * STEP[by])
  return `Interfacing ${formatLength(i.width, units)} wide: ${amountWords(buy, by)} for the facings, which lie on ${formatLength(i.length, units)}.`
}

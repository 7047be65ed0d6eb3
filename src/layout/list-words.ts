/** Notions and interfacing in words. */
import { formatLength, type UnitChoice } from '../units/format.ts'
import { mm } from '../units/length.ts'
import { amountWords, STEP, type SoldBy } from './amount.ts'
import { NOTION_WORDS } from './cloth.words.ts'
import type { Interfacing } from './cut-list.ts'
import { REEL, type Notion } from './notions.ts'

/** "1 zip: the opening is 32.9 cm, ask for 35.0 cm." */
export function notionSentence(n: Notion, units: UnitChoice): string {
  switch (n.kind) {
    case 'zip':
      return NOTION_WORDS.zip(n.count, formatLength(n.length, units), formatLength(n.sold, units))
    case 'biasStrip': {
      // Half centimetres upward: a square a hair too small gives no strip.
      const square = mm(Math.ceil(n.square / 5) * 5)
      return NOTION_WORDS.biasStrip(formatLength(n.length, units), formatLength(square, units))
    }
    case 'buttons':
    case 'loopButton':
    case 'cuffButtons':
      return NOTION_WORDS[n.kind](n.count)
    case 'thread':
      return NOTION_WORDS.thread(Math.ceil(n.length / 10_000) * 10, n.count, REEL / 1000)
  }
}

/** Rounded up to what the shop cuts. */
export function interfacingSentence(i: Interfacing, by: SoldBy, units: UnitChoice): string {
  const buy = mm(Math.ceil(i.length / STEP[by] - 1e-9) * STEP[by])
  return NOTION_WORDS.interfacing(
    formatLength(i.width, units),
    amountWords(buy, by),
    formatLength(i.length, units),
    i.of,
  )
}

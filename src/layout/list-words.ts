/** Notions and interfacing in words. */
import { formatLength, type UnitChoice } from '../units/format.ts'
import { FORMAT_WORDS } from '../units/format.words.ts'
import { inches, mm, type Mm } from '../units/length.ts'
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
      return NOTION_WORDS.thread(threadWords(n.length, units), n.count, threadWords(REEL, units))
  }
}

/** In tens, upward: a reel of 100 m is labelled 110 yd (common practice, no source). */
function threadWords(length: Mm, { unit }: UnitChoice): string {
  const [long, mark] = unit === 'cm' ? [1000, 'm'] : [inches(36), 'yd']
  return `${Math.ceil(length / long / 10 - 1e-9) * 10}${FORMAT_WORDS.gap}${mark}`
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

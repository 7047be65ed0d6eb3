/**
 * What she typed, as plain lower-case words: quotes and accents evened out, contractions opened,
 * dialect and variant spelling brought to one form, numbers and units told from words.
 */
import { evened } from './evened.words.ts'
import { ONE_FORM, openedOf, UNITS } from './tokens.words.ts'

export interface Token {
  /** The word after spelling is evened out. */
  readonly word: string
  /** Where it stood in what she typed: [from, to). */
  readonly from: number
  readonly to: number
  /** A comma, full stop or the like stood before it. */
  readonly afterStop: boolean
}

/** A number with its unit tells how much, not what. */
const NUMBER = /^[0-9]+([.,/][0-9]+)*(mm|cm|in|inch|inches|m|ft|°|%|"|″)?$/
const STOP = /[,;:.!?()\n–—]/

export function tokensOf(typed: string): readonly Token[] {
  const even = typed
    .toLowerCase()
    .replace(/[’‘`´]/g, "'")
    .replace(/[“”]/g, '"')
  const found: Token[] = []
  let last = 0
  for (const match of even.matchAll(
    /[0-9]+(?:[.,/][0-9]+)*(?:\s?(?:mm|cm|in\.|inch(?:es)?|"|″|%|°))?|[\p{L}']+/gu,
  )) {
    const from = match.index
    const to = from + match[0].length
    const afterStop = STOP.test(even.slice(last, from))
    last = to
    const words = wordsOf(match[0])
    words.forEach((word, i) => found.push({ word, from, to, afterStop: afterStop && i === 0 }))
  }
  return found
}

function wordsOf(raw: string): readonly string[] {
  if (/^[0-9]/.test(raw) || NUMBER.test(raw) || UNITS.has(raw)) return ['#']
  const opened = openedOf(evened(raw).replace(/^'+|'+$/g, ''))
  return opened
    .split(' ')
    .flatMap((word) => (ONE_FORM.get(word) ?? word).split(' '))
    .filter((word) => word !== '')
}

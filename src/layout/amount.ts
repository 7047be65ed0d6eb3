/**
 * How much cloth to buy: the layout's length and everything it grows by, item by item.
 * Sources: length / (1 − shrinkage), whole repeats, one more repeat because the bolt may begin
 * anywhere in it, 5 % to spare and at least 100 mm, next 0.1 m or ⅛ yd: public sewing lessons on
 * matching repeats and common practice.
 */
import { FORMAT_WORDS } from '../units/format.words.ts'
import { inches, mm, type Mm } from '../units/length.ts'
import { decimals } from '../units/number.ts'
import type { Cloth } from './cloth.ts'
import { AMOUNT_WORDS } from './cloth.words.ts'

export interface AmountItem {
  readonly words: string
  /** What it adds, mm. */
  readonly adds: Mm
}
export type SoldBy = 'metre' | 'yard'
export interface Amount {
  readonly items: readonly AmountItem[]
  /** The sum of the items: a whole number of steps of the shop. */
  readonly buy: Mm
  readonly soldBy: SoldBy
}

export const SPARE_SHARE = 0.05
export const SPARE_LEAST = mm(100)
/** Both ends are cut along a thread; they are seldom cut so in the shop. Common practice, no source. */
export const STRAIGHTENING = mm(50)
export const STEP: Readonly<Record<SoldBy, Mm>> = { metre: mm(100), yard: mm(inches(36) / 8) }

/** @param spare share of the length, of which there is never less than `SPARE_LEAST` */
export function amountToBuy(
  length: Mm,
  cloth: Cloth,
  soldBy: SoldBy,
  spare: number = SPARE_SHARE,
): Amount {
  const repeat = cloth.repeat?.along
  const before = length / (1 - cloth.shrinkAlong)
  const items: AmountItem[] = [{ words: AMOUNT_WORDS.layout, adds: length }]
  const add = (words: string, by: number): void => {
    if (by > 0) items.push({ words, adds: mm(by) })
  }
  add(AMOUNT_WORDS.shrinkage, before - length)
  add(AMOUNT_WORDS.repeat, repeat ?? 0)
  add(AMOUNT_WORDS.straightening, STRAIGHTENING)
  add(AMOUNT_WORDS.spare, Math.max(SPARE_LEAST, before * spare))
  const sum = items.reduce((s, i) => s + i.adds, 0)
  const buy = roundedUp(sum, STEP[soldBy])
  add(AMOUNT_WORDS.upTo[soldBy], buy - sum)
  return { items, buy: mm(buy), soldBy }
}

/** A sum a hair over a whole step by rounding is that step. */
const HAIR = 1e-6
const roundedUp = (v: number, step: number): number => Math.ceil((v - HAIR) / step) * step

/** What is left for pieces of an amount bought: the same items, backwards; 0 where nothing is. */
export const lengthLeft = (bought: Mm, cloth: Cloth): Mm =>
  mm(Math.max(0, (bought - STRAIGHTENING) * (1 - cloth.shrinkAlong)))

/**
 * A run of cloth in whole repeats: `length` long, each part beginning at the same place of the
 * repeat. Source: public lesson on matching, 96 in at a repeat of 27 in take 4 repeats, 108 in.
 */
export const wholeRepeats = (length: Mm, repeat: Mm): Mm =>
  mm(Math.ceil((length - HAIR) / repeat) * repeat)

/**
 * About the amount on another width, for a first look in the shop: the same area, to the nearest
 * step. A layout says it exactly.
 */
export const aboutOnWidth = (amount: Mm, from: Mm, to: Mm, soldBy: SoldBy): Mm =>
  mm(Math.round((amount * from) / to / STEP[soldBy]) * STEP[soldBy])

/** Shrinkage from a square cut, measured, washed and measured again; a share. */
export const shrinkage = (before: Mm, after: Mm): number => (before - after) / before

const EIGHTHS = ['', '⅛', '¼', '⅜', '½', '⅝', '¾', '⅞']
/** "1.7 m" or "1⅞ yd"; for amounts in whole steps. */
export function amountWords(amount: Mm, soldBy: SoldBy): string {
  const steps = Math.round(amount / STEP[soldBy])
  if (soldBy === 'metre') return `${decimals(steps / 10, 1)}${FORMAT_WORDS.gap}m`
  const whole = Math.floor(steps / 8)
  return `${whole === 0 && steps % 8 !== 0 ? '' : whole}${EIGHTHS[steps % 8] ?? ''} yd`
}

/**
 * Options: the choices that are words and not amounts. Each has a default that is right without
 * touching it, and says what it is for and what it is not for.
 */
import { OPTION_WORDS } from './options.words.ts'

export interface Option<Word extends string> {
  readonly label: string
  readonly does: string
  readonly default: NoInfer<Word>
  readonly words: Readonly<Record<Word, string>>
}

const option = <Word extends string>(
  said: Omit<Option<Word>, 'default'>,
  standard: NoInfer<Word>,
): Option<Word> => ({ ...said, default: standard })

export const OPTIONS = {
  overarmRule: option(OPTION_WORDS.overarmRule, 'auto'),
  construction: option(OPTION_WORDS.construction, 'measured'),
  neckShape: option(OPTION_WORDS.neckShape, 'round'),
  shaping: option(OPTION_WORDS.shaping, 'darts'),
  waistDarts: option(OPTION_WORDS.waistDarts, 'asNeeded'),
  surplus: option(OPTION_WORDS.surplus, 'auto'),
  dartAt: option(OPTION_WORDS.dartAt, 'side'),
  dartSecond: option(OPTION_WORDS.dartSecond, 'none'),
  dartAs: option(OPTION_WORDS.dartAs, 'dart'),
  opening: option(OPTION_WORDS.opening, 'auto'),
  skirt: option(OPTION_WORDS.skirt, 'flared'),
  waistFinish: option(OPTION_WORDS.waistFinish, 'seam'),
  sleeveEnd: option(OPTION_WORDS.sleeveEnd, 'hem'),
  neckFinish: option(OPTION_WORDS.neckFinish, 'biasStrip'),
} as const

export type OptionId = keyof typeof OPTIONS
export type OptionWord<Id extends OptionId> = keyof (typeof OPTIONS)[Id]['words']
export type Options = { readonly [Id in OptionId]: OptionWord<Id> }

export const OPTION_IDS = Object.keys(OPTIONS) as readonly OptionId[]
export const isOptionId = (name: string): name is OptionId => Object.hasOwn(OPTIONS, name)
export const isOptionWord = <Id extends OptionId>(id: Id, word: unknown): word is OptionWord<Id> =>
  typeof word === 'string' && Object.hasOwn(OPTIONS[id].words, word)

export const standardOptions = (): Options => ({
  overarmRule: OPTIONS.overarmRule.default,
  construction: OPTIONS.construction.default,
  neckShape: OPTIONS.neckShape.default,
  shaping: OPTIONS.shaping.default,
  waistDarts: OPTIONS.waistDarts.default,
  surplus: OPTIONS.surplus.default,
  dartAt: OPTIONS.dartAt.default,
  dartSecond: OPTIONS.dartSecond.default,
  dartAs: OPTIONS.dartAs.default,
  opening: OPTIONS.opening.default,
  skirt: OPTIONS.skirt.default,
  waistFinish: OPTIONS.waistFinish.default,
  sleeveEnd: OPTIONS.sleeveEnd.default,
  neckFinish: OPTIONS.neckFinish.default,
})

/**
 * An Amount is a length that remembers how it was reached. Drafting code adds and divides
 * amounts; the page then prints the same arithmetic in words, so the drawing and the written
 * step cannot disagree.
 */
import { AMOUNT_WORDS } from './amount.words.ts'
import { formatLength, formatStep, type UnitChoice } from './format.ts'
import { mm, type Mm } from './length.ts'

export type Term =
  | { readonly kind: 'measurement'; readonly name: string; readonly label: string }
  | { readonly kind: 'choice'; readonly name: string; readonly label: string }
  | { readonly kind: 'fixed' }
  | { readonly kind: 'sum'; readonly left: Amount; readonly right: Amount; readonly sign: 1 | -1 }
  | { readonly kind: 'part'; readonly of: Amount; readonly divisor: number }
  /** Read off the paper: the label says between what, `restsOn` which names it depends on. */
  | { readonly kind: 'found'; readonly label: string; readonly restsOn: readonly string[] }

export interface Amount {
  readonly mm: Mm
  readonly from: Term
  /** Names it rests on that its words leave out: a choice that is nought, a number behind a rule. */
  readonly also?: readonly string[]
}

/** A tape measurement; `name` is its id, `label` the words of the step: 'nape to waist'. */
export const measurementAmount = (name: string, label: string, length: Mm): Amount => ({
  mm: length,
  from: { kind: 'measurement', name, label },
})
/** A length she chose: ease, a hem depth, a neck width. */
export const choiceAmount = (name: string, label: string, length: Mm): Amount => ({
  mm: length,
  from: { kind: 'choice', name, label },
})
export const fixed = (length: Mm): Amount => ({ mm: length, from: { kind: 'fixed' } })
/** A length the construction itself produced, to be read off the paper: 'distance S–U'. */
export const found = (label: string, length: Mm, restsOn: readonly string[] = []): Amount => ({
  mm: length,
  from: { kind: 'found', label, restsOn },
})
export const plus = (a: Amount, b: Amount): Amount => ({
  mm: mm(a.mm + b.mm),
  from: { kind: 'sum', left: a, right: b, sign: 1 },
})
export const minus = (a: Amount, b: Amount): Amount => ({
  mm: mm(a.mm - b.mm),
  from: { kind: 'sum', left: a, right: b, sign: -1 },
})
/** The same length and words, resting on more. */
export const restingOn = (a: Amount, names: readonly string[]): Amount => ({
  ...a,
  also: [...(a.also ?? []), ...names],
})
/** One part of `a` divided by `divisor`; 0 or less is our own mistake. */
export function over(a: Amount, divisor: number): Amount {
  if (!(divisor > 0)) throw new Error(`over: cannot divide an amount by ${divisor}`)
  return { mm: mm(a.mm / divisor), from: { kind: 'part', of: a, divisor } }
}

/** The arithmetic in the words of a drafting book: "a quarter of the bust + 2.2 cm". */
export function inWords(amount: Amount, choice: UnitChoice): string {
  const { from } = amount
  switch (from.kind) {
    case 'measurement':
    case 'choice':
    case 'found':
      return from.label
    case 'fixed':
      return formatLength(amount.mm, choice)
    case 'part':
      return partInWords(from.of, from.divisor, choice)
    case 'sum':
      return sumInWords(from.left, from.right, from.sign, choice)
  }
}

/** "nape to waist, 41.2 cm"; a fixed length says its number once. */
export function inFull(amount: Amount, choice: UnitChoice): string {
  const [words, number] = [inWords(amount, choice), formatStep(amount.mm, choice)]
  return words === '' || words === number ? number : AMOUNT_WORDS.inFull(words, number)
}

/** Names of every measurement and choice the amount rests on, each once, in order of use. */
export function sources(amount: Amount): readonly string[] {
  return [...new Set(allSources(amount))]
}

const allSources = (a: Amount): readonly string[] => [...(a.also ?? []), ...termSources(a.from)]

function termSources(from: Term): readonly string[] {
  switch (from.kind) {
    case 'measurement':
    case 'choice':
      return [from.name]
    case 'fixed':
      return []
    case 'found':
      return from.restsOn
    case 'part':
      return allSources(from.of)
    case 'sum':
      return [...allSources(from.left), ...allSources(from.right)]
  }
}

/** A negative fixed length is subtracted, because nobody lays out "+ −0.5 cm". */
function sumInWords(left: Amount, right: Amount, sign: 1 | -1, choice: UnitChoice): string {
  const flip = right.from.kind === 'fixed' && right.mm < 0
  const shown = flip ? fixed(mm(-right.mm)) : right
  const minusSign = flip ? sign === 1 : sign === -1
  const words = inWords(shown, choice)
  const second = minusSign && shown.from.kind === 'sum' ? `(${words})` : words
  return `${inWords(left, choice)} ${minusSign ? '−' : '+'} ${second}`
}

function partInWords(of: Amount, divisor: number, choice: UnitChoice): string {
  const words = inWords(of, choice)
  switch (of.from.kind) {
    case 'sum':
      return AMOUNT_WORDS.partOf(divisor, `(${words})`)
    case 'fixed':
    case 'part':
      return AMOUNT_WORDS.partOf(divisor, words)
    default:
      return AMOUNT_WORDS.partOfNamed(divisor, words)
  }
}

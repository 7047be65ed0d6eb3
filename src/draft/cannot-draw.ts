/**
 * Numbers that each may be right and still cannot be drawn together. A construction that meets
 * them stops with `refuse`; `attempted` of `garments.ts` hands the reason back as data, so that a
 * screen or a command can say it. Anything else that is thrown is our own mistake.
 */
import { isMeasurementId, measure, type MeasurementId } from '../measurements/catalogue.ts'
import { formatLength, type UnitChoice } from '../units/format.ts'
import { mm, type Mm } from '../units/length.ts'
import { UNDRAWABLE_WORDS, WHAT_TO_DO } from './cannot-draw.words.ts'
import { CHOICES, isChoiceId, type ChoiceId } from './choices.ts'

export type UndrawableId = keyof typeof UNDRAWABLE_WORDS

export interface Undrawable {
  readonly id: UndrawableId
  /** What it rests on: the numbers to tape again or to turn, the likeliest first. */
  readonly names: readonly (MeasurementId | ChoiceId)[]
  readonly value: Mm
  readonly limit: Mm
}

/** A refusal on its way out of a construction; its message is the sentence in centimetres. */
export class CannotDraw extends Error {
  constructor(readonly why: Undrawable) {
    super(undrawableSentence(why, { unit: 'cm', inchStep: 8 }))
  }
}

export function refuse(
  id: UndrawableId,
  names: Undrawable['names'],
  value: number,
  limit: number,
): never {
  throw new CannotDraw({ id, names, value: mm(value), limit: mm(limit) })
}

/** What cannot be drawn, and which numbers to look at. */
export function undrawableSentence(why: Undrawable, units: UnitChoice): string {
  const what = UNDRAWABLE_WORDS[why.id]
    .replace('{value}', formatLength(why.value, units))
    .replace('{limit}', formatLength(why.limit, units))
  const taped = why.names.filter((n) => isMeasurementId(n)).map((n) => measure(n).label)
  const turned = why.names.filter((n) => isChoiceId(n)).map((n) => CHOICES[n].label)
  return [
    what,
    ...(taped.length > 0 ? [WHAT_TO_DO.tapeAgain(taped)] : []),
    ...(turned.length > 0 ? [WHAT_TO_DO.orTurn(turned)] : []),
  ].join(' ')
}

/**
 * Wanted ease from a garment she likes, laid flat: twice its half width less the body, a quarter
 * of it on each half piece. The arithmetic is an Amount, so that it can be said as it was made.
 * Not for knits: a stretched garment has less ease than it seems.
 */
import { knows, lengthOf, type Body } from '../measurements/confirmed.ts'
import { measure, type MeasurementId } from '../measurements/catalogue.ts'
import { formatLength, type UnitChoice } from '../units/format.ts'
import { mm, type Mm } from '../units/length.ts'
import { CHOICES, type ChoiceId, type Choices } from './choices.ts'
import type { Liked, LikedId } from './own-work.ts'
import { LIKED_WORDS } from './liked.words.ts'

export interface WantedEase {
  readonly from: LikedId
  readonly choice: ChoiceId
  /** What it would be turned to, whole millimetres. */
  readonly to: Mm
  readonly now: Mm
  /** Outside the range of the choice: it is said and not offered. */
  readonly outside: boolean
}

const GIRTHS: Readonly<
  Record<Exclude<LikedId, 'backLength'>, readonly [girth: MeasurementId, choice: ChoiceId]>
> = {
  bust: ['bustGirth', 'easeBust'],
  waist: ['waistGirth', 'easeWaist'],
  highHip: ['highHipGirth', 'easeHighHip'],
  hip: ['hipGirth', 'easeHip'],
}

/** @param reads the choices of this garment; what it does not read is left out */
export function wantedEase(
  liked: Liked,
  body: Body,
  choices: Choices,
  reads: readonly ChoiceId[],
): readonly WantedEase[] {
  const wanted = (from: LikedId, id: ChoiceId, value: number): WantedEase => {
    const { min, max } = CHOICES[id]
    const to = mm(Math.round(value))
    return { from, choice: id, to, now: choices[id], outside: to < min || to > max }
  }
  const girths = (['bust', 'waist', 'highHip', 'hip'] as const).flatMap((from) => {
    const [girth, id] = GIRTHS[from]
    const flat = liked[from]
    return flat === undefined || !knows(body, girth)
      ? []
      : [wanted(from, id, (2 * flat - lengthOf(body, girth)) / 4)]
  })
  const { backLength } = liked
  const length =
    backLength === undefined || !knows(body, 'napeToWaist')
      ? []
      : [
          wanted(
            'backLength',
            'lengthBelowWaist',
            backLength - lengthOf(body, 'napeToWaist') - choices.lengthAdded,
          ),
        ]
  return [...girths, ...length].filter((w) => reads.includes(w.choice))
}

/** The arithmetic as she would do it: "2 × 52.0 − 94.0 = 10.0 cm all round, a quarter is 2.5 cm". */
export function wantedSaid(w: WantedEase, liked: Liked, body: Body, units: UnitChoice): string {
  const say = (value: number): string => formatLength(mm(value), units)
  const flat = liked[w.from] ?? mm(0)
  if (w.from === 'backLength') {
    const waist = lengthOf(body, 'napeToWaist')
    return LIKED_WORDS.length(say(flat), measure('napeToWaist').spoken, say(waist), say(w.to))
  }
  const girth = lengthOf(body, GIRTHS[w.from][0])
  return LIKED_WORDS.girth(say(flat), say(girth), say(2 * flat - girth), say(w.to))
}

/** All that is offered, taken at once. */
export const withWanted = (choices: Choices, list: readonly WantedEase[]): Choices =>
  list.filter((w) => !w.outside).reduce((turned, w) => ({ ...turned, [w.choice]: w.to }), choices)

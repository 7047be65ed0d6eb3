/**
 * A skirt cut from a circle: the waist is an arc, the hem another about the same centre. A whole
 * waist W on a part of the circle of α radians has the radius W/α, so r = W/2π for a whole circle,
 * W/π for a half, 2W/π for a quarter (public circle-skirt lessons; check values in the tests).
 * The radius is that of the seam line: the allowance lies inside it, towards the centre.
 */
import { point, subtract } from '../../geometry/point.ts'
import { found } from '../../units/amount.ts'
import { mm } from '../../units/length.ts'
import { choice, type Choices } from '../choices.ts'
import type { OptionWord } from '../options.ts'
import { Sheet } from '../sheet.ts'
import type { HalfId } from '../piece.ts'
import { SKIRT_WORDS as W } from './skirt.words.ts'

export type CirclePart = Extract<OptionWord<'skirt'>, 'quarterCircle' | 'halfCircle' | 'fullCircle'>
const TURN: Readonly<Record<CirclePart, number>> = {
  quarterCircle: Math.PI / 2,
  halfCircle: Math.PI,
  fullCircle: 2 * Math.PI,
}
export const isCircle = (skirt: OptionWord<'skirt'>): skirt is CirclePart =>
  Object.hasOwn(TURN, skirt)

/** Radius of the waist for a whole waist of this length, mm. */
export const circleRadius = (waist: number, part: CirclePart): number => waist / TURN[part]

/** Half pieces of back and front: `waists` are their sewn waists, what the bias gives not yet taken off. */
export function drawCircleSkirt(
  half: HalfId,
  choices: Choices,
  part: CirclePart,
  waists: Readonly<Record<HalfId, number>>,
  rests: readonly string[],
): Sheet {
  const s = new Sheet(half === 'back' ? 'skirtBack' : 'skirtFront')
  const give = choices.biasGive
  const whole = 2 * (waists.back + waists.front - 2 * give)
  const radius = circleRadius(whole, part)
  const angle = (waists[half] - give) / radius
  const all = [...rests, 'skirt', 'biasGive']
  s.start('C', W.waistAtCentre)
  s.measure('O', 'C', 'up', found(W.radiusOfWaist, mm(radius), all), W.centreOfCircle)
  s.measure('L', 'C', 'down', choice(choices, 'lengthBelowWaist'), W.hemAtCentre)
  const side = subtract(
    point(radius * Math.sin(angle), -radius + radius * Math.cos(angle)),
    s.at('O'),
  )
  s.spot('W', 'O', found('', mm(side.x), all), found('', mm(side.y), all), W.sideAtWaist)
  s.slide('Y', 'W', 'O', minusLength(choices), W.hemAtSide)
  s.arc('O', 'C', 'W', 'waist', 'seam', W.sewnToBodice)
  s.join('W', 'Y', 'side', 'seam', half === 'back' ? W.sewnToFront : W.sewnToBack)
  s.arc('O', 'Y', 'L', 'hem', 'hem', W.squareToCentreAndSide)
  s.join('L', 'C', 'centre', 'fold', W.onTheFold)
  return s
}

const minusLength = (choices: Choices) => {
  const long = choice(choices, 'lengthBelowWaist')
  return { ...long, mm: mm(-long.mm) }
}

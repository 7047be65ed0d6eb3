/** Waist of the draped blouse: the side at the waist and its darts. */
import { measured, type Body } from '../../measurements/confirmed.ts'
import { found, minus, over, plus, restingOn, type Amount } from '../../units/amount.ts'
import { mm } from '../../units/length.ts'
import { choice, type Choices } from '../choices.ts'
import type { Sheet } from '../sheet.ts'
import { quarter } from './blouse-levels.ts'
import { frontTip, fullerBust, type TorsoNumbers, type HalfId } from './blouse-numbers.ts'
import { lowerTip, SECOND_TIP } from './waist-plan.ts'
import { TORSO_WORDS as W } from './torso.words.ts'

/** Two back darts stand at these shares of the width from the fold. Common practice, no source. */
const BACK_PAIR = [0.38, 0.7] as const

export function shapeWaist(
  s: Sheet,
  body: Body,
  choices: Choices,
  n: TorsoNumbers,
  half: HalfId,
): void {
  if (half === 'front')
    s.measure('apex', 'D', 'right', over(measured(body, 'apexSpacing'), 2), W.bustTip)
  const rests = [
    ...s.restsOf('U'),
    'waistGirth',
    'easeWaist',
    'sideIntake',
    'shaping',
    'waistDarts',
    'surplus',
  ]
  placeSide(s, body, choices, n, half, rests)
  const { darts } = n.waist[half]
  const [toHem, toHip] = [s.at('L').y - s.at('C').y, s.at('H').y - s.at('C').y]
  for (const [i, mouth] of darts.entries()) {
    const at = i === 0 ? 'M' : 'O'
    const width = dartWidth(darts, i, rests)
    dartMiddle(s, body, half, at, i, darts.length)
    const rise = found(
      half === 'front' ? W.apexToWaist : W.waistToBustLine,
      mm(s.at('C').y - s.at('D').y),
      s.restsOf('D'),
    )
    const lower = i === 0 ? rise : minus(rise, found(W.secondDartLowerTip, mm(SECOND_TIP)))
    const up = minus(lower, upperTip(body, choices, half))
    s.dart(at, width, up, lowerAmount(choices, half, mouth, toHem, toHip), s.at('L').y)
  }
}

function placeSide(
  s: Sheet,
  body: Body,
  choices: Choices,
  n: TorsoNumbers,
  half: HalfId,
  rests: readonly string[],
): void {
  const why = W.sideAtWaist
  const waist = quarter(body, 'waistGirth', 'easeWaist', choices, half)
  if (n.waist.kind === 'wider') return s.measure('W', 'C', 'right', waist, why)
  if (n.waist.kind === 'straight') return s.measure('W', 'C', 'right', s.across('E', 'U'), why)
  const { darts, centre, left } = n.waist[half]
  // The dart takes the front's share back, so the sewn waist is the plain quarter again.
  const sewn = plus(over(measured(body, 'waistGirth'), 4), choice(choices, 'easeWaist'))
  const withDarts = darts.reduce((sum, _, i) => plus(sum, dartWidth(darts, i, rests)), sewn)
  const seamed =
    centre > 0 ? plus(withDarts, found(W.centreBackSeam, mm(centre), rests)) : withDarts
  const whole = left > 0 ? plus(seamed, found(W.whatDartsCannotHold, mm(left), rests)) : seamed
  s.measure('W', 'C', 'right', restingOn(whole, rests), why)
}

const dartWidth = (darts: readonly number[], i: number, rests: readonly string[]): Amount =>
  found(darts.length === 1 ? W.dartWidth : W.dartWidthOf(i + 1), mm(darts[i] ?? 0), rests)

function upperTip(body: Body, choices: Choices, half: HalfId): Amount {
  if (half === 'back') return choice(choices, 'backDartTip')
  return fullerBust(body)
    ? found(W.tipBelowApexFullerBust, mm(frontTip(body, choices)), [
        'highBustGirth',
        'bustGirth',
        'frontDartTip',
      ])
    : choice(choices, 'frontDartTip')
}

/** One dart under the apex, or in the middle of the back; a second one nearer the side. */
function dartMiddle(
  s: Sheet,
  body: Body,
  half: HalfId,
  at: 'M' | 'O',
  index: number,
  count: number,
): void {
  if (half === 'front' && index === 0)
    return s.measure(at, 'C', 'right', over(measured(body, 'apexSpacing'), 2), W.dartUnderApex)
  const width = s.across('C', 'W')
  if (half === 'front') {
    const out = (s.at('M').x + s.at('W').x) / 2
    return s.measure(
      at,
      'C',
      'right',
      found('', mm(out), [...s.restsOf('W'), ...s.restsOf('M')]),
      W.secondDartHalfWay,
    )
  }
  if (count === 1) return s.measure(at, 'C', 'right', over(width, 2), W.middleOfDart)
  s.measure(
    at,
    'C',
    'right',
    found('', mm(width.mm * (BACK_PAIR[index] ?? 0)), s.restsOf('W')),
    index === 0 ? W.middleOfFirstDart : W.middleOfSecondDart,
  )
}

function lowerAmount(
  choices: Choices,
  half: HalfId,
  mouth: number,
  toHem: number,
  toHip: number,
): Amount {
  const id = half === 'back' ? 'backDartLow' : 'frontDartLow'
  const { down, why } = lowerTip(mouth, choices[id], toHem, toHip)
  return why === 'chosen'
    ? choice(choices, id)
    : found(W.lowerTip[why], mm(down), ['lengthBelowWaist', 'waistToHip', id])
}

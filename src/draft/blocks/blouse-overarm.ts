/**
 * How long the overarm of the draped blouse is, settled before either half is drawn: taped, found
 * from the underarm, or struck as in a hand draft. S side-neck, U underarm, L overarm length,
 * ρ rounding of the underarm corner, Q its centre square out of U. Source: common practice, no
 * source; the geometry is worked out in `blouse-sleeve-edge.ts`.
 */
import { knows, lengthOf, type Body } from '../../measurements/confirmed.ts'
import { point, type Point } from '../../geometry/point.ts'
import { mm, type Mm } from '../../units/length.ts'
import type { Choices } from '../choices.ts'
import { share, type BlouseNumbers } from './blouse-numbers.ts'
import { UNDERARM_GUESS } from './blouse-levels.ts'
import { foundOverarm, shortestOverarm, struckUnderarm } from './blouse-sleeve-edge.ts'
import { sideNeckRise } from './blouse-neck.ts'

/** A struck underarm is taken between these depths below the armpit level, mm. */
export const STRUCK = { least: 10, most: 80 } as const

export interface Overarm {
  readonly length: Mm
  readonly by: 'tape' | 'found' | 'struck'
  /** The shortest for which both sleeve edges can be struck. */
  readonly shortest: Mm
  /** What was taped, when it could not be used, and why. */
  readonly unused?: { readonly wanted: Mm; readonly why: 'tooShort' | 'struckOutside' }
  /** Level of the underarm below the nape when it is struck. */
  readonly underarm?: Mm
}

export function settleOverarm(body: Body, choices: Choices, n: BlouseNumbers): Overarm {
  const armpit = knows(body, 'napeToArmpitLevel') ? lengthOf(body, 'napeToArmpitLevel') : undefined
  const level =
    armpit === undefined
      ? lengthOf(body, 'napeToWaist') - lengthOf(body, 'waistToBustLevel') - UNDERARM_GUESS
      : armpit + choices.underarmDrop
  const back = corners(body, choices, n, 'back', level)
  const front = corners(body, choices, n, 'front', level)
  const shortest = mm(
    Math.max(
      ...[back, front].map(({ neck, underarm }) =>
        shortestOverarm(neck, underarm, choices.cornerRadius, choices.overarmDrop),
      ),
    ),
  )
  const found = mm(Math.max(foundOverarm(back.neck, back.underarm, choices.cornerRadius), shortest))
  if (!knows(body, 'sideNeckToSleeveEdge') || choices.overarmRule === 'found')
    return { length: found, by: 'found', shortest }
  const wanted = lengthOf(body, 'sideNeckToSleeveEdge')
  if (choices.overarmRule === 'struck') {
    const struck = struckUnderarm(back.neck, back.underarm.x, wanted, choices.cornerRadius)
    if (
      armpit !== undefined &&
      struck !== undefined &&
      struck >= armpit + STRUCK.least &&
      struck <= armpit + STRUCK.most
    )
      return { length: wanted, by: 'struck', shortest, underarm: mm(struck) }
    return { length: found, by: 'found', shortest, unused: { wanted, why: 'struckOutside' } }
  }
  return wanted >= shortest
    ? { length: wanted, by: 'tape', shortest }
    : { length: found, by: 'found', shortest, unused: { wanted, why: 'tooShort' } }
}

function corners(
  body: Body,
  choices: Choices,
  n: BlouseNumbers,
  half: 'back' | 'front',
  level: number,
): { neck: Point; underarm: Point } {
  const rise = sideNeckRise(body, choices) + (half === 'front' ? n.raise : 0)
  const width = lengthOf(body, 'bustGirth') / 4 + choices.easeBust + share(choices, half)
  return { neck: point(choices.neckHalfWidth, -rise), underarm: point(width, level) }
}

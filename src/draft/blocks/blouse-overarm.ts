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
import { share, type HalfId, type TorsoNumbers } from './blouse-numbers.ts'
import { UNDERARM_GUESS } from './blouse-levels.ts'
import {
  foundOverarm,
  overarmEnd,
  shortestOverarm,
  sleeveEdgeLength,
  struckUnderarm,
} from './blouse-sleeve-edge.ts'
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
  /** How much deeper than chosen the underarm lies so that the arm passes; 0 mostly. */
  readonly deeper: Mm
}

/** The corner is rounded by no more than this share of the height between overarm end and underarm. */
const ROUND_MOST = 0.7

const HALVES: readonly HalfId[] = ['back', 'front']

export interface FittingSleeve {
  readonly choices: Choices
  /** How much higher than chosen the overarm ends; 0 mostly. */
  readonly raised: Mm
}

/**
 * The choices with an overarm that ends above the underarm, or its edge would loop round under it,
 * and a rounding that fits between both.
 */
export function fittingSleeve(body: Body, chosen: Choices): FittingSleeve {
  const lowest = Math.max(...HALVES.map((half) => overarmEnd(chosen, half).mm))
  const level = underarmLevel(body, chosen, 0)
  const raised = mm(Math.max(0, lowest - (level - END_ABOVE)))
  const choices = raised > 0 ? { ...chosen, overarmDrop: mm(chosen.overarmDrop - raised) } : chosen
  const room = ROUND_MOST * (level - (lowest - raised))
  const fits = choices.cornerRadius <= room
  return {
    choices: fits ? choices : { ...choices, cornerRadius: mm(Math.floor(room)) },
    raised,
  }
}
/** The overarm ends at least this far above the underarm, mm. Judgement. */
const END_ABOVE = 20

export function settleOverarm(body: Body, choices: Choices, n: TorsoNumbers): Overarm {
  const chosen = settledAt(body, choices, n, 0)
  if (chosen.by === 'struck' || !knows(body, 'napeToArmpitLevel')) return chosen
  if (!knows(body, 'upperArmGirth')) return chosen
  const wanted = lengthOf(body, 'upperArmGirth') + choices.armRoom
  const passes = (deeper: number): boolean =>
    openingOf(body, choices, n, settledAt(body, choices, n, deeper)) >= wanted
  if (passes(0)) return chosen
  const steps = Math.floor((STRUCK.most - choices.underarmDrop) / DEEPER_STEP)
  for (let i = 1; i <= steps; i++)
    if (passes(i * DEEPER_STEP)) return settledAt(body, choices, n, i * DEEPER_STEP)
  return chosen
}
/** The underarm is deepened by whole steps, mm: a number she can lay out. */
const DEEPER_STEP = 5

function settledAt(body: Body, choices: Choices, n: TorsoNumbers, deeper: number): Overarm {
  const armpit = knows(body, 'napeToArmpitLevel') ? lengthOf(body, 'napeToArmpitLevel') : undefined
  const level = underarmLevel(body, choices, deeper)
  const back = corners(body, choices, n, 'back', level)
  const front = corners(body, choices, n, 'front', level)
  const shortest = mm(
    Math.max(
      ...[back, front].map(({ neck, underarm, end }) =>
        shortestOverarm(neck, underarm, choices.cornerRadius, end),
      ),
    ),
  )
  const found = mm(Math.max(foundOverarm(back.neck, back.underarm, choices.cornerRadius), shortest))
  const plain = { length: found, by: 'found', shortest, deeper: mm(deeper) } as const
  if (!knows(body, 'sideNeckToSleeveEdge') || choices.overarmRule === 'found') return plain
  const wanted = lengthOf(body, 'sideNeckToSleeveEdge')
  if (choices.overarmRule === 'struck') {
    const struck = struckUnderarm(back.neck, back.underarm.x, wanted, choices.cornerRadius)
    const inReach =
      armpit !== undefined &&
      struck !== undefined &&
      struck >= armpit + STRUCK.least &&
      struck <= armpit + STRUCK.most
    return inReach
      ? { ...plain, length: wanted, by: 'struck', underarm: mm(struck) }
      : { ...plain, unused: { wanted, why: 'struckOutside' } }
  }
  return wanted >= shortest
    ? { ...plain, length: wanted, by: 'tape' }
    : { ...plain, unused: { wanted, why: 'tooShort' } }
}

const underarmLevel = (body: Body, choices: Choices, deeper: number): number =>
  knows(body, 'napeToArmpitLevel')
    ? lengthOf(body, 'napeToArmpitLevel') + choices.underarmDrop + deeper
    : lengthOf(body, 'napeToWaist') - lengthOf(body, 'waistToBustLevel') - UNDERARM_GUESS

/** Both sleeve edges together. */
function openingOf(body: Body, choices: Choices, n: TorsoNumbers, o: Overarm): number {
  const level = underarmLevel(body, choices, o.deeper)
  return HALVES.map((half) => corners(body, choices, n, half, level))
    .map(({ neck, underarm, end }) =>
      sleeveEdgeLength(neck, underarm, o.length, choices.cornerRadius, end),
    )
    .reduce((a, b) => a + b, 0)
}

function corners(
  body: Body,
  choices: Choices,
  n: TorsoNumbers,
  half: HalfId,
  level: number,
): { neck: Point; underarm: Point; end: number } {
  const rise = sideNeckRise(body, choices) + (half === 'front' ? n.raise : 0)
  const width = lengthOf(body, 'bustGirth') / 4 + choices.easeBust + share(choices, half)
  return {
    neck: point(choices.neckHalfWidth, -rise),
    underarm: point(width, level),
    end: overarmEnd(choices, half).mm,
  }
}

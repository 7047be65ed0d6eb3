/**
 * An armhole without a sleeve still goes round the arm with room: where the chosen depth would be
 * too close, the underarm goes deeper by whole steps, and the draft says so.
 */
import { pathLength } from '../../geometry/length.ts'
import { knows, lengthOf, type Body } from '../../measurements/confirmed.ts'
import type { Choices } from '../choices.ts'
import type { Sheet } from '../sheet.ts'
import { drawBodice, loweredArmhole } from './bodice.ts'

/** Room round the arm in an armhole, mm: 25 is called the least over an upper arm. */
export const ARMHOLE_ROOM = 25
/** Whole steps, and no farther below the armpit than this, mm. Judgement. */
const DEEPER = { step: 5, belowArmpit: 60 } as const
/** A side seam keeps this much between underarm and waist, mm. */
const SIDE_LEFT = 25

/** How far down the underarm may go from where it was chosen, mm. */
export function deepestOf(back: Sheet, body: Body, choices: Choices): number {
  const side = back.at('W').y - back.at('U').y
  const below = knows(body, 'napeToArmpitLevel')
    ? back.at('E').y - lengthOf(body, 'napeToArmpitLevel')
    : choices.underarmDrop
  return Math.max(0, Math.min(DEEPER.belowArmpit - below, side - SIDE_LEFT))
}

/** Back and front with the underarm as chosen, or as much deeper as the arm needs. */
export function drawRoomyBodice(body: Body, choices: Choices): { back: Sheet; front: Sheet } {
  const drawn = drawBodice(body, choices)
  if (!knows(body, 'upperArmGirth')) return drawn
  const need = lengthOf(body, 'upperArmGirth') + ARMHOLE_ROOM
  const round = (deeper: number): number =>
    pathLength(loweredArmhole(drawn.back, deeper)) + pathLength(loweredArmhole(drawn.front, deeper))
  const most = deepestOf(drawn.back, body, choices)
  let deeper = 0
  while (round(deeper) < need && deeper + DEEPER.step <= most) deeper += DEEPER.step
  return deeper > 0 ? drawBodice(body, choices, deeper) : drawn
}

/**
 * The overarm S–T of length L and the sleeve edge, an arc square to it. The underarm corner is
 * rounded by a small circle of radius ρ that meets the side seam at U; its centre Q lies square
 * out of U. With u the unit vector S→T, the arc's centre K = S + t·u and its radius L − t, the
 * two circles touch when |Q − K| = (L − t) + ρ, which gives
 *   t = ((L + ρ)² − |SQ|²) / (2((L + ρ) − u·SQ)).
 * With t = 0 the length is found: L = |SQ| − ρ. Without rounding Q is U and ρ is 0.
 */
import {
  add,
  distance,
  dot,
  heading,
  norm,
  point,
  scale,
  subtract,
  unit,
  type Point,
} from '../../geometry/point.ts'
import { found, minus, restingOn, type Amount } from '../../units/amount.ts'
import { mm } from '../../units/length.ts'
import { choice, type Choices } from '../choices.ts'
import type { Sheet } from '../sheet.ts'
import type { HalfId } from './blouse-numbers.ts'
import { TORSO_WORDS as W } from './torso.words.ts'

/** With both lengths kept, the overarm must reach this far past the foot of the underarm, mm. */
const SLIDE_ROOM = 15

/** How far below the nape level the overarm of a half ends; more sweep lifts it. */
export function overarmEnd(choices: Choices, half: HalfId): Amount {
  const sweep = half === 'back' ? 'sweepBack' : 'sweepFront'
  const plain = choice(choices, 'overarmDrop')
  return choices[sweep] === 0 ? plain : minus(plain, choice(choices, sweep))
}

/** L when it is found from the underarm: the distance S–Q less the rounding. */
export const foundOverarm = (sideNeck: Point, underarm: Point, rounding: number): number =>
  norm(subtract(point(underarm.x + rounding, underarm.y), sideNeck)) - rounding

/** Level at which the arc struck about S with L meets the side `x`, or the rounding that ends there. */
export function struckUnderarm(
  sideNeck: Point,
  x: number,
  overarm: number,
  rounding: number,
): number | undefined {
  const [reach, out] = [overarm + rounding, x + rounding - sideNeck.x]
  return reach > out ? sideNeck.y + Math.sqrt(reach ** 2 - out ** 2) : undefined
}

/** Direction S→T for an overarm of length L that ends on the level y. */
function direction(sideNeck: Point, overarm: number, level: number): Point {
  const drop = level - sideNeck.y
  return unit(point(Math.sqrt(Math.max(0, overarm ** 2 - drop ** 2)), drop))
}

/** The shortest overarm for which an edge can be struck; its own direction is taken into account. */
export function shortestOverarm(
  sideNeck: Point,
  underarm: Point,
  rounding: number,
  level: number,
): number {
  const corner = subtract(point(underarm.x + rounding, underarm.y), sideNeck)
  const least = Math.abs(level - sideNeck.y) + SLIDE_ROOM
  // Begun long: the foot of the underarm on the overarm moves little with its angle, and a few
  // rounds settle it from above. Begun short it would stand steep and settle on a length too long.
  let length = norm(corner) + least
  for (let i = 0; i < 20; i++)
    length = Math.max(
      least,
      dot(direction(sideNeck, length, level), corner) + SLIDE_ROOM - rounding,
    )
  return length
}

/** How far K lies from S along the overarm, towards its end T; 0 where the centre is S itself. */
function slidBy(sideNeck: Point, underarm: Point, end: Point, rounding: number): number {
  const corner = subtract(point(underarm.x + rounding, underarm.y), sideNeck)
  const reach = distance(sideNeck, end) + rounding
  const along = unit(subtract(end, sideNeck))
  return (reach ** 2 - dot(corner, corner)) / (2 * (reach - dot(along, corner)))
}

/** Length of the sleeve edge of one half, rounding included, before anything is drawn, mm. */
export function sleeveEdgeLength(
  sideNeck: Point,
  underarm: Point,
  overarm: number,
  rounding: number,
  level: number,
): number {
  const along = direction(sideNeck, overarm, level)
  const end = add(sideNeck, scale(along, overarm))
  const slid = slidBy(sideNeck, underarm, end, rounding)
  const centre = add(sideNeck, scale(along, slid))
  const corner = point(underarm.x + rounding, underarm.y)
  const turn = heading(centre, corner) - heading(centre, end)
  // The small arc turns back from the direction K–Q to the level.
  return (overarm - slid) * turn + rounding * heading(centre, corner)
}

/** Q, where the underarm corner is rounded. */
export function placeCorner(s: Sheet, choices: Choices): void {
  if (choices.cornerRadius > 0)
    s.measure('Q', 'U', 'right', choice(choices, 'cornerRadius'), W.centreOfRoundedCorner)
}

/** T, K when the centre slides, P where the two arcs touch. */
export function placeSleeveEdge(s: Sheet, choices: Choices, overarm: Amount): void {
  const reaching = restingOn(overarm, [
    'overarmDrop',
    s.piece === 'back' ? 'sweepBack' : 'sweepFront',
  ])
  s.compass('T', 'S', reaching, s.has('G') ? 'G' : 'A', W.endOfOverarm)
  const rounding = choices.cornerRadius
  const slid = slidBy(s.at('S'), s.at('U'), s.at('T'), rounding)
  const centre = Math.abs(slid) < CENTRE_STAYS ? 'S' : 'K'
  if (centre === 'K')
    s.slide(
      'K',
      'S',
      'T',
      found('', mm(slid), [...s.restsOf('U'), 'cornerRadius']),
      W.centreOfSleeveEdge,
    )
  if (rounding > 0)
    s.slide('P', 'Q', centre, choice(choices, 'cornerRadius'), W.whereBothCurvesTouch)
}
/** Nearer than this the centre is S itself, mm. */
const CENTRE_STAYS = 1e-6

export function drawSleeveEdge(s: Sheet): void {
  const centre = s.has('K') ? 'K' : 'S'
  const square = W.squareToOverarm
  if (!s.has('P')) return s.arc(centre, 'T', 'U', 'sleeveEdge', 'edge', square)
  s.arc(centre, 'T', 'P', 'sleeveEdge', 'edge', square)
  s.arc('Q', 'P', 'U', 'sleeveEdge', 'edge', W.roundingUnderarmCorner)
}

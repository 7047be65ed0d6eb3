/**
 * Which cap goes into an armhole. Where the chosen ease and width give none that is worn, the rule
 * gives way in this order and says each: more cap ease, gathered over the top; a wider sleeve,
 * where the cap would stand too high; a deeper underarm. Worked out on 2,708 survey bodies.
 */
import { knows, lengthOf, type Body } from '../../measurements/confirmed.ts'
import { pathLength } from '../../geometry/length.ts'
import type { Choices } from '../choices.ts'
import type { Sheet } from '../sheet.ts'
import { deepestOf } from './armhole-rule.ts'
import { drawBodice, loweredArmhole } from './bodice.ts'
import { solveCap, type Cap } from './sleeve-cap.ts'

/** Caps are drawn between these heights, mm: a flat shirt cap, a high one. From memory. */
export const CAP_HEIGHT = { least: 75, most: 170 } as const
/** Cap ease is raised by whole steps to what still goes in as small gathers, mm: 32 to 44 in drafts. */
export const MORE_EASE = { step: 5, most: 40 } as const
/** The sleeve is widened by whole steps, mm. Judgement. */
const WIDER = { step: 5, most: 80 } as const
/** The underarm goes deeper by whole steps, mm. */
const DEEPER = { step: 5 } as const

export interface Sides {
  readonly front: number
  readonly back: number
}
export interface FittedCap extends Cap {
  /** Cap ease in all, as drawn. */
  readonly ease: number
  /** What the sleeve is wider than arm and room. */
  readonly wider: number
}

/** Ease lies in front and back alike. Common practice, no source. */
const FRONT_EASE = 0.5

/** The cap for these armholes; undefined where no ease and no width gives one. */
export function fittedCap(
  armholes: Sides,
  width: number,
  chosenEase: number,
): FittedCap | undefined {
  const at = (ease: number, wider: number): FittedCap | undefined => {
    const cap = solveCap(
      armholes.front + ease * FRONT_EASE,
      armholes.back + ease * (1 - FRONT_EASE),
      width + wider,
    )
    return cap && { ...cap, ease, wider }
  }
  let best: FittedCap | undefined
  for (
    let ease = chosenEase;
    ease <= Math.max(chosenEase, MORE_EASE.most);
    ease += MORE_EASE.step
  ) {
    best = at(ease, 0) ?? best
    if (best && best.height >= CAP_HEIGHT.least) break
  }
  return best && best.height > CAP_HEIGHT.most ? (wide(at, best.ease) ?? best) : best
}

function wide(
  at: (ease: number, wider: number) => FittedCap | undefined,
  ease: number,
): FittedCap | undefined {
  for (let wider = 0; wider <= WIDER.most; wider += WIDER.step) {
    const cap = at(ease, wider)
    if (cap && cap.height <= CAP_HEIGHT.most) return cap
  }
  return at(ease, WIDER.most)
}

/** Back and front with the underarm as chosen, or as much deeper as a cap that is worn needs. */
export function drawCappedBodice(body: Body, choices: Choices): { back: Sheet; front: Sheet } {
  const drawn = drawBodice(body, choices)
  if (!knows(body, 'upperArmGirth')) return drawn
  const width = lengthOf(body, 'upperArmGirth') + choices.armRoom
  const deeper = deeperFor(drawn, width, body, choices)
  return deeper > 0 ? drawBodice(body, choices, deeper) : drawn
}

/** How much deeper the underarm goes, so that a cap goes in that is worn; the highest cap, where none is. */
function deeperFor(
  { back, front }: { back: Sheet; front: Sheet },
  width: number,
  body: Body,
  choices: Choices,
): number {
  const most = deepestOf(back, body, choices)
  let [chosen, highest] = [0, 0]
  for (let deeper = 0; deeper <= most; deeper += DEEPER.step) {
    const sides = {
      front: pathLength(loweredArmhole(front, deeper)),
      back: pathLength(loweredArmhole(back, deeper)),
    }
    const height = fittedCap(sides, width, choices.capEase)?.height ?? 0
    if (height >= CAP_HEIGHT.least) return deeper
    if (height > highest + 1e-6) [chosen, highest] = [deeper, height]
  }
  return chosen
}

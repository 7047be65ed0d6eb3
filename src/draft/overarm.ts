/** What the screen says of the overarm: how steep it lies and how much cloth stands above the bone. */
import { distance } from '../geometry/point.ts'
import { radians, type Radians } from '../units/angle.ts'
import { mm, type Mm } from '../units/length.ts'
import { frontNeckPoint } from './blocks/blouse-neck.ts'
import { shoulderPoint } from './blocks/shoulder.ts'
import { pieceOf, type Draft } from './draft.ts'
import { namedPoint } from './piece.ts'

export interface OverarmFacts {
  readonly length: Mm
  /** Below the level, on the back. */
  readonly angle: Radians
  /** Upright, from the shoulder bone to the overarm; undefined while the shoulder is not taped. */
  readonly aboveBone: Mm | undefined
}

export function overarmFacts(d: Draft): OverarmFacts {
  const back = pieceOf(d, 'back')
  const [s, t] = [namedPoint(back, 'S'), namedPoint(back, 'T')]
  const bone = shoulderPoint(d.body, d.choices.sideNeckRise)
  const at = (x: number): number => s.y + ((x - s.x) * (t.y - s.y)) / (t.x - s.x)
  return {
    length: mm(distance(s, t)),
    angle: radians(Math.asin((t.y - s.y) / distance(s, t))),
    aboveBone: bone && bone.x > s.x ? mm(bone.y - at(bone.x)) : undefined,
  }
}

/** How far the neck edge at the fold lies below her front neck point; undefined while that is not taped. */
export function neckBelowPoint(d: Draft): Mm | undefined {
  const at = frontNeckPoint(d.body)
  return at === undefined ? undefined : mm(d.choices.frontNeckDrop - at)
}

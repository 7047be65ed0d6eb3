/**
 * From what was pinned or read on the muslin to the amount that changes on a half piece.
 * Folded depth counts twice; a take-in is shared, because a pinned muslin is usually fitted too
 * close; the amount is then held to the most one round should change.
 */
import { mm, type Mm } from '../units/length.ts'

/** How the amount was read. */
export type HowRead =
  /** The pinch lies flat: from the fold to the pin. The cloth taken out is twice that. */
  | 'foldToPin'
  /** The whole width that the pins take out. */
  | 'wholeFold'
  /** Past a seam: from the seam line to the new line of pins, the same on both pieces. */
  | 'seamToPin'
  /** The distance between a line drawn on the muslin and where it should lie. */
  | 'levelError'
  /** The opening between two cut edges. */
  | 'slitOpen'

export interface Pinned {
  readonly how: HowRead
  /** What she read, mm. */
  readonly read: Mm
  /** Part of it that is applied: 1 is all of it. */
  readonly share: number
}

/** Under this nothing is changed: cutting is not truer (paper is kept to 1.6 mm; 3 mm is common practice). */
export const TOO_SMALL = mm(3)
/** Of a pinned take-in, 85–90 % is common practice; the middle is offered. */
export const TAKE_IN_SHARE = 0.87
/** A length that is missing is let out whole. */
export const LET_OUT_SHARE = 1

/** Cloth taken out or added at the place itself, before share and cap. */
export const whole = (p: Pinned): Mm => mm(p.how === 'foldToPin' ? p.read * 2 : p.read)

export interface Settled {
  readonly applied: Mm
  readonly watch: Mm
}

/** Share first, then the cap of the round; what is left is watched next time. */
export function settle(p: Pinned, cap: Mm): Settled {
  const all = whole(p)
  const shared = all * p.share
  const applied = Math.sign(shared) * Math.min(Math.abs(shared), cap)
  return { applied: mm(applied), watch: mm(shared - applied) }
}

/** Why the reading cannot be used, or undefined when it can. */
export function cannotUse(p: Pinned): string | undefined {
  if (!Number.isFinite(p.read)) return 'Type what you pinned, with a number.'
  if (!(p.share > 0 && p.share <= 1)) return 'The part to apply goes from 1 to 100 in a hundred.'
  if (Math.abs(whole(p)) < TOO_SMALL)
    return 'Under 3 mm there is nothing to change: no one cuts truer than that.'
  return undefined
}

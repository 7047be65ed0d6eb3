/** What was read on the muslin, as a correction and a round keep it. */
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

/** Cloth taken out or added at the place itself, before share and cap; a folded depth counts twice. */
export const whole = (p: Pinned): Mm => mm(p.how === 'foldToPin' ? p.read * 2 : p.read)

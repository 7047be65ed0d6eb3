/**
 * What a set-in sleeve ends in, all lengths in mm: how narrow the end may be, what of it is drawn
 * up into a cuff, and the slit that lets the hand through. Hands and wrists: 1,986 women of
 * ANSUR II. The wrist is not taped: a cuff is as long as the sleeve end less what is drawn up.
 * Not for: knit cuffs, plackets with a tower.
 */
import type { Choices } from '../choices.ts'

/** A hand goes through an end of this: 202 hold 95 of 100 hands, 214 the largest (ANSUR II). */
export const HAND_PASSES = 210
/** No end and no cuff is narrower: wrists measure 142 to 168 in 90 of 100 (ANSUR II). */
export const WRIST_LEAST = 150
/** A sleeve ends no nearer to its underarm than this: less is a cap and no sleeve. Judgement. */
export const BELOW_UNDERARM = 30
/** A slit stays so far below the underarm. Judgement. */
const SLIT_BELOW_UNDERARM = 10

export interface SleeveEnd {
  /** Round the sleeve at its end, as it is cut. */
  readonly round: number
  /** Round the arm once it is hemmed, or the cuff is buttoned. */
  readonly closed: number
  /** Nought where there is none. */
  readonly slit: number
}

/**
 * @param width of the sleeve at the underarm
 * @param below from the underarm down to the end
 */
export function sleeveEnd(width: number, below: number, choices: Choices): SleeveEnd {
  const wanted = width - choices.sleeveHem
  if (choices.sleeveEnd === 'hem') {
    const round = Math.max(wanted, HAND_PASSES)
    return { round, closed: round, slit: 0 }
  }
  const slit = Math.min(choices.sleeveSlit, below - SLIT_BELOW_UNDERARM)
  // Both edges of a slit open, as those of a neck slit do.
  const least = Math.max(WRIST_LEAST, HAND_PASSES - 2 * slit)
  const round = Math.max(wanted, least)
  if (choices.sleeveEnd === 'hemSlit') return { round, closed: round, slit }
  const closed = Math.max(round - choices.cuffFullness, least)
  return { round, closed, slit: closed < HAND_PASSES ? slit : 0 }
}

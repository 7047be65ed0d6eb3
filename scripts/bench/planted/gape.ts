/**
 * Cloth that stands away at the front armhole because dart angle is missing. A bust wants a
 * certain angle of darts about its tip; an angle that is missing leaves the armhole longer than
 * its way round the arm, by radius × angle: θ = 2·asin(mouth / 2·leg), the rule by which darts are
 * moved. So the slack is read where it shows: sewn armhole less the one the body wants, which is
 * that of the piece from its true numbers.
 *
 * Not all of a long armhole gapes. A shoulder drawn too flat stands off at the tip, a low underarm
 * hangs: what they lengthen is told there. A front too short over the bust uses the missing angle
 * up by rising, and its armhole is no longer. Own reasoning.
 */
import type { Lengths } from './lengths.ts'

export const angleOf = (mouth: number, leg: number): number => 2 * Math.asin(mouth / (2 * leg))

/** @param misfit sewn less needed */
export function gape({ armholeFront = 0, shoulderDrop = 0, underarm = 0 }: Lengths): number {
  const told = Math.max(0, -shoulderDrop) + Math.max(0, underarm)
  return Math.max(0, armholeFront - told)
}

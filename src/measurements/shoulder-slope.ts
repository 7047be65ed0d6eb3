/**
 * The shoulder slope as an angle. The drop is a height and the shoulder length lies along the
 * slope, so the drop is the side opposite the angle and the length is the slanting side.
 */
import { radians, type Radians } from '../units/angle.ts'
import type { Mm } from '../units/length.ts'

/**
 * Angle of the shoulder below the level, radians; undefined when the drop is not shorter than
 * the shoulder, which no shoulder is and which means that one of the two was misread.
 */
export function shoulderSlope(drop: Mm, shoulderLength: Mm): Radians | undefined {
  if (!(drop < shoulderLength) || drop < 0) return undefined
  return radians(Math.asin(drop / shoulderLength))
}

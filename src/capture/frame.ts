/** The few lengths of a body in one picture that everything else is counted in. px, y down. */
import type { Point } from '../geometry/point.ts'
import { middle, type Joints } from './outline.ts'

export interface BodyFrame {
  readonly ear: Point
  readonly shoulder: Point
  readonly hip: Point
  readonly knee: Point
  /** Height from shoulder joints to hip joints. */
  readonly torso: number
  /** The height that lies `share` torsos below the shoulder joints. */
  readonly level: (share: number) => number
}

/** A torso shorter than this cannot be a standing person near enough to measure, px. */
const LEAST_TORSO_PX = 60

export function bodyFrame(joints: Joints): BodyFrame | undefined {
  const ear = middle(joints, 'ear')
  const shoulder = middle(joints, 'shoulder')
  const hip = middle(joints, 'hip')
  const knee = middle(joints, 'knee')
  if (!ear || !shoulder || !hip || !knee) return undefined
  const torso = hip.y - shoulder.y
  const upright = torso >= LEAST_TORSO_PX && ear.y < shoulder.y && knee.y > hip.y
  return upright
    ? { ear, shoulder, hip, knee, torso, level: (share) => shoulder.y + share * torso }
    : undefined
}

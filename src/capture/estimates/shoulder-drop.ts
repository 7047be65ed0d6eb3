/**
 * How far the shoulder bone lies below the side neck point, left and right apart, from front and back.
 * The turn of the camera is taken out by her own upright: ankles to ears.
 */
import type { EstimateOutcome } from '../../measurements/estimate.ts'
import type { Point } from '../../geometry/point.ts'
import { bodyFrame } from '../frame.ts'
import { middle } from '../outline.ts'
import { SHOULDER_HEIGHT, SIDE_NECK_HEIGHT } from '../proportions.ts'
import { markedByHer, type Readings } from '../reading.ts'
import { behindIn } from '../scale.ts'
import { basisOf, pointsOf, scaleIn, together, wayOf, type WayOutcome } from './scene.ts'
import type { Side } from './shoulder-length.ts'

/** Her upright against true upright, radians: one degree, a stance's usual lean (common practice, no source). */
const UPRIGHT_SD = 0.0175
/**
 * Both photos place neck and shoulder by the same joints: this share of a photo's error is common to
 * both (bench).
 */
const IN_COMMON = 0.95

export function shoulderDrop(readings: Readings, side: Side): EstimateOutcome {
  const front = byView(readings, 'front', side)
  const back = byView(readings, 'back', side)
  const both = front.ok && back.ok
  const common = both ? IN_COMMON * Math.min(front.way.sd, back.way.sd) : 0
  const less = Math.sqrt(1 - IN_COMMON ** 2)
  const own = (outcome: WayOutcome): WayOutcome =>
    both && outcome.ok ? { ok: true, way: { ...outcome.way, sd: outcome.way.sd * less } } : outcome
  return together([own(front), own(back)], common)
}

function byView(readings: Readings, view: 'front' | 'back', side: Side): WayOutcome {
  const found = pointsOf(readings, view, [`sideNeck${side}`, `shoulder${side}`])
  if (!found.ok) return found
  const { reading, at } = found
  const [neck, bone] = [at[`sideNeck${side}`], at[`shoulder${side}`]]
  const down = downOf(reading.person.ok ? reading.person.joints : {})
  const frame = reading.person.ok ? bodyFrame(reading.person.joints) : undefined
  const off = { x: bone.at.x - neck.at.x, y: bone.at.y - neck.at.y }
  const px = off.x * down.x + off.y * down.y
  const torso = frame?.torso ?? 0
  const heights = [
    markedByHer(neck) ? neck.sdPx : SIDE_NECK_HEIGHT[view].sd * torso,
    markedByHer(bone) ? bone.sdPx : SHOULDER_HEIGHT[view].sd * torso,
    UPRIGHT_SD * Math.hypot(off.x, off.y),
  ]
  const scale = scaleIn(reading, behindIn(reading, 'shoulders'), bone.at.y)
  const basis = basisOf(view, scale, 'between', neck, bone)
  return { ok: true, way: wayOf(px, Math.hypot(...heights), scale, basis) }
}

/** Unit vector down her middle line in the picture. */
function downOf(joints: Parameters<typeof middle>[0]): Point {
  const [ear, ankle] = [middle(joints, 'ear'), middle(joints, 'ankle')]
  if (!ear || !ankle) return { x: 0, y: 1 }
  const [x, y] = [ankle.x - ear.x, ankle.y - ear.y]
  const length = Math.hypot(x, y)
  return length > 0 ? { x: x / length, y: y / length } : { x: 0, y: 1 }
}

/** A standing body as joints, made from lengths in figure drawing's own shares, for the live tests. */
import type { Sight } from '../../src/capture/live-pose.ts'

export interface Stance {
  readonly turn?: 'front' | 'side' | 'back'
  /** Height from crown to sole and the sole's place, shares of the frame. */
  readonly tall?: number
  readonly sole?: number
  readonly across?: number
  /** Both arms from the plumb line, degrees; 180 is straight up. */
  readonly arms?: number
  readonly rightArm?: number
  readonly feet?: boolean
}

/**
 * Eight heads: crown 0, ears 0.5, shoulders 1.5, hips 4, knees 6, soles 8 heads down (figure
 * drawing, common practice). Shoulders 1.6 heads apart, arms 2.2 heads from shoulder to wrist.
 */
export function sightOf(stance: Stance = {}): Sight {
  const { turn = 'front', tall = 0.7, sole = 0.88, across = 0.5, arms = 18, feet = true } = stance
  const [width, height] = [360, 480]
  const head = (tall * height) / 8
  const top = sole * height - 8 * head
  const [x, apart] = [across * width, turn === 'side' ? 0.05 : 1.6]
  // Her left lies right in the picture when she faces the camera.
  const left = turn === 'back' ? -1 : 1
  const at = (dx: number, heads: number, score = 0.95) => ({
    at: { x: x + dx * head, y: top + heads * head },
    score,
  })
  const pair = (name: string, half: number, heads: number, score = 0.95) => ({
    [`left_${name}`]: at(left * half, heads, score),
    [`right_${name}`]: at(-left * half, heads, score),
  })
  const wrist = (side: number, degrees: number) => {
    const angle = (degrees * Math.PI) / 180
    return at(side * (apart / 2 + 2.2 * Math.sin(angle)), 1.5 + 2.2 * Math.cos(angle))
  }
  const joints = {
    nose: at(0, 0.6),
    ...pair('ear', 0.3, 0.5),
    ...pair('shoulder', apart / 2, 1.5),
    left_wrist: wrist(left, arms),
    right_wrist: wrist(-left, stance.rightArm ?? arms),
    ...pair('hip', apart / 4, 4),
    ...pair('knee', apart / 4, 6),
    ...pair('ankle', 0.3, 7.7, feet ? 0.95 : 0.1),
    ...pair('heel', 0.3, 7.9, feet ? 0.95 : 0.1),
    ...pair('foot_index', 0.3, 8, feet ? 0.95 : 0.1),
  }
  return { joints, width, height }
}

/**
 * What the pose model says about one photograph, as plain data. Only `detector.ts` asks it;
 * everything else in this room works from it without the model.
 */
import type { Point } from '../geometry/point.ts'

/** A joint of the model: its centre in picture px and how sure the model is, 0 to 1. */
export interface Joint {
  readonly at: Point
  readonly score: number
}

/** How much of each pixel belongs to the person, 0 to 255, row by row, as large as the picture. */
export interface Mask {
  readonly width: number
  readonly height: number
  readonly data: Uint8Array
}

export interface Person {
  readonly score: number
  /** By the model's own names: nose, left_shoulder, … left and right are the person's. */
  readonly joints: Readonly<Record<string, Joint>>
  readonly mask: Mask
}

/** The person as seen in the mirror image of her picture: left and right change places. */
export function mirroredPerson({ score, joints, mask }: Person): Person {
  const { width, height } = mask
  const data = new Uint8Array(mask.data.length)
  for (let y = 0; y < height; y++)
    for (let x = 0; x < width; x++) data[y * width + x] = mask.data[y * width + width - 1 - x] ?? 0
  const turned = Object.entries(joints).map(([name, joint]) => [
    otherSide(name),
    { ...joint, at: { x: width - joint.at.x, y: joint.at.y } },
  ])
  return { score, joints: Object.fromEntries(turned), mask: { width, height, data } }
}

/** left_hip and right_hip, mouth_left and mouth_right; the nose stays. */
const otherSide = (name: string): string =>
  name.replace(/left|right/, (side) => (side === 'left' ? 'right' : 'left'))

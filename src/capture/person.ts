/**
 * What the pose model says about one photograph, as plain data. Only `detector.ts` asks it;
 * everything else in this room works from it without the model.
 */
import type { Point } from '../geometry/point.ts'
import type { Part, Picture } from './picture.ts'

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
  /** Set when somebody else is in the picture as well. */
  readonly company?: boolean
}

/** So much of her mask counts as her when she is painted out, of 255, and this far round it, px. */
const [HER, ROUND_HER] = [10, 4]

/** The picture with her painted out: each row carried straight from what lies left of her to the right. */
export function withoutHer({ width, height, data }: Picture, { mask }: Person): Picture {
  const out = new Uint8ClampedArray(data)
  for (let y = 0; y < height; y++) {
    const her = (x: number): boolean => (mask.data[y * width + x] ?? 0) > HER
    let [from, to] = [0, -1]
    const paint = (): void => {
      const [a, b] = [Math.max(0, from - ROUND_HER), Math.min(width - 1, to + ROUND_HER)]
      for (let x = a; x <= b; x++)
        for (let c = 0; c < 3; c++) {
          const [p, q] = [data[(y * width + a) * 4 + c] ?? 0, data[(y * width + b) * 4 + c] ?? 0]
          out[(y * width + x) * 4 + c] = p + ((q - p) * (x - a)) / Math.max(1, b - a)
        }
    }
    for (let x = 0; x < width; x++) {
      if (!her(x)) continue
      if (to >= 0 && x > to + 2 * ROUND_HER) paint()
      if (to < 0 || x > to + 2 * ROUND_HER) from = x
      to = x
    }
    if (to >= 0) paint()
  }
  return { width, height, data: out }
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

/** Hands and a sheet in them lie within this of the joints, shares of the joints' height. */
const ROUND_JOINTS = 0.12

/** Where she is in the picture, with the sheet she wears or holds. */
export function partAround({ joints }: Person, { width, height }: Picture): Part {
  const [xs, ys] = [
    Object.values(joints).map(({ at }) => at.x),
    Object.values(joints).map(({ at }) => at.y),
  ]
  const margin = ROUND_JOINTS * (Math.max(...ys) - Math.min(...ys))
  return {
    left: Math.max(0, Math.floor(Math.min(...xs) - margin)),
    top: Math.max(0, Math.floor(Math.min(...ys) - margin)),
    right: Math.min(width, Math.ceil(Math.max(...xs) + margin)),
    bottom: Math.min(height, Math.ceil(Math.max(...ys) + margin)),
  }
}

/** Every `step`-th pixel of picture and mask: enough for a glance. */
export function glance(picture: Picture, person: Person, step: number): [Picture, Person] {
  const [width, height] = [Math.floor(picture.width / step), Math.floor(picture.height / step)]
  const data = new Uint8ClampedArray(width * height * 4)
  const her = new Uint8Array(width * height)
  for (let k = 0; k < her.length; k++) {
    const from = Math.floor(k / width) * step * picture.width + (k % width) * step
    her[k] = person.mask.data[from] ?? 0
    data.set(picture.data.subarray(from * 4, from * 4 + 4), k * 4)
  }
  const mask = { width, height, data: her }
  return [
    { width, height, data },
    { ...person, mask },
  ]
}

/**
 * A muslin of a loose blouse whose wide sleeve is cut in one with the body, worn by the figure:
 * the body let out evenly, hanging straight from bust and seat, with soft folds from the shoulder
 * towards the side and below the arm. Only for the look of a fitting photo; no measure is true of it.
 */
import type { Figure } from './body.ts'
import { bothSides, join, limb, meet, within, type Field } from './field.ts'

const EASE = 22
const HEM = 880
/** Along the upper arm to the sleeve hem, and how far the sleeve hangs under the arm. */
const SLEEVE = { end: 215, wide: 78 }

export function dressed(figure: Figure): Figure {
  const { shoulder, elbow } = figure.leftArm
  const axis = [elbow[0] - shoulder[0], elbow[1] - shoulder[1], elbow[2] - shoulder[2]] as const
  const long = Math.hypot(...axis)
  const toHem = (x: number, y: number, z: number): number =>
    ((x - shoulder[0]) * axis[0] + (y - shoulder[1]) * axis[1] + (z - shoulder[2]) * axis[2]) /
      long -
    SLEEVE.end
  const bag = limb(
    [128, 1322, -24],
    66,
    [shoulder[0] + axis[0] * 0.8 - 22, shoulder[1] + axis[1] * 0.8, shoulder[2]],
    SLEEVE.wide,
  )
  const sleeve: Field = bothSides((x, y, z) => Math.max(bag(x, y, z), toHem(x, y, z)))
  // From the bust down the cloth hangs: each level is at least as wide as 3/4 of the way to the seat.
  const hang = join(
    80,
    limb([0, 1190, 14], 118, [0, 850, -4], 130),
    bothSides(limb([62, 1190, 10], 104, [86, 850, -4], 116)),
  )
  const shell = join(60, (x, y, z) => figure.trunk(x, y, z) - EASE, hang)
  const blouse: Field = (x, y, z) => {
    const folds =
      3.2 * Math.sin(x / 17 + y / 41 + 0.6 * Math.sin(y / 53)) * rise(1330, 1180, y) +
      3 * Math.sin((Math.abs(x) * 0.8 + y * 0.62) / 19) * rise(70, 150, Math.abs(x))
    const body = Math.max(meet(shell(x, y, z), sleeve(x, y, z), 70) + folds, HEM - y)
    // Cut out round the neck, as the top below is.
    return Math.max(body, y - 1412 + 70 * clamp01((z + 60) / 110) - (Math.abs(x) / 92) ** 4 * 70)
  }
  const near = within([0, 1150, -10], 470, (x, y, z) => 0.8 * blouse(x, y, z))
  return {
    ...figure,
    blouse: near,
    all: (x, y, z) => Math.min(figure.all(x, y, z), near(x, y, z)),
  }
}

const clamp01 = (v: number): number => Math.min(1, Math.max(0, v))
/** 0 at `from`, 1 at `to`. */
const rise = (from: number, to: number, v: number): number => clamp01((v - from) / (to - from))

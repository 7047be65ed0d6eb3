/** Which colour the figure has where: skin, face, hair, top, cord, leggings, shoes. Linear light. */
import { decodeSrgb } from '../../src/capture/picture.ts'
import type { Arm, Figure } from './body.ts'
import type { Vec } from './field.ts'
import { WAIST_LEVEL } from './torso.ts'

export type Colour = Vec
export const srgb = (r: number, g: number, b: number): Colour => [
  decodeSrgb(r),
  decodeSrgb(g),
  decodeSrgb(b),
]

/** Unbleached cotton. */
const MUSLIN = srgb(226, 216, 194)
const SKIN = srgb(222, 176, 148)
const LIP = srgb(176, 92, 88)
const EYE_WHITE = srgb(236, 232, 226)
const IRIS = srgb(84, 62, 44)
const DARK = srgb(44, 32, 28)
const HAIR = srgb(62, 44, 34)
const TOP = srgb(116, 152, 160)
const CORD = srgb(26, 24, 28)
const LEGGINGS = srgb(52, 54, 76)
const SHOE = srgb(96, 88, 84)
/** Half the width of the cord, millimetres. */
const CORD_HALF = 5
const SLEEVE_LENGTH = 120

export function colourAt(figure: Figure, p: Vec): Colour {
  if (figure.plain) return colourAt(figure.plain.figure, figure.plain.inner(p))
  const [x, y, z] = p
  if (figure.blouse && figure.blouse(x, y, z) < 0.6) return MUSLIN
  const parts = [
    figure.hair(x, y, z),
    figure.shoes(x, y, z),
    figure.arms(x, y, z),
    figure.legs(x, y, z),
    figure.head(x, y, z),
    figure.trunk(x, y, z),
  ]
  const nearest = parts.indexOf(Math.min(...parts))
  if (nearest === 0) return HAIR
  if (nearest === 1) return SHOE
  if (nearest === 2) return armColour(x > 0 ? figure.leftArm : figure.rightArm, p)
  if (nearest === 4) return faceColour(p)
  if (Math.abs(y - WAIST_LEVEL) < CORD_HALF) return CORD
  if (nearest === 3 || y < 905) return LEGGINGS
  return y > neckline(x, z) ? SKIN : TOP
}

/** A round neckline: higher at the back of the neck than at the throat. */
function neckline(x: number, z: number): number {
  const forward = Math.min(1, Math.max(0, (z + 60) / 110))
  return 1412 - 78 * forward + (Math.abs(x) / 95) ** 4 * 60
}

function armColour({ shoulder, elbow }: Arm, [x, y, z]: Vec): Colour {
  const axis: Vec = [elbow[0] - shoulder[0], elbow[1] - shoulder[1], elbow[2] - shoulder[2]]
  const length = Math.hypot(...axis)
  const along =
    ((Math.abs(x) - shoulder[0]) * axis[0] +
      (y - shoulder[1]) * axis[1] +
      (z - shoulder[2]) * axis[2]) /
    length
  return along < SLEEVE_LENGTH ? TOP : SKIN
}

const oval = (u: number, v: number, ru: number, rv: number): number => (u / ru) ** 2 + (v / rv) ** 2

function faceColour([x, y, z]: Vec): Colour {
  const side = Math.abs(x)
  if (z > 62) {
    if (oval(side - 31, y - 1561, 4, 4.5) < 1) return DARK
    if (oval(side - 31, y - 1561, 6.5, 6.5) < 1 && oval(side - 31, y - 1561, 13, 5.5) < 1)
      return IRIS
    if (oval(side - 31, y - 1561, 13, 5.5) < 1) return EYE_WHITE
    if (oval(side - 31, y - 1562, 15, 7.5) < 1 && y > 1561) return DARK
    const arch = 1584 - ((side - 30) / 22) ** 2 * 5
    if (side > 13 && side < 50 && Math.abs(y - arch) < 3.2) return DARK
    if (z > 84 && oval(x, y - 1498, 21, 9.5) < 1) return Math.abs(y - 1498) < 1 ? DARK : LIP
    if (y < 1528 && oval(side - 7, y - 1523, 4, 2.5) < 1) return DARK
  }
  return SKIN
}

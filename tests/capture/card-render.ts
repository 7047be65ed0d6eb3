/**
 * A flat card photographed by a pinhole camera, drawn from the textbook projection alone: pixel =
 * middle + f X / Z (Hartley, Zisserman, 2nd ed., equation 6.1). Where its corners fall is exact,
 * so it is the outside measure of what card.ts finds. Light is averaged over each pixel, blurred,
 * encoded as sRGB (IEC 61966-2-1) and given seeded noise.
 */
import type { Point } from '../../src/geometry/point.ts'
import type { Picture } from '../../src/capture/picture.ts'

export interface Shot {
  readonly width?: number
  readonly height?: number
  /** Pixels. */
  readonly f?: number
  /** Middle of the card from the camera, millimetres: right, down, forward. */
  readonly middle?: readonly [number, number, number]
  /** Degrees: about the level axis, the upright axis and the camera's axis. */
  readonly tilt?: number
  readonly yaw?: number
  readonly roll?: number
  readonly blurPx?: number
  /** Standard deviation, encoded steps. */
  readonly noise?: number
}

/** Light of a card or of what lies behind it, 0 to 1; u right and v down from the card's middle, mm. */
export type Paint = (u: number, v: number) => number | null

export interface Shooting {
  readonly picture: Picture
  /** Exact picture point of a place on the card. */
  readonly pixelOf: (u: number, v: number) => Point
}

const SAMPLES = 6

export function shoot(paint: Paint, behind: Paint, shot: Shot = {}): Shooting {
  const { width = 480, height = 400, f = 1000, middle = [0, 0, 1200] } = shot
  const { tilt = 0, yaw = 0, roll = 0, blurPx = 0, noise = 0 } = shot
  const R = turned(tilt, yaw, roll)
  const [r0, r1, r2] = R
  const pixelOf = (u: number, v: number): Point => {
    const X = r0[0] * u + r0[1] * v + middle[0]
    const Y = r1[0] * u + r1[1] * v + middle[1]
    const Z = r2[0] * u + r2[1] * v + middle[2]
    return { x: width / 2 + (f * X) / Z, y: height / 2 + (f * Y) / Z }
  }
  // The card's plane: all points p with n . p = n . middle, n the third column of R.
  const n = [r0[2], r1[2], r2[2]] as const
  const away = n[0] * middle[0] + n[1] * middle[1] + n[2] * middle[2]
  const lightAt = (px: number, py: number): number => {
    const [x, y] = [(px - width / 2) / f, (py - height / 2) / f]
    const Z = away / (n[0] * x + n[1] * y + n[2])
    const [dx, dy, dz] = [x * Z - middle[0], y * Z - middle[1], Z - middle[2]]
    const u = r0[0] * dx + r1[0] * dy + r2[0] * dz
    const v = r0[1] * dx + r1[1] * dy + r2[1] * dz
    return paint(u, v) ?? behind(u, v) ?? 0.2
  }
  const light = new Float64Array(width * height)
  for (let i = 0; i < light.length; i++) {
    let sum = 0
    for (let k = 0; k < SAMPLES * SAMPLES; k++) {
      const dx = ((k % SAMPLES) + 0.5) / SAMPLES
      sum += lightAt(
        (i % width) + dx,
        Math.floor(i / width) + (Math.floor(k / SAMPLES) + 0.5) / SAMPLES,
      )
    }
    light[i] = sum / (SAMPLES * SAMPLES)
  }
  return { picture: encoded(blurred(light, width, height, blurPx), width, height, noise), pixelOf }
}

type Row = readonly [number, number, number]

function turned(tilt: number, yaw: number, roll: number): readonly [Row, Row, Row] {
  const [a, b, c] = [tilt, yaw, roll].map((d) => (d * Math.PI) / 180) as [number, number, number]
  const [ca, sa, cb, sb, cc, sc] = [
    Math.cos(a),
    Math.sin(a),
    Math.cos(b),
    Math.sin(b),
    Math.cos(c),
    Math.sin(c),
  ]
  // R = Rx(tilt) Ry(yaw) Rz(roll).
  return [
    [cb * cc, -cb * sc, sb],
    [ca * sc + sa * sb * cc, ca * cc - sa * sb * sc, -sa * cb],
    [sa * sc - ca * sb * cc, sa * cc + ca * sb * sc, ca * cb],
  ]
}

function blurred(light: Float64Array, width: number, height: number, sd: number): Float64Array {
  if (sd === 0) return light
  const reach = Math.ceil(3 * sd)
  const kernel = Array.from({ length: 2 * reach + 1 }, (_, k) =>
    Math.exp(-(((k - reach) / sd) ** 2) / 2),
  )
  const total = kernel.reduce((a, b) => a + b, 0)
  const pass = (from: Float64Array, dx: number, dy: number): Float64Array =>
    from.map((_, i) => {
      const [x, y] = [i % width, Math.floor(i / width)]
      return (
        kernel.reduce((sum, weight, k) => {
          const px = Math.min(width - 1, Math.max(0, x + dx * (k - reach)))
          const py = Math.min(height - 1, Math.max(0, y + dy * (k - reach)))
          return sum + weight * (from[py * width + px] ?? 0)
        }, 0) / total
      )
    })
  return pass(pass(light, 1, 0), 0, 1)
}

function encoded(light: Float64Array, width: number, height: number, noise: number): Picture {
  const data = new Uint8ClampedArray(width * height * 4)
  const chance = seeded(7)
  light.forEach((v, i) => {
    const byte = 255 * (v <= 0.0031308 ? 12.92 * v : 1.055 * v ** (1 / 2.4) - 0.055)
    // The sum of twelve even chances less six has spread 1 and is nearly normal.
    let grain = -6
    for (let k = 0; k < 12; k++) grain += chance()
    data.fill(Math.round(byte + noise * grain), i * 4, i * 4 + 3)
    data[i * 4 + 3] = 255
  })
  return { width, height, data }
}

/** Linear congruential generator, constants of Numerical Recipes. */
function seeded(seed: number): () => number {
  let state = seed
  return () => (state = (Math.imul(state, 1664525) + 1013904223) >>> 0) / 2 ** 32
}

/** Codes of ARUCO_MIP_36h12 as published with the dictionary, 36 bits, row by row, 1 = white. */
export const MARKER_7 = 0x5248c541fn
export const MARKER_0 = 0xd2b63a09dn

/** A paper of 210 x 148.5 mm with a marker of 100 mm in its middle. */
export function sheetPaint(code: bigint): Paint {
  return (u, v) => {
    if (Math.abs(u) > 105 || Math.abs(v) > 74.25) return null
    const [column, row] = [Math.floor((u + 50) / 12.5), Math.floor((v + 50) / 12.5)]
    if (column < 0 || column > 7 || row < 0 || row > 7) return 0.8
    if (column === 0 || column === 7 || row === 0 || row === 7) return 0.03
    return (code >> BigInt(35 - ((row - 1) * 6 + column - 1))) & 1n ? 0.8 : 0.03
  }
}

/** A plain card with round corners of 3.18 mm (ISO/IEC 7810:2019, 5.1.1: 2.88 to 3.48). */
export function cardPaint(width: number, height: number, light: number): Paint {
  const round = 3.18
  return (u, v) => {
    const [x, y] = [Math.abs(u) - width / 2 + round, Math.abs(v) - height / 2 + round]
    if (x > round || y > round) return null
    return x > 0 && y > 0 && Math.hypot(x, y) > round ? null : light
  }
}

/** Cloth: a level of light that swells slowly from place to place. */
export const cloth =
  (light: number): Paint =>
  (u, v) =>
    light * (1 + 0.12 * Math.sin(u / 37) + 0.1 * Math.cos(v / 29 + u / 90))

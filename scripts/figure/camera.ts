/**
 * Pinhole camera without lens distortion. Camera axes: x right, y down, z forward; a point of
 * the figure goes to the camera by R p + t. Pixel (0, 0) is the top left corner of the picture.
 */
import type { Vec } from './field.ts'

export interface Camera {
  readonly width: number
  readonly height: number
  /** Focal length, pixels. */
  readonly f: number
  readonly position: Vec
  /** Rows: right, down and forward of the camera in the figure's axes. */
  readonly R: readonly [Vec, Vec, Vec]
}

const RADIAN = Math.PI / 180

/**
 * @param azimuth degrees round her from straight in front, 90 = at her left side
 * @param aim small turns of the camera in degrees, as a phone leaned on a shelf has them
 */
export function cameraAt(
  size: { readonly width: number; readonly height: number; readonly verticalFov: number },
  place: { readonly azimuth: number; readonly distance: number; readonly height: number },
  aim: { readonly pan: number; readonly pitch: number; readonly roll: number },
): Camera {
  const a = place.azimuth * RADIAN
  const position: Vec = [Math.sin(a) * place.distance, place.height, Math.cos(a) * place.distance]
  const look = a + Math.PI + aim.pan * RADIAN
  const [cp, sp] = [Math.cos(aim.pitch * RADIAN), Math.sin(aim.pitch * RADIAN)]
  const forward: Vec = [Math.sin(look) * cp, sp, Math.cos(look) * cp]
  const level: Vec = [-Math.cos(look), 0, Math.sin(look)]
  const down = crossed(forward, level)
  const [cr, sr] = [Math.cos(aim.roll * RADIAN), Math.sin(aim.roll * RADIAN)]
  const right = mixed(level, cr, down, sr)
  return {
    width: size.width,
    height: size.height,
    f: size.height / 2 / Math.tan((size.verticalFov * RADIAN) / 2),
    position,
    R: [right, mixed(down, cr, level, -sr), forward],
  }
}

/** Unit direction, in the figure's axes, of the ray through picture point (px, py). */
export function rayThrough(camera: Camera, px: number, py: number): Vec {
  const u = (px - camera.width / 2) / camera.f
  const v = (py - camera.height / 2) / camera.f
  const [r, d, w] = camera.R
  const n = Math.hypot(u, v, 1)
  return [
    (r[0] * u + d[0] * v + w[0]) / n,
    (r[1] * u + d[1] * v + w[1]) / n,
    (r[2] * u + d[2] * v + w[2]) / n,
  ]
}

/** Picture point and depth (along the camera's axis) of a point of the figure. */
export function seen(camera: Camera, p: Vec): { px: [number, number]; depthMm: number } {
  const off: Vec = [p[0] - camera.position[0], p[1] - camera.position[1], p[2] - camera.position[2]]
  const [x, y, z] = camera.R.map((row) => dotted(row, off))
  const depthMm = z ?? NaN
  const at = (v: number | undefined, size: number): number =>
    size / 2 + (camera.f * (v ?? NaN)) / depthMm
  return { px: [at(x, camera.width), at(y, camera.height)], depthMm }
}

export const dotted = (a: Vec, b: Vec): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2]
export const crossed = (a: Vec, b: Vec): Vec => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
]
export const mixed = (a: Vec, ka: number, b: Vec, kb: number): Vec => [
  a[0] * ka + b[0] * kb,
  a[1] * ka + b[1] * kb,
  a[2] * ka + b[2] * kb,
]

/**
 * Draws the figure, the hung sheet, wall and floor into a picture. Light is added up in linear
 * values and averaged over each pixel before it is encoded, as a sensor does.
 */
import { markerCells, MARKER_CELLS } from '../../src/capture/card-marker.ts'
import type { Picture } from '../../src/capture/picture.ts'
import type { Figure } from './body.ts'
import { dotted, rayThrough, seen, type Camera } from './camera.ts'
import { colourAt, srgb, type Colour } from './dress.ts'
import { march, normalOf, type Vec } from './field.ts'
import type { HungSheet } from './sheet.ts'

const WALL = srgb(206, 200, 190)
const SKIRTING = srgb(232, 230, 226)
const FLOOR = srgb(148, 122, 98)
const PAPER = srgb(238, 238, 236)
const INK = srgb(30, 30, 32)
/** The wall stands this far behind her, millimetres, and its skirting board is this high. */
const WALL_BEHIND = 850
const SKIRTING_HIGH = 90
/** Lamp and window: a direction towards the light in camera axes (x right, y up, z to the camera). */
const KEY = { x: -0.42, y: 0.62, z: 0.66, strength: 0.72 }
const FILL = 0.4
const SAMPLES = 4
/** The sheet gives the scale, so its pixels are averaged much finer. */
const SHEET_SAMPLES = 8
const NOISE = 1.1

export function draw(figure: Figure, sheet: HungSheet, camera: Camera, seed: number): Picture {
  const { width, height } = camera
  const sheetBox = boxOf(sheet.corners.map((p) => seen(camera, p).px))
  const figureBox = boxOf(CORNERS.map((p) => seen(camera, p).px))
  const sample = (x: number, y: number, n: number): Colour => {
    const onSheet = inBox(sheetBox, x, y)
    const onFigure = inBox(figureBox, x, y)
    let [r, g, b] = [0, 0, 0]
    for (let k = 0; k < n * n; k++) {
      const ray = rayThrough(camera, x + ((k % n) + 0.5) / n, y + (Math.floor(k / n) + 0.5) / n)
      const light = lightAlong(figure, sheet, camera, ray, onSheet, onFigure)
      r += light[0]
      g += light[1]
      b += light[2]
    }
    return [r / (n * n), g / (n * n), b / (n * n)]
  }
  const once = Array.from({ length: width * height }, (_, i) =>
    sample(i % width, Math.floor(i / width), 1),
  )
  const data = new Uint8ClampedArray(width * height * 4)
  const chance = seeded(seed)
  once.forEach((own, i) => {
    const [x, y] = [i % width, Math.floor(i / width)]
    const near = [i - width - 1, i - width, i - 1, i + 1, i + width, i + width + 1]
    const busy = near.some((j) => unlike(own, once[j] ?? own))
    const fine = inBox(sheetBox, x, y) ? SHEET_SAMPLES : SAMPLES
    const light = busy ? sample(x, y, fine) : own
    const grain = NOISE * (chance() + chance() + chance() - 1.5) * 2
    light.forEach((v, c) => (data[i * 4 + c] = encode(v) + grain))
    data[i * 4 + 3] = 255
  })
  return { width, height, data }
}

/** Neighbours that differ by more than this, in light, lie on an edge and are looked at closely. */
const EDGE = 0.015
const unlike = (a: Colour, b: Colour): boolean => a.some((v, c) => Math.abs(v - (b[c] ?? v)) > EDGE)

/** The box she stands in. */
const CORNERS: readonly Vec[] = [-1, 1].flatMap((x) =>
  [0, 1820].flatMap((y) => [-320, 620].map((z): Vec => [x * 460, y, z])),
)

function lightAlong(
  figure: Figure,
  sheet: HungSheet,
  camera: Camera,
  ray: Vec,
  onSheet: boolean,
  onFigure: boolean,
): Colour {
  const hit = onFigure ? march(figure.all, camera.position, ray, 1500, 3600) : null
  const paper = onSheet ? sheetHit(sheet, camera, ray) : null
  if (paper && (hit === null || paper.t < hit))
    return shaded(camera, sheet.normal, paper.colour, 1, 0.95)
  if (hit === null) return room(camera, ray)
  const p = along(camera.position, ray, hit)
  const normal = normalOf(figure.all, p)
  // How open the place is: less room than 40 mm straight out means shade from a neighbour.
  const room40 = figure.all(p[0] + normal[0] * 40, p[1] + normal[1] * 40, p[2] + normal[2] * 40)
  return shaded(camera, normal, colourAt(figure, p), 1, 0.55 + 0.45 * clamp01(room40 / 40))
}

function shaded(camera: Camera, normal: Vec, colour: Colour, key: number, open: number): Colour {
  const [right, down, forward] = camera.R
  const facing =
    KEY.x * dotted(normal, right) - KEY.y * dotted(normal, down) - KEY.z * dotted(normal, forward)
  const wrap = Math.max(0, 0.2 + 0.8 * facing)
  const strength = (KEY.strength * wrap * key + FILL * (0.75 + 0.25 * normal[1])) * open
  return [colour[0] * strength, colour[1] * strength, colour[2] * strength]
}

function sheetHit(
  sheet: HungSheet,
  camera: Camera,
  ray: Vec,
): { t: number; colour: Colour } | null {
  const to: Vec = [
    sheet.middle[0] - camera.position[0],
    sheet.middle[1] - camera.position[1],
    sheet.middle[2] - camera.position[2],
  ]
  const t = dotted(to, sheet.normal) / dotted(ray, sheet.normal)
  const off: Vec = [ray[0] * t - to[0], ray[1] * t - to[1], ray[2] * t - to[2]]
  const [u, v] = [dotted(off, sheet.right), -dotted(off, sheet.up)]
  if (Math.abs(u) > sheet.widthMm / 2 || Math.abs(v) > sheet.heightMm / 2) return null
  const [column, row] = [
    Math.floor(((u + sheet.squareMm / 2) / sheet.squareMm) * MARKER_CELLS),
    Math.floor(((v + sheet.squareMm / 2) / sheet.squareMm) * MARKER_CELLS),
  ]
  const inSquare = column >= 0 && column < MARKER_CELLS && row >= 0 && row < MARKER_CELLS
  const white = !inSquare || CELLS[row - 1]?.[column - 1] === true
  return { t, colour: white ? PAPER : INK }
}
const CELLS = markerCells()

/** Wall with skirting board, and floor with the soft shade of the feet. */
function room(camera: Camera, ray: Vec): Colour {
  const back: Vec = [camera.R[2][0], 0, camera.R[2][2]]
  const level = Math.hypot(...back)
  const reach = (WALL_BEHIND * level - dotted(camera.position, back)) / dotted(ray, back)
  const p = along(camera.position, ray, reach)
  if (p[1] >= 0) {
    const vertical = 0.86 + 0.14 * clamp01(p[1] / 1800)
    const tone = p[1] < SKIRTING_HIGH ? SKIRTING : WALL
    const lip = p[1] < SKIRTING_HIGH && p[1] > SKIRTING_HIGH - 6 ? 0.8 : 1
    return times(tone, 0.82 * vertical * lip)
  }
  const ground = along(camera.position, ray, -camera.position[1] / ray[1])
  const board = Math.abs((((ground[0] + ground[2] * 0.02) / 140) % 1) + 1) % 1
  const seam = board < 0.015 ? 0.82 : 1
  const foot = Math.hypot(Math.abs(ground[0]) - 108, (ground[2] - 40) * 0.55)
  const shade = 1 - 0.55 * Math.exp(-((foot / 70) ** 2)) - 0.2 * Math.exp(-((foot / 220) ** 2))
  return times(FLOOR, 0.85 * seam * Math.max(0.2, shade))
}

const along = (from: Vec, ray: Vec, t: number): Vec => [
  from[0] + ray[0] * t,
  from[1] + ray[1] * t,
  from[2] + ray[2] * t,
]
const times = (c: Colour, k: number): Colour => [c[0] * k, c[1] * k, c[2] * k]
const clamp01 = (v: number): number => Math.min(1, Math.max(0, v))

type Box = readonly [number, number, number, number]
function boxOf(points: readonly (readonly [number, number])[]): Box {
  const [xs, ys] = [points.map((p) => p[0]), points.map((p) => p[1])]
  return [Math.min(...xs) - 2, Math.min(...ys) - 2, Math.max(...xs) + 2, Math.max(...ys) + 2]
}
const inBox = (box: Box, x: number, y: number): boolean =>
  x >= box[0] && x <= box[2] && y >= box[1] && y <= box[3]

/** sRGB encoding, IEC 61966-2-1, to 0 to 255 without rounding. */
function encode(light: number): number {
  const v = clamp01(light)
  return 255 * (v <= 0.0031308 ? 12.92 * v : 1.055 * v ** (1 / 2.4) - 0.055)
}

/** A plain linear congruential generator (modulus 2^32; constants of Numerical Recipes). */
export function seeded(seed: number): () => number {
  let state = seed >>> 0
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0
    return state / 2 ** 32
  }
}

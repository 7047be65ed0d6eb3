/**
 * Where the cloth of the muslin lies in the photograph, and the light on it with the roundness of
 * the body taken off. Cloth is what has the colour of the trunk's middle; the card, bands and
 * skin are left out. Not for prints and stripes: a plain muslin is asked for.
 */
import type { Card } from '../card.ts'
import type { Point } from '../../geometry/point.ts'
import { CELL_MM, type Field, type Grid } from './grid.ts'
import { gauss, convolved, grown, largestPart, meanWhere, shrunk } from './spread.ts'
import type { TrunkFrame } from './trunk-frame.ts'

export interface Cloth {
  readonly grid: Grid
  /** 1 where there is cloth. */
  readonly cloth: Uint8Array
  /** Cloth far enough from its border that no border is taken for a fold. */
  readonly inside: Uint8Array
  /** Logarithm of the light, less its mean round about: 0.1 is a tenth brighter. */
  readonly relief: Field
}

/** All tuned on 14 of 28 rendered pictures, the other 14 checked. Chromaticity is a share of the light. */
const SAME_COLOUR = 0.05
const DARKEST = 0.06
/** A band is brighter or darker than round about by this, in logarithms. */
const BAND = 0.8
const ROUND_ABOUT_MM = 18
/** Roundness of the body is slower than this, folds are quicker; mm. */
const ROUNDNESS_MM = 10
const BORDER_CELLS = 4
/** Paper round the black square of our sheet, in its sides from the middle: A5 upright. */
const PAPER = { beside: 0.85, above: 0.95, below: 1.4 }

export function clothOf(grid: Grid, frame: TrunkFrame, card: Card | undefined): Cloth | undefined {
  const { width, height, rgb, person } = grid
  const light = new Float32Array(width * height)
  for (let k = 0; k < light.length; k++)
    light[k] = 0.2126 * at(rgb, k * 3) + 0.7152 * at(rgb, k * 3 + 1) + 0.0722 * at(rgb, k * 3 + 2)
  const chroma = colours(grid)
  const core = coreOf(grid, frame)
  if (core.length < 100) return undefined
  const usual = medianOf(core.map((k) => at(light, k)))
  const bright = core.filter((k) => at(light, k) >= usual)
  const own = chroma.map((plane) => medianOf(bright.map((k) => at(plane, k))))
  const log = light.map((value) => Math.log(Math.max(1e-4, value)))
  const like = new Uint8Array(light.length)
  for (let k = 0; k < like.length; k++) {
    const off = Math.hypot(...chroma.map((plane, c) => at(plane, k) - (own[c] ?? 0)))
    const lit = at(light, k) > DARKEST * usual
    like[k] = at(person, k) > 0.5 && off < SAME_COLOUR && lit ? 1 : 0
  }
  const paper = card && paperOver(grid, card)
  for (let k = 0; k < like.length; k++) if (paper?.[k]) like[k] = 0
  const field = { width, height, data: log }
  const round = meanWhere(field, like, ROUND_ABOUT_MM / CELL_MM)
  const even = like.map((mark, k) => (mark && Math.abs(at(log, k) - at(round, k)) < BAND ? 1 : 0))
  const opened = grown(shrunk(even, width, height, 1), width, height, 1)
  const part = largestPart(opened, width)
  const closed = shrunk(grown(part, width, height, 3), width, height, 3)
  const cloth = closed.map((mark, k) => (mark && at(person, k) > 0.5 && !paper?.[k] ? 1 : 0))
  const smooth = meanWhere(field, cloth, ROUNDNESS_MM / CELL_MM)
  const relief = log.map((value, k) => (cloth[k] ? value - at(smooth, k) : 0))
  const inside = shrunk(cloth, width, height, BORDER_CELLS)
  return { grid, cloth, inside, relief: { width, height, data: relief } }
}

const at = (data: Float32Array, k: number): number => data[k] ?? 0

function medianOf(list: readonly number[]): number {
  const sorted = [...list].sort((a, b) => a - b)
  return sorted[sorted.length >> 1] ?? 0
}

/** Shares of red, green and blue, a little smoothed: a dark cell's colour is mostly noise. */
function colours({ width, height, rgb }: Grid): Float32Array[] {
  const bell = gauss(1.5)
  const planes = [0, 1, 2].map((c) => {
    const data = new Float32Array(width * height).map((_, k) => at(rgb, k * 3 + c))
    return convolved({ width, height, data }, bell, bell).data
  })
  return planes.map((plane) =>
    plane.map(
      (value, k) =>
        value /
        Math.max(
          1e-4,
          planes.reduce((sum, p) => sum + at(p, k), 0),
        ),
    ),
  )
}

/** Cells of the trunk's middle, between shoulders and hips. */
function coreOf({ width, height, person }: Grid, frame: TrunkFrame): number[] {
  const cells: number[] = []
  for (let y = 0; y < height; y++)
    for (let x = 0; x < width; x++) {
      const down = (y - frame.shoulder.y) / frame.torso
      const across = (x - frame.middle(y)) / frame.torso
      const k = y * width + x
      if (down > 0.1 && down < 0.65 && Math.abs(across) < 0.25 && at(person, k) > 0.5) cells.push(k)
    }
  return cells
}

function paperOver({ width, height, px }: Grid, { corners, kind }: Card): Uint8Array {
  const [a, b, , d] = corners.map(({ x, y }): Point => ({ x: x / px, y: y / px }))
  const marks = new Uint8Array(width * height)
  if (!a || !b || !d) return marks
  const [right, low] = [direction(a, b), direction(a, d)]
  const centre = {
    x: corners.reduce((sum, p) => sum + p.x, 0) / 4 / px,
    y: corners.reduce((sum, p) => sum + p.y, 0) / 4 / px,
  }
  const reach = kind === 'sheet' ? PAPER : { beside: 0.6, above: 0.6, below: 0.6 }
  for (let y = 0; y < height; y++)
    for (let x = 0; x < width; x++) {
      const [dx, dy] = [x - centre.x, y - centre.y]
      const across = Math.abs(dx * right.x + dy * right.y) / right.long
      const down = (dx * low.x + dy * low.y) / low.long
      if (across < reach.beside && down > -reach.above && down < reach.below)
        marks[y * width + x] = 1
    }
  return marks
}
function direction(from: Point, to: Point): Point & { readonly long: number } {
  const long = Math.hypot(to.x - from.x, to.y - from.y)
  return { x: (to.x - from.x) / long, y: (to.y - from.y) / long, long }
}

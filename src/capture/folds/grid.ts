/**
 * A photograph made small for reading folds: cells of 1.5 mm, so that a fold of 6 mm still covers
 * four of them, and a picture of any size costs the same.
 */
import { decodeSrgb, type Picture } from '../picture.ts'
import type { Mask } from '../person.ts'

/** Side of a cell, mm. Folds of 6 to 23 mm are read on it. */
export const CELL_MM = 1.5

export interface Grid {
  readonly width: number
  readonly height: number
  /** Picture px a cell. */
  readonly px: number
  /** Linear light of red, green, blue, cell by cell. */
  readonly rgb: Float32Array
  /** Share of the person in the cell, 0 to 1. */
  readonly person: Float32Array
}
export interface Field {
  readonly width: number
  readonly height: number
  readonly data: Float32Array
}

const LIGHT = Float32Array.from({ length: 256 }, (_, byte) => decodeSrgb(byte))

/** Each cell is the mean of the picture under it. */
export function gridOf(picture: Picture, mask: Mask, mmPerPx: number): Grid {
  const px = CELL_MM / mmPerPx
  const [width, height] = [Math.floor(picture.width / px), Math.floor(picture.height / px)]
  const rgb = new Float32Array(width * height * 3)
  const person = new Float32Array(width * height)
  for (let y = 0; y < height; y++) {
    const [top, low] = span(y, px, picture.height)
    for (let x = 0; x < width; x++) {
      const [left, right] = span(x, px, picture.width)
      let [r, g, b, her] = [0, 0, 0, 0]
      for (let v = top; v < low; v++)
        for (let u = left; u < right; u++) {
          const k = v * picture.width + u
          r += LIGHT[picture.data[k * 4] ?? 0] ?? 0
          g += LIGHT[picture.data[k * 4 + 1] ?? 0] ?? 0
          b += LIGHT[picture.data[k * 4 + 2] ?? 0] ?? 0
          her += mask.data[k] ?? 0
        }
      const count = (low - top) * (right - left)
      const cell = y * width + x
      rgb.set([r / count, g / count, b / count], cell * 3)
      person[cell] = her / count / 255
    }
  }
  return { width, height, px, rgb, person }
}

/** Whole pixels under a cell; where cells are smaller than pixels at least one. */
function span(cell: number, px: number, end: number): readonly [number, number] {
  const from = Math.min(end - 1, Math.round(cell * px))
  return [from, Math.max(from + 1, Math.min(end, Math.round((cell + 1) * px)))]
}

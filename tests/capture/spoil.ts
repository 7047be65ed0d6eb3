/** Good pictures spoiled by plain pixel operations, as a careless photo is. */
import type { Picture } from '../../src/capture/picture.ts'

const made = (
  width: number,
  height: number,
  pixel: (x: number, y: number, c: number) => number,
): Picture => {
  const data = new Uint8ClampedArray(width * height * 4)
  for (let y = 0; y < height; y++)
    for (let x = 0; x < width; x++)
      for (let c = 0; c < 4; c++) data[(y * width + x) * 4 + c] = c === 3 ? 255 : pixel(x, y, c)
  return { width, height, data }
}
const at = ({ width, data }: Picture, x: number, y: number, c: number): number =>
  data[(y * width + x) * 4 + c] ?? 0

/** Rows from `top` to `bottom`, shares of the height. */
export function cropped(picture: Picture, top: number, bottom: number): Picture {
  const [from, to] = [Math.round(top * picture.height), Math.round(bottom * picture.height)]
  return made(picture.width, to - from, (x, y, c) => at(picture, x, y + from, c))
}
/** A quarter turn, clockwise or not. */
export const turned = (picture: Picture, clockwise: boolean): Picture =>
  made(picture.height, picture.width, (x, y, c) =>
    clockwise
      ? at(picture, y, picture.height - 1 - x, c)
      : at(picture, picture.width - 1 - y, x, c),
  )
/** Box blur over 2 r + 1 px each way, twice: nearly a bell. Beyond an edge lies the pixel of the edge. */
export function blurred(picture: Picture, r: number): Picture {
  const { width, height } = picture
  const across = (from: Picture): Picture => averaged(from, r, width, 1, height, width)
  const down = (from: Picture): Picture => averaged(from, r, height, width, width, 1)
  return down(across(down(across(picture))))
}
/** Means of 2 r + 1 px along each of `lines` lines of `length` px; the sum moves on by one in, one out. */
function averaged(
  { width, height, data: from }: Picture,
  r: number,
  length: number,
  step: number,
  lines: number,
  nextLine: number,
): Picture {
  const data = new Uint8ClampedArray(from.length).fill(255)
  for (let line = 0; line < lines; line++)
    for (let c = 0; c < 3; c++) {
      const value = (k: number): number =>
        from[(line * nextLine + Math.min(length - 1, Math.max(0, k)) * step) * 4 + c] ?? 0
      let sum = 0
      for (let k = -r; k <= r; k++) sum += value(k)
      for (let k = 0; k < length; k++) {
        data[(line * nextLine + k * step) * 4 + c] = sum / (2 * r + 1)
        sum += value(k + r + 1) - value(k - r)
      }
    }
  return { width, height, data }
}
/** The person dark, the room behind her bright; `her` is her mask. */
export const againstLight = (picture: Picture, her: Uint8Array, dark: number): Picture =>
  made(picture.width, picture.height, (x, y, c) => {
    const share = (her[y * picture.width + x] ?? 0) / 255
    const own = at(picture, x, y, c)
    return share * own * dark + (1 - share) * (170 + own / 3)
  })
/** Two pictures side by side, their middle parts only. */
export function sideBySide(a: Picture, b: Picture): Picture {
  const half = Math.round(a.width * 0.62)
  const start = Math.round(a.width * 0.19)
  return made(2 * half, Math.min(a.height, b.height), (x, y, c) =>
    x < half ? at(a, x + start, y, c) : at(b, x - half + start, y, c),
  )
}
/** A patch of one grey, shares of width and height. */
export const covered = (
  picture: Picture,
  [left, top, right, bottom]: readonly [number, number, number, number],
): Picture =>
  made(picture.width, picture.height, (x, y, c) => {
    const [u, v] = [x / picture.width, y / picture.height]
    return u > left && u < right && v > top && v < bottom ? 120 : at(picture, x, y, c)
  })

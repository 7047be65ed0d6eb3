/**
 * Round spots of one strong colour in a photograph: the sticker dots she wears. A spot is a patch of
 * pixels of one hue that ends on all sides, as large as a dot of 19 mm or less where it is seen
 * askew, and as full as an ellipse. Picture px; hue in degrees. Every number without another source
 * is geometry of the dot or stands beside its reason.
 */
import type { Point } from '../geometry/point.ts'
import type { Mask } from './person.ts'
import type { Picture } from './picture.ts'

export interface Blob {
  /** Middle of its pixels, px. */
  readonly at: Point
  readonly areaPx: number
  /** Half axes of the ellipse with the same spread, px, long one first. */
  readonly halfLong: number
  readonly halfShort: number
  /** Direction of the long axis, radians from x. */
  readonly along: number
  /** 1 when the patch is as full as an ellipse of its spread, less for a ragged one. */
  readonly fullness: number
}

/** Window of the picture that is searched, px. */
export interface Window {
  readonly left: number
  readonly right: number
  readonly top: number
  readonly bottom: number
}

/** The strongly coloured pixels of a window, by hue. */
export interface Colours {
  readonly window: Window
  /** Pixels of each hue, as places in the window row by row; one list for every HUE_STEP degrees. */
  readonly places: readonly (readonly number[])[]
}
/** Hues are kept in steps of this many degrees. */
const HUE_STEP = 2
/** Weaker colours than this (largest less smallest channel, of the largest) are cloth, skin, walls. */
const LEAST_SATURATION = 0.5
/** Darker than this a hue is the noise of the picture, of 255. */
const LEAST_LIGHT = 36
/** Less of the person than this in a pixel is the room, of 255: the mask's own rim is soft. */
const LEAST_PERSON = 16

export function coloursOf({ width, height, data }: Picture, mask: Mask, asked: Window): Colours {
  const window = {
    left: Math.max(0, Math.floor(asked.left)),
    right: Math.min(width, Math.ceil(asked.right)),
    top: Math.max(0, Math.floor(asked.top)),
    bottom: Math.min(height, Math.ceil(asked.bottom)),
  }
  const across = window.right - window.left
  const places = Array.from({ length: 360 / HUE_STEP }, (): number[] => [])
  for (let y = window.top; y < window.bottom; y++) {
    for (let x = window.left; x < window.right; x++) {
      const pixel = y * width + x
      if ((mask.data[pixel] ?? 0) < LEAST_PERSON) continue
      const [r, g, b] = [data[pixel * 4] ?? 0, data[pixel * 4 + 1] ?? 0, data[pixel * 4 + 2] ?? 0]
      const most = Math.max(r, g, b)
      const chroma = most - Math.min(r, g, b)
      if (most < LEAST_LIGHT || chroma < LEAST_SATURATION * most) continue
      const step = Math.round(hueOf(r, g, b, most, chroma) / HUE_STEP) % places.length
      places[step]?.push((y - window.top) * across + x - window.left)
    }
  }
  return { window, places }
}

/** Angle on the colour circle, degrees: red 0, green 120, blue 240 (the usual hexagon). */
function hueOf(r: number, g: number, b: number, most: number, chroma: number): number {
  const sixth =
    most === r ? (g - b) / chroma : most === g ? 2 + (b - r) / chroma : 4 + (r - g) / chroma
  return (sixth * 60 + 360) % 360
}

/**
 * Patches whose hue lies within `spread` degrees of `hue`, of `least` to `most` px. None when more
 * than `inAll` px have that hue: that is cloth, and a dot of the cloth's own colour is not seen.
 */
export function blobsOf(
  { window, places }: Colours,
  hue: number,
  spread: number,
  { least, most, inAll }: { readonly least: number; readonly most: number; readonly inAll: number },
): readonly Blob[] {
  const near = places.filter((_, step) => {
    const away = Math.abs(step * HUE_STEP - hue) % 360
    return Math.min(away, 360 - away) <= spread
  })
  const count = near.reduce((sum, list) => sum + list.length, 0)
  if (count < least || count > inAll) return []
  const across = window.right - window.left
  const open = new Set(near.flat())
  const blobs: Blob[] = []
  for (const seed of open) {
    const sums = { n: 0, x: 0, y: 0, xx: 0, xy: 0, yy: 0 }
    const stack = [seed]
    open.delete(seed)
    for (let k = stack.pop(); k !== undefined; k = stack.pop()) {
      const [x, y] = [k % across, Math.floor(k / across)]
      sums.n += 1
      sums.x += x
      sums.y += y
      sums.xx += x * x
      sums.xy += x * y
      sums.yy += y * y
      const beside = [x > 0 ? k - 1 : -1, x + 1 < across ? k + 1 : -1, k - across, k + across]
      for (const next of beside) if (open.delete(next)) stack.push(next)
    }
    if (sums.n >= least && sums.n <= most) blobs.push(shaped(sums, window))
  }
  return blobs
}

/** A pixel is a square: its own spread, a twelfth, belongs to the patch. */
const PIXEL_SPREAD = 1 / 12

function shaped(
  sums: { n: number; x: number; y: number; xx: number; xy: number; yy: number },
  window: Window,
): Blob {
  const { n } = sums
  const [mx, my] = [sums.x / n, sums.y / n]
  const a = sums.xx / n - mx * mx + PIXEL_SPREAD
  const c = sums.yy / n - my * my + PIXEL_SPREAD
  const b = sums.xy / n - mx * my
  const [mean, apart] = [(a + c) / 2, Math.hypot((a - c) / 2, b)]
  // A filled ellipse has a spread of a quarter of its half axis squared (any handbook).
  const halfLong = 2 * Math.sqrt(mean + apart)
  const halfShort = 2 * Math.sqrt(Math.max(PIXEL_SPREAD, mean - apart))
  return {
    at: { x: window.left + mx + 0.5, y: window.top + my + 0.5 },
    areaPx: n,
    halfLong,
    halfShort,
    along: Math.atan2(2 * b, a - c) / 2,
    fullness: n / (Math.PI * halfLong * halfShort),
  }
}

/** Samples round a spot, and how many of them must be of another colour. */
const [ROUND, LEAST_OTHER] = [24, 0.75]
/** Beside the spot's rim, where its own colour no longer mixes in, px. */
const BESIDE_PX = 2.5
/** Distance of two colours in shares of red, green and blue that the eye takes for two colours. */
const OTHER_COLOUR = 0.1

/** True when what lies round the spot has another colour: a shadow's or skin's patch fades out instead. */
export function standsOut(picture: Picture, { at, halfLong, halfShort, along }: Blob): boolean {
  const own = sharesAt(picture, at.x, at.y)
  const [a, b] = [halfLong + BESIDE_PX, halfShort + BESIDE_PX]
  let other = 0
  for (let k = 0; k < ROUND; k++) {
    const turn = (2 * Math.PI * k) / ROUND
    const [u, v] = [a * Math.cos(turn), b * Math.sin(turn)]
    const x = at.x + u * Math.cos(along) - v * Math.sin(along)
    const y = at.y + u * Math.sin(along) + v * Math.cos(along)
    const there = sharesAt(picture, x, y)
    const away = Math.hypot(...own.map((share, c) => share - (there[c] ?? 0)))
    other += away >= OTHER_COLOUR ? 1 : 0
  }
  return other >= LEAST_OTHER * ROUND
}

/** Red, green and blue as shares of their sum, over the 3 x 3 pixels about a place. */
function sharesAt({ data, width, height }: Picture, x: number, y: number): readonly number[] {
  const sums = [0, 0, 0]
  for (let dy = -1; dy <= 1; dy++)
    for (let dx = -1; dx <= 1; dx++) {
      const [px, py] = [Math.floor(x) + dx, Math.floor(y) + dy]
      if (px < 0 || py < 0 || px >= width || py >= height) continue
      for (let c = 0; c < 3; c++) sums[c] = (sums[c] ?? 0) + (data[(py * width + px) * 4 + c] ?? 0)
    }
  const all = sums.reduce((sum, value) => sum + value, 0)
  return sums.map((value) => value / Math.max(1, all))
}

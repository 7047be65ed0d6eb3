/**
 * A decoded photograph as plain bytes, and its light. Pixel (0, 0) covers the square from
 * (0, 0) to (1, 1), so its centre lies at (0.5, 0.5); every coordinate in capture/ counts so.
 */
export interface Picture {
  readonly width: number
  readonly height: number
  /** RGBA, 4 bytes a pixel, row by row from the top left, sRGB encoded. */
  readonly data: Uint8ClampedArray
  /** Focal length in px of this picture, where the photo's own data (EXIF) tells it. */
  readonly focalPx?: number
}

/** One number a pixel, 0 (no light) to 1 (white), proportional to the light itself. */
export interface Grey {
  readonly width: number
  readonly height: number
  readonly data: Float32Array
  readonly focalPx?: number
}

/** sRGB decoding, IEC 61966-2-1: 0.04045, 12.92, 0.055, 1.055, 2.4. */
export function decodeSrgb(byte: number): number {
  const v = byte / 255
  return v <= 0.04045 ? v / 12.92 : ((v + 0.055) / 1.055) ** 2.4
}
const LIGHT = Float32Array.from({ length: 256 }, (_, byte) => decodeSrgb(byte))

/** Weights of red, green and blue in brightness: ITU-R BT.709-6, item 3.2. */
const [RED, GREEN, BLUE] = [0.2126, 0.7152, 0.0722]

/**
 * Brightness of every pixel in linear light. Edges are placed at half of the LIGHT: at half of
 * the encoded values a black square on white looks too small by nearly half a pixel a side.
 */
export function linearGrey(picture: Picture): Grey {
  const { width, height, data } = picture
  const grey = new Float32Array(width * height)
  for (let i = 0, p = 0; i < grey.length; i++, p += 4) {
    const [r, g, b] = [LIGHT[data[p] ?? 0], LIGHT[data[p + 1] ?? 0], LIGHT[data[p + 2] ?? 0]]
    grey[i] = RED * (r ?? 0) + GREEN * (g ?? 0) + BLUE * (b ?? 0)
  }
  const lens = picture.focalPx === undefined ? {} : { focalPx: picture.focalPx }
  return { width, height, data: grey, ...lens }
}

/**
 * The picture at 1/`factor` of its size, each new pixel the plain mean of factor x factor old
 * ones; a remainder at the right and bottom edge is left out. Good for finding, not measuring.
 */
export function shrink(picture: Picture, factor: number): Picture {
  if (!Number.isInteger(factor) || factor < 1) throw new Error(`shrink: factor ${factor}`)
  if (factor === 1) return picture
  const width = Math.max(1, Math.floor(picture.width / factor))
  const height = Math.max(1, Math.floor(picture.height / factor))
  const data = new Uint8ClampedArray(width * height * 4)
  const cells = factor * factor
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      for (let channel = 0; channel < 4; channel++) {
        let sum = 0
        for (let dy = 0; dy < factor; dy++) {
          const row = ((y * factor + dy) * picture.width + x * factor) * 4 + channel
          for (let dx = 0; dx < factor; dx++) sum += picture.data[row + dx * 4] ?? 0
        }
        data[(y * width + x) * 4 + channel] = sum / cells
      }
    }
  }
  return { width, height, data }
}

/** A part of a picture, whole pixels; `left` and `top` say where it was. */
export interface Part {
  readonly left: number
  readonly top: number
  readonly right: number
  readonly bottom: number
}

export function partOf(picture: Picture, part: Part): Picture {
  const width = Math.max(1, part.right - part.left)
  const height = Math.max(1, part.bottom - part.top)
  const data = new Uint8ClampedArray(width * height * 4)
  for (let y = 0; y < height; y++) {
    const from = ((part.top + y) * picture.width + part.left) * 4
    data.set(picture.data.subarray(from, from + width * 4), y * width * 4)
  }
  return { width, height, data }
}

/** The picture with left and right exchanged, as a selfie camera stores it. */
export function mirrored(picture: Picture): Picture {
  const { width, height } = picture
  const data = new Uint8ClampedArray(width * height * 4)
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      const from = (y * width + x) * 4
      const to = (y * width + (width - 1 - x)) * 4
      for (let c = 0; c < 4; c++) data[to + c] = picture.data[from + c] ?? 0
    }
  }
  return { width, height, data }
}

/** A code as a square, and the square in a picture as text. Both libraries come with this screen only. */
import { correction, generate } from 'lean-qr'
import decodeQR from 'qr/decode.js'

export interface Square {
  /** Modules across, without the quiet zone. */
  readonly size: number
  /** The dark modules as one path of level runs, a unit a module. */
  readonly path: string
}
/** Light modules around the square that a reader needs (ISO/IEC 18004, 5.3.8). */
export const QUIET_ZONE = 4

/** At the lowest level of correction that fits: a screen is neither torn nor stained, and coarse reads best. */
export function squareOf(text: string): Square {
  const code = generate(text, { minCorrectionLevel: correction.L })
  const { size } = code
  const runs: string[] = []
  for (let y = 0; y < size; y += 1)
    for (let x = 0; x < size; x += 1) {
      const from = x
      while (code.get(x, y)) x += 1
      if (x > from) runs.push(`M${from} ${y}h${x - from}v1h${from - x}z`)
    }
  return { size, path: runs.join('') }
}

/** The text of the square in the picture; undefined when there is none to be read. */
export function textIn(picture: ImageData): string | undefined {
  try {
    return decodeQR(picture, { timeLimit: LOOKING_MS })
  } catch {
    return undefined // the library throws where it finds nothing
  }
}
/** What further tries at one frame may cost; the next frame comes anyway. */
const LOOKING_MS = 60

/**
 * Which sheets a piece touches for every way of shifting it against the trim lines by whole
 * squares; shifts that touch the same sheets are one pattern.
 */
import type { Point } from '../geometry/point.ts'

export interface Grid {
  /** Squares of one sheet. */
  readonly across: number
  readonly down: number
  /** Millimetres of one square. */
  readonly width: number
  readonly height: number
}
/** The squares a piece is looked at in. */
export interface Frame {
  readonly corner: Point
  readonly width: number
  readonly height: number
  readonly grid: Grid
}

/** Sheets touched, seen from the one the shape begins on, and the shifts that touch just these. */
export interface Pattern {
  readonly columns: readonly number[]
  readonly rows: readonly number[]
  /** The farthest of them. */
  readonly wide: number
  readonly high: number
  /** Squares of cloth on these sheets, whatever the shift. */
  readonly cloth: number
  /** Pairs of x, y in squares, by rows. */
  readonly shifts: readonly number[]
}
/** How many marked squares lie above and left of each corner: any rectangle in four look-ups. */
function sumsOf(bits: Uint8Array, width: number, height: number): Int32Array {
  const wide = width + 1
  const sums = new Int32Array(wide * (height + 1))
  for (let y = 0; y < height; y++)
    for (let x = 0, row = 0; x < width; x++) {
      row += bits[y * width + x] ?? 0
      sums[(y + 1) * wide + x + 1] = (sums[y * wide + x + 1] ?? 0) + row
    }
  return sums
}

/** Sheets are told apart by one bit each; a number holds this many exactly. */
const EXACT_BITS = 52

export function patternsOf(drawn: Uint8Array, body: Uint8Array, frame: Frame): Pattern[] {
  const { width, height, grid } = frame
  const { across, down } = grid
  const [ink, cloth] = [sumsOf(drawn, width, height), sumsOf(body, width, height)]
  const sides = [Math.ceil(width / across) + 1, Math.ceil(height / down) + 1] as const
  if (sides[0] * sides[1] > EXACT_BITS && sides[0] > EXACT_BITS)
    throw new Error(`tiles: a piece ${sides[0]} sheets wide`)
  const long = sides[0] * sides[1] > EXACT_BITS
  const found = new Map<number | string, { shifts: number[]; cloth: number }>()
  for (let sy = 0; sy < down; sy++)
    for (let sx = 0; sx < across; sx++) {
      let [key, name, taken] = [0, '', 0]
      for (let r = 0, top = 0; top < height; r++) {
        const bottom = Math.min(height, (r + 1) * down - sy)
        const [high, low] = [top * (width + 1), bottom * (width + 1)]
        let mask = 0
        for (let c = 0, left = 0; left < width; c++) {
          const right = Math.min(width, (c + 1) * across - sx)
          const inside =
            (ink[low + right] ?? 0) -
            (ink[low + left] ?? 0) -
            (ink[high + right] ?? 0) +
            (ink[high + left] ?? 0)
          if (inside > 0) {
            mask += 2 ** c
            taken +=
              (cloth[low + right] ?? 0) -
              (cloth[low + left] ?? 0) -
              (cloth[high + right] ?? 0) +
              (cloth[high + left] ?? 0)
          }
          left = right
        }
        if (long) name += `${mask} `
        else key += mask * 2 ** (sides[0] * r)
        top = bottom
      }
      const own = long ? name : key
      const same = found.get(own)
      if (same) {
        same.shifts.push(sx, sy)
        same.cloth = Math.min(same.cloth, taken)
      } else found.set(own, { shifts: [sx, sy], cloth: taken })
    }
  return [...found].map(([key, pattern]) => patternOf(key, sides[0], pattern))
}

/** The sheets a key stands for. */
function patternOf(
  key: number | string,
  side: number,
  { shifts, cloth }: { shifts: readonly number[]; cloth: number },
): Pattern {
  const masks =
    typeof key === 'string'
      ? key.trim().split(' ').map(Number)
      : Array.from(
          { length: Math.ceil(EXACT_BITS / side) },
          (_, r) => Math.floor(key / 2 ** (side * r)) % 2 ** side,
        )
  const cells = masks.flatMap((mask, row) =>
    Array.from({ length: side }, (_, column) => ({ row, column })).filter(
      ({ column }) => Math.floor(mask / 2 ** column) % 2 === 1,
    ),
  )
  const [columns, rows] = [cells.map((c) => c.column), cells.map((c) => c.row)]
  return { columns, rows, wide: Math.max(...columns), high: Math.max(...rows), cloth, shifts }
}

/**
 * How far the paper round the sheet's black square reaches in the picture: outward from the square
 * until the white ends. The sheet may lie either way, be folded or cut; what hides the body is what
 * is seen, not what the print pack says. px.
 */
import type { Card } from './card.ts'
import type { Picture } from './picture.ts'

export interface PaperSeen {
  readonly left: number
  readonly right: number
  readonly top: number
  readonly bottom: number
}

/** White surrounds the square for at least this, in sides of it (marker-sheet.ts: 24 mm of 100). */
const QUIET = 0.1
/** No paper reaches further, in sides: A4 and Letter stand 90 mm over a square of 100 and less. */
const FURTHEST = 1.2
/** The white ends where the colour leaves it by this (three channels together, of 441) for so many px. */
const [LEAVES, FOR_PX] = [36, 2]
/** Places along each edge of the square, as shares of it, from which the way outward is walked. */
const ALONG = [0.2, 0.35, 0.5, 0.65, 0.8]
/** White is followed through light and shade: each px counts this much in what white is. */
const FOLLOWS = 0.15

/** Undefined for a side whose end is not seen, as on white cloth. */
export function paperSeen(
  picture: Picture,
  { corners }: Card,
): { readonly [Edge in keyof PaperSeen]: number | undefined } {
  const [xs, ys] = [corners.map((p) => p.x), corners.map((p) => p.y)]
  const [left, right] = [Math.min(...xs), Math.max(...xs)]
  const [top, bottom] = [Math.min(...ys), Math.max(...ys)]
  const side = Math.max(right - left, bottom - top)
  const from = QUIET * side
  const walked = (at: (share: number) => readonly [number, number], dx: number, dy: number) =>
    middleOf(ALONG.map((share) => whiteEnds(picture, ...at(share), dx, dy, FURTHEST * side)))
  const across = (share: number): number => left + share * (right - left)
  const down = (share: number): number => top + share * (bottom - top)
  const beyond = (edge: number, sign: 1 | -1, px: number | undefined): number | undefined =>
    px === undefined ? undefined : edge + sign * (from + px)
  return {
    left: beyond(
      left,
      -1,
      walked((s) => [left - from, down(s)], -1, 0),
    ),
    right: beyond(
      right,
      1,
      walked((s) => [right + from, down(s)], 1, 0),
    ),
    top: beyond(
      top,
      -1,
      walked((s) => [across(s), top - from], 0, -1),
    ),
    bottom: beyond(
      bottom,
      1,
      walked((s) => [across(s), bottom + from], 0, 1),
    ),
  }
}

/** Steps outward until the white is left for good; undefined when it goes on to the end. */
function whiteEnds(
  picture: Picture,
  x: number,
  y: number,
  dx: number,
  dy: number,
  most: number,
): number | undefined {
  let white = colourAt(picture, x, y)
  let away = 0
  for (let step = 1; step < most; step++) {
    const here = colourAt(picture, x + step * dx, y + step * dy)
    if (!here || !white) return undefined
    if (Math.hypot(...here.map((v, c) => v - (white?.[c] ?? 0))) > LEAVES) {
      away += 1
      if (away === FOR_PX) return step - FOR_PX
    } else {
      away = 0
      white = white.map((v, c) => v + FOLLOWS * ((here[c] ?? v) - v))
    }
  }
  return undefined
}

function colourAt({ data, width, height }: Picture, x: number, y: number): number[] | undefined {
  const [column, row] = [Math.floor(x), Math.floor(y)]
  if (column < 0 || row < 0 || column >= width || row >= height) return undefined
  const k = (row * width + column) * 4
  return [data[k] ?? 0, data[k + 1] ?? 0, data[k + 2] ?? 0]
}

/** Median; undefined when most of them are. */
function middleOf(values: readonly (number | undefined)[]): number | undefined {
  const sorted = values.map((v) => v ?? Infinity).sort((a, b) => a - b)
  const middle = sorted[sorted.length >> 1]
  return middle === undefined || middle === Infinity ? undefined : middle
}

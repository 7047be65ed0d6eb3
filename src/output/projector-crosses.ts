/**
 * Crosses by which cloth is moved from one field of light to the next: two for each pair of
 * neighbouring fields, in the strip both show, as far apart as the strip lets them (a turn of
 * the cloth shows the better the farther they lie apart) and outside the piece where that can
 * be, so that no chalk is left on it.
 */
import { boxHeight, boxWidth, type Box } from '../geometry/box.ts'
import { distance, point, type Point } from '../geometry/point.ts'
import { inside, meetsBox, type Ring } from './ring.ts'

interface Field {
  readonly row: number
  readonly column: number
  readonly name: string
  readonly box: Box
}
export interface ThrowCross {
  /** '1a', '1b': the number of the joint. */
  readonly label: string
  readonly at: Point
  /** Chalk here stays on the piece: a pin is better. */
  readonly onPiece: boolean
}
export interface FieldJoint {
  readonly number: number
  /** Chalked while this field is thrown ... */
  readonly first: string
  /** ... and laid under the same crosses of this one. */
  readonly second: string
  readonly crosses: readonly [ThrowCross, ThrowCross]
}

/** From the rim of a field, where light is weak, and between a cross and the piece. House choice. */
const RIM = 12
const OFF_PIECE = 8
/** Places tried along a strip and across it. */
const ALONG = 24
const ACROSS = 5
/** Crosses outside the piece are taken where they lie at least this share of the strip apart. */
const WORTH = 0.5
/** Two crosses nearer than this would be taken for one another. */
const APART = 25

export function crossesOf(fields: readonly Field[], ring: Ring): FieldJoint[] {
  const taken: Point[] = []
  const pairs = fields.flatMap((a) => {
    const beside = fields.find((b) => b.row === a.row && b.column === a.column + 1)
    const below = fields.find((b) => b.column === a.column && b.row === a.row + 1)
    return [beside, below].flatMap((b) => (b ? [[a, b] as const] : []))
  })
  return pairs.map(([a, b], i) => {
    const strip = {
      left: Math.max(a.box.left, b.box.left),
      top: Math.max(a.box.top, b.box.top),
      right: Math.min(a.box.right, b.box.right),
      bottom: Math.min(a.box.bottom, b.box.bottom),
    }
    const [p, q] = farApart(strip, ring, taken)
    taken.push(p, q)
    const cross = (at: Point, letter: string): ThrowCross => ({
      label: `${i + 1}${letter}`,
      at,
      onPiece: !offPiece(at, ring),
    })
    return { number: i + 1, first: a.name, second: b.name, crosses: [cross(p, 'a'), cross(q, 'b')] }
  })
}

function farApart(strip: Box, ring: Ring, taken: readonly Point[]): readonly [Point, Point] {
  const places = placesIn(strip).filter((p) => taken.every((t) => distance(p, t) >= APART))
  const outside = farthest(places.filter((p) => offPiece(p, ring)))
  const long = Math.max(boxWidth(strip), boxHeight(strip)) - 2 * RIM
  if (outside && distance(...outside) >= long * WORTH) return outside
  const any = farthest(places)
  if (!any) throw new Error(`projector: no room for two crosses in ${JSON.stringify(strip)}`)
  return any
}

function placesIn(strip: Box): Point[] {
  const [width, height] = [boxWidth(strip), boxHeight(strip)]
  const [nx, ny] = width > height ? [ALONG, ACROSS] : [ACROSS, ALONG]
  return Array.from({ length: nx * ny }, (_, i) =>
    point(
      strip.left + RIM + ((width - 2 * RIM) * (i % nx)) / (nx - 1),
      strip.top + RIM + ((height - 2 * RIM) * Math.floor(i / nx)) / (ny - 1),
    ),
  )
}

function farthest(places: readonly Point[]): readonly [Point, Point] | undefined {
  let best: readonly [Point, Point] | undefined
  let long = 0
  for (const [i, a] of places.entries())
    for (const b of places.slice(i + 1)) {
      const now = distance(a, b)
      if (now > long + 1e-9) [best, long] = [[a, b], now]
    }
  return best
}

/** Neither on the piece nor so near that a chalk arm reaches it. */
function offPiece(p: Point, ring: Ring): boolean {
  const near = {
    left: p.x - OFF_PIECE,
    top: p.y - OFF_PIECE,
    right: p.x + OFF_PIECE,
    bottom: p.y + OFF_PIECE,
  }
  return !inside(ring, p) && !meetsBox(ring, near)
}

/**
 * Points of a plane, plain readonly data. On the drafting paper: x to the right from the
 * centre fold, y DOWN the paper, millimetres. In photographs: pixels, y down, origin at the
 * top-left corner of the top-left pixel.
 */
export interface Point {
  readonly x: number
  readonly y: number
}

export const point = (x: number, y: number): Point => ({ x, y })
export const add = (a: Point, b: Point): Point => ({ x: a.x + b.x, y: a.y + b.y })
export const subtract = (a: Point, b: Point): Point => ({ x: a.x - b.x, y: a.y - b.y })
export const scale = (a: Point, k: number): Point => ({ x: a.x * k, y: a.y * k })
export const dot = (a: Point, b: Point): number => a.x * b.x + a.y * b.y
/** Positive when b lies clockwise of a as seen on the page (y is down). */
export const cross = (a: Point, b: Point): number => a.x * b.y - a.y * b.x
// On paper nothing overflows, and a plain root takes a fraction of the time of Math.hypot.
export const norm = (a: Point): number => Math.sqrt(a.x * a.x + a.y * a.y)
export function distance(a: Point, b: Point): number {
  const dx = b.x - a.x
  const dy = b.y - a.y
  return Math.sqrt(dx * dx + dy * dy)
}
export const between = (a: Point, b: Point, t: number): Point => ({
  x: a.x + (b.x - a.x) * t,
  y: a.y + (b.y - a.y) * t,
})

/** Unit vector along `a`; throws for a vector without length, which is our own mistake. */
export function unit(a: Point): Point {
  const length = norm(a)
  if (length === 0) throw new Error('unit: a vector of length 0 has no direction')
  return { x: a.x / length, y: a.y / length }
}

/** Rotates `p` about `pivot`; positive radians turn clockwise on the page because y is down. */
export function rotate(p: Point, pivot: Point, radians: number): Point {
  const c = Math.cos(radians)
  const s = Math.sin(radians)
  const dx = p.x - pivot.x
  const dy = p.y - pivot.y
  return { x: pivot.x + c * dx - s * dy, y: pivot.y + s * dx + c * dy }
}

/** Direction of travel from a to b, radians, 0 = to the right, growing clockwise on the page. */
export const heading = (a: Point, b: Point): number => Math.atan2(b.y - a.y, b.x - a.x)

/** Quarter turn clockwise on the page. */
export const quarterTurn = (a: Point): Point => ({ x: -a.y, y: a.x })

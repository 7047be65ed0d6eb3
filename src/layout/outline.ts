/**
 * Outlines of pieces as flat rings of corners, x0 y0 x1 y1 …, the last joined to the first, with
 * the inside on the left hand (area positive). x runs along the cloth, y across it, millimetres
 * or whatever the caller lays out in. The hot loops of the layout read these arrays.
 */
export type Outline = Float64Array

/** Signed: positive with the inside on the left hand. */
export function outlineArea(ring: Outline): number {
  let twice = 0
  for (let i = 0, j = ring.length - 2; i < ring.length; j = i, i += 2)
    twice += ring[j]! * ring[i + 1]! - ring[i]! * ring[j + 1]!
  return twice / 2
}

export interface Extent {
  readonly left: number
  readonly right: number
  readonly low: number
  readonly high: number
}

export function extentOf(ring: Outline): Extent {
  let [left, right, low, high] = [Infinity, -Infinity, Infinity, -Infinity]
  for (let i = 0; i < ring.length; i += 2) {
    left = Math.min(left, ring[i]!)
    right = Math.max(right, ring[i]!)
    low = Math.min(low, ring[i + 1]!)
    high = Math.max(high, ring[i + 1]!)
  }
  return { left, right, low, high }
}

/** A corner whose neighbours lie in line within this share of the outline's size is left out. */
const IN_LINE = 1e-9

/** Corners in order, inside on the left hand, no corner twice, none in a straight line. */
export function outlineOf(points: readonly (readonly [number, number])[]): Outline {
  const size = Math.max(...points.map(([x, y]) => Math.max(Math.abs(x), Math.abs(y))), 1e-30)
  const kept = points.map(([x, y]) => [x, y] as const)
  for (let i = 0; i < kept.length && kept.length > 2;) {
    const [p, a, b] = [kept[i]!, kept.at(i - 1)!, kept[(i + 1) % kept.length]!]
    const along = Math.hypot(b[0] - a[0], b[1] - a[1])
    const off = (b[0] - a[0]) * (p[1] - a[1]) - (b[1] - a[1]) * (p[0] - a[0])
    const twice = Math.hypot(p[0] - a[0], p[1] - a[1]) <= size * IN_LINE
    if (!twice && (along <= size * IN_LINE || Math.abs(off) > along * size * IN_LINE)) i++
    else {
      kept.splice(i, 1)
      // The corner before may lie in line now.
      i = Math.max(0, i - 1)
    }
  }
  if (kept.length < 3) throw new Error(`outline: ${kept.length} corners enclose nothing`)
  const ring = Float64Array.from(kept.flat())
  return outlineArea(ring) < 0 ? flipped(ring) : ring
}

/** The same corners the other way round. */
function flipped(ring: Outline): Outline {
  const out = new Float64Array(ring.length)
  for (let i = 0; i < ring.length; i += 2) {
    out[i] = ring[ring.length - 2 - i]!
    out[i + 1] = ring[ring.length - 1 - i]!
  }
  return out
}

export const movedOutline = (ring: Outline, dx: number, dy: number): Outline =>
  ring.map((v, i) => v + (i % 2 === 0 ? dx : dy))

/** Turned about the origin; quarter turns are exact. */
export function turnedOutline(ring: Outline, degrees: number): Outline {
  const quarter = (((degrees % 360) + 360) % 360) / 90
  const radians = (degrees * Math.PI) / 180
  const [c, s] = Number.isInteger(quarter)
    ? ([
        [1, 0],
        [0, 1],
        [-1, 0],
        [0, -1],
      ][quarter] as [number, number])
    : [Math.cos(radians), Math.sin(radians)]
  const out = new Float64Array(ring.length)
  for (let i = 0; i < ring.length; i += 2) {
    out[i] = c * ring[i]! - s * ring[i + 1]!
    out[i + 1] = s * ring[i]! + c * ring[i + 1]!
  }
  return out
}

/** The other hand of the piece: turned over about a line along the cloth. */
export const turnedOver = (ring: Outline): Outline =>
  flipped(ring.map((v, i) => (i % 2 === 0 ? v : -v)))

/** A corner sharper than this many times the distance is cut off square. */
const LONGEST_MITRE = 8

/** Every edge moved outward by `by`, neighbours carried on until they meet. For small distances. */
export function grownOutline(ring: Outline, by: number): Outline {
  const out: number[] = []
  const count = ring.length / 2
  for (let i = 0; i < count; i++) {
    const [p, q, r] = [(i + count - 1) % count, i, (i + 1) % count]
    const [x, y] = [ring[2 * q]!, ring[2 * q + 1]!]
    const [ax, ay] = direction(x - ring[2 * p]!, y - ring[2 * p + 1]!)
    const [bx, by_] = direction(ring[2 * r]! - x, ring[2 * r + 1]! - y)
    // Outward normals lie on the right hand.
    const [mx, my] = [ay + by_, -ax - bx]
    const grow = 1 + ax * bx + ay * by_
    if (grow * LONGEST_MITRE > 2) out.push(x + (by * mx) / grow, y + (by * my) / grow)
    else out.push(x + by * (ay + ax), y + by * (ay - ax), x + by * (by_ - bx), y + by * (-bx - by_))
  }
  return Float64Array.from(out)
}

function direction(x: number, y: number): readonly [number, number] {
  const length = Math.hypot(x, y)
  return [x / length, y / length]
}

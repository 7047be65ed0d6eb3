/**
 * Shapes as distance fields: a function that says how far a point lies outside a surface
 * (negative inside), nearly in millimetres. Figure axes: x to her left, y up from the floor,
 * z forward.
 */
export type Field = (x: number, y: number, z: number) => number
export type Vec = readonly [number, number, number]

/** Math.hypot guards against overflow and is several times slower; here it is called by the million. */
export const length = (x: number, y: number, z: number): number => Math.sqrt(x * x + y * y + z * z)

/** An ellipsoid; its distance is first order, exact on the surface. */
export function ellipsoid([cx, cy, cz]: Vec, [rx, ry, rz]: Vec): Field {
  const least = Math.min(rx, ry, rz)
  return (x, y, z) => {
    const [u, v, w] = [(x - cx) / rx, (y - cy) / ry, (z - cz) / rz]
    const r = length(u, v, w)
    const slope = length(u / rx, v / ry, w / rz)
    return slope < 1e-9 ? -least : (r * (r - 1)) / slope
  }
}

/** A limb from a to b whose radius runs from ra to rb, round at both ends. */
export function limb([ax, ay, az]: Vec, ra: number, [bx, by, bz]: Vec, rb: number): Field {
  const [dx, dy, dz] = [bx - ax, by - ay, bz - az]
  const square = dx * dx + dy * dy + dz * dz
  return (x, y, z) => {
    const along = ((x - ax) * dx + (y - ay) * dy + (z - az) * dz) / square
    const t = along < 0 ? 0 : along > 1 ? 1 : along
    return length(x - ax - t * dx, y - ay - t * dy, z - az - t * dz) - (ra + t * (rb - ra))
  }
}

/** Joins fields with a fillet about `soft` millimetres wide; 0 leaves the crease. */
export function join(soft: number, ...parts: readonly Field[]): Field {
  return (x, y, z) => {
    let d = Infinity
    for (const part of parts) d = meet(d, part(x, y, z), soft)
    return d
  }
}

/** The smaller of two distances, rounded off where they are within `soft` of each other. */
export function meet(a: number, b: number, soft: number): number {
  const gap = Math.abs(a - b)
  if (gap >= soft) return Math.min(a, b)
  return Math.min(a, b) - (soft - gap) ** 2 / (4 * soft)
}

/** The same on both sides of the middle plane x = 0; `part` is given for her left. */
export const bothSides =
  (part: Field): Field =>
  (x, y, z) =>
    part(Math.abs(x), y, z)

/** Skips `part` far from a sphere around it, where the distance to the sphere is answer enough. */
export function within([cx, cy, cz]: Vec, radius: number, part: Field): Field {
  return (x, y, z) => {
    const far = length(x - cx, y - cy, z - cz) - radius
    return far > 60 ? far : part(x, y, z)
  }
}

/** Outward unit normal from differences over half a millimetre. */
export function normalOf(field: Field, [x, y, z]: Vec): Vec {
  const h = 0.5
  const dx = field(x + h, y, z) - field(x - h, y, z)
  const dy = field(x, y + h, z) - field(x, y - h, z)
  const dz = field(x, y, z + h) - field(x, y, z - h)
  const n = Math.hypot(dx, dy, dz) || 1
  return [dx / n, dy / n, dz / n]
}

/** Between thighs or fingers a ray creeps along two surfaces; elsewhere 10 to 30 steps do. */
const MOST_STEPS = 800

/** First distance along a ray at which it meets the field; null when it passes by. */
export function march(
  field: Field,
  from: Vec,
  ray: Vec,
  start: number,
  end: number,
): number | null {
  let [t, near] = [start, Infinity]
  for (let step = 0; step < MOST_STEPS && t < end; step++) {
    const d = field(from[0] + ray[0] * t, from[1] + ray[1] * t, from[2] + ray[2] * t)
    if (d < 0.08) return t
    // First-order distances may promise too much, so a part of each is walked.
    t += d * 0.75
    near = d
  }
  // A ray that ran out of steps while grazing the surface has met it.
  return t < end && near < 1.5 ? t : null
}

/** Distance from an inside point to the surface along a ray, by halving, to 0.001 mm. */
export function reachOut(field: Field, from: Vec, ray: Vec, most: number): number {
  const at = (t: number): number =>
    field(from[0] + ray[0] * t, from[1] + ray[1] * t, from[2] + ray[2] * t)
  let [low, high] = [0, 0]
  while (high < most && at(high) < 0) {
    low = high
    high += 2
  }
  while (high - low > 0.001) {
    const half = (low + high) / 2
    if (at(half) < 0) low = half
    else high = half
  }
  return (low + high) / 2
}

/**
 * The no-fit region of two outlines: all the moves of the second at which it overlaps the first,
 * that is the inside of first ⊕ (−second). Given as its boundary, a loose set of straight runs
 * x1 y1 x2 y2 with the region on the left hand, holes among them.
 *
 * Only an edge of one outline set at a corner of the other can bound the sum, and only where the
 * edge's direction lies between those of the corner's own edges. These runs are cut where they
 * cross, and what lies inside the sum of two convex parts is thrown away. A place where a piece
 * fits with no play at all has region on both sides and is thrown away with it.
 * Sources: Ghosh 1991, "An algebra of polygons through the notion of negative shapes", CVGIP 54;
 * Behar and Lien 2011, "Fast and robust 2D Minkowski sum using reduced convolution", IROS.
 */
import { convexParts, convexSum } from './convex-parts.ts'
import { extentOf, type Outline } from './outline.ts'
import { Places } from './same-place.ts'

/** An outline with its convex parts, made once and used against every other. */
export interface Parted {
  readonly ring: Outline
  readonly parts: readonly Outline[]
}
export const parted = (ring: Outline): Parted => ({ ring, parts: convexParts(ring) })

/** Turned half round about the origin: every coordinate with the other sign. */
export const opposite = (p: Parted): Parted => ({
  ring: p.ring.map((v) => -v),
  parts: p.parts.map((part) => part.map((v) => -v)),
})

/** Share of the size within which points are one, and the side step when asking what is inside. */
const SAME = 1e-11
const STEP = 1e-9
const PARALLEL = 1e-9

export function noFit(fixed: Parted, moving: Parted): Float64Array {
  const back = opposite(moving)
  if (fixed.parts.length === 1 && back.parts.length === 1)
    return runsOf(convexSum(fixed.parts[0]!, back.parts[0]!))
  const sums = fixed.parts.flatMap((a) => back.parts.map((b) => boxed(convexSum(a, b))))
  const size = sizeOf(fixed.ring) + sizeOf(back.ring)
  const runs: number[] = []
  addRuns(runs, fixed.ring, back.ring)
  addRuns(runs, back.ring, fixed.ring)
  return boundary(cutApart(runs, size * SAME), sums, size)
}

const sizeOf = (ring: Outline): number => {
  const e = extentOf(ring)
  return Math.max(e.right - e.left, e.high - e.low)
}

function runsOf(ring: Outline): Float64Array {
  const out: number[] = []
  for (let i = 0; i < ring.length; i += 2) {
    const j = (i + 2) % ring.length
    if (ring[i] !== ring[j] || ring[i + 1] !== ring[j + 1])
      out.push(ring[i]!, ring[i + 1]!, ring[j]!, ring[j + 1]!)
  }
  return Float64Array.from(out)
}

/** Each edge of `a` at each corner of `b` it may touch at. */
function addRuns(runs: number[], a: Outline, b: Outline): void {
  for (let i = 0; i < a.length; i += 2) {
    const i2 = (i + 2) % a.length
    const [dx, dy] = [a[i2]! - a[i]!, a[i2 + 1]! - a[i + 1]!]
    const d = Math.hypot(dx, dy)
    for (let j = 0; j < b.length; j += 2) {
      const [p, q] = [(j + b.length - 2) % b.length, (j + 2) % b.length]
      const [ux, uy] = [b[j]! - b[p]!, b[j + 1]! - b[p + 1]!]
      const [vx, vy] = [b[q]! - b[j]!, b[q + 1]! - b[j + 1]!]
      if (ux * vy - uy * vx < 0) continue
      const near = PARALLEL * d
      const after = ux * dy - uy * dx >= -near * Math.hypot(ux, uy)
      if (!after || dx * vy - dy * vx < -near * Math.hypot(vx, vy)) continue
      runs.push(a[i]! + b[j]!, a[i + 1]! + b[j + 1]!, a[i2]! + b[j]!, a[i2 + 1]! + b[j + 1]!)
    }
  }
}

/** The runs cut wherever another crosses, touches or lies along them. */
function cutApart(runs: readonly number[], same: number): readonly number[] {
  const count = runs.length / 4
  const cuts: number[][] = Array.from({ length: count }, () => [0, 1])
  for (let i = 0; i < count; i++) {
    const [ax, ay, bx, by] = [runs[4 * i]!, runs[4 * i + 1]!, runs[4 * i + 2]!, runs[4 * i + 3]!]
    const [dx, dy] = [bx - ax, by - ay]
    const d = Math.hypot(dx, dy)
    for (let j = i + 1; j < count; j++) {
      const [cx, cy, ex, ey] = [runs[4 * j]!, runs[4 * j + 1]!, runs[4 * j + 2]!, runs[4 * j + 3]!]
      if (Math.max(ax, bx) < Math.min(cx, ex) - same || Math.max(cx, ex) < Math.min(ax, bx) - same)
        continue
      if (Math.max(ay, by) < Math.min(cy, ey) - same || Math.max(cy, ey) < Math.min(ay, by) - same)
        continue
      const [fx, fy] = [ex - cx, ey - cy]
      const f = Math.hypot(fx, fy)
      const turn = dx * fy - dy * fx
      const [gx, gy] = [cx - ax, cy - ay]
      if (Math.abs(turn) > PARALLEL * d * f) {
        const t = (gx * fy - gy * fx) / turn
        const s = (gx * dy - gy * dx) / turn
        if (t < -same / d || t > 1 + same / d || s < -same / f || s > 1 + same / f) continue
        cuts[i]!.push(t)
        cuts[j]!.push(s)
      } else if (Math.abs(gx * dy - gy * dx) <= 10 * same * d) {
        cuts[i]!.push((gx * dx + gy * dy) / (d * d))
        cuts[i]!.push(((ex - ax) * dx + (ey - ay) * dy) / (d * d))
        cuts[j]!.push(((ax - cx) * fx + (ay - cy) * fy) / (f * f))
        cuts[j]!.push(((bx - cx) * fx + (by - cy) * fy) / (f * f))
      }
    }
  }
  const out: number[] = []
  for (let i = 0; i < count; i++) {
    const [ax, ay, bx, by] = [runs[4 * i]!, runs[4 * i + 1]!, runs[4 * i + 2]!, runs[4 * i + 3]!]
    const ts = cuts[i]!.filter((t) => t >= 0 && t <= 1).sort((s, t) => s - t)
    for (let k = 1; k < ts.length; k++) {
      const [s, t] = [ts[k - 1]!, ts[k]!]
      out.push(ax + s * (bx - ax), ay + s * (by - ay), ax + t * (bx - ax), ay + t * (by - ay))
    }
  }
  return out
}

interface Boxed extends ReturnType<typeof extentOf> {
  readonly ring: Outline
}
const boxed = (ring: Outline): Boxed => ({ ring, ...extentOf(ring) })

/** Of the cut runs, each once, those with the region on the left hand and none on the right. */
function boundary(cut: readonly number[], sums: readonly Boxed[], size: number): Float64Array {
  const places = new Places(size * SAME * 20)
  const seen = new Set<number>()
  const next = new Map<number, number[]>()
  for (let k = 0; k < cut.length; k += 4) {
    const [ax, ay, bx, by] = [cut[k]!, cut[k + 1]!, cut[k + 2]!, cut[k + 3]!]
    const [a, b] = [places.at(ax, ay), places.at(bx, by)]
    if (a === b || seen.has(a * 0x4000000 + b)) continue
    seen.add(a * 0x4000000 + b)
    const d = Math.hypot(bx - ax, by - ay)
    const [nx, ny] = [(ay - by) / d, (bx - ax) / d]
    const step = Math.min(size * STEP, d / 4)
    const [mx, my] = [(ax + bx) / 2, (ay + by) / 2]
    if (insideAny(sums, mx - step * nx, my - step * ny, size)) continue
    if (!insideAny(sums, mx + step * nx, my + step * ny, size)) continue
    next.set(a, [...(next.get(a) ?? []), b])
  }
  return straightened(places, next, size * SAME * 20)
}

function insideAny(sums: readonly Boxed[], x: number, y: number, size: number): boolean {
  const slack = -size * 1e-12
  next: for (const { ring, left, right, low, high } of sums) {
    if (x < left || x > right || y < low || y > high) continue
    for (let i = 0, j = ring.length - 2; i < ring.length; j = i, i += 2) {
      const [ax, ay] = [ring[j]!, ring[j + 1]!]
      const [dx, dy] = [ring[i]! - ax, ring[i + 1]! - ay]
      if (dx * (y - ay) - dy * (x - ax) < slack * (Math.abs(dx) + Math.abs(dy))) continue next
    }
    return true
  }
  return false
}

/** Runs that follow each other in line are one; what is left as x1 y1 x2 y2. */
function straightened(places: Places, next: Map<number, number[]>, same: number): Float64Array {
  const before = new Map<number, number[]>()
  for (const [a, list] of next) for (const b of list) before.set(b, [...(before.get(b) ?? []), a])
  for (const [b, froms] of before) {
    const tos = next.get(b)
    if (froms.length !== 1 || tos?.length !== 1) continue
    const [a, c] = [froms[0]!, tos[0]!]
    if (a === c) continue
    const [ux, uy] = [places.x(b) - places.x(a), places.y(b) - places.y(a)]
    const [vx, vy] = [places.x(c) - places.x(b), places.y(c) - places.y(b)]
    const whole = Math.hypot(ux + vx, uy + vy)
    if (ux * vx + uy * vy <= 0 || Math.abs(ux * vy - uy * vx) > same * whole) continue
    next.delete(b)
    next.set(a, [...next.get(a)!.filter((k) => k !== b), c])
    before.set(c, [...before.get(c)!.filter((k) => k !== b), a])
  }
  const out: number[] = []
  for (const [a, list] of next)
    for (const b of list) out.push(places.x(a), places.y(a), places.x(b), places.y(b))
  return Float64Array.from(out)
}

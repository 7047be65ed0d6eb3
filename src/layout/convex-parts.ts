/**
 * An outline cut into convex parts: ears are clipped off one after the other, then parts that
 * share a cut are put together again while they stay convex.
 * Sources: ear clipping, Meisters 1975, "Polygons have ears", American Mathematical Monthly 82;
 * putting together, Hertel and Mehlhorn 1983, "Fast triangulation of simple polygons".
 */
import { outlineArea, type Outline } from './outline.ts'

type Part = readonly number[]

export function convexParts(ring: Outline): readonly Outline[] {
  let parts = triangles(ring)
  for (let joined = true; joined;) {
    joined = false
    search: for (let i = 0; i < parts.length; i++)
      for (let j = i + 1; j < parts.length; j++) {
        const one = together(ring, parts[i]!, parts[j]!)
        if (!one) continue
        parts = [...parts.filter((_, k) => k !== i && k !== j), one]
        joined = true
        break search
      }
  }
  return parts.map((part) =>
    Float64Array.from(part.flatMap((k) => [ring[2 * k]!, ring[2 * k + 1]!])),
  )
}

/** Twice the area of the corner a b c, positive for a left turn. */
function corner(ring: Outline, a: number, b: number, c: number): number {
  const [x, y] = [ring[2 * a]!, ring[2 * a + 1]!]
  return (ring[2 * b]! - x) * (ring[2 * c + 1]! - y) - (ring[2 * b + 1]! - y) * (ring[2 * c]! - x)
}

function triangles(ring: Outline): readonly Part[] {
  const left = Array.from({ length: ring.length / 2 }, (_, i) => i)
  const flat = Math.abs(outlineArea(ring)) * 1e-12
  const out: Part[] = []
  while (left.length > 3) {
    const count = left.length
    let [best, clip, shape] = [-1, -1, -1]
    for (let i = 0; i < count; i++) {
      const [a, b, c] = [left[(i + count - 1) % count]!, left[i]!, left[(i + 1) % count]!]
      const twice = corner(ring, a, b, c)
      if (Math.abs(twice) <= flat) clip = i
      // The roundest ear first: thin parts make many edges later.
      if (twice <= flat || left.some((k) => inEar(ring, a, b, c, k))) continue
      const [dx, dy] = [ring[2 * c]! - ring[2 * a]!, ring[2 * c + 1]! - ring[2 * a + 1]!]
      const round = twice / (dx * dx + dy * dy)
      if (round > shape) [best, shape] = [i, round]
    }
    if (best < 0 && clip < 0) throw new Error('convexParts: the outline crosses itself')
    const i = clip >= 0 ? clip : best
    const [a, b, c] = [left[(i + count - 1) % count]!, left[i]!, left[(i + 1) % count]!]
    if (clip < 0) out.push([a, b, c])
    left.splice(i, 1)
  }
  return corner(ring, left[0]!, left[1]!, left[2]!) > flat ? [...out, left] : out
}

function inEar(ring: Outline, a: number, b: number, c: number, k: number): boolean {
  if (k === a || k === b || k === c) return false
  return corner(ring, a, b, k) >= 0 && corner(ring, b, c, k) >= 0 && corner(ring, c, a, k) >= 0
}

/** Both parts as one when they share a cut and the whole is convex. */
function together(ring: Outline, one: Part, two: Part): Part | undefined {
  for (let i = 0; i < one.length; i++) {
    const [a, b] = [one[i]!, one[(i + 1) % one.length]!]
    const j = two.findIndex((k, at) => k === b && two[(at + 1) % two.length] === a)
    if (j < 0) continue
    // one from b round to a, then two from a round to b, without the shared corners twice.
    const rest = Array.from({ length: two.length - 2 }, (_, k) => two[(j + 2 + k) % two.length]!)
    const round = [
      ...Array.from({ length: one.length }, (_, k) => one[(i + 1 + k) % one.length]!),
      ...rest,
    ]
    const convex = round.every(
      (k, at) => corner(ring, round.at(at - 1)!, k, round[(at + 1) % round.length]!) >= 0,
    )
    return convex ? round : undefined
  }
  return undefined
}

/** The Minkowski sum of two convex outlines: their edges in order of direction. */
export function convexSum(a: Outline, b: Outline): Outline {
  const [n, m] = [a.length / 2, b.length / 2]
  let [i, j] = [lowest(a), lowest(b)]
  const out = new Float64Array(2 * (n + m))
  for (let k = 0, di = 0, dj = 0; k < n + m; k++) {
    out[2 * k] = a[2 * i]! + b[2 * j]!
    out[2 * k + 1] = a[2 * i + 1]! + b[2 * j + 1]!
    const [ni, nj] = [(i + 1) % n, (j + 1) % m]
    const turn =
      (a[2 * ni]! - a[2 * i]!) * (b[2 * nj + 1]! - b[2 * j + 1]!) -
      (a[2 * ni + 1]! - a[2 * i + 1]!) * (b[2 * nj]! - b[2 * j]!)
    if (dj >= m || (di < n && turn >= 0)) [i, di] = [ni, di + 1]
    else [j, dj] = [nj, dj + 1]
  }
  return out
}

/** The corner from which the edges turn from the direction of x onward. */
function lowest(ring: Outline): number {
  let best = 0
  for (let k = 1; k < ring.length / 2; k++) {
    const up = ring[2 * k + 1]! - ring[2 * best + 1]!
    if (up < 0 || (up === 0 && ring[2 * k]! < ring[2 * best]!)) best = k
  }
  return best
}

/**
 * How far a flat card is from the camera against the focal length, from the shape it has in the
 * picture: a tilt shortens one way and not the other, and a card off the picture's middle is seen
 * askew. With r1, r2 the directions of its edges and p the view ray of its middle, its edges look
 * J_k = s (r_k,xy - p r_k,z); r1 and r2 being of length 1 and square to each other gives s and the
 * two tilts (para-perspective pose: Horaud, Dornaika, Lamiroy, Christy, Object pose: the link between
 * weak perspective, paraperspective and full perspective, 1997; worked out anew here).
 */
import type { Point } from '../geometry/point.ts'
import { project, type Homography } from './card-plane.ts'

/** Newton steps; four settle a tilt of 40 degrees to 1e-9. From trial. */
const STEPS = 12

/**
 * Millimetres a pixel in a plane square to the camera's axis through the card's middle.
 * @param toPicture from the card's mm to px; @param at its middle, mm
 * @param centre where the camera's axis meets the picture, px; @param focal px
 */
export function mmPerPxByPose(
  toPicture: Homography,
  at: Point,
  centre: Point,
  focal: number,
): number | undefined {
  const step = 1
  const seen = project(toPicture, at)
  const apart = (dx: number, dy: number): Point => {
    const [p, q] = [
      project(toPicture, { x: at.x + dx, y: at.y + dy }),
      project(toPicture, { x: at.x - dx, y: at.y - dy }),
    ]
    return { x: (p.x - q.x) / (2 * step), y: (p.y - q.y) / (2 * step) }
  }
  const [u, v] = [apart(step, 0), apart(0, step)]
  const ray = { x: (seen.x - centre.x) / focal, y: (seen.y - centre.y) / focal }
  const tilts = tiltsOf(u, v)
  const ways = [1, -1].flatMap((sign) => solve(u, v, ray, tilts, sign) ?? [])
  // The end that looks smaller is further away: depth grows along an edge as its scale shrinks.
  const [g = 0, h = 0, w = 1] = toPicture.slice(6)
  const depth = g * at.x + h * at.y + w
  const [x, y] = [(g / depth) * focal, (h / depth) * focal]
  const fit = (way: Way): number => way.tilt.x * x + way.tilt.y * y
  return ways.sort((a, b) => fit(b) - fit(a)).map((way) => 1 / way.scale)[0]
}

interface Way {
  readonly scale: number
  readonly tilt: Point
}

/** Scale and tilts, sign open, of a card straight ahead: the start for one that is not. */
function tiltsOf(u: Point, v: Point): Way {
  const [a, b, c] = [u.x * u.x + u.y * u.y, v.x * v.x + v.y * v.y, u.x * v.x + u.y * v.y]
  const scale = Math.sqrt((a + b) / 2 + Math.hypot((a - b) / 2, c))
  const x = Math.sqrt(Math.max(0, 1 - a / scale ** 2))
  const y = Math.sqrt(Math.max(0, 1 - b / scale ** 2))
  return { scale, tilt: { x, y: c > 0 ? -y : y } }
}

function solve(u: Point, v: Point, ray: Point, start: Way, sign: number): Way | undefined {
  let [s, x, y] = [start.scale, start.tilt.x * sign, start.tilt.y * sign]
  const rest = ([s, x, y]: readonly [number, number, number]): [number, number, number] => {
    const [ux, uy] = [u.x / s + ray.x * x, u.y / s + ray.y * x]
    const [vx, vy] = [v.x / s + ray.x * y, v.y / s + ray.y * y]
    return [ux * ux + uy * uy + x * x - 1, vx * vx + vy * vy + y * y - 1, ux * vx + uy * vy + x * y]
  }
  for (let turn = 0; turn < STEPS; turn++) {
    const now = rest([s, x, y])
    const d = 1e-6
    const ds = rest([s * (1 + d), x, y]).map((r, k) => (r - (now[k] ?? 0)) / (s * d))
    const dx = rest([s, x + d, y]).map((r, k) => (r - (now[k] ?? 0)) / d)
    const dy = rest([s, x, y + d]).map((r, k) => (r - (now[k] ?? 0)) / d)
    const move = solve3(ds, dx, dy, now)
    if (!move) return undefined
    s -= move[0]
    x -= move[1]
    y -= move[2]
    if (!(s > 0) || Math.abs(x) > 1 || Math.abs(y) > 1) return undefined
  }
  return { scale: s, tilt: { x, y } }
}

/** Cramer's rule for three columns; undefined when they lie in one plane. */
function solve3(
  a: readonly number[],
  b: readonly number[],
  c: readonly number[],
  d: readonly number[],
): readonly [number, number, number] | undefined {
  const triple = (p: readonly number[], q: readonly number[], r: readonly number[]): number => {
    const [p0 = 0, p1 = 0, p2 = 0] = p
    const [q0 = 0, q1 = 0, q2 = 0] = q
    const [r0 = 0, r1 = 0, r2 = 0] = r
    return p0 * (q1 * r2 - q2 * r1) - q0 * (p1 * r2 - p2 * r1) + r0 * (p1 * q2 - p2 * q1)
  }
  const all = triple(a, b, c)
  if (Math.abs(all) < 1e-12) return undefined
  return [triple(d, b, c) / all, triple(a, d, c) / all, triple(a, b, d) / all]
}

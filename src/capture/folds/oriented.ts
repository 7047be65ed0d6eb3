/**
 * How much the light changes across each direction: a fold is a bright and a dark flank side by
 * side, long one way and narrow the other. Derivatives of a bell across (second and third: a line
 * and a pair of flanks), averaged along. Steering of derivatives: Freeman, Adelson, The design
 * and use of steerable filters, IEEE PAMI 13 (1991).
 */
import { CELL_MM, type Field } from './grid.ts'
import { convolved, gauss, sampled } from './spread.ts'

/** Directions looked at; 10 degrees apart. */
export const DIRECTIONS = 18
/** Averaged along over this, mm. */
const ALONG_MM = 10
/** Every second cell along the line is enough: the derivatives are smooth over two. */
const TAP_STEP = 2

/** Second and third derivatives, all that is needed to steer to any direction. */
export interface Derivatives {
  readonly width: number
  readonly height: number
  readonly second: readonly [xx: Float32Array, xy: Float32Array, yy: Float32Array]
  readonly third: readonly [
    xxx: Float32Array,
    xxy: Float32Array,
    xyy: Float32Array,
    yyy: Float32Array,
  ]
  readonly sigma: number
}

/** @param scaleMm width of the bell across, mm */
export function derivatives(relief: Field, scaleMm: number): Derivatives {
  const sigma = scaleMm / CELL_MM
  const reach = Math.ceil(4 * sigma)
  const bell = gauss(sigma)
  const g = (x: number): number => bell[x + reach] ?? 0
  const s2 = sigma * sigma
  const order = [
    bell,
    sampled(reach, (x) => (-x / s2) * g(x)),
    sampled(reach, (x) => ((x * x) / s2 - 1) * (g(x) / s2)),
    sampled(reach, (x) => ((3 * x) / s2 - x ** 3 / (s2 * s2)) * (g(x) / s2)),
  ] as const
  const d = (across: 0 | 1 | 2 | 3, down: 0 | 1 | 2 | 3): Float32Array =>
    convolved(relief, order[across], order[down]).data
  const { width, height } = relief
  const second = [d(2, 0), d(1, 1), d(0, 2)] as const
  const third = [d(3, 0), d(2, 1), d(1, 2), d(0, 3)] as const
  return { width, height, second, third, sigma }
}

/** One direction of folds: along it (x right, y down), across it, and the cells to average over. */
export interface Way {
  readonly angle: number
  readonly taps: readonly { readonly dx: number; readonly dy: number; readonly weight: number }[]
  /** Factors of the second and third derivatives across. */
  readonly line: readonly [number, number, number]
  readonly flanks: readonly [number, number, number, number]
}

/** @param angle of the fold, radians counter-clockwise from the right */
export function way(angle: number, sigma: number): Way {
  const [c, s] = [Math.cos(angle), Math.sin(angle)]
  // Across: (s, c) in a picture whose y grows downwards.
  const along = Math.sqrt(Math.max(0, (ALONG_MM / CELL_MM) ** 2 - sigma * sigma))
  const reach = Math.ceil((2.6 * along) / TAP_STEP)
  const raw = Array.from({ length: 2 * reach + 1 }, (_, k) => {
    const t = (k - reach) * TAP_STEP
    const weight = Math.exp(-(t * t) / (2 * along * along))
    return { dx: Math.round(t * c), dy: Math.round(-t * s), weight }
  })
  const sum = raw.reduce((all, tap) => all + tap.weight, 0)
  // So scaled that a flank pair or a line as the filter itself, one high, answers about one.
  const two = sigma ** 2 * Math.sqrt(2 * Math.PI * Math.E)
  const three = (sigma ** 3 * Math.sqrt(8 * Math.PI)) / (2 * (1 + 4 * Math.exp(-1.5)))
  return {
    angle,
    taps: raw.map((tap) => ({ ...tap, weight: tap.weight / sum })),
    line: [two * s * s, two * 2 * s * c, two * c * c],
    flanks: [three * s ** 3, three * 3 * s * s * c, three * 3 * s * c * c, three * c ** 3],
  }
}

export const ways = (sigma: number): readonly Way[] =>
  Array.from({ length: DIRECTIONS }, (_, k) => way((Math.PI * k) / DIRECTIONS, sigma))

/** How strongly a fold of that direction runs through a cell; the root of line and flanks squared. */
export function strengthAt(of: Derivatives, { taps, line, flanks }: Way, cell: number): number {
  const { width, height } = of
  const [x, y] = [cell % width, Math.floor(cell / width)]
  const [xx, xy, yy] = of.second
  const [xxx, xxy, xyy, yyy] = of.third
  const [l0, l1, l2] = line
  const [f0, f1, f2, f3] = flanks
  let [even, odd] = [0, 0]
  for (const { dx, dy, weight } of taps) {
    const [u, v] = [x + dx, y + dy]
    if (u < 0 || v < 0 || u >= width || v >= height) continue
    const k = v * width + u
    even += weight * (l0 * (xx[k] ?? 0) + l1 * (xy[k] ?? 0) + l2 * (yy[k] ?? 0))
    odd +=
      weight * (f0 * (xxx[k] ?? 0) + f1 * (xxy[k] ?? 0) + f2 * (xyy[k] ?? 0) + f3 * (yyy[k] ?? 0))
  }
  return Math.hypot(even, odd)
}

export interface Strongest {
  /** Strength of the strongest direction; 0 where it was not looked. */
  readonly strength: Float32Array
  readonly angle: Float32Array
  /** Strongest over the root mean square of all directions: 1 is no direction at all. */
  readonly onesided: Float32Array
}

/** The strongest direction of every marked cell. Direction by direction: the same as `strengthAt`, quicker. */
export function strongest(of: Derivatives, where: Uint8Array): Strongest {
  const size = where.length
  const [strength, angle, squares] = [0, 0, 0].map(() => new Float32Array(size))
  const [even, odd] = [new Float32Array(size), new Float32Array(size)]
  if (!strength || !angle || !squares) throw new Error('strongest: no fields')
  const cells = Uint32Array.from(where.keys()).filter((k) => where[k])
  for (const one of ways(of.sigma)) {
    steer(of, one, even, odd)
    for (const k of cells) {
      const [e, o] = averaged(of, one, even, odd, k)
      const own = e * e + o * o
      squares[k] = (squares[k] ?? 0) + own
      if (own > (strength[k] ?? 0)) {
        strength[k] = own
        angle[k] = one.angle
      }
    }
  }
  for (const k of cells) strength[k] = Math.sqrt(strength[k] ?? 0)
  const onesided = strength.map(
    (best, k) => best / Math.max(1e-6, Math.sqrt((squares[k] ?? 0) / DIRECTIONS)),
  )
  return { strength, angle, onesided }
}

/** Line and flanks across one direction, in every cell. */
function steer(
  of: Derivatives,
  { line, flanks }: Way,
  even: Float32Array,
  odd: Float32Array,
): void {
  const [xx, xy, yy] = of.second
  const [xxx, xxy, xyy, yyy] = of.third
  const [l0, l1, l2] = line
  const [f0, f1, f2, f3] = flanks
  for (let k = 0; k < even.length; k++) {
    even[k] = l0 * (xx[k] ?? 0) + l1 * (xy[k] ?? 0) + l2 * (yy[k] ?? 0)
    odd[k] = f0 * (xxx[k] ?? 0) + f1 * (xxy[k] ?? 0) + f2 * (xyy[k] ?? 0) + f3 * (yyy[k] ?? 0)
  }
}

function averaged(
  { width, height }: Derivatives,
  { taps }: Way,
  even: Float32Array,
  odd: Float32Array,
  cell: number,
): readonly [number, number] {
  const x = cell % width
  const y = (cell - x) / width
  let [e, o] = [0, 0]
  for (const { dx, dy, weight } of taps) {
    const [u, v] = [x + dx, y + dy]
    if (u < 0 || v < 0 || u >= width || v >= height) continue
    e += weight * (even[v * width + u] ?? 0)
    o += weight * (odd[v * width + u] ?? 0)
  }
  return [e, o]
}

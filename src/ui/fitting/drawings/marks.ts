/**
 * What is drawn on a view of the garment: folds, edges that stand off, pins, slits, tape, level
 * and plumb. Every mark is made from two points, so that its mirror is the same call with both
 * mirrored. Points and sizes are px of a picture 120 wide; paths hold absolute M, L, C, Z only.
 */
export type Pt = readonly [x: number, y: number]

/**
 * How a line is drawn. here: the place, a wash. gap: an opening, filled. seam: cloth. was: where
 * it should lie. slack and taut: folds. chalk: level, plumb, marked point. pin, cut, tape: tools.
 */
export const INKS = [
  'here',
  'gap',
  'body',
  'dart',
  'seam',
  'was',
  'slack',
  'taut',
  'chalk',
  'cut',
  'tape',
  'arrow',
  'pin',
] as const
export type Ink = (typeof INKS)[number]
export interface Line {
  readonly ink: Ink
  readonly d: string
}
export type Mark = readonly Line[]

const r = (n: number): number => Math.round(n * 10) / 10
const say = ([x, y]: Pt): string => `${r(x)} ${r(y)}`
const mix = ([ax, ay]: Pt, [bx, by]: Pt, t: number): Pt => [ax + (bx - ax) * t, ay + (by - ay) * t]
const apart = ([ax, ay]: Pt, [bx, by]: Pt): number => Math.hypot(bx - ax, by - ay)

/** From a towards b, and a quarter turn clockwise from it; both of length 1. */
function alongAndAcross(a: Pt, b: Pt): readonly [Pt, Pt] {
  const long = apart(a, b)
  const along: Pt = [(b[0] - a[0]) / long, (b[1] - a[1]) / long]
  return [along, [-along[1], along[0]]]
}
const shift = (p: Pt, [ux, uy]: Pt, by: number): Pt => [p[0] + ux * by, p[1] + uy * by]

export const straight = (ink: Ink, ...points: readonly Pt[]): Line => ({
  ink,
  d: `M${points.map(say).join('L')}`,
})
const filled = (ink: Ink, ...points: readonly Pt[]): Line => ({
  ink,
  d: `M${points.map(say).join('L')}Z`,
})
const curve = (ink: Ink, from: Pt, ...more: readonly Pt[]): Line => ({
  ink,
  d: `M${say(from)}C${more.map(say).join(' ')}`,
})

/** Control points at this share of the radius make a quarter of a circle. */
const ROUND = 0.5523
function oval(ink: Ink, middle: Pt, along: Pt, long: number, wide: number): Line {
  const across: Pt = [-along[1], along[0]]
  const at = (u: number, v: number): Pt => shift(shift(middle, along, u * long), across, v * wide)
  const q = (points: readonly (readonly [number, number])[]) =>
    points.map(([u, v]) => say(at(u, v))).join(' ')
  const arcs = [
    q([
      [1, ROUND],
      [ROUND, 1],
      [0, 1],
    ]),
    q([
      [-ROUND, 1],
      [-1, ROUND],
      [-1, 0],
    ]),
    q([
      [-1, -ROUND],
      [-ROUND, -1],
      [0, -1],
    ]),
    q([
      [ROUND, -1],
      [1, -ROUND],
      [1, 0],
    ]),
  ]
  return { ink, d: `M${say(at(1, 0))}${arcs.map((a) => `C${a}`).join('')}Z` }
}
const ring = (ink: Ink, middle: Pt, radius: number): Line =>
  oval(ink, middle, [1, 0], radius, radius)

interface Many {
  readonly n?: number
  readonly gap?: number
}
/** The middle line of a bundle is the longest. */
function bundle(a: Pt, b: Pt, { n = 3, gap = 6 }: Many): readonly (readonly [Pt, Pt])[] {
  const [, across] = alongAndAcross(a, b)
  return Array.from({ length: n }, (_, i) => {
    const off = i - (n - 1) / 2
    const less = n > 1 ? (0.22 * Math.abs(off)) / ((n - 1) / 2) : 0
    const from = shift(mix(a, b, less / 2), across, off * gap)
    return [from, shift(mix(a, b, 1 - less / 2), across, off * gap)] as const
  })
}
/** The place of a bundle, as a wash under it. */
function place(a: Pt, b: Pt, { n = 3, gap = 6 }: Many): Line {
  const [along] = alongAndAcross(a, b)
  return oval('here', mix(a, b, 0.5), along, apart(a, b) / 2 + 2, ((n - 1) * gap) / 2 + 5)
}

/** Loose folds: soft waves along a–b. */
export const slack = (a: Pt, b: Pt, many: Many = {}): Mark => [
  place(a, b, many),
  ...bundle(a, b, many).map(([p, q]) => {
    const [, across] = alongAndAcross(p, q)
    const bend = Math.min(5, apart(p, q) * 0.16)
    return curve(
      'slack',
      p,
      shift(mix(p, q, 0.33), across, -bend),
      shift(mix(p, q, 0.67), across, bend),
      q,
    )
  }),
]
const HEAD = 4
const head = (ink: Ink, from: Pt, to: Pt): Line => {
  const [along, across] = alongAndAcross(from, to)
  const foot = shift(to, along, -HEAD)
  return straight(ink, shift(foot, across, HEAD * 0.6), to, shift(foot, across, -HEAD * 0.6))
}
/** Taut lines: straight, pulled apart at both ends of the middle one. */
export function taut(a: Pt, b: Pt, many: Many = {}): Mark {
  const lines = bundle(a, b, { gap: 5, ...many })
  const [p, q] = lines[Math.floor(lines.length / 2)] ?? [a, b]
  return [
    place(a, b, { gap: 5, ...many }),
    ...lines.map(([from, to]) => straight('taut', from, to)),
    head('taut', q, p),
    head('taut', p, q),
  ]
}
/** Taut lines that start at one point and pull towards others. */
export const rays = (from: Pt, ...to: readonly Pt[]): Mark => [
  ring('here', from, 9),
  ...to.flatMap((end) => [straight('taut', mix(from, end, 0.12), end), head('taut', from, end)]),
]
/** An edge that stands off between a and b, farthest at `off`. */
export function loop(a: Pt, b: Pt, off: Pt): Mark {
  const middle = mix(a, b, 0.5)
  // A cubic whose two control points are moved alike bows by three quarters of it.
  const bow: Pt = [((off[0] - middle[0]) * 4) / 3, ((off[1] - middle[1]) * 4) / 3]
  const arc = curve('seam', a, shift(mix(a, b, 0.25), bow, 1), shift(mix(a, b, 0.75), bow, 1), b)
  return [{ ink: 'here', d: `${arc.d}Z` }, arc]
}
export const arrow = (a: Pt, b: Pt): Mark => [straight('arrow', a, b), head('arrow', a, b)]
export const level = (a: Pt, b: Pt): Mark => [straight('chalk', a, b)]
/** A thread with a weight at its lower end. */
export const plumb = (a: Pt, b: Pt): Mark => [
  straight('chalk', a, b),
  filled('pin', b, [b[0] + 2.5, b[1] + 5], [b[0] - 2.5, b[1] + 5]),
]
/** A point marked on the muslin. */
export const point = ([x, y]: Pt): Mark => [
  ring('here', [x, y], 7),
  straight('cut', [x - 4.5, y], [x + 4.5, y]),
  straight('cut', [x, y - 4.5], [x, y + 4.5]),
]
export const tip = ([x, y]: Pt): Mark => [
  straight('dart', [x - 3.5, y], [x + 3.5, y]),
  straight('dart', [x, y - 3.5], [x, y + 3.5]),
]
const PIN = 7
function pinAt(middle: Pt, along: Pt): Mark {
  const end = shift(middle, along, PIN)
  return [straight('pin', shift(middle, along, -PIN), end), ring('pin', end, 1.7)]
}
/** A flat wedge: wide at one end, nothing at the other, with a pin across it. */
export function wedge(wide: Pt, end: Pt, width: number): Mark {
  const [, across] = alongAndAcross(wide, end)
  const one = shift(wide, across, width / 2)
  const two = shift(wide, across, -width / 2)
  return [
    filled('here', one, end, two),
    straight('cut', one, end, two),
    ...pinAt(mix(wide, end, 0.32), across),
  ]
}
/** A fold pinned as wide at both ends. */
export function tuck(a: Pt, b: Pt, width: number, pins: 1 | 2 = 2): Mark {
  const [, across] = alongAndAcross(a, b)
  const side = (off: number) => [shift(a, across, off), shift(b, across, off)] as const
  const [p, q] = side(width / 2)
  const [s, t] = side(-width / 2)
  const at = pins === 1 ? [0.5] : [0.25, 0.75]
  return [
    filled('here', p, q, t, s),
    straight('cut', p, q),
    straight('cut', s, t),
    ...at.flatMap((where) => pinAt(mix(a, b, where), across)),
  ]
}
/** A cut or an unpicked seam: shut, or sprung open in its middle by so much. */
export function slit(a: Pt, b: Pt, open = 0): Mark {
  const [, across] = alongAndAcross(a, b)
  if (open === 0) return [straight('cut', a, b), ...[a, b].map((p) => endOfCut(p, across))]
  const side = (way: 1 | -1) => [
    shift(mix(a, b, 0.3), across, way * open * 0.67),
    shift(mix(a, b, 0.7), across, way * open * 0.67),
  ]
  const [p, q] = side(1) as [Pt, Pt]
  const [s, t] = side(-1) as [Pt, Pt]
  const middle = mix(a, b, 0.5)
  return [
    {
      ink: 'gap',
      d: `M${say(a)}C${[p, q, b].map(say).join(' ')}C${[t, s, a].map(say).join(' ')}Z`,
    },
    ...arrow(shift(middle, across, open * 0.6), shift(middle, across, open * 0.6 + 9)),
    ...arrow(shift(middle, across, -open * 0.6), shift(middle, across, -open * 0.6 - 9)),
  ]
}
const endOfCut = (p: Pt, across: Pt): Line =>
  straight('cut', shift(p, across, 2.5), shift(p, across, -2.5))
/** A cut that springs open at one end only. */
export function mouth(wide: Pt, end: Pt, width: number): Mark {
  const [, across] = alongAndAcross(wide, end)
  const one = shift(wide, across, width / 2)
  const two = shift(wide, across, -width / 2)
  return [
    filled('gap', one, end, two),
    ...arrow(one, shift(one, across, 8)),
    ...arrow(two, shift(two, across, -8)),
  ]
}
/** Short cuts into an allowance, or gathers along a seam: ticks across a–b. */
export function ticks(a: Pt, b: Pt, n: number, long = 6, ink: Ink = 'cut'): Mark {
  const [, across] = alongAndAcross(a, b)
  return Array.from({ length: n }, (_, i) => {
    const p = mix(a, b, n > 1 ? i / (n - 1) : 0.5)
    return straight(ink, shift(p, across, -long / 2), shift(p, across, long / 2))
  })
}
/** A real tape: two edges, ticks, and a zero end. */
export function tape(a: Pt, b: Pt): Mark {
  const [, across] = alongAndAcross(a, b)
  const p = shift(a, across, 2.5)
  const q = shift(b, across, 2.5)
  const n = Math.max(3, Math.round(apart(a, b) / 6))
  return [
    straight('tape', q, p, shift(a, across, -2.5), shift(b, across, -2.5)),
    ...Array.from({ length: n - 1 }, (_, i) => {
      const at = mix(a, b, (i + 1) / n)
      return straight('tape', shift(at, across, 2.5), at)
    }),
  ]
}
/** An edge in waves. */
export function waves(a: Pt, b: Pt, n: number, high: number, ink: Ink = 'seam'): Mark {
  const [, across] = alongAndAcross(a, b)
  const parts = Array.from({ length: n }, (_, i) => {
    const way = i % 2 === 0 ? 1 : -1
    const one = shift(mix(a, b, (i + 0.35) / n), across, high * way)
    const two = shift(mix(a, b, (i + 0.65) / n), across, high * way)
    return `C${[one, two, mix(a, b, (i + 1) / n)].map(say).join(' ')}`
  })
  return [{ ink, d: `M${say(a)}${parts.join('')}` }]
}
/** A cone of cloth at the end of a dart: a round with the light on one side, and puckers round it. */
export const bubble = (middle: Pt, radius: number): Mark => [
  ring('here', middle, radius + 4),
  curve(
    'slack',
    shift(middle, [-1, 0], radius),
    shift(middle, [-1, -1.35], radius),
    shift(middle, [1, -1.35], radius),
    shift(middle, [1, 0], radius),
  ),
  curve(
    'dart',
    shift(middle, [-0.5, 0], radius),
    shift(middle, [-0.5, -0.6], radius),
    shift(middle, [0.1, -0.65], radius),
    shift(middle, [0.3, -0.5], radius),
  ),
  ...[-0.7, 0, 0.7].map((x) =>
    straight('dart', shift(middle, [x, 0.35], radius), shift(middle, [x * 1.7, 1.15], radius)),
  ),
]
/** A dart as it is sewn: its mouth on an edge, or both ends in the cloth. */
export function dart(mouthAt: Pt, end: Pt, width: number): Mark {
  const [, across] = alongAndAcross(mouthAt, end)
  return [
    straight('dart', shift(mouthAt, across, width / 2), end, shift(mouthAt, across, -width / 2)),
  ]
}
export function fishEye(top: Pt, bottom: Pt, width: number): Mark {
  const [, across] = alongAndAcross(top, bottom)
  const middle = mix(top, bottom, 0.5)
  return [
    straight(
      'dart',
      top,
      shift(middle, across, width / 2),
      bottom,
      shift(middle, across, -width / 2),
      top,
    ),
  ]
}
/** The thread of the cloth: an arrow at both ends. */
export const grain = (a: Pt, b: Pt): Mark => [
  straight('arrow', a, b),
  head('arrow', a, b),
  head('arrow', b, a),
]
/** A dot: a button, or a joint under the cloth. */
export const dot = (p: Pt): Mark => [ring('pin', p, 2.2)]
/** An opening one looks into. */
export const hole = (a: Pt, b: Pt, wide: number): Mark => {
  const [along] = alongAndAcross(a, b)
  return [oval('gap', mix(a, b, 0.5), along, apart(a, b) / 2, wide)]
}
/** A gap that is widest in its middle and pointed at both ends. */
export const gape = (a: Pt, b: Pt, wide: number): Mark => {
  const [, across] = alongAndAcross(a, b)
  const middle = mix(a, b, 0.5)
  return [filled('gap', a, shift(middle, across, wide / 2), b, shift(middle, across, -wide / 2))]
}

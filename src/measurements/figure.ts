/**
 * Our own schematic figure for showing where a tape runs: front, back and side outline in a box
 * of 200 by 420, y down, and a plain blouse for the garment laid flat. A diagram: no face, no
 * pose, nobody's proportions.
 */
export interface Place {
  readonly x: number
  readonly y: number
}
export type View = 'front' | 'back' | 'side' | 'flat'

export const FIGURE_WIDTH = 200
export const FIGURE_HEIGHT = 420
/** The body stands on this line. */
export const FLOOR = 410
const MIDDLE = 100

type Pair = readonly [x: number, y: number]
export const place = ([x, y]: Pair): Place => ({ x, y })

/** Heights shared by all views. */
export const LEVEL = {
  crown: 8,
  forehead: 28,
  neckSide: 70,
  nape: 68,
  frontNeck: 77,
  shoulderBone: 86,
  midArmhole: 99,
  highBust: 109,
  armpit: 113,
  apex: 123,
  underbust: 138,
  waist: 164,
  highHip: 188,
  hip: 213,
} as const

/** Half widths of the trunk from the front, at the levels where a tape goes round. */
export const HALF = {
  head: 19,
  neckSide: 15,
  shoulderBone: 43,
  midArmhole: 33,
  highBust: 33,
  apex: 35,
  underbust: 31,
  waist: 28,
  highHip: 35,
  hip: 40,
} as const

const TRUNK: readonly Pair[] = [
  [87, 56],
  [86, 66],
  [80, 74],
  [57, 85],
  [60, 98],
  [67, LEVEL.armpit],
  [65, 124],
  [69, 138],
  [MIDDLE - HALF.waist, LEVEL.waist],
  [65, 188],
  [60, 213],
  [62, 245],
  [70, 302],
  [71, 335],
  [80, 396],
  [76, FLOOR],
  [92, FLOOR],
  [93, 396],
  [96, 302],
  [99, 232],
]
const ARM: readonly Pair[] = [
  [57, 85],
  [49, 96],
  [45, 130],
  [40, 170],
  [34, 212],
  [33, 236],
  [40, 238],
  [44, 212],
  [53, 170],
  [61, 132],
  [67, LEVEL.armpit],
]
const PROFILE: readonly Pair[] = [
  [90, 62],
  [91, LEVEL.frontNeck],
  [79, 102],
  [67, LEVEL.apex],
  [74, LEVEL.underbust],
  [80, LEVEL.waist],
  [75, 190],
  [78, 229],
  [86, 302],
  [90, 394],
  [74, 406],
  [76, FLOOR],
  [110, FLOOR],
  [107, 394],
  [117, 332],
  [112, 302],
  [123, 240],
  [134, 208],
  [117, LEVEL.waist],
  [127, 106],
  [113, LEVEL.nape],
  [112, 58],
]
const SIDE_ARM: readonly Pair[] = [
  [98, 90],
  [94, 130],
  [95, 170],
  [90, 212],
  [90, 234],
  [98, 236],
  [102, 212],
  [111, 170],
  [114, 130],
  [113, 92],
]
const BLOUSE: readonly Pair[] = [
  [82, 58],
  [56, 72],
  [28, 104],
  [44, 122],
  [62, 108],
  [62, 125],
  [66, 185],
  [58, 300],
]

/** SVG path data of the outline, several closed or open strokes. */
export function figureOutline(view: View): readonly string[] {
  if (view === 'flat') {
    const right = mirrored(BLOUSE)
    return [
      polyline(BLOUSE),
      polyline(right),
      `M58 300L142 300`,
      `M82 58C90 66 110 66 118 58`,
      `M82 58C90 61 110 61 118 58`,
    ]
  }
  if (view === 'side')
    return [ellipse({ x: 99, y: 35 }, 21, 27), through(PROFILE), through(SIDE_ARM)]
  const trunk = [through(TRUNK), through(mirrored(TRUNK))]
  const arms = [through(ARM), through(mirrored(ARM))]
  const head = ellipse({ x: MIDDLE, y: 35 }, HALF.head, 27)
  // The only thing that tells front from back: the fall of the bust, or the blades.
  const inside =
    view === 'front'
      ? ['M70 128C74 140 90 140 94 130', 'M130 128C126 140 110 140 106 130']
      : ['M80 98C84 106 84 116 79 122', 'M120 98C116 106 116 116 121 122']
  return [head, ...trunk, ...arms, ...inside]
}

/** A smooth curve through the points, one cubic a span (Catmull–Rom; from memory). */
export function through(points: readonly Pair[]): string {
  const [start] = points
  if (!start) throw new Error('figure: a curve through no points')
  const spans = points.slice(1).map((to, i) => {
    const from = points[i] ?? to
    const before = points[i - 1] ?? from
    const after = points[i + 2] ?? to
    const a = [from[0] + (to[0] - before[0]) / 6, from[1] + (to[1] - before[1]) / 6]
    const b = [to[0] - (after[0] - from[0]) / 6, to[1] - (after[1] - from[1]) / 6]
    return `C${[...a, ...b, ...to].map(short).join(' ')}`
  })
  return `M${short(start[0])} ${short(start[1])}${spans.join('')}`
}

export const polyline = (points: readonly Pair[]): string =>
  points.map(([x, y], i) => `${i === 0 ? 'M' : 'L'}${short(x)} ${short(y)}`).join('')

const mirrored = (points: readonly Pair[]): readonly Pair[] =>
  points.map(([x, y]) => [2 * MIDDLE - x, y] as const)

/** Handle length of a quarter circle of radius 1 drawn as one cubic. From memory. */
const QUARTER = 0.5523

/** Lower half first, from left to right: the half of a level tape that is seen from the front. */
export const lowerHalf = ({ x, y }: Place, across: number, down: number): string =>
  `M${short(x - across)} ${short(y)}${halfArc(x, y, across, down)}`
export const upperHalf = ({ x, y }: Place, across: number, up: number): string =>
  `M${short(x - across)} ${short(y)}${halfArc(x, y, across, -up)}`

function halfArc(x: number, y: number, rx: number, ry: number): string {
  const [kx, ky] = [rx * QUARTER, ry * QUARTER]
  const first = [x - rx, y + ky, x - kx, y + ry, x, y + ry]
  const second = [x + kx, y + ry, x + rx, y + ky, x + rx, y]
  return `C${first.map(short).join(' ')}C${second.map(short).join(' ')}`
}
const ellipse = (centre: Place, rx: number, ry: number): string =>
  `${lowerHalf(centre, rx, ry)}${upperHalf(centre, rx, ry)}`

const short = (value: number): string => `${Math.round(value * 100) / 100}`

/** The printed sheet, folded in half and hung from the cord flat against the figure. */
import { crossed, dotted } from './camera.ts'
import { reachOut, type Field, type Vec } from './field.ts'
import { WAIST_LEVEL } from './torso.ts'

export interface HungSheet {
  readonly widthMm: number
  readonly heightMm: number
  readonly squareMm: number
  readonly middle: Vec
  readonly right: Vec
  readonly up: Vec
  readonly normal: Vec
  /** Of the paper and of its black square, clockwise from the top left as seen. */
  readonly corners: readonly Vec[]
  readonly squareCorners: readonly Vec[]
}

/** A4 folded across its middle, ISO 216: 210 x 148.5 mm. */
const [WIDTH, HEIGHT, SQUARE] = [210, 148.5, 100]
/** The upper rim hangs this far below the cord. */
const BELOW_CORD = 9
const AIR = 1.5

/**
 * @param facing unit level vector out of the body at the middle of the sheet
 * @param lean radians the sheet's face is turned up (belly forward of the cord) or down (negative)
 * @param waist level of the cord
 */
export function hang(body: Field, facing: Vec, lean: number, waist = WAIST_LEVEL): HungSheet {
  const right: Vec = [facing[2], 0, -facing[0]]
  const normal: Vec = [facing[0] * Math.cos(lean), Math.sin(lean), facing[2] * Math.cos(lean)]
  const up = crossed(normal, right)
  const y = waist - BELOW_CORD - (HEIGHT / 2) * Math.cos(lean)
  // The middle keeps its level; how far out it hangs shifts what lies behind it, so look thrice.
  let middle: Vec = [0, y, 0]
  for (let turn = 0; turn < 3; turn++) {
    const back = dotted(middle, [facing[0], 0, facing[2]]) * Math.cos(lean)
    const start: Vec = [
      middle[0] - normal[0] * back,
      middle[1] - normal[1] * back,
      middle[2] - normal[2] * back,
    ]
    const out = (touching(body, start, right, up, normal) + AIR - back) / Math.cos(lean)
    middle = [middle[0] + facing[0] * out, y, middle[2] + facing[2] * out]
  }
  return {
    widthMm: WIDTH,
    heightMm: HEIGHT,
    squareMm: SQUARE,
    middle,
    right,
    up,
    normal,
    corners: cornersOf(middle, right, up, WIDTH / 2, HEIGHT / 2),
    squareCorners: cornersOf(middle, right, up, SQUARE / 2, SQUARE / 2),
  }
}

/** Furthest the body stands out along the normal anywhere under the sheet. */
function touching(body: Field, start: Vec, right: Vec, up: Vec, normal: Vec): number {
  let most = 0
  for (let u = -WIDTH / 2; u <= WIDTH / 2; u += 3) {
    for (let v = -HEIGHT / 2; v <= HEIGHT / 2; v += 3) {
      const from: Vec = [
        start[0] + right[0] * u + up[0] * v,
        start[1] + right[1] * u + up[1] * v,
        start[2] + right[2] * u + up[2] * v,
      ]
      if (body(...from) < 0) most = Math.max(most, reachOut(body, from, normal, 400))
    }
  }
  return most
}

const cornersOf = (m: Vec, r: Vec, u: Vec, a: number, b: number): Vec[] =>
  [
    [-a, b],
    [a, b],
    [a, -b],
    [-a, -b],
  ].map(([s = 0, t = 0]): Vec => [
    m[0] + r[0] * s + u[0] * t,
    m[1] + r[1] * s + u[1] * t,
    m[2] + r[2] * s + u[2] * t,
  ])

/** Where shoulders and hips are in a photograph of the trunk, head and feet cut off or not. */
import type { Point } from '../../geometry/point.ts'
import { runsOf } from '../outline.ts'
import type { Person } from '../person.ts'

export interface TrunkFrame {
  readonly shoulder: Point
  /** Down from shoulder to hip joints. */
  readonly torso: number
  /** Half of the spread of the shoulder joints. */
  readonly half: number
  /** x of the middle line at a height. */
  readonly middle: (y: number) => number
}

/** Shoulders nearer than this to each other, in torsos, were read as seen from the side. From trial. */
const LEAST_SPREAD = 0.5
/** Then half of the trunk's breadth in the mask, at this height, is so many half spreads. From trial. */
const [CHEST, OF_BREADTH] = [0.3, 1.05]

/** @param px picture px a unit of the frame */
export function trunkFrame({ joints, mask }: Person, px: number): TrunkFrame | undefined {
  const pick = (name: string): Point | undefined => joints[name]?.at
  const [ls, rs] = [pick('left_shoulder'), pick('right_shoulder')]
  const [lh, rh] = [pick('left_hip'), pick('right_hip')]
  if (!ls || !rs || !lh || !rh) return undefined
  const mid = (a: Point, b: Point): Point => ({
    x: (a.x + b.x) / 2 / px,
    y: (a.y + b.y) / 2 / px,
  })
  let [shoulder, half] = [mid(ls, rs), Math.abs(ls.x - rs.x) / 2 / px]
  let hip = mid(lh, rh)
  const torso = hip.y - shoulder.y
  if (torso <= 0) return undefined
  if (half * 2 < LEAST_SPREAD * torso) {
    const row = Math.round((shoulder.y + CHEST * torso) * px)
    const [widest] = runsOf(mask, Math.min(mask.height - 1, Math.max(0, row))).sort(
      (a, b) => b.right - b.left - (a.right - a.left),
    )
    if (!widest) return undefined
    const x = (widest.left + widest.right) / 2 / px
    half = ((widest.right - widest.left) / 2 / px) * OF_BREADTH
    shoulder = { x, y: shoulder.y }
    hip = { x, y: hip.y }
  }
  const lean = (hip.x - shoulder.x) / torso
  return { shoulder, torso, half, middle: (y) => shoulder.x + lean * (y - shoulder.y) }
}

/**
 * What is wrong with a whole photograph, said with what to do, before anything is measured in it. Each
 * check lets every picture of the bench pass and is meant for photos that are plainly spoiled. Lengths
 * in torsos, shoulder to hip joints.
 */
import type { Point } from '../geometry/point.ts'
import type { FaultId } from './fault.ts'
import { middle, runsOf, type Joints } from './outline.ts'
import type { Mask, Person } from './person.ts'
import type { Picture } from './picture.ts'
import type { View } from './reading.ts'

/** Joints the model is less sure of than this are outside the picture or hidden. */
const LEAST_SCORE = 0.3

/** The first thing that is wrong, or undefined. */
export function faultOf(view: View, picture: Picture, person: Person): FaultId | undefined {
  const { joints, mask } = person
  if (lies(joints)) return 'turned'
  if (person.company) return 'twoPersons'
  const head = within(joints, ['nose', 'left_ear', 'right_ear'], picture)
  if (!head || reaches(mask, rimOf(mask))) return 'headCut'
  const feet = within(joints, ['left_heel', 'right_heel'], picture)
  if (!feet || reaches(mask, mask.height - 1 - rimOf(mask))) return 'feetCut'
  if (againstLight(picture, mask)) return 'againstLight'
  if (edgeSharpness(picture, mask) < LEAST_SHARP) return 'blurred'
  if (view !== 'side' && handsOnHips(joints)) return 'handsOnHips'
  return undefined
}

/** The line from shoulders to hips lies nearer to level than to plumb. */
function lies(joints: Joints): boolean {
  const [shoulder, hip] = [middle(joints, 'shoulder'), middle(joints, 'hip')]
  if (!shoulder || !hip) return false
  return Math.abs(hip.x - shoulder.x) > Math.abs(hip.y - shoulder.y)
}

function within(joints: Joints, names: readonly string[], size: Picture): boolean {
  const holds = (at: Point): boolean =>
    at.x >= 0 && at.y >= 0 && at.x <= size.width && at.y <= size.height
  return names.some((name) => {
    const joint = joints[name]
    return joint !== undefined && joint.score >= LEAST_SCORE && holds(joint.at)
  })
}

/** The person goes on to the rim of the picture: the model then guesses the ankles just inside it. */
const reaches = (mask: Mask, row: number): boolean =>
  runsOf(mask, row).some((run) => run.right - run.left > RIM_SHARE * mask.width)
const rimOf = (mask: Mask): number => Math.round(RIM_ROW * mask.height)
/** The row beside the rim that is looked at, share of the height: the mask fades at the rim itself. */
const RIM_ROW = 0.006
/** The least width of a body there, share of the picture's width: an ankle has 0.03. */
const RIM_SHARE = 0.02

/** A wrist this much nearer to the middle than its elbow, and not below the hips, rests on the body. */
const INWARD = 0.12
const ABOVE_HIPS = 0.1

function handsOnHips(joints: Joints): boolean {
  const [shoulder, hip] = [middle(joints, 'shoulder'), middle(joints, 'hip')]
  if (!shoulder || !hip) return false
  const torso = hip.y - shoulder.y
  return ['left', 'right'].some((side) => {
    const [elbow, wrist] = [joints[`${side}_elbow`], joints[`${side}_wrist`]]
    if (!elbow || !wrist || Math.min(elbow.score, wrist.score) < LEAST_SCORE) return false
    const out = (at: Point): number => Math.abs(at.x - hip.x)
    const bent = out(elbow.at) - out(wrist.at) > INWARD * torso
    const high = wrist.at.y < hip.y + ABOVE_HIPS * torso && wrist.at.y > shoulder.y
    return bent && high
  })
}

/** Brightest fifth of the person darker than this, and the room behind brighter, of 255. */
const [DARK_PERSON, BRIGHT_ROOM] = [48, 150]
/** Every so many pixels are looked at: this is a question of averages. */
const STEP = 7

function againstLight(picture: Picture, mask: Mask): boolean {
  const [person, room]: [number[], number[]] = [[], []]
  for (let y = 0; y < picture.height; y += STEP)
    for (let x = 0; x < picture.width; x += STEP) {
      const own = mask.data[y * mask.width + x] ?? 0
      if (own > 230) person.push(lumaAt(picture, x, y))
      else if (own < 10) room.push(lumaAt(picture, x, y))
    }
  return quantile(person, 0.8) < DARK_PERSON && quantile(room, 0.5) > BRIGHT_ROOM
}

/**
 * How much of the step across the outline happens from one pixel to the next, median over the rows:
 * 0.5 to 0.8 in a sharp picture, 0.4 / spread for one blurred with that spread in px.
 */
export function edgeSharpness(picture: Picture, mask: Mask): number {
  const shares: number[] = []
  for (let y = 0; y < mask.height; y += STEP)
    for (const run of runsOf(mask, y)) {
      if (run.right - run.left < 2 * ACROSS) continue
      for (const edge of [run.left, run.right]) {
        const from = Math.round(edge) - ACROSS
        if (from < 1 || from + 2 * ACROSS >= picture.width) continue
        const light = Array.from({ length: 2 * ACROSS + 1 }, (_, k) => lumaAt(picture, from + k, y))
        const whole = Math.abs((light.at(-1) ?? 0) - (light[0] ?? 0))
        if (whole < CLEAR_STEP) continue
        const steepest = Math.max(
          ...light.slice(1).map((value, k) => Math.abs(value - (light[k] ?? 0))),
        )
        shares.push(Math.min(1, steepest / whole))
      }
    }
  return shares.length < LEAST_ROWS ? 1 : quantile(shares, 0.5)
}
/** Half the stretch across an edge, px; a step smaller than this of 255 tells nothing; rows that must. */
const [ACROSS, CLEAR_STEP, LEAST_ROWS] = [10, 30, 20]
/** Blurred by 2 px or more, a hand's shake; 148 sharp pictures are at 0.48 and above. */
const LEAST_SHARP = 0.2

/** Brightness of a pixel, ITU-R BT.601 weights. */
function lumaAt({ data, width }: Picture, x: number, y: number): number {
  const k = (y * width + x) * 4
  return 0.299 * (data[k] ?? 0) + 0.587 * (data[k + 1] ?? 0) + 0.114 * (data[k + 2] ?? 0)
}

function quantile(values: readonly number[], share: number): number {
  const sorted = [...values].sort((a, b) => a - b)
  return sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] ?? 0
}

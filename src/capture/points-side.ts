/**
 * Points of a side photograph: nape and waist on the back line, bust level and waist on the front
 * line, bust, waist and hip depths. Works whichever side is turned to the camera.
 */
import type { CardOutcome } from './card.ts'
import { clearOfSheet } from './clear-of-sheet.ts'
import type { BodyFrame } from './frame.ts'
import { aboveHand, belowArm, extremeLevel } from './front-line.ts'
import { NAPE_SD, napeByContour } from './nape.ts'
import { bodyOutline, rowAt } from './outline.ts'
import type { Person } from './person.ts'
import type { Picture } from './picture.ts'
import {
  BUST,
  BUST_ZONE,
  HIP,
  HIP_ZONE,
  NAPE_ABOVE_SHOULDER,
  NAPE_BELOW_EAR,
  NAPE_BY_JOINTS_SD,
  SIDE_NECK_BEFORE_NAPE,
  SIDE_NECK_BELOW_NAPE,
} from './proportions.ts'
import type { OutlineRow, PlacedPoint, PointName, ViewReading } from './reading.ts'
import type { FromId } from './seen.ts'
import { sharpened } from './sharpen.ts'
import { waistOfView } from './waist-of-view.ts'

type Placed = Pick<ViewReading, 'points' | 'missing' | 'outline' | 'facing'>

const EDGE_SD_PX = 1
/** The level of the foremost place of a rounded front line, in torsos (about 5 mm; proportions.ts bench). */
const BUST_LEVEL_SD = 0.0105
/** Hip level by the hindmost place lies lower than the widest by this, in torsos (same bench). */
const HIP_BELOW = 0.03
/**
 * Above the hand that hangs beside the hip the front line is free: height and its run-on to the hip
 * level, more for a deeper body. Line through 16 rendered bodies, three pictures each; leaving one body
 * out the hip depth is right to 6.6 mm in the mean (8.8 without the slope).
 */
const HIP_FRONT = {
  from: 0.7,
  seenAt: 0.9,
  furtherBack: 0.051,
  perDepth: 0.17,
  meanDepth: 0.54,
  sd: 0.014,
} as const

export function placeSide(
  picture: Picture,
  person: Person,
  card: CardOutcome,
  frame: BodyFrame,
): Placed {
  const outline = sharpened(picture, bodyOutline(person.mask, person.joints, true))
  const nose = person.joints.nose?.at
  const facing: -1 | 1 = nose && nose.x > frame.ear.x ? 1 : -1
  const front = (row: OutlineRow): number => (facing === -1 ? row.left : row.right)
  const back = (row: OutlineRow): number => (facing === -1 ? row.right : row.left)
  const between = ([a, b]: readonly [number, number]): OutlineRow[] =>
    outline.filter((row) => row.y > frame.level(a) && row.y < frame.level(b))
  const points: Partial<Record<PointName, PlacedPoint>> = {}
  const missing: Partial<Record<PointName, string>> = {}
  const put = (name: PointName, x: number, y: number, sdPx: number, from: FromId): void => {
    points[name] = { at: { x, y }, sdPx, from, by: 'camera' }
  }
  const edge = (y: number, side: typeof front): number | undefined => {
    const row = rowAt(outline, y - 0.5)
    return row && side(row)
  }

  const byContour = napeByContour(outline, frame, (row) => -back(row) * facing)
  const napeY = byContour ?? napeByJoints(frame)
  const napeSd = byContour === undefined ? NAPE_BY_JOINTS_SD : NAPE_SD
  const napeX = edge(napeY, back)
  if (napeX !== undefined) {
    put('nape', napeX, napeY, napeSd * frame.torso, 'napeInOutline')
    const x = napeX + facing * SIDE_NECK_BEFORE_NAPE.at * frame.torso
    const y = napeY + SIDE_NECK_BELOW_NAPE.at * frame.torso
    const near = facing === -1 ? 'sideNeckLeft' : 'sideNeckRight'
    put(near, x, y, Math.hypot(SIDE_NECK_BELOW_NAPE.sd, napeSd) * frame.torso, 'besideNape')
  }

  const chest = belowArm(between(BUST_ZONE), front, frame.torso)
  const foremost = extremeLevel(chest, (row) => front(row) * facing)
  const bustY = foremost ?? frame.level(BUST.side.at)
  const bustSd = (foremost === undefined ? BUST.side.sd : BUST_LEVEL_SD) * frame.torso
  const bustFrom: FromId = foremost === undefined ? 'usualLevel' : 'foremost'
  const [bustF, bustB] = [edge(bustY, front), edge(bustY, back)]
  if (bustF !== undefined && bustB !== undefined) {
    put('bustLevel', bustF, bustY, bustSd, bustFrom)
    put('bustFront', bustF, bustY, EDGE_SD_PX, bustFrom)
    put('bustBack', bustB, bustY, EDGE_SD_PX, 'backAtBust')
  }

  const waist = waistOfView('side', picture, card, frame, outline, 0)
  const yFront = facing === -1 ? waist.left : waist.right
  const yBack = facing === -1 ? waist.right : waist.left
  const trunkEdge = (y: number, side: typeof front, outward: 1 | -1): number | undefined => {
    const seen = edge(y, side)
    if (seen === undefined || !card.ok) return seen
    return clearOfSheet(outline, y, seen, side, outward, card.card.mmPerPx)
  }
  const behind = facing === -1 ? 1 : -1
  const [waistF, waistB] = [trunkEdge(yFront, front, facing), trunkEdge(yBack, back, behind)]
  const { sdPx, from, by } = waist
  if (waistF !== undefined) points.waistFront = { at: { x: waistF, y: yFront }, sdPx, from, by }
  if (waistB !== undefined) points.waistBack = { at: { x: waistB, y: yBack }, sdPx, from, by }
  if (waist.reason) {
    missing.waistFront = waist.reason
    missing.waistBack = waist.reason
  }

  const hindmost = extremeLevel(between(HIP_ZONE), (row) => -back(row) * facing)
  const usual = frame.level(HIP.side.at)
  const hipY = hindmost === undefined ? usual : (hindmost - HIP_BELOW * frame.torso + usual) / 2
  const hipB = edge(hipY, back)
  const seenAt = aboveHand(
    between([HIP_FRONT.from, HIP_FRONT.seenAt]),
    (row) => front(row) * facing,
    frame.torso,
  )
  const free = edge(seenAt, front)
  if (hipB !== undefined && free !== undefined) {
    put('hipBack', hipB, hipY, EDGE_SD_PX, 'hindmost')
    const seen = Math.abs(hipB - free) / frame.torso
    const further = HIP_FRONT.furtherBack + HIP_FRONT.perDepth * (seen - HIP_FRONT.meanDepth)
    const x = free - facing * further * frame.torso
    put('hipFront', x, hipY, HIP_FRONT.sd * frame.torso, 'aboveHand')
  }
  return { points, missing, outline, facing }
}

/** Where the back line shows no hollow, hidden by hair or a collar: the model's ear and shoulder joints. */
const napeByJoints = ({ torso, ear, shoulder }: BodyFrame): number =>
  (ear.y + NAPE_BELOW_EAR.at * torso + shoulder.y - NAPE_ABOVE_SHOULDER.at * torso) / 2

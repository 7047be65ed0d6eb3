/**
 * Points of a front or back photograph: waist, bust and hip at the edges of the trunk, side necks,
 * shoulders, apexes (front), nape (back). Left and right are hers; from the back her left is on the
 * left of the picture, from the front on its right.
 */
import type { Point } from '../geometry/point.ts'
import { apexSpots } from './apex-shading.ts'
import { withoutArms } from './arms.ts'
import type { CardOutcome } from './card.ts'
import type { BodyFrame } from './frame.ts'
import { bodyOutline, rowAt } from './outline.ts'
import type { Person } from './person.ts'
import type { Picture } from './picture.ts'
import {
  APEX_SPREAD,
  APEX_ZONE,
  BUST,
  HIP,
  NAPE_BACK,
  SHOULDER_HEIGHT,
  SHOULDER_SPREAD,
  SIDE_NECK_HEIGHT,
  SIDE_NECK_SPREAD,
  WAIST_ZONE,
} from './proportions.ts'
import type { OutlineRow, PlacedPoint, PointName, ViewReading } from './reading.ts'
import type { FromId } from './seen.ts'
import { sharpened } from './sharpen.ts'
import { waistOfView } from './waist-of-view.ts'

/** A shoulder slopes by about 20 degrees: a wrong height counts this much along it. */
const ALONG = 0.4
type Placed = Pick<
  ViewReading,
  'points' | 'missing' | 'outline' | 'trunkFrom' | 'facing' | 'apexSpots'
>
/** An edge of the trunk is read to about this, px. */
export const EDGE_SD_PX = 1

export function placeFrontOrBack(
  view: 'front' | 'back',
  picture: Picture,
  person: Person,
  card: CardOutcome,
  frame: BodyFrame,
): Placed {
  const whole = sharpened(picture, bodyOutline(person.mask, person.joints))
  const trunk = withoutArms(whole, frame.level(WAIST_ZONE.startOfTrunk), picture)
  const seenFrom = Math.max(trunk.seenFrom.left, trunk.seenFrom.right)
  const waist = waistOfView(view, picture, card, frame, trunk.rows, seenFrom)
  const points: Partial<Record<PointName, PlacedPoint>> = {}
  const missing: Partial<Record<PointName, string>> = {}
  const herLeft = view === 'front' ? 1 : -1

  const { sdPx, from, by } = waist
  const rowL = rowAt(trunk.rows, waist.left - 0.5)
  const rowR = rowAt(trunk.rows, waist.right - 0.5)
  if (rowL && rowR) {
    const inPicture: readonly Point[] = [
      { x: rowL.left, y: waist.left },
      { x: rowR.right, y: waist.right },
    ]
    const [a, b] = herLeft === 1 ? [inPicture[1], inPicture[0]] : [inPicture[0], inPicture[1]]
    if (a && b) {
      points.waistLeft = { at: a, sdPx, from, by }
      points.waistRight = { at: b, sdPx, from, by }
    }
    const centre = { x: (rowL.left + rowR.right) / 2, y: waist.middle }
    points[view === 'front' ? 'waistFront' : 'waistBack'] = { at: centre, sdPx, from, by }
    if (waist.reason)
      for (const name of [
        'waistLeft',
        'waistRight',
        view === 'front' ? 'waistFront' : 'waistBack',
      ] as const)
        missing[name] = waist.reason
  }

  const usual: FromId = 'usualBesideSide'
  placeAcross(points, trunk.rows, 'bust', frame.level(BUST[view].at), herLeft, {
    sdPx: BUST[view].sd * frame.torso,
    from: usual,
    by: 'camera',
  })
  placeAcross(points, trunk.rows, 'hip', frame.level(HIP[view].at), herLeft, {
    sdPx: HIP[view].sd * frame.torso,
    from: usual,
    by: 'camera',
  })
  Object.assign(points, neckAndShoulders(view, person, frame, whole, herLeft))
  if (view === 'front') {
    Object.assign(points, apexes(points))
  } else {
    const y = frame.level(NAPE_BACK.at)
    const neck = narrowestNeck(whole, frame)
    const at = { x: neck ? (neck.left + neck.right) / 2 : frame.shoulder.x, y }
    points.nape = {
      at,
      sdPx: NAPE_BACK.sd * frame.torso,
      from: 'shouldersAndOutline' satisfies FromId,
      by: 'camera',
    }
  }
  const placed = { points, missing, outline: trunk.rows, trunkFrom: seenFrom, facing: -1 } as const
  if (view === 'back') return placed
  const [top, low] = APEX_ZONE.map((share) => frame.level(share))
  const chest = trunk.rows.filter(({ y }) => y > (top ?? 0) && y < (low ?? 0))
  return { ...placed, apexSpots: apexSpots(picture, chest, frame.torso) }
}

/** Left and right point of a level at the edges of the trunk. */
export function placeAcross(
  points: Partial<Record<PointName, PlacedPoint>>,
  trunk: readonly OutlineRow[],
  what: 'bust' | 'waist' | 'hip',
  y: number,
  herLeft: 1 | -1,
  how: Omit<PlacedPoint, 'at'>,
): void {
  const row = rowAt(trunk, y - 0.5)
  if (!row) return
  points[`${what}Left`] = { at: { x: herLeft === 1 ? row.right : row.left, y }, ...how }
  points[`${what}Right`] = { at: { x: herLeft === 1 ? row.left : row.right, y }, ...how }
}

/** Apexes beside the middle of the trunk at the level of the bust points. */
export function apexes(
  points: Readonly<Partial<Record<PointName, PlacedPoint>>>,
): Partial<Record<PointName, PlacedPoint>> {
  const [left, right] = [points.bustLeft, points.bustRight]
  if (!left || !right) return {}
  const centre = (left.at.x + right.at.x) / 2
  const breadth = left.at.x - right.at.x
  const half = (breadth * APEX_SPREAD.at) / 2
  const sdPx = (Math.abs(breadth) * APEX_SPREAD.sd) / Math.SQRT2
  const y = (left.at.y + right.at.y) / 2
  const how = { sdPx, from: 'usualForBreadth' satisfies FromId, by: 'camera' } as const
  return {
    apexLeft: { at: { x: centre + half, y }, ...how },
    apexRight: { at: { x: centre - half, y }, ...how },
  }
}

function narrowestNeck(outline: readonly OutlineRow[], frame: BodyFrame): OutlineRow | undefined {
  const neck = outline.filter((row) => row.y > frame.ear.y && row.y < frame.shoulder.y)
  return neck.reduce<OutlineRow | undefined>(
    (least, row) => (!least || row.right - row.left < least.right - least.left ? row : least),
    undefined,
  )
}

function neckAndShoulders(
  view: 'front' | 'back',
  person: Person,
  frame: BodyFrame,
  outline: readonly OutlineRow[],
  herLeft: 1 | -1,
): Partial<Record<PointName, PlacedPoint>> {
  const points: Partial<Record<PointName, PlacedPoint>> = {}
  const neck = narrowestNeck(outline, frame)
  const { torso, level } = frame
  if (neck) {
    const centre = (neck.left + neck.right) / 2
    const breadth = neck.right - neck.left
    const half = (breadth * SIDE_NECK_SPREAD[view].at) / 2
    const y = level(SIDE_NECK_HEIGHT[view].at)
    const sdPx = Math.hypot(
      (breadth * SIDE_NECK_SPREAD[view].sd) / 2,
      ALONG * SIDE_NECK_HEIGHT[view].sd * torso,
    )
    const how = { sdPx, from: 'neckBreadth' satisfies FromId, by: 'camera' } as const
    points.sideNeckLeft = { at: { x: centre + herLeft * half, y }, ...how }
    points.sideNeckRight = { at: { x: centre - herLeft * half, y }, ...how }
  }
  const [left, right] = [person.joints.left_shoulder?.at, person.joints.right_shoulder?.at]
  if (left && right) {
    const spread = SHOULDER_SPREAD[view]
    const rise = SHOULDER_HEIGHT[view]
    const across = Math.abs(left.x - right.x)
    const sdPx = Math.hypot((across * spread.sd) / 2, ALONG * rise.sd * torso)
    const how = { sdPx, from: 'shoulderJoints' satisfies FromId, by: 'camera' } as const
    const out = (from: Point, other: Point): Point => ({
      x: (from.x + other.x) / 2 + ((from.x - other.x) / 2) * spread.at,
      y: from.y + rise.at * torso,
    })
    points.shoulderLeft = { at: out(left, right), ...how }
    points.shoulderRight = { at: out(right, left), ...how }
  }
  return points
}

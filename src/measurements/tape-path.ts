/**
 * Where the tape runs, drawn on the figure of `figure.ts`. `path` is what is seen, `behind` what
 * the body hides or, for the shoulder drop, the level ruler; `from` and `to` are the landmarks.
 * Left is her left, which is the right of the front view.
 */
import type { MeasurementId } from './catalogue.ts'
import {
  FLOOR,
  HALF,
  LEVEL,
  lowerHalf,
  place,
  polyline,
  through,
  upperHalf,
  type Place,
  type View,
} from './figure.ts'

export interface TapePath {
  readonly view: View
  /** SVG path data in the 200 by 420 box. */
  readonly path: string
  readonly behind?: string
  readonly from: Place
  readonly to: Place
}

type Pair = readonly [x: number, y: number]

const MIDDLE = 100
/** How far a level tape seems to dip in front; a look from slightly above. */
const DIP = 5

const APEX_RIGHT: Pair = [82, LEVEL.apex]
const APEX_LEFT: Pair = [118, LEVEL.apex]
const NECK_RIGHT: Pair = [MIDDLE - HALF.neckSide, LEVEL.neckSide]
const NECK_LEFT: Pair = [MIDDLE + HALF.neckSide, LEVEL.neckSide]
const BONE_RIGHT: Pair = [MIDDLE - HALF.shoulderBone, LEVEL.shoulderBone]
const BONE_LEFT: Pair = [MIDDLE + HALF.shoulderBone, LEVEL.shoulderBone]
const SIDE_WAIST: Pair = [100, LEVEL.waist]

const PATHS: Readonly<Record<MeasurementId, TapePath>> = {
  bustGirth: level(LEVEL.apex, HALF.apex),
  highBustGirth: level(LEVEL.highBust, HALF.highBust),
  underbustGirth: level(LEVEL.underbust, HALF.underbust),
  waistGirth: level(LEVEL.waist, HALF.waist),
  highHipGirth: level(LEVEL.highHip, HALF.highHip),
  hipGirth: level(LEVEL.hip, HALF.hip),
  neckBaseGirth: level(LEVEL.neckSide, HALF.neckSide, LEVEL.frontNeck - LEVEL.neckSide),
  headGirth: level(LEVEL.forehead, HALF.head),
  upperArmGirth: round('front', { x: 53, y: 122 }, 9, 2),
  slipThroughGirth: round('front', { x: MIDDLE, y: LEVEL.armpit }, 58, 12),
  armholeGirth: {
    view: 'front',
    path: through([BONE_RIGHT, [59, 100], [67, LEVEL.armpit + 1]]),
    behind: through([BONE_RIGHT, [66, 98], [67, LEVEL.armpit + 1]]),
    from: place(BONE_RIGHT),
    to: place(BONE_RIGHT),
  },
  napeToWaist: line('back', [MIDDLE, LEVEL.nape], [MIDDLE, LEVEL.waist]),
  napeToArmpitLevel: {
    ...line('back', [MIDDLE, LEVEL.nape], [MIDDLE, LEVEL.armpit]),
    behind: polyline([
      [67, LEVEL.armpit],
      [133, LEVEL.armpit],
    ]),
  },
  sideNeckOverBladeToWaist: curve('back', [NECK_LEFT, [121, 108], [119, LEVEL.waist]]),
  sideNeckOverApexToWaist: curve('front', [NECK_RIGHT, APEX_RIGHT, [82, LEVEL.waist]]),
  sideNeckToApex: line('front', NECK_RIGHT, APEX_RIGHT),
  frontNeckToWaist: line('front', [MIDDLE, LEVEL.frontNeck], [MIDDLE, LEVEL.waist]),
  apexSpacing: line('front', APEX_RIGHT, APEX_LEFT),
  waistToBustLevel: {
    ...line('side', [88, LEVEL.waist], [88, LEVEL.apex]),
    behind: polyline([
      [67, LEVEL.apex],
      [88, LEVEL.apex],
    ]),
  },
  armpitToWaist: curve('front', [
    [67, LEVEL.armpit],
    [69, 138],
    [MIDDLE - HALF.waist, LEVEL.waist],
  ]),
  waistToHighHip: line('side', SIDE_WAIST, [101, LEVEL.highHip]),
  waistToHip: line('side', SIDE_WAIST, [102, LEVEL.hip]),
  waistToFloor: line('side', SIDE_WAIST, [100, FLOOR]),
  stature: line('side', [160, FLOOR], [160, LEVEL.crown]),
  acrossBack: line('back', [65, LEVEL.midArmhole], [135, LEVEL.midArmhole]),
  acrossChest: line('front', [67, LEVEL.midArmhole], [133, LEVEL.midArmhole]),
  shoulderLengthLeft: line('front', NECK_LEFT, BONE_LEFT),
  shoulderLengthRight: line('front', NECK_RIGHT, BONE_RIGHT),
  shoulderSlopeLeft: drop(NECK_LEFT, BONE_LEFT),
  shoulderSlopeRight: drop(NECK_RIGHT, BONE_RIGHT),
  sideNeckToSleeveEdge: curve('front', [NECK_RIGHT, [60, 83], [48, 103], [44, 140]]),
  flatBustWidth: line('flat', [62, 125], [138, 125]),
  flatWaistWidth: line('flat', [66, 185], [134, 185]),
  flatHemWidth: line('flat', [58, 300], [142, 300]),
  flatBackLength: line('flat', [MIDDLE, 60], [MIDDLE, 300]),
}

export const tapePath = (id: MeasurementId): TapePath => PATHS[id]

function level(y: number, half: number, dip = DIP): TapePath {
  return round('front', { x: MIDDLE, y }, half, dip)
}
/** A closed tape seen a little from above: it meets in the middle of the front. */
function round(view: View, centre: Place, half: number, dip: number): TapePath {
  const meets = { x: centre.x, y: centre.y + dip }
  return {
    view,
    path: lowerHalf(centre, half, dip),
    behind: upperHalf(centre, half, dip / 2),
    from: meets,
    to: meets,
  }
}
function line(view: View, from: Pair, to: Pair): TapePath {
  return { view, path: polyline([from, to]), from: place(from), to: place(to) }
}
function curve(view: View, points: readonly [Pair, ...Pair[]]): TapePath {
  const from = points[0]
  return { view, path: through(points), from: place(from), to: place(points.at(-1) ?? from) }
}
/** The ruler stands on the shoulder bone and reaches up to the level of the side neck point. */
function drop(neck: Pair, bone: Pair): TapePath {
  const top: Pair = [bone[0], neck[1]]
  return { ...line('front', top, bone), behind: polyline([neck, top]) }
}

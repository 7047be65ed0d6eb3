/**
 * The hip level from the dot on the near hip of the side photo. The dot is nearer to the camera than the
 * middle of her, whose front and back lines are looked at. Heights px, y down.
 */
import { rowAt } from './outline.ts'
import { markedByHer, type PlacedPoint, type Readings, type ViewReading } from './reading.ts'
import { halfHip } from './relief-shared.ts'
import { behindIn, PITCH_SD, scaleAt } from './scale.ts'
import type { FromId } from './seen.ts'

/** Half a hip's breadth where neither front nor back photo shows it, mm (16 rendered bodies, truth alone). */
const USUAL_HALF_HIP = 187

/** A height in a photo and its standard deviation, px. */
export interface Height {
  readonly y: number
  readonly sdPx: number
}

/**
 * The dot's level at her back, in the plane of her middle, parallel to the waist: a turned camera slants
 * both. Undefined where the side photo shows no such dot.
 */
export function hipLevelByDot({ front, side, back }: Readings): Height | undefined {
  const dot = side?.points[side.facing === -1 ? 'hipLeft' : 'hipRight']
  if (!side || !dot || !markedByHer(dot)) return undefined
  const half = (front && halfHip(front)) ?? (back && halfHip(back)) ?? USUAL_HALF_HIP
  const [near, far] = [scaleAt(side, -half, 0), scaleAt(side, 0, 0)]
  if (!near || !far) return { y: dot.at.y, sdPx: dot.sdPx }
  const axis = side.size.height / 2
  const y = axis + ((dot.at.y - axis) * near.mmPerPx) / far.mmPerPx
  // A camera that looks up or down sees the nearer of two equal heights lower or higher.
  const tilt = (PITCH_SD * half) / far.mmPerPx
  return { y: y + riseTo(side, dot.at.x), sdPx: Math.hypot(dot.sdPx, tilt) }
}

/** How much lower the waist lies at her back than above a place before it, px. */
function riseTo({ points }: ViewReading, x: number): number {
  const { waistFront, waistBack } = points
  if (!waistFront || !waistBack || waistBack.by === 'guess') return 0
  const [front, back] = [waistFront.at, waistBack.at]
  return ((back.y - front.y) * (back.x - x)) / (back.x - front.x)
}

/** Hip front and back of the side photo at the dot's level, unless she dragged them. */
export function hipByDot(side: ViewReading, readings: Readings): ViewReading {
  const y = hipLevelByDot(readings)?.y
  const row = y === undefined ? undefined : rowAt(side.outline, y - 0.5)
  const { hipBack, hipFront } = side.points
  if (y === undefined || !row || !hipBack || !hipFront) return side
  const moved = (point: PlacedPoint, x: number): PlacedPoint =>
    markedByHer(point) ? point : { ...point, at: { x, y }, from: 'dotHip' satisfies FromId }
  const points = {
    ...side.points,
    hipBack: moved(hipBack, side.facing === -1 ? row.right : row.left),
    hipFront: moved(hipFront, hipFront.at.x),
  }
  return { ...side, points }
}

/**
 * The dot's level at the edges of the trunk in a front or back photo: as far below the waist as the side
 * photo shows it. Undefined without the dot, or without a card in one of the two.
 */
export function hipBelowWaist(
  own: ViewReading,
  readings: Readings,
  waists: { readonly side: Height; readonly own: Height },
): Height | undefined {
  const level = hipLevelByDot(readings)
  const there = readings.side && scaleAt(readings.side, 0, 0)
  const [waist, hip] = (['waistEdge', 'hipEdge'] as const).map((place) => {
    const { mm, sd } = behindIn(own, place)
    return scaleAt(own, mm, sd)
  })
  if (!level || !there || !waist || !hip) return undefined
  const below = (level.y - waists.side.y) * there.mmPerPx
  const axis = own.size.height / 2
  const y = axis + ((waists.own.y - axis) * waist.mmPerPx + below) / hip.mmPerPx
  const sd = Math.hypot(
    Math.hypot(level.sdPx, waists.side.sdPx) * there.mmPerPx,
    waists.own.sdPx * waist.mmPerPx,
    below * Math.hypot(there.sdShare, hip.sdShare),
  )
  return { y, sdPx: sd / hip.mmPerPx }
}

/**
 * The bust level of the side photo from the dots on both apexes: the front photo shows how far they lie
 * above the waist, and the side photo shows the waist. Heights px, y down.
 */
import { rowAt } from './outline.ts'
import { markedByHer, type PlacedPoint, type Readings, type ViewReading } from './reading.ts'
import { frontSurface, scaleAt } from './scale.ts'
import type { FromId } from './seen.ts'

/** A depth is read at the edge of the outline, px (points-side.ts). */
const EDGE_SD_PX = 1

export function bustByDots(side: ViewReading, readings: Readings): ViewReading {
  const { apexLeft, apexRight, waistFront } = readings.front?.points ?? {}
  const waist = side.points.waistFront
  if (!readings.front || !apexLeft || !apexRight || !waistFront || !waist) return side
  const marked = [apexLeft, apexRight, waistFront].every(markedByHer)
  if (!marked || waist.by === 'guess' || markedByHer(side.points.bustLevel)) return side
  const surface = frontSurface(readings.front)
  const there = scaleAt(readings.front, surface.mm, surface.sd)
  const here = scaleAt(side, 0, 0)
  if (!there || !here) return side
  const above = waistFront.at.y - (apexLeft.at.y + apexRight.at.y) / 2
  const y = waist.at.y - (above * there.mmPerPx) / here.mmPerPx
  const row = rowAt(side.outline, y - 0.5)
  if (!row) return side
  const [front, back] = side.facing === -1 ? [row.left, row.right] : [row.right, row.left]
  const how = { from: 'dotsAtApexes' satisfies FromId, by: 'lent' } as const
  const sdPx = Math.hypot(waist.sdPx, above * there.sdShare, above * here.sdShare)
  const at = (x: number, sd: number): PlacedPoint => ({ at: { x, y }, sdPx: sd, ...how })
  const points = {
    ...side.points,
    bustLevel: at(front, sdPx),
    bustFront: at(front, EDGE_SD_PX),
    bustBack: at(back, EDGE_SD_PX),
  }
  return { ...side, points }
}

/** Apexes before the edges of the trunk at bust level, mm (breadth.ts, scale.ts; bench). */
const APEX_BEFORE_EDGE = 130

/** The level of the apex dots where it meets the outline: as high as they, but further from the camera. */
export function edgeByDots(
  own: ViewReading,
): (Omit<PlacedPoint, 'at'> & { y: number }) | undefined {
  const { apexLeft, apexRight } = own.points
  if (!apexLeft || !apexRight || !markedByHer(apexLeft) || !markedByHer(apexRight)) return undefined
  const [near, far] = [scaleAt(own, -APEX_BEFORE_EDGE, 0), scaleAt(own, 0, 0)]
  const axis = own.size.height / 2
  const level = (apexLeft.at.y + apexRight.at.y) / 2
  const y = near && far ? axis + ((level - axis) * near.mmPerPx) / far.mmPerPx : level
  return { y, sdPx: EDGE_BY_DOTS_SD_PX, from: 'levelOfDots' satisfies FromId, by: 'lent' }
}
/** A camera turned up or down by 3 degrees moves the level by this at the edge, px: 0.05 x 1100 x 130 / 2400. */
const EDGE_BY_DOTS_SD_PX = 2.5

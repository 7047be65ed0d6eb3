/** The apexes of a front photo where the light on the cloth shows them (apex-shading.ts). */
import { pickApexes } from './apex-shading.ts'
import { markedByHer, type PlacedPoint, type PointName, type ViewReading } from './reading.ts'
import type { FromId } from './seen.ts'

/** They stray by this across, in torsos: 28 of 32 rendered fronts, 5 mm each. */
const BY_LIGHT_SD = 0.0105

/** Both apexes, or nothing: when she marked one herself, or when no pair stands out. */
export function apexesByLight(
  { apexSpots }: ViewReading,
  { apexLeft, apexRight, bustLeft }: Readonly<Partial<Record<PointName, PlacedPoint>>>,
  torso: number,
): Partial<Record<PointName, PlacedPoint>> {
  if (!apexSpots || !apexLeft || !apexRight || !bustLeft) return {}
  if (markedByHer(apexLeft) || markedByHer(apexRight)) return {}
  const usual = { left: apexLeft.at, right: apexRight.at, torso, sdY: bustLeft.sdPx }
  const found = pickApexes(apexSpots, usual)
  if (!found) return {}
  const how = { sdPx: BY_LIGHT_SD * torso, from: 'light' satisfies FromId, by: 'camera' } as const
  return { apexLeft: { at: found.left.at, ...how }, apexRight: { at: found.right.at, ...how } }
}

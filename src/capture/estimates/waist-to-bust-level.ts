/** Height of the bust level above the waist, straight up. The side photo shows both levels. */
import type { EstimateOutcome } from '../../measurements/estimate.ts'
import type { Readings } from '../reading.ts'
import { basisOf, pointsOf, scaleIn, together, wayOf, type WayOutcome } from './scene.ts'

/** From the side both lie about in the middle plane; from the front on the front surface (bench, scale.ts). */
const SIDE_PLANE = { behind: 0, sd: 8 }
const FRONT_SURFACE = { behind: -162, sd: 32 }

export function waistToBustLevel(readings: Readings): EstimateOutcome {
  const side = bySide(readings)
  // From the front the bust level is only a usual place or the side photo's own: no second witness.
  return together([side.ok ? side : byFront(readings, side.reason)])
}

function bySide(readings: Readings): WayOutcome {
  const found = pointsOf(readings, 'side', ['bustLevel', 'waistFront'])
  if (!found.ok) return found
  const { bustLevel, waistFront } = found.at
  const scale = scaleIn(found.reading, SIDE_PLANE.behind, SIDE_PLANE.sd)
  const sdPx = Math.hypot(bustLevel.sdPx, waistFront.sdPx)
  const basis = basisOf('side', scale, `${bustLevel.from} to ${waistFront.from}`)
  return { ok: true, way: wayOf(waistFront.at.y - bustLevel.at.y, sdPx, scale, basis) }
}

function byFront(readings: Readings, reason: string): WayOutcome {
  const found = pointsOf(readings, 'front', ['apexLeft', 'apexRight', 'waistFront'])
  if (!found.ok) return { ok: false, reason: `${reason} ${found.reason}` }
  const { apexLeft, apexRight, waistFront } = found.at
  const scale = scaleIn(found.reading, FRONT_SURFACE.behind, FRONT_SURFACE.sd)
  const level = found.reading.points.bustLeft ?? apexLeft
  const sdPx = Math.hypot(apexLeft.by === 'hand' ? apexLeft.sdPx : level.sdPx, waistFront.sdPx)
  const px = waistFront.at.y - (apexLeft.at.y + apexRight.at.y) / 2
  const basis = basisOf('front', scale, `apexes to ${waistFront.from}`)
  return { ok: true, way: wayOf(px, sdPx, scale, basis) }
}

/** Height of the bust level above the waist, straight up. The side photo shows both levels. */
import type { EstimateOutcome } from '../../measurements/estimate.ts'
import { markedByHer, type Readings } from '../reading.ts'
import { frontSurface } from '../scale.ts'
import { basisOf, pointsOf, scaleIn, together, wayOf, type WayOutcome } from './scene.ts'

/** From the side both lie about in the middle plane; from the front on the front surface (bench, scale.ts). */
const SIDE_PLANE = { mm: 0, sd: 8 }
/** The middle of what is seen of a dot on an apex lies low by this: mean over 26 rendered bodies, mm. */
const APEX_DOT_LOW_MM = 1

export function waistToBustLevel(readings: Readings): EstimateOutcome {
  const { apexLeft, apexRight, waistFront } = readings.front?.points ?? {}
  // Her own marks on the front show both levels in one plane; nothing beats them.
  if ([apexLeft, apexRight, waistFront].every(markedByHer)) {
    const front = byFront(readings, '')
    if (front.ok) return together([front])
  }
  const side = bySide(readings)
  // From the front the bust level is only a usual place or the side photo's own: no second witness.
  return together([side.ok ? side : byFront(readings, side.reason)])
}

function bySide(readings: Readings): WayOutcome {
  const found = pointsOf(readings, 'side', ['bustLevel', 'waistFront'])
  if (!found.ok) return found
  const { bustLevel, waistFront } = found.at
  const scale = scaleIn(found.reading, SIDE_PLANE, bustLevel.at.y)
  const sdPx = Math.hypot(bustLevel.sdPx, waistFront.sdPx)
  const basis = basisOf('side', scale, 'between', bustLevel, waistFront)
  return { ok: true, way: wayOf(waistFront.at.y - bustLevel.at.y, sdPx, scale, basis) }
}

function byFront(readings: Readings, reason: string): WayOutcome {
  const found = pointsOf(readings, 'front', ['apexLeft', 'apexRight', 'waistFront'])
  if (!found.ok) return { ok: false, reason: `${reason} ${found.reason}` }
  const { apexLeft, apexRight, waistFront } = found.at
  const scale = scaleIn(found.reading, frontSurface(found.reading), apexLeft.at.y)
  const level = found.reading.points.bustLeft ?? apexLeft
  const ends = markedByHer(apexLeft) ? apexLeft.sdPx / Math.SQRT2 : level.sdPx
  const sdPx = Math.hypot(ends, waistFront.sdPx)
  const px = waistFront.at.y - (apexLeft.at.y + apexRight.at.y) / 2
  const basis = basisOf('front', scale, 'apexesTo', waistFront)
  const way = wayOf(px, sdPx, scale, basis)
  const low = apexLeft.by === 'dot' ? APEX_DOT_LOW_MM : 0
  return { ok: true, way: { ...way, value: way.value + low } }
}

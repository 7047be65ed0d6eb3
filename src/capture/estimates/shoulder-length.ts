/**
 * Side neck point to shoulder point along the shoulder, mean of left and right, from front and back.
 * The shoulder is seen nearly at right angles from both.
 */
import type { EstimateOutcome } from '../../measurements/estimate.ts'
import { distance } from '../../geometry/point.ts'
import type { PlacedPoint, Readings } from '../reading.ts'
import { behindIn } from '../scale.ts'
import { basisOf, pointsOf, scaleIn, together, wayOf, type WayOutcome } from './scene.ts'

export function shoulderLength(readings: Readings): EstimateOutcome {
  return together([byView(readings, 'front'), byView(readings, 'back')])
}

function byView(readings: Readings, view: 'front' | 'back'): WayOutcome {
  const names = ['sideNeckLeft', 'sideNeckRight', 'shoulderLeft', 'shoulderRight'] as const
  const found = pointsOf(readings, view, names)
  if (!found.ok) return found
  const { sideNeckLeft, sideNeckRight, shoulderLeft, shoulderRight } = found.at
  const scale = scaleIn(found.reading, behindIn(found.reading, 'shoulders'), shoulderLeft.at.y)
  const px =
    (distance(sideNeckLeft.at, shoulderLeft.at) + distance(sideNeckRight.at, shoulderRight.at)) / 2
  const strays = (a: PlacedPoint, b: PlacedPoint): number => Math.hypot(a.sdPx, b.sdPx)
  const sdPx = (strays(sideNeckLeft, shoulderLeft) + strays(sideNeckRight, shoulderRight)) / 2
  const basis = basisOf(view, scale, `${sideNeckLeft.from} to ${shoulderLeft.from}`)
  return { ok: true, way: wayOf(px, sdPx, scale, basis) }
}

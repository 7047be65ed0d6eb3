/**
 * Side neck point to apex, tape taut. Drop and reach forward are read from the side photo; how far
 * the apex lies further out than the side neck comes from the front photo, or is usual.
 */
import type { EstimateOutcome } from '../../measurements/estimate.ts'
import type { PlacedPoint, Readings } from '../reading.ts'
import { basisOf, pointsOf, scaleIn, together, wayOf } from './scene.ts'

const SIDE_PLANE = { behind: 0, sd: 10 }
/** Apexes and side necks seen from the front (bench, see scale.ts). */
const FRONT_PLANE = { behind: -95, sd: 30 }
/** Apex further out than the side neck when no front photo says it: mean and spread (bench), mm. */
const USUAL_OUT = { mm: 24, sd: 10 }
/**
 * The outline's foremost place is further forward than the mean of both apexes when she is turned a
 * little, and the back line behind the neck reads a little far back: mean and spread (bench), mm.
 */
const REACHES_TOO_FAR = { mm: 14, sd: 6 }
/** Tape over the chest against the straight line: mean and spread over the bench's bodies, mm. */
const CURVE_ADDS = { mm: 2.8, sd: 1 }

export function sideNeckToApex(readings: Readings): EstimateOutcome {
  const left = pointsOf(readings, 'side', ['sideNeckLeft', 'bustLevel'])
  const right = pointsOf(readings, 'side', ['sideNeckRight', 'bustLevel'])
  const found = left.ok ? left : right
  if (!found.ok) return found
  const neck: PlacedPoint = left.ok
    ? left.at.sideNeckLeft
    : right.ok
      ? right.at.sideNeckRight
      : never()
  const apex = found.at.bustLevel
  const scale = scaleIn(found.reading, SIDE_PLANE.behind, SIDE_PLANE.sd)
  const byHand = apex.by === 'hand' && neck.by === 'hand'
  const less = byHand ? { mm: 0, sd: 0 } : REACHES_TOO_FAR
  const reach = Math.abs(apex.at.x - neck.at.x) - less.mm / scale.mmPerPx
  const px = Math.hypot(reach, apex.at.y - neck.at.y)
  const sdPx = Math.hypot(apex.sdPx, neck.sdPx)
  const basis = basisOf('side', scale, `beside the nape to ${apex.from}`)
  const inPlane = wayOf(px, sdPx, scale, basis, less.sd)
  const out = outward(readings) ?? USUAL_OUT
  const value = Math.hypot(inPlane.value, out.mm) + CURVE_ADDS.mm
  const sd = Math.hypot(inPlane.sd, (out.mm / value) * out.sd, CURVE_ADDS.sd)
  return together([{ ok: true, way: { value, sd, basis } }])
}

function outward(readings: Readings): { mm: number; sd: number } | undefined {
  const found = pointsOf(readings, 'front', [
    'apexLeft',
    'apexRight',
    'sideNeckLeft',
    'sideNeckRight',
  ])
  if (!found.ok) return undefined
  const { apexLeft, apexRight, sideNeckLeft, sideNeckRight } = found.at
  const scale = scaleIn(found.reading, FRONT_PLANE.behind, FRONT_PLANE.sd)
  const apart = (a: PlacedPoint, b: PlacedPoint): number => Math.abs(a.at.x - b.at.x) / 2
  const px = apart(apexLeft, apexRight) - apart(sideNeckLeft, sideNeckRight)
  const sdPx = Math.hypot(apexLeft.sdPx, sideNeckLeft.sdPx)
  return { mm: px * scale.mmPerPx, sd: sdPx * scale.mmPerPx }
}

function never(): never {
  throw new Error('side neck to apex: neither side neck point was found after one was')
}

/**
 * Side neck point to apex, tape taut. Drop and reach forward are read from the side photo; how far
 * the apex lies further out than the side neck comes from the front photo, or is usual.
 */
import type { EstimateOutcome } from '../../measurements/estimate.ts'
import { markedByHer, type PlacedPoint, type Readings, type ViewReading } from '../reading.ts'
import { behindIn } from '../scale.ts'
import { basisOf, byItself, pointsOf, scaleIn, together, wayOf } from './scene.ts'

const SIDE_PLANE = { mm: 0, sd: 10 }
/** Dots on the near side lie before it by half the spacing of side necks and apexes (bench), mm. */
const NEAR_PLANE = { mm: -85, sd: 12 }
/** The tape slants: a wrong height counts by its cosine, a wrong reach by its sine (bench, mean body). */
const SLANT = { down: 0.82, forward: 0.57 } as const
/** Apex further out than the side neck when no front photo says it: mean and spread (bench), mm. */
const USUAL_OUT = { mm: 24, sd: 10 }
/**
 * The outline's foremost place is further forward than the mean of both apexes when she is turned a
 * little, and the back line behind the neck reads a little far back: mean and spread (bench), mm.
 */
const REACHES_TOO_FAR = { mm: 14, sd: 5 }
/** The same of a neck marked by a dot: what the far apex shows before the near one. */
const OUTLINE_TOO_FAR = { mm: 6, sd: 6 }
/** Seen from the side a dot on the apex shows only its near half: mean over 26 rendered bodies. */
const APEX_DOT_BACK = { mm: 4.7, down: 2, sd: 1 }
/**
 * With the arm lifted forward to free the bust the side neck point slides back and down; mean and
 * spread over 16 rendered bodies with and without the lift, mm.
 */
const LIFTED = { back: 8.7, down: 7.9, sd: 1.3 }
const NOT_LIFTED = { back: 0, down: 0, sd: 0 }
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
  const { points, facing } = found.reading
  const dot = left.ok ? points.apexLeft : points.apexRight
  const apex = markedByHer(dot) && dot ? dot : found.at.bustLevel
  const plane = neck.by === 'dot' ? NEAR_PLANE : SIDE_PLANE
  const scale = scaleIn(found.reading, plane, (neck.at.y + apex.at.y) / 2)
  const lift = neck.by === 'dot' && armLifted(found.reading) ? LIFTED : NOT_LIFTED
  const seen =
    apex.by === 'dot'
      ? { mm: -APEX_DOT_BACK.mm, sd: APEX_DOT_BACK.sd }
      : markedByHer(neck)
        ? OUTLINE_TOO_FAR
        : REACHES_TOO_FAR
  const less = apex.by === 'hand' && neck.by === 'hand' ? { mm: 0, sd: 0 } : seen
  const reach = (apex.at.x - neck.at.x) * facing - (less.mm + lift.back) / scale.mmPerPx
  const down = lift.down - (apex.by === 'dot' ? APEX_DOT_BACK.down : 0)
  const px = Math.hypot(reach, apex.at.y - neck.at.y + down / scale.mmPerPx)
  const sdPx = SLANT.down * Math.hypot(apex.sdPx, neck.sdPx)
  const basis = basisOf('side', scale, 'between', neck, apex)
  const ownSd = Math.hypot(SLANT.forward * less.sd, lift.sd)
  const inPlane = byItself(wayOf(px, sdPx, scale, basis, ownSd))
  const out = outward(readings) ?? USUAL_OUT
  const value = Math.hypot(inPlane.value, out.mm) + CURVE_ADDS.mm
  const sd = Math.hypot(inPlane.sd, (out.mm / value) * out.sd, CURVE_ADDS.sd)
  return together([{ ok: true, way: { value, sd, byDepth: 0, basis } }])
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
  const { reading } = found
  const chest = scaleIn(reading, behindIn(reading, 'apexes'), apexLeft.at.y)
  const neck = scaleIn(reading, behindIn(reading, 'shoulders'), sideNeckLeft.at.y)
  const apart = (a: PlacedPoint, b: PlacedPoint): number => Math.abs(a.at.x - b.at.x) / 2
  const mm =
    apart(apexLeft, apexRight) * chest.mmPerPx - apart(sideNeckLeft, sideNeckRight) * neck.mmPerPx
  return { mm, sd: Math.hypot(apexLeft.sdPx, sideNeckLeft.sdPx) * chest.mmPerPx }
}

/** The near wrist higher than the shoulders. */
function armLifted({ person, facing }: ViewReading): boolean {
  if (!person.ok) return false
  const { left_wrist, right_wrist, left_shoulder, right_shoulder } = person.joints
  const [wrist, shoulder] =
    facing === -1 ? [left_wrist, left_shoulder] : [right_wrist, right_shoulder]
  return wrist !== undefined && shoulder !== undefined && wrist.at.y < shoulder.at.y
}

function never(): never {
  throw new Error('side neck to apex: neither side neck point was found after one was')
}

/**
 * Waist down to the level of the hip girth, on the skin at the side: the height the side photo shows,
 * and how far the hip stands out beyond the waist at each side.
 */
import type { EstimateOutcome } from '../../measurements/estimate.ts'
import { bodyFrame } from '../frame.ts'
import { hipLevelByDot } from '../hip-by-dot.ts'
import { markedByHer, type Readings } from '../reading.ts'
import { basisOf, byItself, pointsOf, scaleIn, together, wayOf } from './scene.ts'

const SIDE_PLANE = { mm: 0, sd: 8 }
/** The level of the hip strays by this, in torsos: half the hindmost place, half the usual one (bench). */
const HIP_LEVEL_SD = 0.022
/** Tape over the hip's curve against the straight slant; common practice, no source. mm. */
const CURVE_ADDS = { mm: 2, sd: 2 }

export function waistToHip(
  readings: Readings,
  waistBreadth: EstimateOutcome,
  hipBreadth: EstimateOutcome,
): EstimateOutcome {
  const found = pointsOf(readings, 'side', ['waistBack', 'hipBack'])
  if (!found.ok) return found
  const { waistBack, hipBack } = found.at
  const { person } = found.reading
  const torso = (person.ok && bodyFrame(person.joints)?.torso) || 0
  const scale = scaleIn(found.reading, SIDE_PLANE, (waistBack.at.y + hipBack.at.y) / 2)
  const usual = hipLevelByDot(readings)?.sdPx ?? HIP_LEVEL_SD * torso
  const level = markedByHer(hipBack) ? hipBack.sdPx : usual
  const basis = basisOf('side', scale, 'between', waistBack, hipBack)
  const down = wayOf(
    hipBack.at.y - waistBack.at.y,
    Math.hypot(waistBack.sdPx, level),
    scale,
    basis,
    CURVE_ADDS.sd,
  )
  const flare =
    waistBreadth.ok && hipBreadth.ok
      ? Math.max(0, hipBreadth.estimate.value - waistBreadth.estimate.value) / 2
      : 0
  const value = Math.hypot(down.value, flare) + CURVE_ADDS.mm
  return together([{ ok: true, way: byItself({ ...down, value }) }])
}

/**
 * Side neck over the apex to the waist: the tape to the apex, then straight down to the cord. Where
 * the bust level lies moves length from one part to the other and not the whole.
 */
import type { EstimateOutcome } from '../../measurements/estimate.ts'
import { mm } from '../../units/length.ts'
import type { PlacedPoint, PointName, Readings } from '../reading.ts'
import { basisOfAll, noteBasis } from '../seen.ts'
import { NINE_IN_TEN } from './scene.ts'
import { sideNeckToApex } from './side-neck-to-apex.ts'
import { waistToBustLevel } from './waist-to-bust-level.ts'

/**
 * From the apex to the front of the waist under it the tape runs back as well as down, and over the
 * fold below the breast: longer than the height by this share and this much. Straight line through
 * 16 rendered bodies, truth alone; it leaves the spread.
 */
const DOWN = { share: 0.773, mm: 51.7, sd: 7.1 } as const

export function sideNeckOverApexToWaist(readings: Readings): EstimateOutcome {
  const upper = sideNeckToApex(readings)
  const lower = waistToBustLevel(readings)
  if (!upper.ok) return upper
  if (!lower.ok) return lower
  const sure = withSureLevel(readings)
  const [a, b] = [sideNeckToApex(sure), waistToBustLevel(sure)]
  if (!a.ok || !b.ok) throw new Error('over the apex: a part was lost when its level was made sure')
  const value = upper.estimate.value + DOWN.share * lower.estimate.value + DOWN.mm
  const pm90 = Math.hypot(a.estimate.pm90, b.estimate.pm90, NINE_IN_TEN * DOWN.sd)
  const basis = basisOfAll(upper.estimate.basis, noteBasis('thenDown'))
  return { ok: true, estimate: { value: mm(value), pm90: mm(pm90), basis } }
}
const LEVELS = ['bustLevel', 'apexLeft', 'apexRight', 'bustLeft', 'bustRight'] as const

/** The readings as if the bust level were exact: what is left of the ± is the ends' and the scale's. */
function withSureLevel(readings: Readings): Readings {
  const sure = Object.entries(readings).map(([view, reading]) => {
    const points: Partial<Record<PointName, PlacedPoint>> = { ...reading.points }
    for (const name of LEVELS) {
      const point = points[name]
      if (point) points[name] = { ...point, sdPx: 0 }
    }
    return [view, { ...reading, points }] as const
  })
  return Object.fromEntries(sure)
}

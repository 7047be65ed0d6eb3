/**
 * Apex to apex, straight. On plain cloth the camera does not see the apexes: until she drags them
 * they lie where they usually do for the breadth, and the ± says so.
 */
import type { EstimateOutcome } from '../../measurements/estimate.ts'
import type { Readings } from '../reading.ts'
import { behindIn } from '../scale.ts'
import { basisOf, pointsOf, scaleIn, together, wayOf } from './scene.ts'

/**
 * A dot on an apex is seen more from its inner side, so the middles of what is seen lie closer
 * together: mean over 26 rendered bodies, sd 0.5 mm, dots of 19 mm. A flat sticker may differ.
 */
const DOTS_SHORT_MM = 3.8

export function apexSpacing(readings: Readings): EstimateOutcome {
  const found = pointsOf(readings, 'front', ['apexLeft', 'apexRight'])
  if (!found.ok) return found
  const { apexLeft, apexRight } = found.at
  const scale = scaleIn(found.reading, behindIn(found.reading, 'apexes'), apexLeft.at.y)
  const px = Math.hypot(apexLeft.at.x - apexRight.at.x, apexLeft.at.y - apexRight.at.y)
  const sdPx = Math.hypot(apexLeft.sdPx, apexRight.sdPx)
  const way = wayOf(px, sdPx, scale, basisOf('front', scale, 'at', apexLeft))
  const dots = apexLeft.by === 'dot' && apexRight.by === 'dot'
  return together([{ ok: true, way: dots ? { ...way, value: way.value + DOTS_SHORT_MM } : way }])
}

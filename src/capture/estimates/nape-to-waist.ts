/**
 * Nape to waist, tape taut over the back. From the side along the back line of the outline; from the
 * back as the straight distance plus what the back's curve adds.
 */
import type { EstimateOutcome } from '../../measurements/estimate.ts'
import { distance, type Point } from '../../geometry/point.ts'
import { markedByHer, type Readings, type ViewReading } from '../reading.ts'
import { behindIn } from '../scale.ts'
import type { Reach } from '../relief.ts'
import { basisOf, byItself, pointsOf, scaleIn, together, wayOf, type WayOutcome } from './scene.ts'

/** Seen from the side the back line lies in the middle plane. */
const SIDE_PLANE = { mm: 0, sd: 5 }
/**
 * The outline of the back is that of the shoulder blades; the tape lies between them. Of what the
 * outline's curve adds to the straight line, the tape takes this share; mean and spread, bench.
 */
const OF_CURVE = { share: 0.5, sd: 0.25 }
/** Tape over the curve against the straight vertical: mean and spread over the bench's bodies, mm. */
const CURVE_ADDS = { mm: 8.6, sd: 3.8 }

/**
 * What side and back photo get wrong alike, mm. The side photo has the nape from the back line, the back
 * photo from the joints, so this is little: the covariance of their errors over 14 sheet sets is 3.8
 * squared, with one body left out up to 5.6 squared. It is a part of what either claims, not beside it.
 */
const NAPE_IN_COMMON_SD = 5.6

export function napeToWaist(readings: Readings): EstimateOutcome {
  const placed = [readings.side?.points.nape, readings.back?.points.nape]
  const ways = [bySide(readings), byBack(readings)]
  const sds = ways.flatMap((one) => (one.ok ? [one.way.sd] : []))
  if (sds.length < ways.length || placed.some(markedByHer)) return together(ways)
  // Of the surer photo no more than half the variance.
  const common = Math.min(NAPE_IN_COMMON_SD, Math.min(...sds) / Math.SQRT2)
  const byItsPhoto = ways.map((one): WayOutcome => {
    if (!one.ok) return one
    return { ok: true, way: { ...one.way, sd: Math.sqrt(one.way.sd ** 2 - common ** 2) } }
  })
  return together(byItsPhoto, common)
}

function bySide(readings: Readings): WayOutcome {
  const found = pointsOf(readings, 'side', ['nape', 'waistBack'])
  if (!found.ok) return found
  const { nape, waistBack } = found.at
  const scale = scaleIn(found.reading, SIDE_PLANE, (nape.at.y + waistBack.at.y) / 2)
  const straight = distance(nape.at, waistBack.at)
  const curve = tapeLength(found.reading, nape.at, waistBack.at) - straight
  const px = straight + OF_CURVE.share * curve
  const ownSd = OF_CURVE.sd * curve * scale.mmPerPx
  const basis = basisOf('side', scale, 'alongBack', waistBack)
  const sdPx = Math.hypot(nape.sdPx, waistBack.sdPx)
  return { ok: true, way: byItself(wayOf(px, sdPx, scale, basis, ownSd)) }
}

function byBack(readings: Readings): WayOutcome {
  const found = pointsOf(readings, 'back', ['nape', 'waistBack'])
  if (!found.ok) return found
  const { nape, waistBack } = found.at
  const scale = scaleIn(found.reading, backSurface(found.reading), (nape.at.y + waistBack.at.y) / 2)
  const basis = basisOf('back', scale, 'straightDown', waistBack)
  const sdPx = Math.hypot(nape.sdPx, waistBack.sdPx)
  const way = wayOf(distance(nape.at, waistBack.at), sdPx, scale, basis, CURVE_ADDS.sd)
  return { ok: true, way: byItself({ ...way, value: way.value + CURVE_ADDS.mm }) }
}

/** Nape and waist together: what the photo shows between them lies in their middle. */
function backSurface(reading: ViewReading): Reach {
  const [nape, waist] = [behindIn(reading, 'nape'), behindIn(reading, 'waistBack')]
  return { mm: (nape.mm + waist.mm) / 2, sd: Math.hypot(nape.sd, waist.sd) / 2 }
}

/** A tape spans hollows: the outer hull of the back line between the two points, px. */
export function tapeLength(reading: ViewReading, from: Point, to: Point): number {
  const back = reading.facing === -1 ? 'right' : 'left'
  const inner = reading.outline
    .filter((row) => row.y + 0.5 > from.y && row.y + 0.5 < to.y)
    .map((row) => ({ x: row[back], y: row.y + 0.5 }))
  const outward = -reading.facing
  const hull: Point[] = []
  for (const p of [from, ...inner, to]) {
    for (;;) {
      const [a, b] = [hull.at(-2), hull.at(-1)]
      // b stays only when it lies outside the straight line from a to p.
      const keeps =
        !a || !b || ((b.x - a.x) * (p.y - a.y) - (b.y - a.y) * (p.x - a.x)) * outward > 0
      if (keeps) break
      hull.pop()
    }
    hull.push(p)
  }
  return hull.reduce((sum, p, k) => sum + (k === 0 ? 0 : distance(hull[k - 1] ?? p, p)), 0)
}

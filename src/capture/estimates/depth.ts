/** Depth of the trunk at bust, waist or hip: front line to back line of the side photo. */
import type { EstimateOutcome } from '../../measurements/estimate.ts'
import { markedByHer, type PointName, type Readings } from '../reading.ts'
import type { Level } from './breadth.ts'
import { basisOf, pointsOf, scaleIn, together, wayOf } from './scene.ts'

/** The middle line of her, seen from the side: half of a wrong middle. */
const SIDE_PLANE = { mm: 0, sd: 8 }
/**
 * The outline shows more than the depth in the middle: the far apex and the far buttock look past
 * the near one when she is turned by a few degrees. Mean and spread over the bench's bodies, mm.
 */
const SHOWS_MORE: Readonly<Record<Level, { mm: number; sd: number }>> = {
  bust: { mm: 11, sd: 4.5 },
  waist: { mm: 2, sd: 1.8 },
  hip: { mm: 4, sd: 4.5 },
}
/** At the level of dots, not of the foremost place: 197 mm between apexes turned by 2 degrees in the mean. */
const AT_DOTS = { mm: 7, sd: 4 }

export function depth(readings: Readings, level: Level): EstimateOutcome {
  const front: PointName = `${level}Front`
  const back: PointName = `${level}Back`
  const found = pointsOf(readings, 'side', [front, back])
  if (!found.ok) return found
  const [a, b] = [found.at[front], found.at[back]]
  const scale = scaleIn(found.reading, SIDE_PLANE, a.at.y)
  const basis = basisOf('side', scale, 'outlineAt', a)
  const byHand = markedByHer(a) && markedByHer(b)
  const byDots = level === 'bust' && a.by === 'lent'
  const more = byHand ? { mm: 0, sd: 0 } : byDots ? AT_DOTS : SHOWS_MORE[level]
  // At the waist the points' own sd is that of the level, which hardly moves the depth.
  const edges = level === 'waist' && !byHand ? 0 : Math.hypot(a.sdPx, b.sdPx)
  const way = wayOf(Math.abs(a.at.x - b.at.x), edges, scale, basis, more.sd)
  return together([{ ok: true, way: { ...way, value: way.value - more.mm } }])
}

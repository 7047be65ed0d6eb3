/** Breadth of the trunk at bust, waist or hip: edge to edge of the outline, from front and back. */
import type { EstimateOutcome } from '../../measurements/estimate.ts'
import { markedByHer, type PointName, type Readings } from '../reading.ts'
import { behindIn } from '../scale.ts'
import { basisOf, pointsOf, scaleIn, together, wayOf, type WayOutcome } from './scene.ts'

export type Level = 'bust' | 'waist' | 'hip'

/** An edge strays by this, px (bench): least where nothing lies beside the trunk. */
const EDGE_SD_PX: Readonly<Record<Level, number>> = { bust: 1.6, waist: 0.6, hip: 1.4 }
/** Breadth gained or lost per unit of wrong level; bust and hip slope, the waist is flat (bench). */
const SLOPE: Readonly<Record<Level, number>> = { bust: 0.25, waist: 0.3, hip: 0.35 }

export function breadth(readings: Readings, level: Level): EstimateOutcome {
  return together([byView(readings, level, 'front'), byView(readings, level, 'back')])
}

function byView(readings: Readings, level: Level, view: 'front' | 'back'): WayOutcome {
  const left: PointName = `${level}Left`
  const right: PointName = `${level}Right`
  const found = pointsOf(readings, view, [left, right])
  if (!found.ok) return found
  const [a, b] = [found.at[left], found.at[right]]
  const scale = scaleIn(found.reading, behindIn(found.reading, `${level}Edge`), a.at.y)
  const byHand = markedByHer(a) && markedByHer(b)
  const edges = byHand ? Math.hypot(a.sdPx, b.sdPx) : EDGE_SD_PX[level] * Math.SQRT2
  const levels = byHand ? 0 : SLOPE[level] * Math.max(a.sdPx, b.sdPx)
  const basis = basisOf(view, scale, `outline at ${a.from}`)
  const px = Math.abs(a.at.x - b.at.x)
  return { ok: true, way: wayOf(px, Math.hypot(edges, levels), scale, basis) }
}

/** Breadth of the trunk at bust, waist or hip: edge to edge of the outline, from front and back. */
import type { EstimateOutcome } from '../../measurements/estimate.ts'
import { rowAt } from '../outline.ts'
import { markedByHer, type PointName, type Readings, type ViewReading } from '../reading.ts'
import { behindIn } from '../scale.ts'
import { basisOf, pointsOf, scaleIn, together, wayOf, type WayOutcome } from './scene.ts'

export type Level = 'bust' | 'waist' | 'hip'

/**
 * Both edges of a breadth together stray by this, px, beside what a wrong level does: 96 photos of the
 * bench. `joined`: where an arm lies on the trunk its edge is carried on from below.
 */
const EDGES_SD_PX: Readonly<Record<Level | 'joined', number>> = {
  bust: 1.6,
  waist: 0.9,
  hip: 1.1,
  joined: 2.6,
}

export function breadth(readings: Readings, level: Level): EstimateOutcome {
  const ways = [byView(readings, level, 'front'), byView(readings, level, 'back')]
  // Both photos take the level from the same place, so what a wrong one does is common to them.
  const wrong = ways.flatMap((one) => (one.ok ? [one.byLevel] : []))
  return together(ways, wrong.length > 0 ? Math.min(...wrong) : 0)
}

type AtLevel = WayOutcome & { readonly byLevel: number }

function byView(readings: Readings, level: Level, view: 'front' | 'back'): AtLevel {
  const left: PointName = `${level}Left`
  const right: PointName = `${level}Right`
  const found = pointsOf(readings, view, [left, right])
  if (!found.ok) return { ...found, byLevel: 0 }
  const { reading } = found
  const [a, b] = [found.at[left], found.at[right]]
  const scale = scaleIn(reading, behindIn(reading, `${level}Edge`), a.at.y)
  const byHand = markedByHer(a) && markedByHer(b)
  const joined = reading.trunkFrom !== undefined && a.at.y < reading.trunkFrom
  const edges = byHand
    ? Math.hypot(a.sdPx, b.sdPx)
    : EDGES_SD_PX[joined && level === 'bust' ? 'joined' : level]
  const basis = basisOf(view, scale, `outline at ${a.from}`)
  const way = wayOf(Math.abs(a.at.x - b.at.x), edges, scale, basis)
  const byLevel = byHand ? 0 : changeOver(reading, a.at.y, Math.max(a.sdPx, b.sdPx))
  return { ok: true, way, byLevel: byLevel * scale.mmPerPx }
}

/** By how much the outline's width changes when the level is wrong by one standard deviation, px. */
function changeOver({ outline }: ViewReading, y: number, sdPx: number): number {
  const [above, below] = [rowAt(outline, y - 0.5 - sdPx), rowAt(outline, y - 0.5 + sdPx)]
  if (!above || !below) return 0
  return Math.abs(below.right - below.left - (above.right - above.left)) / 2
}

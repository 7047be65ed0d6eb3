/** Breadth of the trunk at bust, waist or hip: edge to edge of the outline, from front and back. */
import type { EstimateOutcome } from '../../measurements/estimate.ts'
import { rowAt } from '../outline.ts'
import { markedByHer, type PointName, type Readings, type ViewReading } from '../reading.ts'
import { behindIn } from '../scale.ts'
import { basisOf, pointsOf, scaleIn, together, wayOf, type WayOutcome } from './scene.ts'

export type Level = 'bust' | 'waist' | 'hip'

/**
 * Both edges of a breadth together stray by this, px, beside what a wrong level does: the outline's width
 * at the true level against the true width, 64 photos of 16 bodies. Bust 1.50 (1.2 to 1.6 with one body
 * left out), waist 0.66 (0.58 to 0.68), hip 1.04 (0.92 to 1.06). `joined`: where an arm lies on the trunk
 * its edge is carried on from below; nine photos, so unsure.
 */
const EDGES_SD_PX: Readonly<Record<Level | 'joined', number>> = {
  bust: 1.5,
  waist: 0.7,
  hip: 1.1,
  joined: 4.6,
}

export function breadth(readings: Readings, level: Level): EstimateOutcome {
  const ways = [byView(readings, level, 'front'), byView(readings, level, 'back')]
  const good = ways.flatMap((one) => (one.ok ? [one] : []))
  // Both photos take the level from the same place: what the surer of the two gets wrong, both do.
  const slope = good.reduce((sum, { slope }) => sum + slope, 0) / Math.max(1, good.length)
  const least = Math.min(...good.map(({ levelSd }) => levelSd))
  const own = ways.map((one): WayOutcome => {
    if (!one.ok) return one
    const alone = slope * Math.sqrt(one.levelSd ** 2 - least ** 2)
    return { ok: true, way: { ...one.way, sd: Math.hypot(one.way.sd, alone) } }
  })
  return together(own, good.length > 0 ? slope * least : 0)
}

/** `slope`: change of the breadth for each mm of height; `levelSd` mm. */
type AtLevel =
  | (Extract<WayOutcome, { ok: true }> & { readonly slope: number; readonly levelSd: number })
  | Extract<WayOutcome, { ok: false }>

function byView(readings: Readings, level: Level, view: 'front' | 'back'): AtLevel {
  const left: PointName = `${level}Left`
  const right: PointName = `${level}Right`
  const found = pointsOf(readings, view, [left, right])
  if (!found.ok) return found
  const { reading } = found
  const [a, b] = [found.at[left], found.at[right]]
  const scale = scaleIn(reading, behindIn(reading, `${level}Edge`), a.at.y)
  const byHand = markedByHer(a) && markedByHer(b)
  const joined = reading.trunkFrom !== undefined && a.at.y < reading.trunkFrom
  const edges = byHand
    ? Math.hypot(a.sdPx, b.sdPx)
    : EDGES_SD_PX[joined && level === 'bust' ? 'joined' : level]
  const basis = basisOf(view, scale, 'outlineAt', a)
  const way = wayOf(Math.abs(a.at.x - b.at.x), edges, scale, basis)
  const levelPx = byHand ? 0 : Math.max(a.sdPx, b.sdPx)
  const slope = slopeAt(reading, a.at.y, levelPx)
  return { ok: true, way, slope, levelSd: levelPx * scale.mmPerPx }
}

/** Twice the bench's mean slope at the hip, 0.5; steeper is a hand or a ragged edge. */
const STEEPEST = 1

/**
 * How fast the outline's width changes with the height, over one standard deviation of the level to
 * each side, root mean square: at the widest or narrowest level both sides change it the same way.
 */
function slopeAt({ outline }: ViewReading, y: number, sdPx: number): number {
  const rows = [-sdPx, 0, sdPx].map((by) => rowAt(outline, y - 0.5 + by))
  const [above, here, below] = rows.map((row) => row && row.right - row.left)
  if (above === undefined || here === undefined || below === undefined || sdPx === 0) return 0
  const seen = Math.hypot(above - here, below - here) / Math.SQRT2 / sdPx
  return Math.min(seen, STEEPEST)
}

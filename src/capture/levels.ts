/**
 * Carries levels from the photograph that shows them to those that do not: the bust level is seen
 * from the side, an indented waist from front or back. Heights in two photographs are matched
 * between anchors both show: ears, shoulder, hip and knee joints, and the waist once it is known.
 * A point she dragged is never moved.
 */
import { apexesByLight } from './apex-by-light.ts'
import { bustByDots, edgeByDots } from './bust-by-dots.ts'
import { bodyFrame, type BodyFrame } from './frame.ts'
import { hipBelowWaist, hipByDot } from './hip-by-dot.ts'
import { rowAt } from './outline.ts'
import { apexes, placeAcross } from './points-front-back.ts'
import type { PlacedPoint, PointName, Readings, View, ViewReading } from './reading.ts'
import { markedByHer, VIEWS } from './reading.ts'
import type { FromId } from './seen.ts'

/**
 * Where a level carried from the side photo really lies, and how far it strays, in torsos (shoulder
 * to hip joint): front and back surfaces are nearer to the camera than the anchors. Mean and
 * standard deviation over our bench (models-notes/blazepose.md).
 */
const BY_WAIST = {
  front: { bust: { shift: 0.006, sd: 0.012 }, hip: { shift: -0.012, sd: 0.013 } },
  back: { bust: { shift: -0.011, sd: 0.014 }, hip: { shift: 0.003, sd: 0.011 } },
} as const
const BY_JOINTS = {
  front: { bust: { shift: -0.036, sd: 0.016 }, hip: { shift: -0.009, sd: 0.028 } },
  back: { bust: { shift: -0.017, sd: 0.018 }, hip: { shift: 0.004, sd: 0.028 } },
} as const
/** A waist carried to another view by joints alone: side against front or back, and its spread. */
const WAIST_SHIFT = { front: -0.016, side: 0, back: -0.013 } as const
const WAIST_SD = 0.009
/** The apexes are seen this much higher than the bust line at the sides, in torsos (same bench). */
const APEX_ABOVE_BUST = 0.015
/**
 * Bust and hip level as the side photo gives them stray by this, in torsos: the hindmost place of the
 * outline lies 19 mm below the level of the greatest seat (sd 13) on the bench, at it on another make.
 */
const LENDER_SD = { bust: 0.014, hip: 0.02 } as const

type Points = Partial<Record<PointName, PlacedPoint>>

/** Every reading with the levels the other photographs lend it. Readings of no person stay as they are. */
export function shareLevels(readings: Readings): Readings {
  const withWaist = {
    ...readings,
    ...mapped(readings, (view, own) => lendWaist(view, own, readings)),
  }
  const side = withWaist.side && hipByDot(bustByDots(withWaist.side, withWaist), withWaist)
  const withBust = side ? { ...withWaist, side } : withWaist
  return { ...withBust, ...mapped(withBust, (view, own) => lendBustAndHip(view, own, withBust)) }
}

function mapped(
  readings: Readings,
  change: (view: View, reading: ViewReading) => ViewReading,
): Readings {
  const changed = VIEWS.flatMap((view) => {
    const reading = readings[view]
    return reading?.person.ok ? [[view, change(view, reading)] as const] : []
  })
  return Object.fromEntries(changed)
}

const frameOf = (reading: ViewReading): BodyFrame | undefined =>
  reading.person.ok ? bodyFrame(reading.person.joints) : undefined

const seen = (point: PlacedPoint | undefined): boolean =>
  point?.by === 'camera' || markedByHer(point)

/** The waist as one height of a view; from front and back the middle of its two ends. */
function waistOf({ view, points }: ViewReading): { y: number; sdPx: number } | undefined {
  const names = view === 'side' ? (['waistBack'] as const) : (['waistLeft', 'waistRight'] as const)
  const found = names.flatMap((name) => {
    const point = points[name]
    return point && seen(point) ? [point] : []
  })
  if (found.length < names.length) return undefined
  const y = found.reduce((sum, point) => sum + point.at.y, 0) / found.length
  return { y, sdPx: Math.max(...found.map((point) => point.sdPx)) }
}

function lendWaist(view: View, own: ViewReading, readings: Readings): ViewReading {
  const frame = frameOf(own)
  if (!frame || waistOf(own)) return own
  const lent = VIEWS.flatMap((other) => {
    const reading = other === view ? undefined : readings[other]
    const from = reading && frameOf(reading)
    const waist = reading && waistOf(reading)
    if (!from || !waist) return []
    const y =
      (carried(waist.y, [from.shoulder.y, from.hip.y], [frame.shoulder.y, frame.hip.y]) +
        carried(waist.y, [from.ear.y, from.knee.y], [frame.ear.y, frame.knee.y])) /
      2
    const shift = (WAIST_SHIFT[view] - WAIST_SHIFT[other]) * frame.torso
    const sdPx = Math.hypot(WAIST_SD * frame.torso, (waist.sdPx * frame.torso) / from.torso)
    return [{ y: y + shift, sdPx, from: WAIST_IN[other] }]
  })
  const best = lent.sort((a, b) => a.sdPx - b.sdPx)[0]
  if (!best) return own
  const how = { sdPx: best.sdPx, from: best.from, by: 'lent' } as const
  return placed(
    own,
    best.y,
    how,
    view === 'side' ? ['waistFront', 'waistBack'] : WAIST_ACROSS[view],
  )
}

const WAIST_IN: Readonly<Record<View, FromId>> = {
  front: 'waistInFront',
  side: 'waistInSide',
  back: 'waistInBack',
}

const WAIST_ACROSS = {
  front: ['waistLeft', 'waistRight', 'waistFront'],
  back: ['waistLeft', 'waistRight', 'waistBack'],
} as const

/** Puts the named points on the outline at one height, unless she put them herself. */
function placed(
  reading: ViewReading,
  y: number,
  how: Omit<PlacedPoint, 'at'>,
  names: readonly PointName[],
): ViewReading {
  const row = rowAt(reading.outline, y - 0.5)
  if (!row) return reading
  const points: Points = { ...reading.points }
  const missing = { ...reading.missing }
  const across: Points = {}
  placeAcross(across, reading.outline, 'waist', y, reading.view === 'front' ? 1 : -1, how)
  const [front, back] = reading.facing === -1 ? [row.left, row.right] : [row.right, row.left]
  const side: Points = {
    waistFront: { at: { x: front, y }, ...how },
    waistBack: { at: { x: back, y }, ...how },
  }
  const middle = { at: { x: (row.left + row.right) / 2, y }, ...how }
  const centre: Points = { waistFront: middle, waistBack: middle }
  for (const name of names) {
    const point = across[name] && reading.view !== 'side' ? across[name] : undefined
    const chosen = point ?? (reading.view === 'side' ? side[name] : centre[name])
    if (!chosen || markedByHer(points[name])) continue
    points[name] = chosen
    delete missing[name]
  }
  return { ...reading, points, missing }
}

function lendBustAndHip(view: View, own: ViewReading, readings: Readings): ViewReading {
  const side = readings.side
  const frame = frameOf(own)
  const from = side && frameOf(side)
  if (view === 'side' || !side || !frame || !from) return own
  const waists = [waistOf(side), waistOf(own)] as const
  const [theirs, ours] = waists
  const known = theirs !== undefined && ours !== undefined
  const points: Points = { ...own.points }
  const herLeft = view === 'front' ? 1 : -1
  const lend = (what: 'bust' | 'hip', source: PlacedPoint | undefined): void => {
    // The side photo has its bust level from the dots of the front one: as good as seen.
    if (!source || (!seen(source) && source.by !== 'lent')) return
    const joint = what === 'bust' ? 'ear' : 'knee'
    const y = known
      ? carried(source.at.y, [from[joint].y, theirs.y], [frame[joint].y, ours.y])
      : carried(source.at.y, [from.shoulder.y, from.hip.y], [frame.shoulder.y, frame.hip.y])
    const { shift, sd } = (known ? BY_WAIST : BY_JOINTS)[view][what]
    const dotted = what === 'hip' && known && !markedByHer(source)
    const byDot = dotted ? hipBelowWaist(own, readings, { side: theirs, own: ours }) : undefined
    const height = byDot ?? {
      y: y + shift * frame.torso,
      sdPx: Math.hypot(sd, LENDER_SD[what]) * frame.torso,
    }
    const kept: Points = {}
    for (const name of [`${what}Left`, `${what}Right`] as const) {
      const own = points[name]
      if (own && markedByHer(own)) kept[name] = own
    }
    placeAcross(points, own.outline, what, height.y, herLeft, {
      sdPx: height.sdPx,
      from: 'levelInSide' satisfies FromId,
      by: 'lent',
    })
    Object.assign(points, kept)
  }
  const edge = view === 'front' ? edgeByDots(own) : undefined
  if (edge === undefined) lend('bust', side.points.bustLevel)
  else if (!markedByHer(points.bustLeft)) {
    const { y, ...how } = edge
    placeAcross(points, own.outline, 'bust', y, herLeft, how)
  }
  lend('hip', side.points.hipBack)
  if (view === 'front')
    for (const [name, apex] of Object.entries(apexes(points)) as [PointName, PlacedPoint][]) {
      const y = apex.at.y - APEX_ABOVE_BUST * frame.torso
      if (!markedByHer(points[name])) points[name] = { ...apex, at: { x: apex.at.x, y } }
    }
  if (view === 'front') Object.assign(points, apexesByLight(own, points, frame.torso))
  return { ...own, points }
}

/** A height between (or beyond) two anchors of one photograph, found between the same two of another. */
function carried(
  y: number,
  [a, b]: readonly [number, number],
  [toA, toB]: readonly [number, number],
): number {
  return toA + ((y - a) / (b - a)) * (toB - toA)
}

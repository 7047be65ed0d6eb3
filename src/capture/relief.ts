/**
 * How far forward each place of her lies, from the side photo: what is nearer to the camera looks
 * longer in front and back photos. Counted from the middle of the trunk at the waist, forward
 * positive, mm. Nothing here knows a usual body where the side photo shows her own.
 */
import { bodyFrame } from './frame.ts'
import { aboveHand } from './front-line.ts'
import { rowAt } from './outline.ts'
import type { OutlineRow, PointName, ViewReading } from './reading.ts'

export const PLACES = [
  'bustEdge',
  'waistEdge',
  'hipEdge',
  'apexes',
  'shoulders',
  'nape',
  'waistFront',
  'waistBack',
] as const
export type Place = (typeof PLACES)[number]

/** A distance and its standard deviation, mm. */
export interface Reach {
  readonly mm: number
  readonly sd: number
}
export type Relief = Readonly<Record<Place, Reach>>

/** Without a side photo: mean and spread of 16 rendered bodies (truth alone), spreads widened by a half. */
export const USUAL_RELIEF: Relief = {
  bustEdge: { mm: -15, sd: 25 },
  waistEdge: { mm: -24, sd: 20 },
  hipEdge: { mm: -42, sd: 15 },
  apexes: { mm: 120, sd: 30 },
  shoulders: { mm: -32, sd: 35 },
  nape: { mm: -75, sd: 35 },
  waistFront: { mm: 102, sd: 35 },
  waistBack: { mm: -102, sd: 35 },
}

/**
 * Where the outermost edge of the trunk lies, as a share of its depth from front to back. 16 rendered
 * bodies: bust 0.60 (sd 0.12), waist 0.63 (0.07), hip 0.49 (0.07); a figure of another make 0.47, 0.50
 * and 0.46. Middle of the two makes; the spreads hold both.
 */
const EDGE_LIES: Readonly<Record<'bust' | 'waist' | 'hip', Reach>> = {
  bust: { mm: 0.55, sd: 0.12 },
  waist: { mm: 0.58, sd: 0.1 },
  hip: { mm: 0.48, sd: 0.08 },
}
/** The foremost place of the outline lies before the middle of both apexes when she is turned a little. */
const OUTLINE_BEFORE_APEX: Reach = { mm: 5, sd: 5 }
/** Side neck and shoulder points before the nape: 40 to 45 mm (sd 8) and 53 to 55 in the other make. */
const RIDGE_BEFORE_NAPE: Reach = { mm: 48, sd: 12 }
/** A place of the side outline is read, turned and scaled to about this, mm. */
const SEEN_SD = 6

/** Outward of a row on her front or back, px: larger is further from her middle. */
const outward = (side: ViewReading, to: 'front' | 'back') => {
  const left = (side.facing === -1) === (to === 'front')
  return (row: OutlineRow): number => (left ? -row.left : row.right)
}

/** The trunk's middle at the waist in the side photo, px across; guessed waists serve as well. */
function middleOf({ points }: ViewReading): { x: number; half: number; y: number } | undefined {
  const { waistFront, waistBack } = points
  if (!waistFront || !waistBack) return undefined
  const half = Math.abs(waistFront.at.x - waistBack.at.x) / 2
  return {
    x: (waistFront.at.x + waistBack.at.x) / 2,
    half,
    y: (waistFront.at.y + waistBack.at.y) / 2,
  }
}

/** @param mmPerPx of the side photo in her middle plane */
export function reliefOf(side: ViewReading | undefined, mmPerPx: number | undefined): Relief {
  const middle = side && middleOf(side)
  if (!side || !middle || mmPerPx === undefined) return USUAL_RELIEF
  const forward = (name: PointName): number | undefined => {
    const point = side.points[name]
    return point && (point.at.x - middle.x) * side.facing * mmPerPx
  }
  const edge = (level: 'bust' | 'waist' | 'hip'): Reach => {
    const [front, back] = [forward(`${level}Front`), forward(`${level}Back`)]
    if (front === undefined || back === undefined) return USUAL_RELIEF[`${level}Edge`]
    const { mm: share, sd } = EDGE_LIES[level]
    const depth = front - back
    return { mm: front - share * depth, sd: Math.hypot(sd * depth, SEEN_SD) }
  }
  const [apex, nape] = [forward('bustFront'), forward('nape')]
  const half = middle.half * mmPerPx
  return {
    bustEdge: edge('bust'),
    waistEdge: edge('waist'),
    hipEdge: edge('hip'),
    apexes: apex === undefined ? USUAL_RELIEF.apexes : less(apex, OUTLINE_BEFORE_APEX),
    shoulders:
      nape === undefined
        ? USUAL_RELIEF.shoulders
        : { mm: nape + RIDGE_BEFORE_NAPE.mm, sd: Math.hypot(RIDGE_BEFORE_NAPE.sd, SEEN_SD) },
    nape: nape === undefined ? USUAL_RELIEF.nape : { mm: nape, sd: SEEN_SD },
    waistFront: { mm: half, sd: SEEN_SD },
    waistBack: { mm: -half, sd: SEEN_SD },
  }
}

const less = (mm: number, { mm: by, sd }: Reach): Reach => ({
  mm: mm - by,
  sd: Math.hypot(sd, SEEN_SD),
})

/** Rows of a hung card above and below its middle, mm: the sheet folded across, a bank card upright. */
export interface Extent {
  readonly above: number
  readonly below: number
}
/** A hung card is read off the outline to this, mm; where a hand hides the lower part of it, to more. */
const [HUNG_SD, HIDDEN_SD] = [9, 12]
/** Less of the card's height than this in profile says nothing of where it hangs. */
const LEAST_SEEN = 0.3

/**
 * How far before the trunk's middle a card hung at waist or hip lies: it touches the furthest place
 * it covers, and leans on the body or hangs plumb from there; between the two, mm.
 * @param rows of a photo that shows this side of her in profile
 * @param waistY height of the waist in that photo, px
 * @param down card's middle below the waist, mm
 */
export function hungBefore(
  rows: readonly OutlineRow[],
  out: (row: OutlineRow) => number,
  middle: number,
  waistY: number,
  down: number,
  mmPerPx: number,
  { above, below }: Extent,
): Reach | undefined {
  const step = 5
  const seen: [number, number][] = []
  for (let mm = -above; mm <= below; mm += step) {
    const row = rowAt(rows, waistY + (down + mm) / mmPerPx)
    if (row) seen.push([mm, (out(row) - middle) * mmPerPx])
  }
  const whole = (above + below) / step
  if (seen.length < LEAST_SEEN * whole) return undefined
  const plumb = Math.max(...seen.map(([, u]) => u))
  let leaning = -Infinity
  for (const [a, u] of seen)
    for (const [b, v] of seen)
      if (a <= 0 && b >= 0) leaning = Math.max(leaning, a === b ? u : u + ((v - u) * -a) / (b - a))
  if (leaning === -Infinity) leaning = plumb
  const hidden = seen.length < whole ? HIDDEN_SD : 0
  return { mm: (leaning + plumb) / 2, sd: Math.hypot(HUNG_SD, hidden, (plumb - leaning) / 2) }
}

/** The same for a card at the front or back, from the side photo. */
export function hungAtFrontOrBack(
  side: ViewReading,
  mmPerPx: number,
  to: 'front' | 'back',
  down: number,
  extent: Extent,
): Reach | undefined {
  const middle = middleOf(side)
  const waist = side.points[to === 'front' ? 'waistFront' : 'waistBack']
  if (!middle || !waist) return undefined
  const out = outward(side, to)
  const from = out({ y: middle.y, left: middle.x, right: middle.x })
  // A hand or a shadow before the front line is no belly.
  const below = side.outline.filter(({ y }) => y >= waist.at.y)
  const torso = side.person.ok ? bodyFrame(side.person.joints)?.torso : undefined
  const free = torso === undefined ? Infinity : aboveHand(below, out, torso)
  const rows = side.outline.filter(({ y }) => y < free)
  return hungBefore(rows, out, from, waist.at.y, down, mmPerPx, extent)
}

/** For a card at her near side, from the front or back photo: half of what they show across. */
export function hungAtSide(
  across: ViewReading,
  mmPerPx: number,
  down: number,
  extent: Extent,
): Reach | undefined {
  const { waistLeft, waistRight } = across.points
  if (!waistLeft || !waistRight) return undefined
  const half = (row: OutlineRow): number => (row.right - row.left) / 2
  const y = (waistLeft.at.y + waistRight.at.y) / 2
  return hungBefore(across.outline, half, 0, y, down, mmPerPx, extent)
}

/**
 * One body before three cameras: each photograph has a scale of its own, and what all of them show
 * of her must come out equally long. That ties the scales together: a card held far from the body
 * is put right by the one that hangs on it. Lengths px, mm.
 */
import { bodyFrame } from './frame.ts'
import type { Mask } from './person.ts'
import { middle, type Joints } from './outline.ts'
import { markedByHer, VIEWS, type Readings, type View, type ViewReading } from './reading.ts'
import { scaleAt, type Tie } from './scale.ts'

/** Half of 0..255, as in outline.ts. */
const HALF = 127.5
/** The crown is looked for this far to each side of the ears, in torsos: a lifted hand is further. */
const CROWN_REACH = 0.06

/** The uppermost height of the head over the ears, px; undefined when the mask does not show it. */
export function crownOf(mask: Mask, joints: Joints): number | undefined {
  const [ear, frame] = [middle(joints, 'ear'), bodyFrame(joints)]
  if (!ear || !frame) return undefined
  const reach = CROWN_REACH * frame.torso
  const [from, to] = [Math.round(ear.x - reach), Math.round(ear.x + reach)]
  const value = (x: number, y: number): number => mask.data[y * mask.width + x] ?? 0
  for (let y = 0; y < ear.y && y < mask.height; y++) {
    for (let x = Math.max(0, from); x <= Math.min(mask.width - 1, to); x++) {
      const [above, here] = [y > 0 ? value(x, y - 1) : 0, value(x, y)]
      if (here > HALF) return y - 0.5 + (HALF - above) / (here - above)
    }
  }
  return undefined
}

/**
 * What two photographs can both show, longest trust first: crown to waist, crown to knee joints, in the
 * plane of the trunk's middle. Standard deviation of a single photo, as a share: 0.008 to 0.010 over 16
 * rendered bodies, three photos each in two sets, the mean of a view never further than 0.006 from the
 * others (true scales); a bun of hair looked 0.017 too near from behind on a figure of another make.
 */
const SHOWN_SD = { waist: 0.012, knee: 0.012 } as const

/** A waist less sure than this share of its breadth, a narrowest level, ties nothing. */
const WAIST_SD_SHARE = 0.02

/** The readings with the scale of each drawn towards what all of them together say. */
export function tied(readings: Readings): Readings {
  const untied = VIEWS.flatMap((view) => readings[view] ?? []).map(({ tie: _, ...rest }) => rest)
  const usable = untied.filter(({ card, person }) => card.ok && person.ok)
  const to = usable.every((reading) => waistOf(reading) !== undefined) ? 'waist' : 'knee'
  const seen = usable.flatMap((reading) => {
    const px = shownPx(reading, to)
    const scale = scaleAt(reading, 0, 0)
    if (px === undefined || !scale) return []
    const y = (reading.crown ?? 0) + px / 2
    return [{ view: reading.view, y, height: px * scale.mmPerPx, own: scale.sdShare }]
  })
  const ties = new Map<View, Tie>()
  if (seen.length > 1)
    for (const { view, y, height, own } of seen) {
      const others = seen.filter((other) => other.view !== view)
      const weight = (other: (typeof seen)[number]): number =>
        1 / (other.own ** 2 + SHOWN_SD[to] ** 2)
      const weights = others.reduce((sum, other) => sum + weight(other), 0)
      const mean = others.reduce((sum, other) => sum + other.height * weight(other), 0) / weights
      // What the others say of this photo's scale, beside what its own card says.
      const theirs = Math.hypot(1 / Math.sqrt(weights), SHOWN_SD[to])
      const share = own ** 2 / (own ** 2 + theirs ** 2)
      const sdShare = (own * theirs) / Math.hypot(own, theirs)
      ties.set(view, { factor: 1 + share * (mean / height - 1), sdShare, y })
    }
  const known = untied.map((reading) => {
    const tie = ties.get(reading.view)
    return [reading.view, tie ? { ...reading, tie } : reading] as const
  })
  return Object.fromEntries(known)
}

function shownPx(reading: ViewReading, to: 'waist' | 'knee'): number | undefined {
  if (reading.crown === undefined || !reading.person.ok) return undefined
  const end = to === 'waist' ? waistOf(reading) : middle(reading.person.joints, 'knee')?.y
  return end === undefined ? undefined : end - reading.crown
}

/** The waist where this photo itself shows it, at the sides of the trunk, px. */
function waistOf({ view, points }: ViewReading): number | undefined {
  const [a, b] =
    view === 'side' ? [points.waistFront, points.waistBack] : [points.waistLeft, points.waistRight]
  const most = WAIST_SD_SHARE * Math.abs((a?.at.x ?? 0) - (b?.at.x ?? 0))
  const clear = (point: typeof a): boolean =>
    point !== undefined && (point.by === 'camera' || markedByHer(point)) && point.sdPx <= most
  return a && b && clear(a) && clear(b) ? (a.at.y + b.at.y) / 2 : undefined
}

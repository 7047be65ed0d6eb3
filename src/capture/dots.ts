/**
 * The sticker dots she wears at the tape's points: which spot is which point. One hue is looked for
 * at a time; the hue whose spots lie where dots are worn wins, and fewer than two such spots are no
 * dots. Heights in torsos (shoulder to hip joints) below the shoulder joints, breadths in torsos from
 * the body's middle line.
 */
import type { Point } from '../geometry/point.ts'
import { blobsOf, coloursOf, standsOut, type Blob, type Window } from './dot-blobs.ts'
import type { BodyFrame } from './frame.ts'
import type { Mask } from './person.ts'
import type { Picture } from './picture.ts'
import type { PlacedPoint, PointName, View } from './reading.ts'
import type { FromId } from './seen.ts'

/** Diameter of the dots of our print pack, mm; stickers of 15 to 22 mm pass as well. */
export const DOT_MM = 19
const DOT_AREA = { least: 0.3, most: 1.7 } as const
/** A dot on a ridge is seen as a sliver; less than this share of it is noise. */
const SLIVER_SHARE = 0.15
/** More of one colour than this many dots is cloth. */
const MOST_DOTS = 25
/** Hues are tried in these steps; a dot's own shading stays within the spread. Degrees. */
const [HUE_TRIES, HUE_SPREAD] = [8, 16]
/** A whole dot is as full as an ellipse and no longer than this, long to short. */
const WHOLE = { fullness: 0.86, longest: 2.6 } as const
/** Fewer dots than this in a photograph are chance. */
const LEAST_DOTS = 2
/** Where a whole dot's middle lies, mm: half a pixel (241 rendered dots: 0.4 to 1 mm). */
const WHOLE_SD_MM = 0.8
/** Of what is missing to half a dot the middle strays by this, mm: half its radius. */
const UNSEEN_SD_MM = 5

/** The dot at the hip lies nearer to the camera than her joints, and is seen lower: 0.97 to 1.11 on the bench. */
const HIP_LOWEST = 1.2

interface Zone {
  readonly name: PointName
  /** From the middle line, towards her left (front, back) or forward (side), torsos. */
  readonly out: readonly [number, number]
  readonly down: readonly [number, number]
  /** On a ridge, or at the rim of the outline, a sliver is taken as well. */
  readonly ridge?: true
  /** Of several dots the uppermost, not the largest. */
  readonly upper?: true
}
const pair = (what: 'apex' | 'sideNeck' | 'shoulder', zone: Omit<Zone, 'name'>): Zone[] => [
  { ...zone, name: `${what}Left` },
  { ...zone, name: `${what}Right`, out: [-zone.out[1], -zone.out[0]] },
]
/** Wide zones: the colour does the finding. From front and back they do not meet. Common practice, no source. */
const RIDGES = [
  ...pair('sideNeck', { out: [0.07, 0.25], down: [-0.34, -0.02], ridge: true }),
  ...pair('shoulder', { out: [0.27, 0.52], down: [-0.22, 0.14] }),
]
const ZONES: Readonly<Record<'front' | 'back', readonly Zone[]>> = {
  front: [
    ...pair('apex', { out: [0.06, 0.42], down: [0.1, 0.6] }),
    { name: 'waistFront', out: [-0.13, 0.13], down: [0.4, 1] },
    ...RIDGES,
  ],
  back: [
    { name: 'nape', out: [-0.1, 0.1], down: [-0.4, 0.05] },
    { name: 'waistBack', out: [-0.13, 0.13], down: [0.4, 1] },
    ...pair('shoulder', { out: [0.27, 0.52], down: [-0.22, 0.14] }),
  ],
}
/** Of the near side. The side neck is the upper of the two dots between ear and armpit. */
const sideZones = (near: 'Left' | 'Right'): readonly Zone[] => [
  { name: `apex${near}`, out: [0.06, 0.6], down: [0.1, 0.6], ridge: true },
  { name: `sideNeck${near}`, out: [-0.3, 0.25], down: [-0.4, 0.12], upper: true },
  { name: `shoulder${near}`, out: [-0.3, 0.25], down: [-0.2, 0.3], upper: true },
  // A hand that hangs there is many dots large (DOT_AREA), and no dot is taken for less than whole.
  { name: `hip${near}`, out: [-0.25, 0.2], down: [0.85, HIP_LOWEST] },
]

export interface Dot {
  readonly at: Point
  /** How much of a dot seen face-on shows, 0 to 1. */
  readonly share: number
}
export type Dots = Readonly<Partial<Record<PointName, Dot>>>

/** @param mmPerPx where the body is, roughly; @param facing as in the reading */
export function findDots(
  view: View,
  picture: Picture,
  mask: Mask,
  frame: BodyFrame,
  mmPerPx: number,
  facing: -1 | 1,
): Dots {
  const near = facing === -1 ? 'Left' : 'Right'
  const zones = view === 'side' ? sideZones(near) : ZONES[view]
  const outward = view === 'side' ? facing : view === 'front' ? 1 : -1
  const dotPx = (Math.PI / 4) * (DOT_MM / mmPerPx) ** 2
  const size = {
    least: Math.max(4, SLIVER_SHARE * dotPx),
    most: DOT_AREA.most * dotPx,
    inAll: MOST_DOTS * dotPx,
  }
  const colours = coloursOf(picture, mask, windowOf(view, frame))
  let best: { dots: Dots; score: number } = { dots: {}, score: 0 }
  for (let hue = 0; hue < 360; hue += HUE_TRIES) {
    const blobs = blobsOf(colours, hue, HUE_SPREAD, size).filter((blob) => standsOut(picture, blob))
    if (blobs.length < LEAST_DOTS) continue
    const found = named(blobs, zones, frame, outward, dotPx)
    if (found.score > best.score) best = found
  }
  return best.dots
}

function windowOf(view: View, frame: BodyFrame): Window {
  const middle = (frame.shoulder.x + frame.hip.x) / 2
  const reach = 0.7 * frame.torso
  return {
    left: middle - reach,
    right: middle + reach,
    top: frame.level(-0.45),
    bottom: frame.level(view === 'side' ? HIP_LOWEST : 1.1),
  }
}

function named(
  blobs: readonly Blob[],
  zones: readonly Zone[],
  frame: BodyFrame,
  outward: 1 | -1,
  dotPx: number,
): { dots: Dots; score: number } {
  const taken = new Set<Blob>()
  const dots: Partial<Record<PointName, Dot>> = {}
  let [score, count] = [0, 0]
  for (const zone of zones) {
    const inside = blobs.filter((blob) => !taken.has(blob) && within(blob.at, zone, frame, outward))
    const whole = inside.filter((blob) => isWhole(blob, dotPx))
    // The one with the most of a dot; on a ridge a sliver when no whole dot is there.
    const [first] = ordered(whole.length > 0 || !zone.ridge ? whole : inside, zone)
    if (!first) continue
    taken.add(first)
    dots[zone.name] = { at: first.at, share: Math.min(1, first.areaPx / dotPx) }
    count += isWhole(first, dotPx) ? 1 : 0
    score += isWhole(first, dotPx) ? Math.min(1, first.areaPx / dotPx) : 0.1
  }
  // Spots all over are a print on the cloth, not dots.
  const stray = blobs.filter((blob) => isWhole(blob, dotPx)).length - count
  return count < LEAST_DOTS || stray > count ? { dots: {}, score: 0 } : { dots, score }
}

const ordered = (blobs: readonly Blob[], { upper }: Zone): Blob[] =>
  [...blobs].sort((a, b) => (upper ? a.at.y - b.at.y : b.areaPx - a.areaPx))

const isWhole = ({ areaPx, fullness, halfLong, halfShort }: Blob, dotPx: number): boolean =>
  areaPx >= DOT_AREA.least * dotPx &&
  fullness >= WHOLE.fullness &&
  halfLong <= WHOLE.longest * halfShort

function within(at: Point, zone: Zone, frame: BodyFrame, outward: 1 | -1): boolean {
  const { shoulder, hip, torso } = frame
  const down = (at.y - shoulder.y) / torso
  const middle = shoulder.x + (hip.x - shoulder.x) * Math.max(0, Math.min(1, down))
  const out = ((at.x - middle) * outward) / torso
  const holds = (value: number, [from, to]: readonly [number, number]): boolean =>
    value >= from && value <= to
  return holds(out, zone.out) && holds(down, zone.down)
}

const WORN: Readonly<Partial<Record<PointName, FromId>>> = {
  nape: 'dotNape',
  waistBack: 'dotWaist',
  waistFront: 'dotWaist',
}
const wornAt = (name: PointName): FromId =>
  WORN[name] ??
  (name.startsWith('apex')
    ? 'dotApex'
    : name.startsWith('sideNeck')
      ? 'dotSideNeck'
      : name.startsWith('hip')
        ? 'dotHip'
        : 'dotShoulder')

export function dotPoint(name: PointName, { at, share }: Dot, mmPerPx: number): PlacedPoint {
  const sdPx = Math.hypot(WHOLE_SD_MM, UNSEEN_SD_MM * 2 * Math.max(0, 0.5 - share)) / mmPerPx
  return { at, sdPx, from: wornAt(name), by: 'dot' }
}

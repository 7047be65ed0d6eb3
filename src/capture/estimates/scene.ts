/**
 * What every measure is computed from, and how a length and its ± are put together. An estimate's ±
 * holds nine times in ten.
 */
import type { EstimateOutcome } from '../../measurements/estimate.ts'
import { mm } from '../../units/length.ts'
import type { PlacedPoint, PointName, Readings, View, ViewReading } from '../reading.ts'
import { faultSaid, type FaultId } from '../fault.ts'
import { WITHOUT_CARD } from '../fault.words.ts'
import type { Reach } from '../relief.ts'
import { scaleAt, type Scale } from '../scale.ts'
import { basisOfAll, wayBasis, type RunId } from '../seen.ts'
import { NO_NUMBER_WORDS } from '../seen.words.ts'

/**
 * Nine in ten lie within this many of the standard deviations worked out here: counted over 48 sets of
 * three photos, all lengths but girths, 1.42 (1.38 to 1.47 with one body left out), rounded up. A normal
 * distribution would ask for 1.645, but a few large errors make the spreads and few are near them.
 */
export const NINE_IN_TEN = 1.5

/**
 * Now and then a point is misread, and its way lies off by several times what it claims. Common practice,
 * no source.
 */
const SLIP = { share: 0.05, times: 5 } as const

/**
 * How much wider than their claims a length's ways say it to be. Two honest ways lie apart by chance, and
 * that tells nothing of their mean; only as far as one of them is likely a slip does it count (mixture of
 * two normal distributions, any textbook).
 * @param apart chi squared of the ways about their mean, of `free` degrees of freedom
 */
function stretchOf(apart: number, free: number): number {
  const { share, times } = SLIP
  const slip = (share / times) * Math.exp(-apart / (2 * times ** 2))
  const honest = (1 - share) * Math.exp(-apart / 2)
  const likely = slip / (slip + honest)
  return Math.sqrt(1 - likely + likely * Math.max(1, apart / free))
}

/** One way to a length: its value and standard deviation, mm. */
export interface Way {
  readonly value: number
  readonly sd: number
  /** Beside it: an error that front and back photo share with opposite signs, mm (scale.ts). */
  readonly byDepth: number
  readonly basis: string
}
export type WayOutcome =
  { readonly ok: true; readonly way: Way } | { readonly ok: false; readonly reason: string }

/** The reason of the card search, said of one photo among three. */
export function noCard({ view, card }: ViewReading): string {
  const missing: FaultId = 'noCard'
  const why = card.ok ? '' : card.reason === missing ? WITHOUT_CARD : faultSaid(card.reason)
  return NO_NUMBER_WORDS.noCard[view](why)
}

/** The named points of a view, or the sentence that says which is missing and why. */
export function pointsOf<Name extends PointName>(
  readings: Readings,
  view: View,
  names: readonly Name[],
):
  | {
      readonly ok: true
      readonly reading: ViewReading
      readonly at: Readonly<Record<Name, PlacedPoint>>
    }
  | { readonly ok: false; readonly reason: string } {
  const reading = readings[view]
  if (!reading) return { ok: false, reason: NO_NUMBER_WORDS.noPhoto[view] }
  if (!reading.person.ok) return { ok: false, reason: faultSaid(reading.person.reason) }
  if (!reading.card.ok) return { ok: false, reason: noCard(reading) }
  const at: Partial<Record<Name, PlacedPoint>> = {}
  for (const name of names) {
    const point = reading.points[name]
    const unsure = point === undefined || point.by === 'guess'
    if (unsure) {
      const why = reading.missing[name]
      return { ok: false, reason: why ? faultSaid(why) : NO_NUMBER_WORDS.notShown[view] }
    }
    at[name] = point
  }
  return { ok: true, reading, at: at as Record<Name, PlacedPoint> }
}

/** Scale at a plane and height; the reading has a card, which `pointsOf` has seen to. */
export function scaleIn(reading: ViewReading, { mm: behind, sd }: Reach, y: number): Scale {
  const scale = scaleAt(reading, behind, sd, y)
  if (!scale) throw new Error(`scale: the ${reading.view} reading has no card`)
  return scale
}

/** A length of `px` pixels whose ends stray by `sdPx` together; `ownSd` is the measure's own, mm. */
export function wayOf(px: number, sdPx: number, scale: Scale, basis: string, ownSd = 0): Way {
  const value = px * scale.mmPerPx
  const sd = Math.hypot(sdPx * scale.mmPerPx, value * scale.sdShare, ownSd)
  return { value, sd, byDepth: value * scale.depthShare, basis }
}

/** A way whose points lie elsewhere than those of the others: its depth errs by itself. */
export const byItself = (way: Way): Way => ({
  ...way,
  sd: Math.hypot(way.sd, way.byDepth),
  byDepth: 0,
})

/** Several ways to one length, weighted by how sure each is; `shared` is an error they have in common. */
export function together(ways: readonly WayOutcome[], shared = 0): EstimateOutcome {
  const good = ways.flatMap((outcome) => (outcome.ok ? [outcome.way] : []))
  if (good.length === 0) {
    const reasons = ways.flatMap((outcome) => (outcome.ok ? [] : [outcome.reason]))
    return { ok: false, reason: [...new Set(reasons)].join(' ') }
  }
  // Least squares with errors D + b b', b the shared part (Sherman and Morrison's inverse, any textbook).
  const total = (of: (way: Way) => number): number => good.reduce((sum, way) => sum + of(way), 0)
  const own = (way: Way): number => 1 / way.sd ** 2
  const pull =
    total((way) => own(way) * way.byDepth) / (1 + total((way) => own(way) * way.byDepth ** 2))
  const weight = (way: Way): number => own(way) * (1 - way.byDepth * pull)
  const sum = total(weight)
  const value = total((way) => way.value * weight(way)) / sum
  const off = (way: Way): number => way.value - value
  const drawn = total((way) => own(way) * off(way) * way.byDepth) ** 2
  const apart =
    total((way) => own(way) * off(way) ** 2) -
    drawn / (1 + total((way) => own(way) * way.byDepth ** 2))
  const stretch = good.length > 1 ? stretchOf(apart, good.length - 1) : 1
  const sd = Math.hypot(stretch / Math.sqrt(sum), shared)
  return {
    ok: true,
    estimate: {
      value: mm(value),
      pm90: mm(NINE_IN_TEN * sd),
      basis: basisOfAll(...good.map((way) => way.basis)),
    },
  }
}

/** What the points between which it runs lie by; the photo and the card belong in the same line. */
export const basisOf = (
  view: View,
  scale: Scale,
  run: RunId,
  ...ends: readonly PlacedPoint[]
): string => wayBasis(view, scale.by, run, ...ends.map(({ from }) => from))

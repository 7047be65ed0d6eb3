/**
 * A drawn ruler: where its ticks stand and how a pointer steps along it. Positions come out as
 * fractions of its length, so the components only multiply by pixels.
 */
import type { UnitChoice } from '../../units/format.ts'
import { mm, MM_PER_INCH, type Mm } from '../../units/length.ts'

export interface Tick {
  /** Fraction of the ruler's length, 0 at its left end. */
  readonly at: number
  readonly size: 'short' | 'middle' | 'long'
}
export interface Span {
  readonly from: Mm
  readonly to: Mm
}

/** Short, middle and long mark of a ruler, finest first: as printed on rulers, common practice. */
const MARKS_CM = [
  [1, 5, 10],
  [5, 10, 50],
  [10, 50, 100],
  [50, 100, 500],
] as const
const MARKS_INCH = [
  [1 / 16, 1 / 2, 1],
  [1 / 8, 1 / 2, 1],
  [1 / 4, 1, 2],
  [1 / 2, 1, 6],
  [1, 6, 12],
  [3, 6, 12],
] as const
/** More ticks than this run into each other on a phone. Common practice, no source. */
const MOST_TICKS = 60

/** Ticks on the round numbers of her unit between the ends; the finest set that stays readable. */
export function ticks({ from, to }: Span, choice: UnitChoice, most = MOST_TICKS): readonly Tick[] {
  const per = choice.unit === 'cm' ? 1 : MM_PER_INCH
  const sets = choice.unit === 'cm' ? MARKS_CM : MARKS_INCH
  const fits = sets.find(([short]) => (to - from) / (short * per) <= most)
  const [short, middle, long] = fits ?? sets[sets.length - 1]!
  const step = short * per
  const first = Math.ceil(from / step - SLACK)
  const last = Math.floor(to / step + SLACK)
  return Array.from({ length: Math.max(0, last - first + 1) }, (_, i) => {
    const count = (first + i) * short
    const size = whole(count / long) ? 'long' : whole(count / middle) ? 'middle' : 'short'
    return { at: along(mm((first + i) * step), { from, to }), size }
  })
}

/** Where a length lies on the ruler as a fraction; outside its ends below 0 or above 1. */
export const along = (length: Mm, { from, to }: Span): number => (length - from) / (to - from)

/** The length under a fraction of the ruler, brought to the nearest whole step inside its ends. */
export function lengthAt(fraction: number, { from, to }: Span, step: Mm): Mm {
  const raw = from + Math.min(1, Math.max(0, fraction)) * (to - from)
  return inside(mm(Math.round(raw / step) * step), { from, to })
}

/** `count` steps on from a length. Steps are counted on the ruler, so an odd length lands on one. */
export function stepped(length: Mm, count: number, step: Mm, span: Span): Mm {
  return inside(mm((Math.round(length / step) + count) * step), span)
}

/** The finest step her unit prints: 1 mm, 1/8 in or 1/16 in. */
export const printedStep = (choice: UnitChoice): Mm =>
  mm(choice.unit === 'cm' ? 1 : MM_PER_INCH / choice.inchStep)

/** A span round everything to be shown on one ruler, never shorter than `least`. */
export function spanRound(lengths: readonly Mm[], least: Mm): Span {
  if (lengths.length === 0) throw new Error('ruler: no lengths to span')
  const [low, high] = [Math.min(...lengths), Math.max(...lengths)]
  const pad = Math.max((least - (high - low)) / 2, (high - low) * END_SHARE)
  return { from: mm(low - pad), to: mm(high + pad) }
}

const inside = (length: Mm, { from, to }: Span): Mm => mm(Math.min(to, Math.max(from, length)))
const whole = (count: number): boolean => Math.abs(count - Math.round(count)) < SLACK
/** Floating point makes 3/8 in of 9.525000000000001 mm; a millionth of a step is the same step. */
const SLACK = 1e-6
/** Paper left over at each end of a ruler, so that the outermost stroke is not cut. */
const END_SHARE = 0.15

/**
 * Girth from breadth and depth: a check on the tape, never a number to draft from.
 * Source: linear regressions over 3183 women of the Korean national survey 2015 (breadth and depth
 * by calliper; own fit to its public tables): bust 6.32 + 1.865 b + 1.604 d, residual
 * 19.4 mm; waist 29.7 + 1.747 b + 1.395 d, 21.4 mm; hip 72.0 + 1.883 b + 1.121 d, 21.3 mm. A plain
 * ellipse always reads small, by 40 to 90 mm. Another population is 4 to 26 mm off.
 */
import type { EstimateOutcome } from '../../measurements/estimate.ts'
import { mm } from '../../units/length.ts'
import type { Level } from './breadth.ts'

const SURVEY: Readonly<Record<Level, { base: number; b: number; d: number; residual: number }>> = {
  bust: { base: 6.32, b: 1.865, d: 1.604, residual: 19.4 },
  waist: { base: 29.7, b: 1.747, d: 1.395, residual: 21.4 },
  hip: { base: 72.0, b: 1.883, d: 1.121, residual: 21.3 },
}
/** Bias of the same equation in another population, mm: -4 to -26 in two others, with larger spread. */
const OTHER_POPULATION_SD = 20
/** Normal distribution: the survey is large (any table). */
const NINE_IN_TEN = 1.645
/** Even a perfect photo gives no girth better than this, nine times in ten, mm (same source). */
export const BEST_PM90 = 40

export function girth(
  level: Level,
  breadth: EstimateOutcome,
  depth: EstimateOutcome,
): EstimateOutcome {
  if (!breadth.ok) return breadth
  if (!depth.ok) return depth
  const { base, b, d, residual } = SURVEY[level]
  const [wide, deep] = [breadth.estimate, depth.estimate]
  const value = base + b * wide.value + d * deep.value
  const photo = Math.hypot(b * wide.pm90, d * deep.pm90)
  const pm90 = Math.hypot(photo, NINE_IN_TEN * Math.hypot(residual, OTHER_POPULATION_SD))
  const basis = `breadth and depth of the photos, proportions of 3183 women; a check, not a measure`
  return { ok: true, estimate: { value: mm(value), pm90: mm(Math.max(BEST_PM90, pm90)), basis } }
}

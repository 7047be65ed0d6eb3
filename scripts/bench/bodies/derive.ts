/** Rules for measurements that no survey at hand taped, the same for every set of bodies. */
import type { MeasurementId } from '../../../src/measurements/catalogue.ts'

/**
 * Side neck over the blade to the waist. Against nape to waist it is 22.0 mm longer (424.2 − 402.2,
 * SD 14.1) at the mean bust of 871.1 and grows by 0.0179 mm a millimetre of bust: 3183 women of
 * the 7th Korean body survey, 2015, the one survey at hand that taped both.
 */
export const overBlade = (napeToWaist: number, bust: number): number =>
  napeToWaist + 22 + 0.0179 * (bust - 871.1)

export const SHARED_RULES = {
  waistToHighHip: 'half of waist to hip',
  slipThroughGirth: 'the greater of bust and shoulder girth',
  sideNeckOverApexToWaist:
    'side neck to apex and waist to bust level, added: the tape falls straight from the apex',
  sideNeckOverBladeToWaist:
    'nape to waist + 22 mm + 0.0179 × (bust − 871 mm), as in the 7th Korean body survey',
} as const satisfies Partial<Record<MeasurementId, string>>

/** Girth at a depth between levels where it is known, from the top down; straight between two. */
export function girthBetween(
  known: readonly (readonly [depth: number, girth: number])[],
  depth: number,
): number {
  for (const [i, [bottom, below]] of known.entries()) {
    const [top, above] = known[i - 1] ?? [NaN, NaN]
    if (depth >= top && depth <= bottom)
      return above + ((below - above) * (depth - top)) / (bottom - top)
  }
  throw new Error(`girthBetween: ${depth} mm lies outside ${JSON.stringify(known)}`)
}

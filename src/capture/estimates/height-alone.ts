/**
 * What her height alone would say of a length: the spread left in the pooled tape model once the
 * stature is known (measurements/tape-model.ts: two surveys of women, taken apart from each other's
 * definitions). An estimate no surer than that says so. The model's means are not used: the same name
 * stands for places 35 mm apart in the two surveys, more than the photographs are wrong by.
 */
import type { EstimateId, EstimateOutcome } from '../../measurements/estimate.ts'
import { covariance, TAPE_VARIABLES } from '../../measurements/tape-model.ts'
import { basisOfAll, noteBasis } from '../seen.ts'
import { MODEL_NAMES } from './expected.ts'

/** Nine in ten of a normal distribution lie within this many standard deviations (any table). */
const NINE_IN_TEN = 1.645

const place = (name: string): number => TAPE_VARIABLES.findIndex((own) => own.name === name)

/** ± nine times in ten of a guess from her height, mm; undefined for what the model does not hold. */
export function byHeightAlone(id: EstimateId): number | undefined {
  const [name, stature] = [MODEL_NAMES[id], place('stature')]
  if (name === undefined) return undefined
  const own = place(name)
  if (own < 0 || stature < 0) throw new Error(`tape model: no variable "${name}" or no stature`)
  const left = covariance(own, own) - covariance(own, stature) ** 2 / covariance(stature, stature)
  return NINE_IN_TEN * Math.sqrt(left)
}

export function besideHeight(id: EstimateId, outcome: EstimateOutcome): EstimateOutcome {
  const alone = byHeightAlone(id)
  if (!outcome.ok || alone === undefined || outcome.estimate.pm90 < alone) return outcome
  const basis = basisOfAll(outcome.estimate.basis, noteBasis('heightAlone'))
  return { ok: true, estimate: { ...outcome.estimate, basis } }
}

/**
 * Draws from the pooled tape model on a bust that is given. The means stand midway between the
 * two surveys, because they differ in definition as much as in women.
 */
import { cholesky, type Matrix } from '../../../src/measurements/conditional.ts'
import { covariance, TAPE_VARIABLES } from '../../../src/measurements/tape-model.ts'
import type { Chance } from './chance.ts'
import { times } from './regression.ts'

export const MIDDLE: readonly number[] = TAPE_VARIABLES.map(
  (v) => (v.meanAnsur1988 + v.meanKorea2015) / 2,
)
const BUST = TAPE_VARIABLES.findIndex(({ name }) => name === 'bust')

/** Bust first: then its own deviate is known and the others follow their conditional distribution. */
const ORDER = [BUST, ...TAPE_VARIABLES.keys()].filter((v, i) => i === 0 || v !== BUST)
const FACTOR: Matrix = cholesky(ORDER.map((i) => ORDER.map((j) => covariance(i, j))))

/** All variables of one body with this bust, in the order of the model. */
export function drawOn(bust: number, chance: Chance): number[] {
  const deviate = offMiddle(bust) / Math.sqrt(covariance(BUST, BUST))
  const off = times(
    FACTOR,
    ORDER.map((_, i) => (i === 0 ? deviate : chance())),
  )
  return MIDDLE.map((mean, variable) => mean + (off[ORDER.indexOf(variable)] ?? NaN))
}

/** A bust as the model spreads it. */
export const drawnBust = (chance: Chance): number =>
  (MIDDLE[BUST] ?? NaN) + Math.sqrt(covariance(BUST, BUST)) * chance()

/** What the model expects of all variables on this bust. */
export const expectedOn = (bust: number): number[] =>
  MIDDLE.map((mean, i) => mean + (covariance(i, BUST) / covariance(BUST, BUST)) * offMiddle(bust))

export const offMiddle = (bust: number): number => bust - (MIDDLE[BUST] ?? NaN)

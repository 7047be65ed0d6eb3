/** Numbers that do not go together, with their lengths as printed. */
import { capital } from '../units/capital.ts'
import type { MeasurementId } from './catalogue.ts'
import { MEASURE_NAMES } from './names.words.ts'

/** A measurement beside its printed length. */
export interface SaidLength {
  readonly id: MeasurementId
  readonly length: string
}
const said = ({ id, length }: SaidLength): string => `${MEASURE_NAMES[id].spoken} ${length}`
const headed = ({ id, length }: SaidLength): string => `${MEASURE_NAMES[id].label} ${length}`
const pair = (one: SaidLength, other: SaidLength): string =>
  capital(`${said(one)} beside ${said(other)}`)

export const PLAUSIBILITY_WORDS = {
  unusual: (one: SaidLength, other: SaidLength) =>
    `${pair(one, other)} is an unusual combination. Tape it once more.`,
  veryUnusual: (one: SaidLength, other: SaidLength) =>
    `${pair(one, other)} is a very unusual combination. Tape it once more; if the tape says the same again, say so and it is used.`,
  shouldBeLess: (one: SaidLength, other: SaidLength) =>
    `${headed(one)} should be less than ${said(other)}. Tape both once more.`,
  seldom: (one: SaidLength, other: SaidLength, women: number, base: number) =>
    `${headed(one)} beside ${said(other)} is an unusual combination, met in ${women} of ${base} women. Tape both once more.`,
}

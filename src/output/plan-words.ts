/** A step of the sewing plan in words: its numbers, its sentences. */
import { formatLength, type UnitChoice } from '../units/format.ts'
import { passSentence } from './finish.ts'
import type { PlanStep } from './plan-step.ts'

const TIMES: Readonly<Record<number, string>> = { 1: 'once', 2: 'twice', 4: 'four times' }

/** "39.5 cm, twice; allowance 1.6 cm"; empty where nothing is sewn. */
export function planNumbers(step: PlanStep, units: UnitChoice): string {
  const { long, times, allowance } = step
  return [
    ...(long === undefined
      ? []
      : [
          `${formatLength(long, units)}${times === undefined ? '' : `, ${TIMES[times] ?? `${times} times`}`}`,
        ]),
    ...(allowance === undefined || allowance === 0
      ? []
      : [`allowance ${formatLength(allowance, units)}`]),
  ].join('; ')
}

export const planSentences = (step: PlanStep, units: UnitChoice): readonly string[] => [
  ...step.passes.map((p) => passSentence(p, units)),
  ...(step.press ? [`Press: ${lower(passSentence(step.press, units))}`] : []),
]
const lower = (text: string): string => text.charAt(0).toLowerCase() + text.slice(1)

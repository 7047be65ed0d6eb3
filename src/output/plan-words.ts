/** A step of the sewing plan in words: its numbers, its sentences. */
import { formatLength, type UnitChoice } from '../units/format.ts'
import { passSentence } from './finish.ts'
import type { PlanStep } from './plan-step.ts'

const TIMES: Readonly<Record<number, string>> = { 1: 'once', 2: 'twice', 4: 'four times' }

/** "39.5 cm, twice; allowance 1.6 cm", "left 12.0 cm, right 13.0 cm"; empty where nothing is sewn. */
export function planNumbers(step: PlanStep, units: UnitChoice): string {
  const { allowance } = step
  return [
    ...longSaid(step, units),
    ...(allowance === undefined || allowance === 0
      ? []
      : [`allowance ${formatLength(allowance, units)}`]),
  ].join('; ')
}

function longSaid({ long, sides, times }: PlanStep, units: UnitChoice): readonly string[] {
  if (sides)
    return [`left ${formatLength(sides.left, units)}, right ${formatLength(sides.right, units)}`]
  if (long === undefined) return []
  const often = times === undefined ? '' : `, ${TIMES[times] ?? `${times} times`}`
  return [`${formatLength(long, units)}${often}`]
}

export const planSentences = (step: PlanStep, units: UnitChoice): readonly string[] => [
  ...step.passes.map((p) => passSentence(p, units)),
  ...(step.press ? [`Press: ${lower(passSentence(step.press, units))}`] : []),
]
const lower = (text: string): string => text.charAt(0).toLowerCase() + text.slice(1)

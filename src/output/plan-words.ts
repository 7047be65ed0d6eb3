/** A step of the sewing plan in words: its numbers, its sentences. */
import { formatLength, type UnitChoice } from '../units/format.ts'
import { passSentence } from './pass.ts'
import type { PlanStep } from './plan-step.ts'
import { PLAN_WORDS } from './sewing-plan.words.ts'

/** "39.5 cm, twice; allowance 1.6 cm", "left 12.0 cm, right 13.0 cm"; empty where nothing is sewn. */
export function planNumbers(step: PlanStep, units: UnitChoice): string {
  const { allowance } = step
  return [
    ...longSaid(step, units),
    ...(allowance === undefined || allowance === 0
      ? []
      : [PLAN_WORDS.allowance(formatLength(allowance, units))]),
  ].join('; ')
}

function longSaid({ long, sides, times }: PlanStep, units: UnitChoice): readonly string[] {
  if (sides)
    return [PLAN_WORDS.sides(formatLength(sides.left, units), formatLength(sides.right, units))]
  if (long === undefined) return []
  return [PLAN_WORDS.long(formatLength(long, units), times)]
}

export const planSentences = (step: PlanStep, units: UnitChoice): readonly string[] => [
  ...step.passes.map((p) => passSentence(p, units)),
  ...(step.press ? [PLAN_WORDS.press(passSentence(step.press, units))] : []),
]

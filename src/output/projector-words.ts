/** What she does with the crosses of the field that is thrown now. */
import type { ThrowField, ThrowPlan } from './projector.ts'
import type { FieldJoint, ThrowCross } from './projector-crosses.ts'
import { FIELD_WORDS } from './projector.words.ts'

export interface FieldCross extends ThrowCross {
  /** chalk: mark it now, for the field named. lay: bring the mark of the field named under it. */
  readonly act: 'chalk' | 'lay'
  readonly field: string
}

/** Crosses are chalked on the field that comes first and laid under on the one that comes after. */
export const fieldCrosses = ({ joints }: ThrowPlan, { name }: ThrowField): FieldCross[] =>
  joints.flatMap(({ first, second, crosses }) => {
    const other = name === first ? second : name === second ? first : undefined
    if (other === undefined) return []
    const act = name === first ? 'chalk' : 'lay'
    return crosses.map((cross): FieldCross => ({ ...cross, act, field: other }))
  })

/** Sentences, in the order they are done. */
export function fieldWords(plan: ThrowPlan, field: ThrowField): string[] {
  const at = plan.fields.findIndex((f) => f.name === field.name)
  const mine = (end: 'first' | 'second'): FieldJoint[] =>
    plan.joints.filter((j) => j[end] === field.name)
  const crosses = (joint: FieldJoint): readonly string[] => joint.crosses.map((c) => c.label)
  const pinned = mine('first').some((j) => j.crosses.some((c) => c.onPiece))
  return [
    plan.fields.length === 1
      ? FIELD_WORDS.whole
      : FIELD_WORDS.field(field.name, at + 1, plan.fields.length),
    ...mine('second').map((j) => FIELD_WORDS.lay(j.first, crosses(j))),
    ...mine('first').map((j) => FIELD_WORDS.chalk(crosses(j), j.second)),
    ...(pinned ? [FIELD_WORDS.pin] : []),
  ]
}

/** The field that lies that way, or undefined at the rim. */
export function neighbour(
  { fields }: ThrowPlan,
  from: ThrowField,
  way: keyof typeof STEPS,
): ThrowField | undefined {
  const [rows, columns] = STEPS[way]
  return fields.find((f) => f.row === from.row + rows && f.column === from.column + columns)
}
const STEPS = { left: [0, -1], right: [0, 1], up: [-1, 0], down: [1, 0] } as const

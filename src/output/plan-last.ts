/** Try-on points and the last press. Common practice, no source. */
import type { Draft } from '../draft/draft.ts'
import type { PlanStep } from './plan-step.ts'
import { LAST_WORDS as W } from './sewing-plan.words.ts'

export const tryOn = (id: 'tacked' | 'hem', { openings }: Draft): PlanStep => ({
  id: `tryOn.${id}`,
  kind: 'tryOn',
  title: W[id],
  lit: [],
  passes: id === 'hem' ? W.hemHow : W.tackedHow,
  mind: [...(openings.length > 0 ? [W.pinShut] : []), W.pins],
})

export const lastSteps = (): PlanStep[] => [
  {
    id: 'last.press',
    kind: 'last',
    title: W.press,
    lit: [],
    passes: W.pressHow,
    mind: [W.iron],
  },
]

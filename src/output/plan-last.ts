/** Try-on points and the last press. Common practice, no source. */
import type { Draft } from '../draft/draft.ts'
import { says, type PlanStep } from './plan-step.ts'

export const tryOn = (id: string, title: string, { openings }: Draft): PlanStep => ({
  id: `tryOn.${id}`,
  kind: 'tryOn',
  title,
  lit: [],
  passes:
    id === 'hem'
      ? [
          says`Wear what is worn with it, stand straight, have the hem marked from the floor or lay it level on a table.`,
        ]
      : [
          says`Longest stitch, on the seam lines. Look at it from all sides, lift the arms, sit down.`,
          says`What is changed here is changed on the draft too, before anything is sewn for good.`,
        ],
  ...(openings.length > 0 ? { mind: ['Pin the opening shut on its line.'] } : {}),
})

export const lastSteps = (): PlanStep[] => [
  {
    id: 'last.press',
    kind: 'last',
    title: 'Last press',
    lit: [],
    passes: [
      says`Take out every tacking thread and count the pins.`,
      says`Press once more, wrong side first.`,
    ],
    mind: ['The iron burns cloth and skin. Try its heat on a scrap.'],
  },
]

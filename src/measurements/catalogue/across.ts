/** Widths across the back and the chest, between the arms. */
import { own, seen, type MeasureRule } from '../measure.ts'
import { SURVEYS } from '../sources.ts'
import { ACROSS_WORDS as W } from './across.words.ts'

const length = { kind: 'length', readingsNeeded: 2 } as const

export const ACROSS = {
  acrossBack: {
    ...length,
    ...W.acrossBack,
    id: 'acrossBack',
    definition: 'acrossBack/mid-armhole',
    tolerance: own(10),
    plausible: seen(284, 474),
  },
  acrossChest: {
    ...length,
    ...W.acrossChest,
    id: 'acrossChest',
    definition: 'acrossChest/mid-armhole',
    tolerance: own(5),
    plausible: seen(261, 420, SURVEYS.korea),
  },
} as const satisfies Record<string, MeasureRule>

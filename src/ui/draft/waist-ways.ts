/** The ways a waist can be taken in where one dart is too narrow, side by side with their numbers. */
import { blouseNumbers } from '../../draft/blocks/blouse-numbers.ts'
import { bodiceFrame } from '../../draft/blocks/bodice-frame.ts'
import { bodiceNumbers } from '../../draft/blocks/bodice-numbers.ts'
import type { WaistPlan } from '../../draft/blocks/waist-plan.ts'
import type { Draft } from '../../draft/draft.ts'
import type { OptionWord } from '../../draft/options.ts'
import { mm, type Mm } from '../../units/length.ts'
import { WAIST_WAY_WORDS } from './turning.words.ts'

export interface WaistWay {
  readonly order: OptionWord<'surplus'>
  /** Head of its column. */
  readonly words: string
  /** Taken at the side seam, on each half piece. */
  readonly side: Mm
  /** Mouths of the darts, the one nearer the centre first. */
  readonly backDarts: readonly Mm[]
  readonly frontDarts: readonly Mm[]
  readonly centreBack: Mm
  /** What neither holds, back and front together: the waist hangs looser by it. */
  readonly notHeld: Mm
}

/** Empty where every way comes to the same: then there is nothing to pick. */
export function waistWays(draft: Draft): readonly WaistWay[] {
  const ways = ORDERS.map((order): WaistWay => {
    const plan = planOf(draft, order)
    return {
      order,
      words: WAIST_WAY_WORDS[order],
      side: mm(plan.side),
      backDarts: plan.back.darts.map(mm),
      frontDarts: plan.front.darts.map(mm),
      centreBack: mm(plan.back.centre),
      notHeld: mm(plan.back.left + plan.front.left),
    }
  })
  const numbers = ways.map(({ order: _, words: __, ...rest }) => JSON.stringify(rest))
  return new Set(numbers).size > 1 ? ways : []
}
const ORDERS = ['auto', 'twoDarts', 'centreBack'] as const

function planOf({ garment, body, choices }: Draft, surplus: OptionWord<'surplus'>): WaistPlan {
  const other = { ...choices, surplus }
  return garment === 'blouse'
    ? blouseNumbers(body, other).waist
    : bodiceNumbers(body, other, bodiceFrame(body, other)).waist
}

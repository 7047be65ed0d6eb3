/** How many sheets the invented bodies take, and what laying pieces together saves. */
import { standardChoices } from '../../../src/draft/choices.ts'
import { draft } from '../../../src/draft/make.ts'
import { sheetPlan } from '../../../src/output/sheet-plan.ts'
import { body, INVENTED_BODIES } from '../../../tests/bodies.ts'

export interface SheetCount {
  readonly body: string
  readonly paper: 'a4' | 'letter'
  readonly together: number
  /** Each piece laid out by itself, as well as it goes. */
  readonly apart: number
}

export function sheetCounts(): SheetCount[] {
  return INVENTED_BODIES.flatMap(([name, numbers]) => {
    const drawn = draft('blouse', body({}, numbers), standardChoices())
    return (['a4', 'letter'] as const).map((paper) => {
      const count = (pieces: typeof drawn.pieces): number => {
        const laid = sheetPlan({ ...drawn, pieces }, { paper })
        if (!laid.ok) throw new Error(laid.reason)
        return laid.plan.tiles.length
      }
      const apart = drawn.pieces.reduce((sum, piece) => sum + count([piece]), 0)
      return { body: name, paper, together: count(drawn.pieces), apart }
    })
  })
}

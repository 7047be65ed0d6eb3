/**
 * The garment with a little less of it, for cloth that does not suffice: the body or the sleeve
 * shorter by steps, drawn anew with all its corrections. What cannot be drawn or cut is left out.
 */
import type { ChoiceId } from '../../../draft/choices.ts'
import { CHOICES } from '../../../draft/choices.ts'
import { GARMENTS } from '../../../draft/garments.ts'
import { toCut } from '../../../draft/to-cut.ts'
import { correctedDraft } from '../../../fitting/apply.ts'
import type { MatchAt } from '../../../layout/cloth-wishes.ts'
import { cutParts } from '../../../layout/cut-part.ts'
import type { Given } from '../../../layout/what-i-have.ts'
import { cuttingOf, type CutWishes } from '../../../output/cutting.ts'
import { whyNotCut } from '../../../output/draft-pages.ts'
import type { Round } from '../../../rounds/round.ts'
import { formatLength, type UnitChoice } from '../../../units/format.ts'
import { mm } from '../../../units/length.ts'
import { HAVE_WORDS } from './cloth-leaf.words.ts'

/** In tenths of a metre nobody would call it the same garment. Judgement. */
const STEPS = [20, 40, 60, 80, 100].map(mm)
const SHORTENED = ['sleeveLength', 'lengthBelowWaist'] as const satisfies readonly ChoiceId[]

export function shorter(
  round: Round,
  wishes: CutWishes,
  matchAt: MatchAt,
  units: UnitChoice,
): readonly (readonly Given[])[] {
  const reads: readonly ChoiceId[] = GARMENTS[round.garment].choices
  return SHORTENED.filter((choice) => reads.includes(choice)).map((choice) =>
    STEPS.flatMap((by): Given[] => {
      const to = mm(round.choices[choice] - by)
      if (to < CHOICES[choice].min) return []
      try {
        const choices = { ...round.choices, [choice]: to }
        const { draft } = correctedDraft(round.garment, round.body, choices, round.corrections)
        if (whyNotCut(draft, units, 'cloth') !== undefined) return []
        const cut = toCut(draft)
        const { allowances, hemDepth } = cuttingOf(cut, { ...wishes, stuff: 'cloth' })
        const parts = cutParts(cut.pieces, allowances, hemDepth, matchAt)
        return parts.ok
          ? [{ words: HAVE_WORDS.shorter[choice](formatLength(by, units)), parts: parts.parts }]
          : []
      } catch {
        // Lines that do not meet at that length: it is no way out.
        return []
      }
    }),
  )
}

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
import { cutParts, type CutPart } from '../../../layout/cut-part.ts'
import type { Ladder, OneGiven } from '../../../layout/given-up.ts'
import { cuttingOf, type CutWishes } from '../../../output/cutting.ts'
import { whyNotCut } from '../../../output/draft-pages.ts'
import type { Round } from '../../../rounds/round.ts'
import { formatLength, type UnitChoice } from '../../../units/format.ts'
import { mm, type Mm } from '../../../units/length.ts'
import { HAVE_WORDS } from './cloth-leaf.words.ts'

/** Shorter by more nobody would call it the same garment. Judgement. */
export const MOST_SHORTER = mm(100)
const STEPS = [...[20, 40, 60, 80].map(mm), MOST_SHORTER]
const SHORTENED = ['sleeveLength', 'lengthBelowWaist'] as const satisfies readonly ChoiceId[]

/** Each of them by itself, and all that this garment has by as much. */
export interface Shorter {
  readonly others: readonly (readonly OneGiven[])[]
  readonly othersTogether: Ladder
}

export function shorter(
  round: Round,
  wishes: CutWishes,
  matchAt: MatchAt,
  units: UnitChoice,
): Shorter {
  const reads: readonly ChoiceId[] = GARMENTS[round.garment].choices
  const shortened = SHORTENED.filter((choice) => reads.includes(choice))
  const byEach = (which: typeof shortened, said: (by: string) => Omit<OneGiven, 'parts'>) =>
    STEPS.flatMap((by): OneGiven[] => {
      const parts = partsShorter(round, wishes, matchAt, units, which, by)
      return parts ? [{ ...said(formatLength(by, units)), parts }] : []
    })
  const { both, ...each } = HAVE_WORDS.shorter
  return {
    others: shortened.map((choice) => byEach([choice], each[choice])),
    othersTogether: shortened.length > 1 ? byEach(shortened, both) : [],
  }
}

function partsShorter(
  round: Round,
  wishes: CutWishes,
  matchAt: MatchAt,
  units: UnitChoice,
  which: readonly (typeof SHORTENED)[number][],
  by: Mm,
): readonly CutPart[] | undefined {
  const choices = { ...round.choices }
  for (const choice of which) {
    choices[choice] = mm(choices[choice] - by)
    if (choices[choice] < CHOICES[choice].min) return undefined
  }
  try {
    const { draft } = correctedDraft(round.garment, round.body, choices, round.corrections)
    if (whyNotCut(draft, units, 'cloth') !== undefined) return undefined
    const cut = toCut(draft)
    const { allowances, hemDepth } = cuttingOf(cut, { ...wishes, stuff: 'cloth' })
    const parts = cutParts(cut.pieces, allowances, hemDepth, matchAt)
    return parts.ok ? parts.parts : undefined
  } catch {
    // Lines that do not meet at that length: it is no way out.
    return undefined
  }
}

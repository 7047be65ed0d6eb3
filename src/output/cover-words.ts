/** The words of page one, from the draft and what she said about the sheets. */
import { formatLength, type UnitChoice } from '../units/format.ts'
import type { Draft } from '../draft/draft.ts'
import { EDGE_WORDS } from '../draft/piece.ts'
import { MUSLIN_ALLOWANCES, type Allowances } from './allowance.ts'
import type { CoverWords } from './cover-page.ts'
import { findingLines } from './instruction-page.ts'
import { correctedWords } from './print-scale.ts'
import type { SheetWords } from './sheet-words.ts'

export const coverWords = (
  draft: Draft,
  words: SheetWords,
  garmentName: string,
  standing: string,
): CoverWords => ({
  garmentName,
  units: words.units,
  ...(words.round === undefined ? {} : { round: words.round }),
  ...(words.date === undefined ? {} : { date: words.date }),
  ...(words.scale === undefined ? {} : { corrected: correctedWords(words.scale) }),
  standing: words.invented ? `${standing} · invented numbers` : standing,
  pieces: draft.pieces.map((p) => `${p.words}. ${p.cutting}.`),
  allowances: allowanceLines(draft.pieces, words.allowances ?? MUSLIN_ALLOWANCES, words.units),
  findings: findingLines(draft, words.units)
    .filter((l) => l.kind === 'text')
    .map((l) => l.text),
})

/** Edges of this garment only, each once; what is cut as drawn has none and its fold has none. */
function allowanceLines(
  pieces: Draft['pieces'],
  allowances: Allowances,
  units: UnitChoice,
): string[] {
  const edges = pieces.flatMap((p) => (p.cutAsDrawn ? [] : p.edges))
  const names = new Set(edges.flatMap((e) => (e.role === 'fold' ? [] : [e.name])))
  return [...names].map((name) =>
    allowances[name] > 0
      ? `${EDGE_WORDS[name]}: ${formatLength(allowances[name], units)}`
      : `${EDGE_WORDS[name]}: none, cut on the line`,
  )
}

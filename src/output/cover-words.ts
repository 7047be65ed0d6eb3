/** The words of page one, from the draft and what she said about the sheets. */
import { formatLength, type UnitChoice } from '../units/format.ts'
import type { Draft } from '../draft/draft.ts'
import { EDGE_WORDS } from '../draft/piece.ts'
import { EDGE_NAMES, MUSLIN_ALLOWANCES, type Allowances } from './allowance.ts'
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
  allowances: allowanceLines(words.allowances ?? MUSLIN_ALLOWANCES, words.units),
  findings: findingLines(draft, words.units)
    .filter((l) => l.kind === 'text')
    .map((l) => l.text),
})

const allowanceLines = (allowances: Allowances, units: UnitChoice): string[] =>
  EDGE_NAMES.filter((name) => name !== 'centre').map((name) =>
    allowances[name] > 0
      ? `${EDGE_WORDS[name]}: ${formatLength(allowances[name], units)}`
      : `${EDGE_WORDS[name]}: none, cut on the line`,
  )

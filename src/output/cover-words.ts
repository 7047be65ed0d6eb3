/** The words of page one, from the draft and what she said about the sheets. */
import { cuttingSaid } from '../draft/piece.words.ts'
import type { Draft } from '../draft/draft.ts'
import { DATE_WORDS } from '../units/dates.words.ts'
import type { CoverWords } from './cover-page.ts'
import { edgeLines } from './edge-words.ts'
import type { Stuff } from './finish.ts'
import { findingLines } from './instruction-page.ts'
import { correctedWords } from './print-scale.ts'
import { COVER_WORDS } from './sheet.words.ts'
import { STANDING_WORDS } from './standing.words.ts'
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
  ...(words.date === undefined ? {} : { date: DATE_WORDS.day(words.date) }),
  ...(words.scale === undefined ? {} : { corrected: correctedWords(words.scale) }),
  standing: words.invented ? STANDING_WORDS.invented(standing) : standing,
  pieces: draft.pieces.map((p) => COVER_WORDS.piece(p.words, cuttingSaid(p.cut))),
  allowances: edgeLines(draft.pieces, words, words.units),
  findings: findingLines(draft, words.units)
    .filter((l) => l.kind === 'text')
    .map((l) => l.text),
})

/**
 * One sentence for what these sheets may be cut from. Findings never forbid a muslin (what cannot
 * be sewn is not printed at all), so it names what they do forbid.
 */
export function standingSentence(draft: Draft, stuff: Stuff | undefined): string {
  const waits = draft.findings.some(({ severity }) => severity !== 'note')
  if (waits) return STANDING_WORDS.notYetForCloth
  return stuff === undefined ? STANDING_WORDS.confirmed : STANDING_WORDS.confirmedFor[stuff]
}

/**
 * How stripes and checks lie under a layout, in words: a layout reckons its repeats from where it
 * begins, from the fold or from the selvedge, so the cloth is laid so before anything is pinned.
 */
import { pairedId } from '../draft/piece.ts'
import { formatLength, type UnitChoice } from '../units/format.ts'
import type { Cloth } from './cloth.ts'
import type { MatchAt } from './cloth-wishes.ts'
import { STRIPE_WORDS as W } from './cloth.words.ts'
import type { CutPart } from './cut-part.ts'
import type { LyingSection } from './lying.ts'
import { missedAt, missedSentence } from './match.ts'

/** One sentence or two each; none where nothing is matched. */
export function stripesTold(
  parts: readonly CutPart[],
  { repeat, border, selvedge }: Cloth,
  at: MatchAt,
  sections: readonly LyingSection[],
  units: UnitChoice,
): readonly string[] {
  if (!repeat) return []
  const folded = (...layers: readonly LyingSection['layers'][]): boolean =>
    sections.some((s) => layers.includes(s.layers))
  const along = ((): readonly string[] => {
    if (repeat.along === undefined) return []
    if (border) return [W.beginMotif]
    const sleeve = parts.some((p) => pairedId(p.id) === 'sleeve' && p.match)
    return [W.begin(at, sleeve), missedSentence(missedAt(parts, repeat.along), units)]
  })()
  const across =
    repeat.across === undefined || border
      ? []
      : folded('foldedAlong', 'partlyFolded')
        ? [W.foldOn]
        : [W.fromSelvedge(formatLength(selvedge, units))]
  const both = folded('foldedAlong', 'partlyFolded', 'foldedAcross') ? [W.pin] : []
  return [...along, ...across, ...both].filter((said) => said !== '')
}

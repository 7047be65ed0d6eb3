/**
 * A layout in words: where every piece lies in centimetres or inches, so that it can be laid out
 * with a tape and without a picture.
 */
import { formatLength, type UnitChoice } from '../units/format.ts'
import { mm, type Mm } from '../units/length.ts'
import { PLACE_WORDS } from './cloth.words.ts'
import type { LyingPiece, LyingSection } from './lying.ts'

/** What she measures across from: the fold where there is one along the cloth. */
const measuredFrom = (s: LyingSection): 'fold' | 'selvedge' =>
  s.layers === 'foldedAlong' || s.layers === 'partlyFolded' ? 'fold' : 'selvedge'

/** Nearest edge of the piece across: from the fold itself, or from the outer edge of the selvedge. */
const fromEdge = (s: LyingSection, p: LyingPiece): Mm =>
  mm(Math.max(0, p.at.low + (measuredFrom(s) === 'selvedge' ? s.selvedge : 0)))
/** Nearest edge of the piece along, from the cut end of the cloth or the crosswise fold. */
const fromEnd = (s: LyingSection, p: LyingPiece): Mm => mm(Math.max(0, p.at.left + s.start))

const isDouble = (s: LyingSection, p: LyingPiece): boolean =>
  s.layers === 'foldedAlong' ||
  s.layers === 'foldedAcross' ||
  (s.layers === 'partlyFolded' && p.onFold)

/** Which end of a piece lies towards where the layout begins; a strip has none. */
function wayOf(p: LyingPiece): 'toBorder' | 'away' | 'towards' | undefined {
  if (p.kind === 'bias') return undefined
  if (p.across) return 'toBorder'
  return p.round ? 'away' : 'towards'
}

/** "1 Back: centre on the fold, …; 0.0 cm from the fold, begins 2.3 cm from the cut end." */
export function placeSentence(s: LyingSection, p: LyingPiece, units: UnitChoice): string {
  const double = isDouble(s, p)
  const way = wayOf(p)
  return PLACE_WORDS.piece({
    number: p.number,
    words: p.words,
    cut: p.onFold ? 'onFold' : p.whole ? 'opened' : double ? 'bothLayers' : 'once',
    over: p.over && !p.onFold && !double && !p.whole,
    aslant: p.kind === 'bias',
    ...(way && { way }),
    ...(!p.onFold && {
      across: { by: formatLength(fromEdge(s, p), units), from: measuredFrom(s) },
    }),
    begins: formatLength(fromEnd(s, p), units),
  })
}

/** "Folded lengthwise …: 70.0 cm across, from 0 to 153.0 cm along." */
export function sectionSentence(s: LyingSection, units: UnitChoice): string {
  const said = (length: number): string => formatLength(mm(length), units)
  const along = s.length * (s.layers === 'foldedAcross' ? 2 : 1)
  return PLACE_WORDS.section(s.layers, said(s.start), said(s.start + along), {
    ...(s.double !== undefined && { double: said(s.double) }),
    ...(s.border !== undefined && { border: said(s.border + s.selvedge) }),
  })
}

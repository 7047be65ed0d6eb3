/**
 * A layout in words: where every piece lies in centimetres or inches, so that it can be laid out
 * with a tape and without a picture.
 */
import { formatLength, type UnitChoice } from '../units/format.ts'
import { mm, type Mm } from '../units/length.ts'
import type { LyingPiece, LyingSection } from './lying.ts'

export const SECTION_WORDS: Readonly<Record<LyingSection['layers'], string>> = {
  single: 'Single layer, right side up',
  foldedAlong: 'Folded lengthwise, right sides together, selvedge on selvedge',
  foldedAcross: 'Folded crosswise, right sides together, cut end on cut end',
  partlyFolded: 'Folded lengthwise only as far as the half pieces need',
}

/** What she measures across from: the fold where there is one along the cloth. */
const measuredFrom = (s: LyingSection): 'fold' | 'selvedge' =>
  s.layers === 'foldedAlong' || s.layers === 'partlyFolded' ? 'fold' : 'selvedge'

/** Nearest edge of the piece across: from the fold itself, or from the outer edge of the selvedge. */
const fromEdge = (s: LyingSection, p: LyingPiece): Mm =>
  mm(Math.max(0, p.at.low + (measuredFrom(s) === 'selvedge' ? s.selvedge : 0)))
/** Nearest edge of the piece along, from the cut end of the cloth or the crosswise fold. */
const fromEnd = (s: LyingSection, p: LyingPiece): Mm => mm(Math.max(0, p.at.left + s.start))

/** "On the fold, cut once through both layers", "other side up". */
function howWords(s: LyingSection, p: LyingPiece): string {
  const double =
    s.layers === 'foldedAlong' ||
    s.layers === 'foldedAcross' ||
    (s.layers === 'partlyFolded' && p.onFold)
  const layers = p.onFold
    ? 'centre on the fold, cut through both layers'
    : p.whole
      ? 'opened out, cut once'
      : double
        ? 'cut through both layers'
        : 'cut once'
  const over = p.over && !p.onFold && !double && !p.whole ? ', turned over' : ''
  const aslant = p.kind === 'bias' ? ', aslant, its grain arrow along the cloth' : ''
  return `${layers}${over}${aslant}`
}

const wayWords = (p: LyingPiece): string => {
  if (p.kind === 'bias') return ''
  if (p.across) return 'lower end towards the border'
  return p.round ? 'upper end away from the start' : 'upper end towards the start'
}

/** "1 Back: centre on the fold, …; 0.0 cm from the fold, begins 2.3 cm from the cut end." */
export function placeSentence(s: LyingSection, p: LyingPiece, units: UnitChoice): string {
  const across = p.onFold
    ? ''
    : `${formatLength(fromEdge(s, p), units)} from the ${measuredFrom(s)}, `
  const way = wayWords(p)
  return `${p.number} ${p.words}: ${howWords(s, p)}${way && `, ${way}`}; ${across}begins ${formatLength(fromEnd(s, p), units)} from the cut end.`
}

/** "Folded lengthwise …: 70.0 cm across, from 0 to 153.0 cm along." */
export function sectionSentence(s: LyingSection, units: UnitChoice): string {
  const double =
    s.double === undefined ? '' : ` Double for ${formatLength(s.double, units)} from the fold.`
  const along = s.length * (s.layers === 'foldedAcross' ? 2 : 1)
  const to = formatLength(mm(s.start + along), units)
  const border =
    s.border === undefined
      ? ''
      : ` The border lies along the selvedge that is measured from, ${formatLength(mm(s.border + s.selvedge), units)} deep; grain arrows run across the cloth.`
  return `${SECTION_WORDS[s.layers]}: from ${formatLength(s.start, units)} to ${to} along the cloth.${double}${border}`
}

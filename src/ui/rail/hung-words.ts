/** What the rail says of a garment: its tag, how it stands, one sentence and the next act. */
import { stopsCutting } from '../../draft/finding.ts'
import { measure } from '../../measurements/catalogue.ts'
import type { Drawn } from '../session/drawn.ts'

export interface HungWords {
  readonly tag: string
  readonly mark: 'tick' | 'chalk' | 'pin'
  readonly standing: string
  readonly sentence: string
  readonly act: { readonly word: string; readonly place: 'measure' | 'draft' | 'fit' | 'cut' }
}

export function hungWords(drawn: Drawn): HungWords {
  if (drawn.standing !== 'confirmed') {
    const count = drawn.missing.length
    const names = drawn.missing.slice(0, 3).map(({ id }) => measure(id).spoken)
    return {
      tag: 'guess',
      mark: 'pin',
      standing: count === 1 ? 'One number not taped' : `${count} numbers not taped`,
      sentence: `Still to tape: ${names.join(', ')}${count > 3 ? ' and others' : ''}. Nothing is cut before.`,
      act: { word: count === 1 ? 'Tape one number' : `Tape ${count} numbers`, place: 'measure' },
    }
  }
  const { round, corrected } = drawn
  if (round.id === 'unsaved' || !round.printed) {
    const { findings } = corrected.draft
    const open = stopsCutting(findings) || findings.some((f) => f.severity === 'muslin')
    return {
      tag: round.number === 1 ? 'draft' : ordinal(round.number),
      mark: open ? 'chalk' : 'tick',
      standing:
        round.number === 1 ? 'Drafted, not yet on paper' : `Round ${round.number} is being drawn`,
      sentence: open
        ? 'A muslin can be sewn. Before cloth is cut the proof asks for more.'
        : 'Every proof holds. The muslin can go on paper.',
      act: { word: 'Put the muslin on paper', place: 'cut' },
    }
  }
  return {
    tag: ordinal(round.number),
    mark: 'chalk',
    standing: `Round ${round.number} is on the table`,
    sentence: `Muslin ${round.number} went on paper on ${round.printed.on}. Sew it, wear it, then say what you see.`,
    act: { word: 'Say what you see', place: 'fit' },
  }
}

function ordinal(n: number): string {
  const ending = n % 100 > 10 && n % 100 < 14 ? 'th' : (['th', 'st', 'nd', 'rd'][n % 10] ?? 'th')
  return `${n}${ending}`
}

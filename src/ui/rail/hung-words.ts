/** What the rail says of a garment: its tag, how it stands, one sentence and the next act. */
import { stopsCutting } from '../../draft/finding.ts'
import { measure } from '../../measurements/catalogue.ts'
import type { Drawn } from '../session/drawn.ts'
import { HUNG_WORDS } from './rail.words.ts'
import { DATE_WORDS } from '../../units/dates.words.ts'

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
      tag: HUNG_WORDS.guess,
      mark: 'pin',
      standing: HUNG_WORDS.notTaped(count),
      sentence: HUNG_WORDS.stillToTape(names, count > names.length),
      act: { word: HUNG_WORDS.tape(count), place: 'measure' },
    }
  }
  const { round, corrected } = drawn
  if (round.id === 'unsaved' || !round.printed) {
    const { findings } = corrected.draft
    const open = stopsCutting(findings) || findings.some((f) => f.severity === 'muslin')
    return {
      tag: round.number === 1 ? HUNG_WORDS.draft : HUNG_WORDS.round(round.number),
      mark: open ? 'chalk' : 'tick',
      standing: round.number === 1 ? HUNG_WORDS.drafted : HUNG_WORDS.beingDrawn(round.number),
      sentence: open ? HUNG_WORDS.asksForMore : HUNG_WORDS.proved,
      act: { word: HUNG_WORDS.putOnPaper, place: 'cut' },
    }
  }
  return {
    tag: HUNG_WORDS.round(round.number),
    mark: 'chalk',
    standing: HUNG_WORDS.onTable(round.number),
    sentence: HUNG_WORDS.wentOnPaper(round.number, DATE_WORDS.day(round.printed.on)),
    act: { word: HUNG_WORDS.sayWhatYouSee, place: 'fit' },
  }
}

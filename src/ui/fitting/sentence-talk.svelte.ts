/** What she says by the sentence, the figure and the dial. */
import type { Fold } from '../parts/folds.ts'
import { foldsOf, type GapId, type Said, type Spoken } from './spoken.ts'

export class SentenceTalk {
  spoken = $state.raw<Spoken>({})
  /** How slantwise folds lie on the right half of the drawing. */
  slant = $state.raw<Fold>('rising')

  say = <G extends GapId>(gap: G, word: Said[G]): void => {
    this.spoken = { ...this.spoken, [gap]: word }
  }
  turnDial = (fold: Fold): void => {
    if (fold === 'rising' || fold === 'falling') this.slant = fold
    this.spoken = { ...this.spoken, folds: foldsOf(fold) }
  }
  startOver = (): void => {
    this.spoken = {}
  }
}

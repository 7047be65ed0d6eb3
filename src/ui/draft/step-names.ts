/** A step in few words, for the key that goes to it: its letters, or what is drawn where it has none. */
import { stepTitle } from '../../draft/step-title.ts'
import { EDGE_WORDS } from '../../draft/piece.words.ts'
import type { Step } from '../../draft/step.ts'
import { DRAFT_WORDS as W } from './draft.words.ts'

export function stepName(step: Step): string {
  switch (step.verb) {
    case 'open':
      return step.words
    case 'trace':
      return W.traceIt
    case 'parallel':
      return EDGE_WORDS[step.edge]
    case 'rectangle':
      return W.ruleIt
    case 'mitre':
      return W.theMitre
    case 'wedge':
      return W.theWedge
    case 'asWorn':
      return W.theSide[step.side]
    default:
      return stepTitle(step)
  }
}

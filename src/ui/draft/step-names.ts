/** A step in few words, for the key that goes to it: its letters, or what is drawn where it has none. */
import { stepTitle } from '../../draft/step-title.ts'
import { EDGE_WORDS } from '../../draft/piece.words.ts'
import type { Step } from '../../draft/step.ts'

export function stepName(step: Step): string {
  switch (step.verb) {
    case 'open':
      return step.words
    case 'trace':
      return 'trace it'
    case 'parallel':
      return EDGE_WORDS[step.edge]
    case 'rectangle':
      return 'rule it'
    case 'mitre':
      return 'the mitre'
    case 'wedge':
      return 'the wedge'
    case 'asWorn':
      return `the ${step.side} one`
    default:
      return stepTitle(step)
  }
}

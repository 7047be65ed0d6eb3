import { SHEET_WORDS } from './sheet.words.ts'
import type { Act } from './step.ts'

/** What she reads at the left of the line: the points it joins. */
export function stepTitle(step: Act): string {
  switch (step.verb) {
    case 'start':
      return step.at
    case 'measure':
    case 'spot':
    case 'slide':
      return joined(step.from, step.to)
    case 'compass':
      return joined(step.centre, step.to)
    case 'join':
    case 'curve':
    case 'arc':
      return joined(step.from, step.to)
    case 'dart':
      return step.at
    case 'edgeDart':
      return step.tip
    case 'trace':
    case 'parallel':
    case 'rectangle':
    case 'mitre':
    case 'open':
    case 'change':
    case 'asWorn':
      return '·'
    case 'keyhole':
      return step.from
    case 'cutOff':
    case 'moveDart':
      return step.at
    case 'part':
      return step.over
    case 'wedge':
      return 'P'
  }
}

const joined = (from: string, to: string): string =>
  `${SHEET_WORDS.point(from)}–${SHEET_WORDS.point(to)}`

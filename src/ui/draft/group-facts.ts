/** What a group of choices says: a word at the right of its closed head, sentences when it is open. */
import { pieceOf, type Draft } from '../../draft/draft.ts'
import { GARMENTS } from '../../draft/garments.ts'
import { overarmFacts, neckBelowPoint } from '../../draft/overarm.ts'
import { OPTIONS } from '../../draft/options.ts'
import { toDegrees } from '../../units/angle.ts'
import { formatLength, type UnitChoice } from '../../units/format.ts'
import { mm } from '../../units/length.ts'
import type { GroupId } from './choice-groups.ts'
import { decimals } from '../../units/number.ts'
import type { Choices } from '../../draft/choices.ts'
import { fitOf, hasFits } from './fit.ts'
import { FIT_WORDS, OPENING_SHORT, TURNING_WORDS as W } from './turning.words.ts'

/** "2.9° below the level": to a tenth of a degree, which is 0.6 mm on a sleeve of 340 mm. */
export function slopeWords(draft: Draft): string {
  const degrees = toDegrees(overarmFacts(draft).angle)
  return Math.abs(degrees) < 0.05 ? W.level : W.slope(decimals(Math.abs(degrees), 1), degrees < 0)
}

export function groupFact(draft: Draft, group: GroupId, units: UnitChoice): string {
  const { choices, openings } = draft
  switch (group) {
    case 'ease':
      return hasFits(draft.garment) ? fitWord(choices) : ''
    case 'neck':
      return GARMENTS[draft.garment].options.includes('neckShape')
        ? OPTIONS.neckShape.words[choices.neckShape]
        : ''
    case 'arm':
      return hasOverarm(draft) ? W.overarm(formatLength(overarmFacts(draft).length, units)) : ''
    case 'length':
      return W.belowTheWaist(formatLength(choices.lengthBelowWaist, units))
    case 'skirt':
      return GARMENTS[draft.garment].options.includes('skirt')
        ? OPTIONS.skirt.words[choices.skirt]
        : ''
    case 'waist':
      return dartsWords(draft)
    case 'opening':
      return openings.length === 0
        ? W.noOpening
        : openings.map(({ kind }) => OPENING_SHORT[kind]).join(', ')
    case 'construction':
      return ''
  }
}

function fitWord(choices: Choices): string {
  const fit = fitOf(choices)
  return fit ? FIT_WORDS[fit].word : W.yourOwn
}

const hasOverarm = (draft: Draft): boolean =>
  pieceOf(draft, 'back').edges.some(({ name }) => name === 'overarm')

function dartsWords(draft: Draft): string {
  return W.darts(2 * draft.pieces.reduce((sum, p) => sum + p.darts.length, 0))
}

/** Sentences over the rulers of a group. */
export function groupSays(draft: Draft, group: GroupId, units: UnitChoice): readonly string[] {
  switch (group) {
    case 'neck':
      return hasOverarm(draft) ? [neckSaid(draft, units)] : []
    case 'arm':
      return hasOverarm(draft) ? [overarmSaid(draft, units), W.styleFolds] : []
    default:
      return []
  }
}

function overarmSaid(draft: Draft, units: UnitChoice): string {
  const { length, aboveBone } = overarmFacts(draft)
  const lies = W.overarmLies(formatLength(length, units), slopeWords(draft))
  if (aboveBone === undefined) return `${lies} ${W.tapeForShoulderBone}`
  const cloth = formatLength(mm(Math.abs(aboveBone)), units)
  return `${lies} ${aboveBone < 0 ? W.underShoulderBone(cloth) : W.aboveShoulderBone(cloth)}`
}

function neckSaid(draft: Draft, units: UnitChoice): string {
  const below = neckBelowPoint(draft)
  if (below === undefined) return W.tapeForNeck
  const far = formatLength(mm(Math.abs(below)), units)
  return W.neckLies(far, below < 0)
}

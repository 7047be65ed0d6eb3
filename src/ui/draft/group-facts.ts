/** What a group of choices says: a word at the right of its closed head, sentences when it is open. */
import { pieceOf, type Draft } from '../../draft/draft.ts'
import { GARMENTS } from '../../draft/garments.ts'
import { overarmFacts, neckBelowPoint } from '../../draft/overarm.ts'
import { OPTIONS } from '../../draft/options.ts'
import { toDegrees } from '../../units/angle.ts'
import { formatLength, type UnitChoice } from '../../units/format.ts'
import { mm } from '../../units/length.ts'
import type { GroupId } from './choice-groups.ts'
import { fitOf, hasFits } from './fit.ts'
import { OPENING_SHORT } from './opening-words.ts'

/** "2.9° below the level": to a tenth of a degree, which is 0.6 mm on a sleeve of 340 mm. */
export function slopeWords(draft: Draft): string {
  const degrees = toDegrees(overarmFacts(draft).angle)
  const printed = Math.abs(degrees).toFixed(1)
  if (Number(printed) === 0) return 'level'
  return `${printed}° ${degrees < 0 ? 'above' : 'below'} the level`
}

export function groupFact(draft: Draft, group: GroupId, units: UnitChoice): string {
  const { choices, openings } = draft
  switch (group) {
    case 'ease':
      return hasFits(draft.garment) ? (fitOf(choices) ?? 'your own') : ''
    case 'neck':
      return GARMENTS[draft.garment].options.includes('neckShape')
        ? OPTIONS.neckShape.words[choices.neckShape]
        : ''
    case 'arm':
      return hasOverarm(draft) ? `overarm ${formatLength(overarmFacts(draft).length, units)}` : ''
    case 'length':
      return `${formatLength(choices.lengthBelowWaist, units)} below the waist`
    case 'skirt':
      return GARMENTS[draft.garment].options.includes('skirt')
        ? OPTIONS.skirt.words[choices.skirt]
        : ''
    case 'waist':
      return dartsWords(draft)
    case 'opening':
      return openings.length === 0
        ? 'none'
        : openings.map(({ kind }) => OPENING_SHORT[kind]).join(', ')
    case 'construction':
      return ''
  }
}

const hasOverarm = (draft: Draft): boolean =>
  pieceOf(draft, 'back').edges.some(({ name }) => name === 'overarm')

function dartsWords(draft: Draft): string {
  const count = 2 * draft.pieces.reduce((sum, p) => sum + p.darts.length, 0)
  return count === 0 ? 'no darts' : `${count} darts`
}

/** Sentences over the rulers of a group. */
export function groupSays(draft: Draft, group: GroupId, units: UnitChoice): readonly string[] {
  switch (group) {
    case 'neck':
      return hasOverarm(draft) ? [neckSaid(draft, units)] : []
    case 'arm':
      return hasOverarm(draft) ? [overarmSaid(draft, units), STYLE_FOLDS] : []
    default:
      return []
  }
}

/** Said once: a dressmaker used to set-in sleeves would take the folds for a fault. */
const STYLE_FOLDS = 'Soft folds from neck to underarm belong to this style.'

function overarmSaid(draft: Draft, units: UnitChoice): string {
  const { length, aboveBone } = overarmFacts(draft)
  const lies = `The overarm is ${formatLength(length, units)} long and lies ${slopeWords(draft)}.`
  if (aboveBone === undefined)
    return `${lies} Tape neck base and shoulder length to see how much cloth stands above the shoulder bone.`
  const cloth = formatLength(mm(Math.abs(aboveBone)), units)
  return aboveBone < 0
    ? `${lies} It lies ${cloth} under the shoulder bone: raise its end.`
    : `${lies} ${cloth} of cloth stands above the shoulder bone.`
}

function neckSaid(draft: Draft, units: UnitChoice): string {
  const below = neckBelowPoint(draft)
  if (below === undefined)
    return 'Tape front neck to waist to see how far the neck edge lies below your front neck point.'
  const far = formatLength(mm(Math.abs(below)), units)
  return `At the centre the neck edge lies ${far} ${below < 0 ? 'above' : 'below'} your front neck point.`
}

/** The choices in the order she meets them on the body, which of them matter now, and their knobs. */
import { knows } from '../../measurements/confirmed.ts'
import { isCircle } from '../../draft/blocks/circle-skirt.ts'
import { CHOICES, type ChoiceId, type Choices } from '../../draft/choices.ts'
import { pieceOf, type Draft } from '../../draft/draft.ts'
import { GARMENTS, standardFor } from '../../draft/garments.ts'
import type { OptionId } from '../../draft/options.ts'
import { isSkirt, type PieceId } from '../../draft/piece.ts'
import { mm, type Mm } from '../../units/length.ts'
import { waistWays } from './waist-ways.ts'

export type GroupId =
  'ease' | 'neck' | 'arm' | 'length' | 'skirt' | 'waist' | 'opening' | 'construction'
export interface ChoiceGroup {
  readonly id: GroupId
  /** Choices that are words; the fit stands over the eases by itself. */
  readonly options: readonly OptionId[]
  readonly ids: readonly ChoiceId[]
}

export const CHOICE_GROUPS: readonly ChoiceGroup[] = [
  {
    id: 'ease',
    options: [],
    ids: ['easeBust', 'easeWaist', 'easeHighHip', 'easeHip', 'frontShare', 'acrossEase'],
  },
  {
    id: 'neck',
    options: ['neckShape', 'neckFinish'],
    ids: ['neckHalfWidth', 'sideNeckRise', 'frontNeckDrop', 'stripWidth', 'facingWidth'],
  },
  {
    id: 'arm',
    options: ['overarmRule', 'sleeveEnd'],
    ids: [
      'shoulderDart',
      'underarmDrop',
      'cornerRadius',
      'armRoom',
      'overarmDrop',
      'sweepBack',
      'sweepFront',
      'frontRaise',
      'frontShort',
      'capEase',
      'sleevePitch',
      'sleeveLength',
      'sleeveHem',
      'cuffHeight',
      'cuffFullness',
      'cuffOverlap',
      'sleeveSlit',
    ],
  },
  {
    id: 'length',
    options: [],
    ids: ['lengthAdded', 'lengthBelowWaist', 'ventLength'],
  },
  {
    id: 'skirt',
    options: ['skirt', 'waistFinish'],
    ids: ['skirtFlare', 'biasGive'],
  },
  {
    id: 'waist',
    options: ['shaping', 'waistDarts', 'surplus', 'dartAt', 'dartSecond', 'dartAs'],
    ids: [
      'sideIntake',
      'centreBackMost',
      'frontDartTip',
      'backDartTip',
      'dartSecondMouth',
      'frontDartLow',
      'backDartLow',
    ],
  },
  {
    id: 'opening',
    options: ['opening'],
    ids: ['buttonOverlap', 'keyholeLength', 'keyholeWidth'],
  },
  { id: 'construction', options: ['construction'], ids: [] },
]

/** The groups of a garment, each with the choices its construction reads and that move something now. */
export const groupsFor = (draft: Draft): readonly ChoiceGroup[] =>
  CHOICE_GROUPS.map((group) => ({
    ...group,
    options: group.options.filter((id) => GARMENTS[draft.garment].options.includes(id)),
    ids: group.ids.filter((id) => matters(draft, id)),
  })).filter(({ options, ids }) => options.length + ids.length > 0)

/** A choice that moves nothing in this draft is not shown, unless it was turned before. */
export const matters = (draft: Draft, id: ChoiceId): boolean =>
  GARMENTS[draft.garment].choices.includes(id) &&
  (draft.choices[id] !== standardFor(draft.garment)[id] || moves(draft, id))

function moves(draft: Draft, id: ChoiceId): boolean {
  const { body, choices } = draft
  const skirted = draft.garment === 'dress'
  const circle = skirted && isCircle(choices.skirt)
  const darted = (id: PieceId): boolean =>
    draft.pieces.some(
      (p) => p.id === id && (p.darts.length > 0 || (isSkirt(id) && p.edgeDarts.length > 0)),
    )
  const buttoned = draft.openings.some(({ kind }) => kind === 'buttonedFront')
  switch (id) {
    case 'easeHighHip':
      return knows(body, 'highHipGirth') && knows(body, 'waistToHighHip')
    case 'frontRaise':
      return !(knows(body, 'sideNeckOverApexToWaist') && knows(body, 'sideNeckOverBladeToWaist'))
    case 'stripWidth':
      return choices.neckFinish === 'biasStrip'
    case 'facingWidth':
      return (
        choices.neckFinish === 'facing' || buttoned || (skirted && choices.waistFinish === 'facing')
      )
    case 'buttonOverlap':
      return buttoned
    case 'keyholeLength':
    case 'keyholeWidth':
      return choices.opening === 'keyhole'
    case 'sideIntake':
      return choices.shaping === 'darts' || (skirted && !circle)
    case 'dartSecondMouth':
      return choices.dartSecond !== 'none'
    case 'cuffHeight':
    case 'cuffFullness':
      return choices.sleeveEnd === 'cuff'
    case 'cuffOverlap':
      return draft.pieces.some((p) => p.id === 'cuff' && p.points['C'] !== undefined)
    case 'sleeveSlit':
      return draft.pieces.some((p) => p.id === 'sleeveBinding')
    case 'skirtFlare':
      return choices.skirt === 'flared'
    case 'biasGive':
      return circle
    case 'centreBackMost':
      return waistWays(draft).length > 0
    case 'frontDartTip':
      return darted('front') || pieceOf(draft, 'front').edgeDarts.length > 0
    case 'backDartTip':
      return darted('back') || pieceOf(draft, 'back').edgeDarts.some((d) => d.edge === 'waist')
    case 'frontDartLow':
      return darted('front') || darted('skirtFront')
    case 'backDartLow':
      return darted('back') || darted('skirtBack')
    default:
      return true
  }
}

export interface KnobState {
  /** What the draft is drawn with. */
  readonly value: Mm
  readonly min: Mm
  readonly max: Mm
  /** How much of it corrections turned; 0 when none did. */
  readonly corrected: Mm
}

/**
 * A choice as its knob shows it: her own setting with the corrections in force on top. The ends
 * are drawn in so far that neither the setting nor the sum leaves the range of the choice.
 */
export function knobState(choices: Choices, draft: Draft, id: ChoiceId): KnobState {
  const corrected = draft.choices[id] - choices[id]
  const { min, max } = CHOICES[id]
  return {
    value: draft.choices[id],
    min: mm(Math.max(min, min + corrected)),
    max: mm(Math.min(max, max + corrected)),
    corrected: mm(corrected),
  }
}

/** Her setting that gives `value` once the corrections are added. */
export const settingFor = (value: Mm, corrected: Mm): Mm => mm(value - corrected)

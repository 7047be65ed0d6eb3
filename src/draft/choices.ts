/**
 * Choices: the named amounts she may turn, with default, range and reason in one place. A
 * correction turns a choice wherever the change is one; the construction reads them as amounts.
 */
import type { Amount } from '../units/amount.ts'
import { CHOICE_RANGE_WORDS, CHOICE_WORDS } from './choices.words.ts'
import { standardOptions, type Options } from './options.ts'
import { choiceAmount } from '../units/amount.ts'
import { mm, type Mm } from '../units/length.ts'

export interface Choice {
  readonly label: string
  /** What it does, one plain sentence. */
  readonly does: string
  readonly default: Mm
  readonly min: Mm
  readonly max: Mm
  readonly step: Mm
  readonly source: string
}

const row = (
  words: Pick<Choice, 'label' | 'does' | 'source'>,
  [standard, min, max, step]: [number, number, number, number],
): Choice => ({
  ...words,
  default: mm(standard),
  min: mm(min),
  max: mm(max),
  step: mm(step),
})

export const CHOICES = {
  easeBust: row(CHOICE_WORDS.easeBust, [22, 5, 60, 1]),
  easeWaist: row(CHOICE_WORDS.easeWaist, [14, 0, 60, 1]),
  easeHip: row(CHOICE_WORDS.easeHip, [19, 5, 60, 1]),
  easeHighHip: row(CHOICE_WORDS.easeHighHip, [19, 5, 60, 1]),
  frontShare: row(CHOICE_WORDS.frontShare, [0, -20, 30, 1]),
  cornerRadius: row(CHOICE_WORDS.cornerRadius, [30, 0, 80, 1]),
  armRoom: row(CHOICE_WORDS.armRoom, [50, 25, 120, 1]),
  neckHalfWidth: row(CHOICE_WORDS.neckHalfWidth, [100, 70, 150, 1]),
  sideNeckRise: row(CHOICE_WORDS.sideNeckRise, [25, 10, 40, 1]),
  frontNeckDrop: row(CHOICE_WORDS.frontNeckDrop, [110, 60, 300, 1]),
  frontRaise: row(CHOICE_WORDS.frontRaise, [12, -20, 20, 1]),
  frontShort: row(CHOICE_WORDS.frontShort, [30, 0, 50, 1]),
  acrossEase: row(CHOICE_WORDS.acrossEase, [5, 0, 15, 1]),
  shoulderDart: row(CHOICE_WORDS.shoulderDart, [12, 0, 18, 1]),
  underarmDrop: row(CHOICE_WORDS.underarmDrop, [25, 10, 60, 1]),
  overarmDrop: row(CHOICE_WORDS.overarmDrop, [0, -20, 120, 1]),
  lengthAdded: row(CHOICE_WORDS.lengthAdded, [0, -60, 60, 1]),
  lengthBelowWaist: row(CHOICE_WORDS.lengthBelowWaist, [220, 40, 1100, 5]),
  sideIntake: row(CHOICE_WORDS.sideIntake, [20, 0, 25, 1]),
  centreBackMost: row(CHOICE_WORDS.centreBackMost, [15, 0, 20, 1]),
  frontDartTip: row(CHOICE_WORDS.frontDartTip, [25, 13, 64, 1]),
  backDartTip: row(CHOICE_WORDS.backDartTip, [0, -25, 40, 1]),
  dartSecondMouth: row(CHOICE_WORDS.dartSecondMouth, [12, 5, 60, 1]),
  frontDartLow: row(CHOICE_WORDS.frontDartLow, [100, 40, 140, 1]),
  backDartLow: row(CHOICE_WORDS.backDartLow, [140, 40, 170, 1]),
  sweepBack: row(CHOICE_WORDS.sweepBack, [0, -60, 40, 5]),
  sweepFront: row(CHOICE_WORDS.sweepFront, [0, -60, 40, 5]),
  keyholeLength: row(CHOICE_WORDS.keyholeLength, [90, 50, 150, 5]),
  keyholeWidth: row(CHOICE_WORDS.keyholeWidth, [30, 10, 70, 5]),
  capEase: row(CHOICE_WORDS.capEase, [20, 0, 120, 1]),
  sleevePitch: row(CHOICE_WORDS.sleevePitch, [0, -15, 15, 1]),
  sleeveLength: row(CHOICE_WORDS.sleeveLength, [240, 80, 700, 5]),
  sleeveHem: row(CHOICE_WORDS.sleeveHem, [40, -300, 200, 5]),
  cuffHeight: row(CHOICE_WORDS.cuffHeight, [50, 25, 120, 5]),
  cuffFullness: row(CHOICE_WORDS.cuffFullness, [40, 0, 250, 5]),
  cuffOverlap: row(CHOICE_WORDS.cuffOverlap, [25, 15, 40, 1]),
  sleeveSlit: row(CHOICE_WORDS.sleeveSlit, [90, 50, 160, 5]),
  skirtFlare: row(CHOICE_WORDS.skirtFlare, [60, 0, 200, 5]),
  biasGive: row(CHOICE_WORDS.biasGive, [0, 0, 12, 1]),
  ventLength: row(CHOICE_WORDS.ventLength, [0, 0, 450, 5]),
  facingWidth: row(CHOICE_WORDS.facingWidth, [60, 40, 80, 5]),
  stripWidth: row(CHOICE_WORDS.stripWidth, [30, 20, 60, 1]),
  buttonOverlap: row(CHOICE_WORDS.buttonOverlap, [20, 15, 40, 1]),
} as const satisfies Record<string, Choice>

export type ChoiceId = keyof typeof CHOICES
export const CHOICE_IDS = Object.keys(CHOICES) as readonly ChoiceId[]
export const isChoiceId = (name: string): name is ChoiceId => Object.hasOwn(CHOICES, name)
/** Amounts and words together: everything a construction may be told beside the body. */
export type Choices = Readonly<Record<ChoiceId, Mm>> & Options

export const standardChoices = (): Choices => ({ ...standardAmounts(), ...standardOptions() })

const standardAmounts = (): Readonly<Record<ChoiceId, Mm>> =>
  Object.fromEntries(CHOICE_IDS.map((id) => [id, CHOICES[id].default])) as Record<ChoiceId, Mm>

/** Eases by fit; everything else stays. Common practice, no source. */
export const FITS = {
  easy: { easeBust: mm(22), easeWaist: mm(14), easeHighHip: mm(19), easeHip: mm(19) },
  close: { easeBust: mm(12), easeWaist: mm(8), easeHighHip: mm(10), easeHip: mm(10) },
} as const
export type Fit = keyof typeof FITS
export const withFit = (choices: Choices, fit: Fit): Choices => ({ ...choices, ...FITS[fit] })

export const choice = (choices: Choices, id: ChoiceId): Amount =>
  choiceAmount(id, CHOICES[id].label, choices[id])

/** Why a value cannot be taken, or undefined when it can. */
export function outOfRange(
  id: ChoiceId,
  value: Mm,
  say: (length: Mm) => string,
): string | undefined {
  const { label, min, max } = CHOICES[id]
  if (Number.isFinite(value) && value >= min && value <= max) return undefined
  const said = Number.isFinite(value) ? say(value) : CHOICE_RANGE_WORDS.noNumber
  return CHOICE_RANGE_WORDS.outside(label, said, say(min), say(max))
}

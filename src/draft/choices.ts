/**
 * Choices: the named amounts she may turn, with default, range and reason in one place. A
 * correction turns a choice wherever the change is one; the construction reads them as amounts.
 */
import type { Amount } from '../units/amount.ts'
import { choiceAmount } from '../units/amount.ts'
import { formatLength, type UnitChoice } from '../units/format.ts'
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
  label: string,
  does: string,
  [standard, min, max, step]: [number, number, number, number],
  source: string,
): Choice => ({
  label,
  does,
  default: mm(standard),
  min: mm(min),
  max: mm(max),
  step: mm(step),
  source,
})

const COMMON = 'common practice, no source'

export const CHOICES = {
  easeBust: row(
    'quarter-bust ease',
    'Room to move at the bust, a quarter of it on each half piece.',
    [22, 5, 60, 1],
    `${COMMON}; 88 mm round the body lies in the blouse bands of the ease tables`,
  ),
  easeWaist: row(
    'quarter-waist ease',
    'Room at the waist, a quarter of it on each half piece.',
    [14, 0, 60, 1],
    COMMON,
  ),
  easeHip: row(
    'quarter-hip ease',
    'Room at the hip, a quarter of it on each half piece.',
    [19, 5, 60, 1],
    COMMON,
  ),
  neckHalfWidth: row(
    'half neck width',
    'From the centre to the side-neck point.',
    [100, 70, 150, 1],
    COMMON,
  ),
  sideNeckRise: row(
    'side-neck rise',
    'How far the side-neck point lies above the nape level.',
    [25, 10, 40, 1],
    COMMON,
  ),
  frontNeckDrop: row(
    'front neck depth',
    'From the nape level down the front fold to the neck edge.',
    [110, 60, 300, 1],
    COMMON,
  ),
  frontRaise: row(
    'front raise',
    'How much longer the front is over the bust than the back over the blade, while both are not taped.',
    [12, -20, 20, 1],
    COMMON,
  ),
  underarmDrop: row(
    'underarm below the armpit',
    'Deeper hangs wider and lifts less.',
    [25, 10, 60, 1],
    `${COMMON}; cut-in-one armholes are lowered 38 mm or more in the period manuals`,
  ),
  overarmDrop: row(
    'overarm end below the nape level',
    'Lower lies closer to the arm and lets it lift less.',
    [0, -20, 120, 1],
    COMMON,
  ),
  lengthAdded: row(
    'length between bust and waist',
    'Added or taken out on back and front alike.',
    [0, -60, 60, 1],
    COMMON,
  ),
  lengthBelowWaist: row(
    'length below the waist',
    'From the waist line down to the hem.',
    [220, 40, 1100, 5],
    COMMON,
  ),
  sideIntake: row(
    'most taken in at the side waist',
    'The dart takes the rest.',
    [20, 0, 25, 1],
    COMMON,
  ),
  frontDartTip: row(
    'front dart tip below the apex',
    'A fuller bust wants it lower.',
    [25, 13, 64, 1],
    'public dressmaking lessons: 13 to 25 mm at the waist dart, 13 to 64 mm seen',
  ),
  backDartTip: row(
    'back dart tip below the bust line',
    'Nought puts it on the bust line.',
    [0, -25, 40, 1],
    COMMON,
  ),
  frontDartLow: row(
    'front dart below the waist',
    'Where the front dart closes under the waist.',
    [100, 40, 140, 1],
    'from memory: 90 to 110 mm',
  ),
  backDartLow: row(
    'back dart below the waist',
    'Where the back dart closes under the waist.',
    [140, 40, 170, 1],
    'from memory: 130 to 150 mm',
  ),
} as const satisfies Record<string, Choice>

export type ChoiceId = keyof typeof CHOICES
export const CHOICE_IDS = Object.keys(CHOICES) as readonly ChoiceId[]
export type Choices = Readonly<Record<ChoiceId, Mm>>

export const standardChoices = (): Choices =>
  Object.fromEntries(CHOICE_IDS.map((id) => [id, CHOICES[id].default])) as Record<ChoiceId, Mm>

export const choice = (choices: Choices, id: ChoiceId): Amount =>
  choiceAmount(id, CHOICES[id].label, choices[id])

/** Why a value cannot be taken, or undefined when it can. */
export function outOfRange(id: ChoiceId, value: Mm, units: UnitChoice): string | undefined {
  const { label, min, max } = CHOICES[id]
  if (Number.isFinite(value) && value >= min && value <= max) return undefined
  const said = Number.isFinite(value) ? formatLength(value, units) : 'no number'
  return `${label} would be ${said}; it goes from ${formatLength(min, units)} to ${formatLength(max, units)}.`
}

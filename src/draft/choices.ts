/**
 * Choices: the named amounts she may turn, with default, range and reason in one place. A
 * correction turns a choice wherever the change is one; the construction reads them as amounts.
 */
import type { Amount } from '../units/amount.ts'
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
  easeHighHip: row(
    'quarter-high-hip ease',
    'Room at the high hip, a quarter of it on each half piece.',
    [19, 5, 60, 1],
    COMMON,
  ),
  frontShare: row(
    'front wider than back',
    'Moves the side seam: so much is added to the front quarter and taken from the back.',
    [0, -20, 30, 1],
    COMMON,
  ),
  cornerRadius: row(
    'rounding of the underarm corner',
    'Radius of the curve between sleeve edge and side; nought leaves a corner.',
    [30, 0, 80, 1],
    COMMON,
  ),
  armRoom: row(
    'room over the upper arm',
    'The arm opening is at least so much larger than the upper arm.',
    [50, 25, 120, 1],
    '51 mm and more in published sleeve drafts',
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
  frontShort: row(
    'front armhole shorter than back',
    'How much less the front measures from side neck to underarm line; the bust dart is larger by it.',
    [30, 0, 50, 1],
    'worked out from two published blocks: 29 mm at bust 83 cm, 43 mm at bust 88 cm',
  ),
  acrossEase: row(
    'ease across back and chest',
    'Added to half of each width.',
    [5, 0, 15, 1],
    'a British metric block: half the back width and 5 mm; 13 to 25 mm in all, common practice',
  ),
  shoulderDart: row(
    'back shoulder dart',
    'The back shoulder is so much longer than the front; a dart takes it.',
    [12, 0, 18, 1],
    'from memory: 12 to 18 mm wide and 60 to 80 mm long',
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
  centreBackMost: row(
    'most taken in at the centre back',
    'Only where side and darts cannot take the waist in alone.',
    [15, 0, 20, 1],
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
  dartSecondMouth: row(
    'width of the second bust dart',
    'So much of the bust dart, measured where it lies in the side, goes to its second place.',
    [12, 5, 60, 1],
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
  sweepBack: row(
    'sweep of the back sleeve edge',
    'Turns the overarm about the side neck: its end stands so much higher at the back, and the sleeve edge is about that much wider. Less makes it narrower. Not for a neat cap: cut in one, a wide sleeve falls in folds.',
    [0, -60, 40, 5],
    'a cut-in-one sleeve has wide drape and free lift with its overarm 20 to 35° below level, a neat hang and little lift at 40 to 50° (common practice)',
  ),
  sweepFront: row(
    'sweep of the front sleeve edge',
    'The same in front. Back and front may differ; their overarms stay equally long.',
    [0, -60, 40, 5],
    'as for the back (common practice)',
  ),
  keyholeLength: row(
    'length of the keyhole',
    'From the neck edge down the centre front to its foot. Not over a centre-front seam.',
    [90, 50, 150, 5],
    COMMON,
  ),
  keyholeWidth: row(
    'width of the keyhole',
    'Where it is widest; nought closed, more shows more.',
    [30, 10, 70, 5],
    COMMON,
  ),
  capEase: row(
    'cap ease',
    'How much longer the sleeve cap is than the armhole; eased in over the top, never under the arm.',
    [20, 0, 120, 1],
    'shirting and lawn 10 to 20 mm, crêpe and wool 25 to 38; a gathered head takes 60 and more (sleeve drafts, sources differ)',
  ),
  sleevePitch: row(
    'sleeve pitch',
    'The sleeve turned so far forward in the armhole: its top and both notches are marked farther back on the cap by as much. Under nought it turns back.',
    [0, -15, 15, 1],
    'a bulletin on fitting: the grain hangs with the arm; a tailoring text raises the front pitch and lowers the hind one for an arm that hangs forward',
  ),
  sleeveLength: row(
    'sleeve length',
    'From the top of the cap to the hem.',
    [240, 80, 700, 5],
    COMMON,
  ),
  sleeveHem: row(
    'sleeve hem narrower than the arm width',
    'Taken off in all at the hem; a negative amount flares it.',
    [40, -300, 200, 5],
    COMMON,
  ),
  skirtFlare: row(
    'flare at each side of a skirt half',
    'How far the hem stands out beyond the hip at each side seam.',
    [60, 0, 200, 5],
    COMMON,
  ),
  biasGive: row(
    'give of a circle’s waist',
    'Each half of a circle skirt’s waist is cut so much shorter; a bias edge stretches back to the seam.',
    [0, 0, 12, 1],
    'public circle-skirt lessons take 6 to 25 mm off in all, or stay the edge and take nothing',
  ),
  ventLength: row(
    'vent in the side at the hem',
    'The side seam is left open so far up from the hem; nought for none.',
    [0, 0, 450, 5],
    'a blouse lesson of 1922 leaves opening vents in the side seams; lengths common practice',
  ),
  facingWidth: row(
    'width of a facing',
    'From the edge to the free edge of a shaped facing.',
    [60, 40, 80, 5],
    'public dressmaking lessons: 50 to 64 mm at a neck',
  ),
  stripWidth: row(
    'width of the bias strip',
    'As it is cut, both turnings counted.',
    [30, 20, 60, 1],
    'an old school textbook: 25 to 32 mm for a single bias facing',
  ),
  buttonOverlap: row(
    'overlap of a buttoned front',
    'From the centre front to the folded edge; half a button and a little more.',
    [20, 15, 40, 1],
    COMMON,
  ),
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
  const said = Number.isFinite(value) ? say(value) : 'no number'
  return `${label} would be ${said}; it goes from ${say(min)} to ${say(max)}.`
}

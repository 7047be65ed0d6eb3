/**
 * All garments by their ids: what each is for, what it needs and what it reads. How they are drawn
 * stands in make.ts, so that a list of garments does not bring every construction along.
 */
import type { MeasurementId } from '../measurements/catalogue.ts'
import { mm } from '../units/length.ts'
import { standardChoices, type ChoiceId, type Choices } from './choices.ts'
import type { GarmentId } from './draft.ts'
import type { Garment } from './garment.ts'
import { GARMENT_WORDS } from './garments.words.ts'

/** What every garment of the trunk is drawn from. */
const TRUNK_NEEDS: readonly MeasurementId[] = [
  'bustGirth',
  'waistGirth',
  'hipGirth',
  'waistToHip',
  'napeToWaist',
  'waistToBustLevel',
  'apexSpacing',
]
const BLOUSE_USES: readonly MeasurementId[] = [
  'napeToArmpitLevel',
  'upperArmGirth',
  'headGirth',
  'neckBaseGirth',
  'slipThroughGirth',
  'sideNeckOverBladeToWaist',
  'sideNeckOverApexToWaist',
  'sideNeckToSleeveEdge',
  'frontNeckToWaist',
  'highBustGirth',
  'highHipGirth',
  'waistToHighHip',
  'shoulderLengthLeft',
  'shoulderLengthRight',
  'shoulderSlopeLeft',
  'shoulderSlopeRight',
]

const BODICE_USES: readonly MeasurementId[] = [
  'napeToArmpitLevel',
  'acrossBack',
  'acrossChest',
  'neckBaseGirth',
  'frontNeckToWaist',
  'shoulderLengthLeft',
  'shoulderLengthRight',
  'shoulderSlopeLeft',
  'shoulderSlopeRight',
  'sideNeckOverBladeToWaist',
  'sideNeckOverApexToWaist',
  'highBustGirth',
  'highHipGirth',
  'waistToHighHip',
  'headGirth',
  'upperArmGirth',
  'slipThroughGirth',
]

const BODICE_CHOICES: readonly ChoiceId[] = [
  'easeBust',
  'easeWaist',
  'easeHighHip',
  'easeHip',
  'frontShare',
  'sideNeckRise',
  'frontRaise',
  'frontShort',
  'acrossEase',
  'shoulderDart',
  'underarmDrop',
  'lengthAdded',
  'lengthBelowWaist',
  'sideIntake',
  'centreBackMost',
  'frontDartTip',
  'backDartTip',
  'dartSecondMouth',
  'frontDartLow',
  'backDartLow',
  'ventLength',
]

const BLOUSE: Garment = {
  id: 'blouse',
  ...GARMENT_WORDS.blouse,
  needs: TRUNK_NEEDS,
  uses: BLOUSE_USES,
  choices: [
    'easeBust',
    'easeWaist',
    'easeHighHip',
    'easeHip',
    'frontShare',
    'neckHalfWidth',
    'sideNeckRise',
    'frontNeckDrop',
    'frontRaise',
    'underarmDrop',
    'overarmDrop',
    'sweepBack',
    'sweepFront',
    'cornerRadius',
    'armRoom',
    'lengthAdded',
    'lengthBelowWaist',
    'sideIntake',
    'centreBackMost',
    'frontDartTip',
    'backDartTip',
    'frontDartLow',
    'backDartLow',
    'ventLength',
    'facingWidth',
    'stripWidth',
    'buttonOverlap',
    'keyholeLength',
    'keyholeWidth',
  ],
  options: [
    'overarmRule',
    'neckShape',
    'shaping',
    'waistDarts',
    'surplus',
    'opening',
    'neckFinish',
  ],
  standard: {},
}

const BLOCK: Garment = {
  id: 'block',
  ...GARMENT_WORDS.block,
  needs: TRUNK_NEEDS,
  uses: BODICE_USES,
  choices: BODICE_CHOICES,
  options: [
    'construction',
    'shaping',
    'waistDarts',
    'surplus',
    'dartAt',
    'dartSecond',
    'dartAs',
    'opening',
  ],
  // 10 cm round the bust: a close British block and the older proportional one.
  standard: {
    easeBust: mm(25),
    easeWaist: mm(12),
    easeHighHip: mm(14),
    easeHip: mm(14),
    sideNeckRise: mm(20),
    underarmDrop: mm(15),
    opening: 'backZip',
  },
}

const SLEEVELESS: Garment = {
  ...BLOCK,
  id: 'sleeveless',
  ...GARMENT_WORDS.sleeveless,
  choices: [...BODICE_CHOICES, 'facingWidth', 'stripWidth', 'buttonOverlap'],
  options: [...BLOCK.options, 'neckFinish'],
  // 50, 25 and 50 mm round: the close sleeveless preset of the ease tables.
  standard: {
    ...BLOCK.standard,
    easeBust: mm(13),
    easeWaist: mm(7),
    easeHighHip: mm(13),
    easeHip: mm(13),
    acrossEase: mm(0),
    underarmDrop: mm(10),
    opening: 'auto',
  },
}

const SLEEVED: Garment = {
  ...SLEEVELESS,
  id: 'sleeve',
  ...GARMENT_WORDS.sleeve,
  needs: [...TRUNK_NEEDS, 'upperArmGirth'],
  uses: BODICE_USES.filter((id) => id !== 'upperArmGirth'),
  choices: [
    ...SLEEVELESS.choices,
    'armRoom',
    'capEase',
    'sleevePitch',
    'sleeveLength',
    'sleeveHem',
    'cuffHeight',
    'cuffFullness',
    'cuffOverlap',
    'sleeveSlit',
  ],
  options: [...SLEEVELESS.options, 'sleeveEnd'],
  standard: {
    ...BLOCK.standard,
    easeBust: mm(22),
    easeWaist: mm(14),
    easeHighHip: mm(19),
    easeHip: mm(19),
    // Nape to underarm line 215 mm at bust 88 cm in a published block; nape to armpit level 184 mm
    // among 2,208 women of the same mean bust (ANSUR 1988).
    underarmDrop: mm(30),
    opening: 'auto',
  },
}

const DRESS: Garment = {
  ...SLEEVELESS,
  id: 'dress',
  ...GARMENT_WORDS.dress,
  choices: [...SLEEVELESS.choices, 'skirtFlare', 'biasGive'],
  options: [...SLEEVELESS.options, 'skirt', 'waistFinish'],
  // 75, 40 and 65 mm round: the preset of the ease tables for a darted dress.
  standard: {
    ...BLOCK.standard,
    easeBust: mm(19),
    easeWaist: mm(10),
    easeHighHip: mm(16),
    easeHip: mm(16),
    acrossEase: mm(0),
    underarmDrop: mm(10),
    lengthBelowWaist: mm(600),
    opening: 'backZip',
  },
}

export const GARMENTS: Readonly<Record<GarmentId, Garment>> = {
  blouse: BLOUSE,
  block: BLOCK,
  sleeveless: SLEEVELESS,
  sleeve: SLEEVED,
  dress: DRESS,
}
export const isGarmentId = (name: string): name is GarmentId => Object.hasOwn(GARMENTS, name)
/** In the order she meets them. */
export const GARMENT_IDS = Object.keys(GARMENTS).filter(isGarmentId)

/** The standard of every choice for one garment. */
export const standardFor = (garment: GarmentId): Choices => ({
  ...standardChoices(),
  ...GARMENTS[garment].standard,
})

/** What each measurement is called. */
import type { MeasurementId } from './catalogue.ts'

export interface MeasureName {
  /** Head of a row: "Nape to waist". */
  readonly label: string
  /** Inside a sentence or a step: "nape to waist". */
  readonly spoken: string
}

export const MEASURE_NAMES: Readonly<Record<MeasurementId, MeasureName>> = {
  bustGirth: { label: 'Bust girth', spoken: 'bust' },
  highBustGirth: { label: 'High bust girth', spoken: 'high bust' },
  underbustGirth: { label: 'Underbust girth', spoken: 'underbust' },
  waistGirth: { label: 'Waist girth', spoken: 'waist' },
  highHipGirth: { label: 'High hip girth', spoken: 'high hip' },
  waistToHighHip: { label: 'Waist to high hip', spoken: 'waist to high hip' },
  hipGirth: { label: 'Hip girth', spoken: 'hip' },
  waistToHip: { label: 'Waist to hip', spoken: 'waist to hip' },
  neckBaseGirth: { label: 'Neck base girth', spoken: 'neck base' },
  headGirth: { label: 'Head girth', spoken: 'head' },
  upperArmGirth: { label: 'Upper arm girth', spoken: 'upper arm' },
  armholeGirth: { label: 'Armhole girth', spoken: 'armhole' },
  slipThroughGirth: { label: 'Slip-through girth', spoken: 'slip-through girth' },
  napeToWaist: { label: 'Nape to waist', spoken: 'nape to waist' },
  sideNeckOverBladeToWaist: {
    label: 'Side neck over blade to waist',
    spoken: 'side neck over the blade to the waist',
  },
  sideNeckOverApexToWaist: {
    label: 'Side neck over apex to waist',
    spoken: 'side neck over the apex to the waist',
  },
  sideNeckToApex: { label: 'Side neck to apex', spoken: 'side neck to apex' },
  frontNeckToWaist: { label: 'Front neck to waist', spoken: 'front neck to waist' },
  waistToBustLevel: { label: 'Waist to bust level', spoken: 'waist to bust level' },
  napeToArmpitLevel: { label: 'Nape to armpit level', spoken: 'nape to armpit level' },
  armpitToWaist: { label: 'Armpit to waist', spoken: 'armpit to waist' },
  apexSpacing: { label: 'Apex spacing', spoken: 'apex spacing' },
  acrossBack: { label: 'Across back', spoken: 'across back' },
  acrossChest: { label: 'Across chest', spoken: 'across chest' },
  shoulderLengthLeft: { label: 'Shoulder length, left', spoken: 'left shoulder' },
  shoulderLengthRight: { label: 'Shoulder length, right', spoken: 'right shoulder' },
  shoulderSlopeLeft: { label: 'Shoulder drop, left', spoken: 'left shoulder drop' },
  shoulderSlopeRight: { label: 'Shoulder drop, right', spoken: 'right shoulder drop' },
  sideNeckToSleeveEdge: { label: 'Side neck to sleeve edge', spoken: 'side neck to sleeve edge' },
  waistToFloor: { label: 'Waist to floor', spoken: 'waist to floor' },
  stature: { label: 'Stature', spoken: 'stature' },
  flatBustWidth: { label: 'Flat width at the bust', spoken: 'flat width at the bust' },
  flatWaistWidth: { label: 'Flat width at the waist', spoken: 'flat width at the waist' },
  flatHemWidth: { label: 'Flat width at the hem', spoken: 'flat width at the hem' },
  flatBackLength: { label: 'Flat back length', spoken: 'flat back length' },
}

/** What the points, the views and the lengths of the photos are called on the screen. */
import type { PointName, View } from '../../../capture/reading.ts'
import type { EstimateId } from '../../../measurements/estimate.ts'

export const VIEW_WORDS: Readonly<Record<View, string>> = {
  front: 'Front',
  side: 'Side',
  back: 'Back',
}
export const VIEW_PHOTO_WORDS: Readonly<Record<View, string>> = {
  front: 'Front photo',
  side: 'Side photo',
  back: 'Back photo',
}

/** Left and right are the wearer's. */
export const POINT_WORDS: Readonly<Record<PointName, string>> = {
  nape: 'Nape',
  waistBack: 'Waist, back',
  waistFront: 'Waist, front',
  bustLevel: 'Bust level',
  apexLeft: 'Left apex',
  apexRight: 'Right apex',
  sideNeckLeft: 'Left side neck',
  sideNeckRight: 'Right side neck',
  shoulderLeft: 'Left shoulder bone',
  shoulderRight: 'Right shoulder bone',
  bustLeft: 'Bust, left side',
  bustRight: 'Bust, right side',
  bustFront: 'Bust, front',
  bustBack: 'Bust, back',
  waistLeft: 'Waist, left side',
  waistRight: 'Waist, right side',
  hipLeft: 'Hip, left side',
  hipRight: 'Hip, right side',
  hipFront: 'Hip, front',
  hipBack: 'Hip, back',
}

export const ESTIMATE_WORDS: Readonly<Record<EstimateId, string>> = {
  napeToWaist: 'Nape to waist',
  waistToBustLevel: 'Waist to bust level',
  apexSpacing: 'Apex spacing',
  sideNeckToApex: 'Side neck to apex',
  sideNeckOverApexToWaist: 'Side neck over apex to waist',
  shoulderLength: 'Shoulder length, both sides',
  shoulderLengthLeft: 'Shoulder length, left',
  shoulderLengthRight: 'Shoulder length, right',
  shoulderSlopeLeft: 'Shoulder drop, left',
  shoulderSlopeRight: 'Shoulder drop, right',
  acrossBack: 'Across back',
  napeToArmpitLevel: 'Nape to armpit level',
  waistToHip: 'Waist to hip',
  bustBreadth: 'Bust breadth',
  waistBreadth: 'Waist breadth',
  hipBreadth: 'Hip breadth',
  bustDepth: 'Bust depth',
  waistDepth: 'Waist depth',
  hipDepth: 'Hip depth',
  bustGirth: 'Bust girth',
  waistGirth: 'Waist girth',
  hipGirth: 'Hip girth',
}
